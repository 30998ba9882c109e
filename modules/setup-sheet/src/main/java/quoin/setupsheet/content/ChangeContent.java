package quoin.setupsheet.content;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * Everything on the page of last time, now and the change, in words.
 *
 * @param car        name of the car
 * @param head       lines under the name: which days
 * @param warning    what must be seen before any figure; may be empty
 * @param conditions load case and tyres
 * @param readings   every reading that either day has
 * @param positions  every adjuster
 * @param turns      what a turn did last time; none where nothing was learnt
 */
public record ChangeContent(String car, List<String> head, String warning, List<Change> conditions, List<Change> readings,
        List<Change> positions, List<Effect> turns) {

    /**
     * One thing on both days.
     *
     * @param name   with its unit
     * @param before last time; empty = not known
     * @param now    empty = not known, a line to write on
     * @param change with its sign; may be empty
     * @param noise  "± 0.3"; may be empty
     * @param word   what the change says; may be empty
     * @param bands  change in noise bands; empty where there is none to draw
     */
    public record Change(String name, String before, String now, String change, String noise, String word, OptionalDouble bands) {
    }

    /**
     * What a turn did last time.
     *
     * @param what     adjuster and reading
     * @param observed per turn or mm of shim, with its band
     * @param expected as the car was believed to answer then; may be empty
     */
    public record Effect(String what, String observed, String expected) {
    }

    public ChangeContent {
        Objects.requireNonNull(car, "car");
        head = List.copyOf(head);
        Objects.requireNonNull(warning, "warning");
        conditions = List.copyOf(conditions);
        readings = List.copyOf(readings);
        positions = List.copyOf(positions);
        turns = List.copyOf(turns);
    }
}
