package quoin.wheelangles.measure;

import java.util.List;
import java.util.stream.Stream;

/**
 * Fields in rows and columns.
 *
 * @param title   over it
 * @param columns heads of the columns; empty = none
 * @param lines   the rows
 */
public record Table(String title, List<String> columns, List<Line> lines) {

    /**
     * A row.
     *
     * @param name   before it
     * @param fields from left to right
     */
    public record Line(String name, List<Field> fields) {
        public Line {
            fields = List.copyOf(fields);
        }

        static Line of(String name, Field... fields) {
            return new Line(name, List.of(fields));
        }
    }

    public Table {
        columns = List.copyOf(columns);
        lines = List.copyOf(lines);
    }

    static Table of(String title, List<String> columns, Line... lines) {
        return new Table(title, columns, List.of(lines));
    }

    public Stream<Field> fields() {
        return lines.stream().flatMap(l -> l.fields().stream());
    }
}
