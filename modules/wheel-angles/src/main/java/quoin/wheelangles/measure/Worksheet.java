package quoin.wheelangles.measure;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.openide.util.NbBundle.Messages;
import quoin.mechanics.MeasurementModel;
import quoin.quantities.Dimension;
import quoin.quantities.Quantities;
import quoin.quantities.QuantityFormat;
import quoin.quantities.QuantityFormatException;
import quoin.quantities.UnitPreferences;

/** A form being filled. Immutable: typing makes another one. */
@Messages({
    "# {0} - field", "# {1} - problem and remedy", "sheet.problem={0}: {1}",
    "# {0} - field", "sheet.missing={0} is not typed yet.",
    "# {0} - field", "sheet.step={0}: the smallest step it shows must be greater than 0; type for example 0.5.",
    "sheet.steps=Smallest step shown by"})
public final class Worksheet {

    private static final int ENTRY_DECIMALS = 4;

    private final Method method;
    private final Setting setting;
    private final UnitPreferences units;
    private final Map<String, String> texts;

    /**
     * @param texts what was typed or chosen so far, per key; a key that is not in it holds what is usual
     */
    public Worksheet(Method method, Setting setting, UnitPreferences units, Map<String, String> texts) {
        this.method = method;
        this.setting = setting;
        this.units = units;
        this.texts = new LinkedHashMap<>(texts);
    }

    public Method method() {
        return method;
    }

    public UnitPreferences units() {
        return units;
    }

    /** What was typed or chosen, other than what is usual. */
    public Map<String, String> texts() {
        return Map.copyOf(texts);
    }

    public Worksheet with(String key, String text) {
        Map<String, String> changed = new LinkedHashMap<>(texts);
        changed.put(key, text);
        return new Worksheet(method, setting, units, changed);
    }

    /** As it stands after its figures were recorded: what is read anew is blank, what belongs to the car and the tools stays. */
    public Worksheet recorded() {
        Map<String, String> kept = new LinkedHashMap<>(texts);
        fields().filter(Field::isAnew).forEach(f -> kept.remove(f.key()));
        return new Worksheet(method, setting, units, kept);
    }

    /** Key of the option in force per choice. */
    public Map<String, String> chosen() {
        Map<String, String> chosen = new LinkedHashMap<>();
        method.choices().forEach(c -> chosen.put(c.key(), c.option(texts.getOrDefault(c.key(), "")).key()));
        return chosen;
    }

    /** The tables, the steps of the instruments last. */
    public List<Table> tables() {
        List<Table> tables = new ArrayList<>(method.tables(setting, chosen()));
        List<Table.Line> steps = tables.stream().flatMap(Table::fields).flatMap(f -> f.by().stream()).distinct().sorted()
                .map(i -> Table.Line.of(i.words(), Field.known(i.key(), i.words(), i.dimension(), i.usualStep(setting.car().instruments()))))
                .toList();
        tables.add(new Table(Bundle.sheet_steps(), List.of(), steps));
        return tables;
    }

    private Stream<Field> fields() {
        return tables().stream().flatMap(Table::fields);
    }

    /** What stands in a field. */
    public String text(Field field) {
        String typed = texts.get(field.key());
        return typed != null ? typed : field.usual().isPresent() ? exact(field.usual().getAsDouble(), field.dimension()) : "";
    }

    /** With every digit that counts and without a unit. */
    private String exact(double value, Dimension dimension) {
        String text = QuantityFormat.of(units.withDecimals(dimension, ENTRY_DECIMALS)).number(value, dimension);
        return text.indexOf(units.decimalMark().character()) < 0 || !text.matches("[-+0-9.,]*") ? text : text.replaceAll("[.,]?0+$", "");
    }

    /**
     * What the form says as it stands.
     *
     * @param problems what is wrong, field and remedy in words, per key; in the order of the form
     * @param missing  key of the first field that is needed and blank
     * @param measured what follows; empty where something is wrong or missing
     */
    public record Check(Map<String, String> problems, Optional<String> missing, Optional<Measured> measured) {
    }

    public Check check() {
        Map<String, Field> byKey = fields().collect(Collectors.toMap(Field::key, f -> f, (a, b) -> a, LinkedHashMap::new));
        Map<String, Double> values = new HashMap<>();
        Map<String, String> problems = new LinkedHashMap<>();
        byKey.forEach((key, field) -> read(field, values, problems));
        if (!problems.isEmpty()) {
            return new Check(problems, Optional.empty(), Optional.empty());
        }
        Figures figures = new Figures(values, chosen(), setting, new Wording(units));
        try {
            Outcome outcome = method.evaluate(figures);
            return new Check(problems, Optional.empty(), Optional.of(measured(figures, outcome, byKey)));
        } catch (Figures.MissingFigure e) {
            return new Check(Map.of(), Optional.of(e.key()), Optional.empty());
        } catch (Figures.BadFigure e) {
            String name = byKey.containsKey(e.key()) ? byKey.get(e.key()).name() : method.title();
            return new Check(Map.of(e.key(), Bundle.sheet_problem(name, e.getLocalizedMessage())), Optional.empty(), Optional.empty());
        }
    }

    /** Words for a field that is missing. */
    public String missingWords(String key) {
        return fields().filter(f -> f.key().equals(key)).map(f -> Bundle.sheet_missing(f.name())).findFirst().orElse("");
    }

    private void read(Field field, Map<String, Double> values, Map<String, String> problems) {
        String text = text(field).strip();
        if (text.isEmpty()) {
            return;
        }
        try {
            double value = Quantities.parse(text, field.dimension(), units);
            if (field.key().startsWith("step.") && !(value > 0)) {
                problems.put(field.key(), Bundle.sheet_step(field.name()));
            } else {
                values.put(field.key(), value);
            }
        } catch (QuantityFormatException e) {
            problems.put(field.key(), Bundle.sheet_problem(field.name(), e.problem() + "; " + e.remedy() + "."));
        }
    }

    private Measured measured(Figures figures, Outcome outcome, Map<String, Field> byKey) {
        List<String> keys = figures.values().keySet().stream().filter(k -> byKey.get(k).by().isPresent()).sorted().toList();
        List<MeasurementModel.Input> inputs = keys.stream().map(k -> MeasurementModel.Input.of(figures.get(k),
                step(figures, byKey.get(k).by().orElseThrow()) / Math.sqrt(12))).toList();
        List<OptionalDouble> uncertainties = new ArrayList<>();
        for (int i = 0; i < outcome.results().size(); i++) {
            int at = i;
            double u = new MeasurementModel(v -> around(figures, keys, v, at)).evaluate(inputs).standardUncertainty();
            uncertainties.add(u > 1e-12 ? OptionalDouble.of(u) : OptionalDouble.empty());
        }
        return new Measured(method.id(), raw(byKey), outcome, uncertainties);
    }

    private double step(Figures figures, Instrument by) {
        return figures.maybe(by.key()).orElse(by.usualStep(setting.car().instruments()));
    }

    /**
     * A result with the figures a little off. Where a figure cannot be less, such as a gap of 0, the step to the other side is
     * mirrored.
     */
    private double around(Figures figures, List<String> keys, double[] values, int result) {
        try {
            return method.evaluate(figures.with(keys, values)).results().get(result).value();
        } catch (Figures.BadFigure e) {
            double[] mirrored = new double[values.length];
            for (int i = 0; i < values.length; i++) {
                mirrored[i] = 2 * figures.get(keys.get(i)) - values[i];
            }
            return 2 * method.evaluate(figures).results().get(result).value()
                    - method.evaluate(figures.with(keys, mirrored)).results().get(result).value();
        }
    }

    /** What the journal keeps: choices, figures as typed, and the units of those typed without one. */
    private Map<String, String> raw(Map<String, Field> byKey) {
        Map<String, String> raw = new LinkedHashMap<>(chosen());
        byKey.values().forEach(f -> {
            if (!text(f).isBlank()) {
                raw.put(f.key(), text(f).strip());
            }
        });
        byKey.values().stream().map(Field::dimension).distinct().filter(d -> d != Dimension.NUMBER)
                .forEach(d -> raw.put("unit." + d, units.unit(d).symbol()));
        return raw;
    }
}
