package quoin.workings;

import java.util.List;

/**
 * How one figure comes about.
 *
 * @param field  name of the field it is typed in: "reading.load.LF"; empty where it is not typed
 * @param title  name of the figure
 * @param result the figure with its unit
 * @param lines  formula, numbers put in, judgement; one thought a line
 */
record Working(String field, String title, String result, List<String> lines) {

    Working {
        lines = List.copyOf(lines);
    }
}
