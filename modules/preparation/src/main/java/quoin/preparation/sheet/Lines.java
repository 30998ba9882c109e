package quoin.preparation.sheet;

import java.util.List;
import java.util.stream.Stream;

/**
 * The fields of a form as they stand on the screen.
 *
 * @param heads   headings over the fields of a line; empty = none
 * @param lines   from the top
 */
public record Lines(List<String> heads, List<Line> lines) {

    /**
     * @param name  before the fields
     * @param cells from the left
     */
    public record Line(String name, List<Cell> cells) {
        public Line {
            cells = List.copyOf(cells);
        }

        public static Line of(String name, Cell... cells) {
            return new Line(name, List.of(cells));
        }
    }

    public Lines {
        heads = List.copyOf(heads);
        lines = List.copyOf(lines);
    }

    public static Lines of(Line... lines) {
        return new Lines(List.of(), List.of(lines));
    }

    public Stream<Cell> cells() {
        return lines.stream().flatMap(l -> l.cells().stream());
    }
}
