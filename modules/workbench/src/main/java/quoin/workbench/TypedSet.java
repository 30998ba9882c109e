package quoin.workbench;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import quoin.car.ReadingId;
import quoin.quantities.QuantityFormatException;

/**
 * What stands in a row of fields, before it is recorded. Blank is "not read"; "=" is "as last time". Immutable.
 *
 * @param readings the fields in walking order
 * @param texts    what is typed, one per reading
 */
public record TypedSet(List<ReadingId> readings, List<String> texts) {

    public TypedSet {
        readings = List.copyOf(readings);
        texts = List.copyOf(texts);
        if (readings.size() != texts.size()) {
            throw new IllegalArgumentException("there must be one text per reading");
        }
    }

    public static TypedSet empty(List<ReadingId> readings) {
        return new TypedSet(readings, Collections.nCopies(readings.size(), ""));
    }

    /**
     * What the texts mean.
     *
     * @param values   base-unit values of the fields that could be read
     * @param typed    the text of those fields
     * @param problems what is wrong with the others, problem and remedy in words
     */
    public record Understood(Map<ReadingId, Double> values, Map<ReadingId, String> typed, Map<ReadingId, String> problems) {
        public Understood {
            values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
            typed = Collections.unmodifiableMap(new LinkedHashMap<>(typed));
            problems = Collections.unmodifiableMap(new LinkedHashMap<>(problems));
        }
    }

    public TypedSet with(int index, String text) {
        List<String> changed = new ArrayList<>(texts);
        changed.set(index, text);
        return new TypedSet(readings, changed);
    }

    public boolean isBlank() {
        return texts.stream().allMatch(String::isBlank);
    }

    /** True where the field holds more than one figure and so is a whole line. */
    public boolean isLine(int index, ReadingFormat format) {
        String text = texts.get(index);
        if (text.isBlank() || text.strip().equals("=")) {
            return false;
        }
        try {
            return format.parseLine(sameKind(index), text).size() > 1;
        } catch (QuantityFormatException e) {
            return false;
        }
    }

    /** The field's reading and those of the same kind that follow it without a break; a line never changes its unit. */
    private List<ReadingId> sameKind(int index) {
        int end = index;
        while (end < readings.size() && readings.get(end).kind() == readings.get(index).kind()) {
            end++;
        }
        return readings.subList(index, end);
    }

    /** How many figures a line in this field may hold. */
    public int room(int index) {
        return sameKind(index).size();
    }

    /**
     * Spreads a line over its own field and those of the same kind after it; fields that get nothing keep what they hold.
     *
     * @throws QuantityFormatException where the line cannot be read
     * @throws TooManyFigures          where it holds more figures than fields are left
     */
    public TypedSet spread(int index, ReadingFormat format) {
        List<ReadingId> rest = sameKind(index);
        List<OptionalDouble> values = format.parseLine(rest, texts.get(index));
        if (values.size() > rest.size()) {
            throw new TooManyFigures(values.size(), rest.size());
        }
        List<String> changed = new ArrayList<>(texts);
        for (int i = 0; i < values.size(); i++) {
            ReadingId reading = readings.get(index + i);
            changed.set(index + i, values.get(i).isPresent() ? format.exact(reading, values.get(i).getAsDouble()) : "");
        }
        return new TypedSet(readings, changed);
    }

    /**
     * Reads every field.
     *
     * @param last the value each reading had before, for "="
     */
    public Understood read(ReadingFormat format, Function<ReadingId, OptionalDouble> last) {
        Map<ReadingId, Double> values = new LinkedHashMap<>();
        Map<ReadingId, String> typed = new LinkedHashMap<>();
        Map<ReadingId, String> problems = new LinkedHashMap<>();
        for (int i = 0; i < readings.size(); i++) {
            ReadingId reading = readings.get(i);
            String text = texts.get(i).strip();
            if (text.isEmpty()) {
                continue;
            }
            OptionalDouble before = last.apply(reading);
            if (text.equals("=") && before.isPresent()) {
                values.put(reading, before.getAsDouble());
                typed.put(reading, text);
                continue;
            }
            try {
                values.put(reading, format.parse(reading, text));
                typed.put(reading, text);
            } catch (QuantityFormatException e) {
                problems.put(reading, e.problem() + "; " + e.remedy());
            }
        }
        return new Understood(values, typed, problems);
    }

    /** A line holds more figures than there are fields. */
    public static final class TooManyFigures extends IllegalArgumentException {
        private static final long serialVersionUID = 1L;
        private final int typed;
        private final int fields;

        TooManyFigures(int typed, int fields) {
            super(typed + " figures for " + fields + " fields");
            this.typed = typed;
            this.fields = fields;
        }

        public int typed() {
            return typed;
        }

        public int fields() {
            return fields;
        }
    }
}
