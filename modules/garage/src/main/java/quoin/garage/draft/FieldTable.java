package quoin.garage.draft;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * Fields that belong together, in rows and columns.
 *
 * @param title   heading, or empty
 * @param columns headings of the columns; empty = no heading line
 * @param rows    the rows
 */
public record FieldTable(String title, List<String> columns, List<Row> rows) {

    public FieldTable {
        Objects.requireNonNull(title, "title");
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /** Every field, row by row. */
    public Stream<Field> fields() {
        return rows.stream().flatMap(r -> r.cells().stream()).flatMap(Optional::stream);
    }

    /**
     * One row.
     *
     * @param label   in front of the row, or empty
     * @param cells   one per column; empty where the row has nothing there
     * @param removes number of the height point or mass that this row is, where it can be removed
     */
    public record Row(String label, List<Optional<Field>> cells, OptionalInt removes) {

        public Row {
            Objects.requireNonNull(label, "label");
            cells = List.copyOf(cells);
            Objects.requireNonNull(removes, "removes");
        }

        static Row of(String label, Stream<Field> cells) {
            return new Row(label, cells.map(Optional::of).toList(), OptionalInt.empty());
        }
    }
}
