package quoin.exchange.incoming;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.openide.util.NbBundle.Messages;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.exchange.incoming.ColumnUse.Role;
import quoin.quantities.QuantityFormatException;
import quoin.workbench.ReadingFormat;

/**
 * A table with readings, and what its columns are taken for. Two forms are understood: one figure a row with its name, place and
 * value, or one column a reading with all the figures of a settling in a row.
 */
@Messages({
    "# {0} - row", "# {1} - name and place", "table.unknown=Row {0}: \"{1}\" is no reading of this car; correct its name or its place, or leave it out",
    "# {0} - row", "# {1} - reading", "# {2} - what is wrong", "table.figure=Row {0}, {1}: {2}",
    "# {0} - row", "# {1} - reading", "table.twice=Row {0}: {1} stands twice in one settling; give each settling its own row or number",
    "table.noColumns=No column is taken for a reading yet: choose what each column is."})
public final class ReadingTable {

    private final List<List<String>> rows;
    private final ReadingNames names;
    private final ReadingFormat format;

    /**
     * @param rows   cells as read, the first row the headings
     * @param format units taken where a figure brings none
     */
    public ReadingTable(List<List<String>> rows, Car car, ReadingFormat format) {
        this.rows = List.copyOf(rows);
        this.names = new ReadingNames(car);
        this.format = format;
    }

    /**
     * What the table says.
     *
     * @param settings figures read together, in the order of the rows
     * @param problems what was not understood, each with its row and a remedy
     */
    public record Understood(List<Map<ReadingId, Double>> settings, List<String> problems) {
        public Understood {
            settings = List.copyOf(settings);
            problems = List.copyOf(problems);
        }

        public int figures() {
            return settings.stream().mapToInt(Map::size).sum();
        }
    }

    /** The headings, as many as the widest row has cells. */
    public List<String> headings() {
        int most = rows.stream().mapToInt(List::size).max().orElse(0);
        List<String> headings = new ArrayList<>(rows.get(0));
        while (headings.size() < most) {
            headings.add("");
        }
        return headings;
    }

    /** The first cells under a heading, for a look. */
    public String sample(int column) {
        return rows.stream().skip(1).map(r -> cell(r, column)).filter(c -> !c.isBlank()).limit(2)
                .reduce((a, b) -> a + " · " + b).orElse("");
    }

    public List<ReadingId> readings() {
        return names.all();
    }

    /** What each column is likely to be, from its heading; four columns named after the corners hold the weights, unless each row says what it holds. */
    public List<ColumnUse> guess() {
        List<ColumnUse> uses = new ArrayList<>();
        List<String> headings = headings();
        List<Optional<Corner>> corners = headings.stream().map(names::corner).toList();
        boolean weights = corners.stream().flatMap(Optional::stream).distinct().count() == Corner.values().length
                && headings.stream().map(ReadingTable::part).noneMatch(new ColumnUse.Part(Role.NAME)::equals);
        for (int i = 0; i < corners.size(); i++) {
            String heading = headings.get(i);
            Optional<ReadingId> reading = weights && corners.get(i).isPresent()
                    ? corners.get(i).map(c -> ReadingId.of(ReadingKind.LOAD, c)) : HeadingUnit.reading(heading, names, format);
            uses.add(reading.<ColumnUse>map(ColumnUse.OneReading::new).orElseGet(() -> part(heading)));
        }
        return uses;
    }

    private static ColumnUse part(String heading) {
        return switch (heading.strip().toLowerCase(Locale.ROOT)) {
            case "name", "reading", "what", "kind" -> new ColumnUse.Part(Role.NAME);
            case "place", "corner", "where", "wheel", "point" -> new ColumnUse.Part(Role.PLACE);
            case "value", "figure" -> new ColumnUse.Part(Role.VALUE);
            case "unit", "units" -> new ColumnUse.Part(Role.UNIT);
            case "entry", "run", "set", "settling" -> new ColumnUse.Part(Role.TOGETHER);
            case "record" -> new ColumnUse.Part(Role.RECORD);
            default -> ColumnUse.IGNORED;
        };
    }

    /** Reads the table with its columns taken for what they are said to be. */
    public Understood read(List<ColumnUse> uses) {
        boolean parts = uses.contains(new ColumnUse.Part(Role.VALUE)) && uses.contains(new ColumnUse.Part(Role.NAME));
        boolean columns = uses.stream().anyMatch(ColumnUse.OneReading.class::isInstance);
        if (!parts && !columns) {
            return new Understood(List.of(), List.of(Bundle.table_noColumns()));
        }
        List<String> units = units(uses);
        Map<String, Map<ReadingId, Double>> settings = new LinkedHashMap<>();
        List<String> problems = new ArrayList<>();
        for (int i = 1; i < rows.size(); i++) {
            List<String> row = rows.get(i);
            String record = of(row, uses, Role.RECORD);
            if (!record.isBlank() && !record.strip().equalsIgnoreCase("reading")) {
                continue;
            }
            String together = of(row, uses, Role.TOGETHER);
            String key = parts ? together : "row " + i;
            Map<ReadingId, Double> into = settings.computeIfAbsent(key, k -> new LinkedHashMap<>());
            if (parts) {
                onePart(i, row, uses, into, problems);
            }
            for (int c = 0; c < uses.size(); c++) {
                if (uses.get(c) instanceof ColumnUse.OneReading one) {
                    take(i, one.reading(), HeadingUnit.behind(cell(row, c), units.get(c)), into, problems);
                }
            }
        }
        return new Understood(settings.values().stream().filter(m -> !m.isEmpty()).toList(), problems);
    }

    private List<String> units(List<ColumnUse> uses) {
        List<String> headings = headings();
        return IntStream.range(0, uses.size()).mapToObj(c -> uses.get(c) instanceof ColumnUse.OneReading one
                ? HeadingUnit.of(headings.get(c), one.reading(), format) : "").toList();
    }

    private void onePart(int row, List<String> cells, List<ColumnUse> uses, Map<ReadingId, Double> into, List<String> problems) {
        String value = of(cells, uses, Role.VALUE);
        if (value.isBlank()) {
            return;
        }
        String name = of(cells, uses, Role.NAME);
        String place = of(cells, uses, Role.PLACE);
        Optional<ReadingId> id = names.at(name, place).or(() -> names.heading(name));
        if (id.isEmpty()) {
            problems.add(Bundle.table_unknown(Integer.toString(row + 1), (name + " " + place).strip()));
            return;
        }
        take(row, id.get(), (value + " " + unit(of(cells, uses, Role.UNIT))).strip(), into, problems);
    }

    private static String unit(String unit) {
        return unit.strip().equalsIgnoreCase("percent") ? "%" : unit.strip();
    }

    private void take(int row, ReadingId id, String text, Map<ReadingId, Double> into, List<String> problems) {
        if (text.isBlank()) {
            return;
        }
        try {
            if (into.put(id, format.parse(id, text)) != null) {
                problems.add(Bundle.table_twice(Integer.toString(row + 1), id.words()));
            }
        } catch (QuantityFormatException e) {
            problems.add(Bundle.table_figure(Integer.toString(row + 1), id.words(), e.problem() + "; " + e.remedy()));
        }
    }

    private static String of(List<String> row, List<ColumnUse> uses, Role role) {
        int column = uses.indexOf(new ColumnUse.Part(role));
        return column < 0 ? "" : cell(row, column);
    }

    private static String cell(List<String> row, int column) {
        return column < row.size() ? row.get(column) : "";
    }
}
