package quoin.preparation.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.openide.util.NbBundle.Messages;
import quoin.quantities.Quantities;
import quoin.quantities.QuantityFormatException;
import quoin.quantities.UnitPreferences;

/**
 * What a form holds, understood.
 *
 * @param values   base-unit value per key; blank fields are not in it
 * @param typed    what was typed, per key, in the order of the form; blank fields are not in it
 * @param problems field, problem and remedy in words, per key
 */
@Messages({"# {0} - field", "# {1} - problem", "# {2} - remedy", "figures.problem={0}: {1}; {2}."})
public record Figures(Map<String, Double> values, Map<String, String> typed, Map<String, String> problems) {

    /** Reads every field of a form. */
    public static Figures read(Stream<Cell> cells, Map<String, String> texts, UnitPreferences units) {
        Map<String, Double> values = new LinkedHashMap<>();
        Map<String, String> typed = new LinkedHashMap<>();
        Map<String, String> problems = new LinkedHashMap<>();
        cells.forEach(cell -> {
            String text = texts.getOrDefault(cell.key(), "").strip();
            if (text.isEmpty()) {
                return;
            }
            try {
                values.put(cell.key(), Quantities.parse(text, cell.dimension(), units));
                typed.put(cell.key(), text);
            } catch (QuantityFormatException e) {
                problems.put(cell.key(), Bundle.figures_problem(cell.name(), e.problem(), e.remedy()));
            }
        });
        return new Figures(values, typed, problems);
    }

    public OptionalDouble maybe(String key) {
        Double value = values.get(key);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /** The value, or another one where the field is blank. */
    public double or(String key, double otherwise) {
        return values.getOrDefault(key, otherwise);
    }

    public boolean hasAll(List<String> keys) {
        return values.keySet().containsAll(keys);
    }

    /** The first problem, in the order of the form. */
    public Optional<String> problem() {
        return problems.values().stream().findFirst();
    }
}
