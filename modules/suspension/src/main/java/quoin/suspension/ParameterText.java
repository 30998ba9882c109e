package quoin.suspension;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import quoin.quantities.NotTakenException;
import quoin.quantities.Quantities;
import quoin.quantities.QuantityFormatException;
import quoin.quantities.Texts;
import quoin.quantities.Unit;

/** Reads parameter texts. */
final class ParameterText {
    private static final Texts TEXTS = Texts.of(ParameterText.class);
    private ParameterText() {
    }

    static ParameterReading read(List<Parameter> description, Map<String, String> texts) {
        Map<String, double[]> figures = new HashMap<>();
        Map<String, String> choices = new HashMap<>();
        List<ParameterProblem> problems = each(description, texts.keySet(), parameter -> {
            String text = texts.getOrDefault(parameter.key(), "").strip();
            if (text.isEmpty()) {
                return false;
            }
            if (parameter.kind() == Parameter.Kind.CHOICE) {
                choices.put(parameter.key(), choice(parameter, text));
            } else {
                figures.put(parameter.key(), figures(parameter, text));
            }
            return true;
        });
        return new ParameterReading(new ParameterValues(figures, choices), problems);
    }

    static ParameterReading take(List<Parameter> description, Map<String, double[]> given, Map<String, String> chosen) {
        Map<String, double[]> figures = new HashMap<>();
        Map<String, String> choices = new HashMap<>();
        TreeSet<String> keys = new TreeSet<>(given.keySet());
        keys.addAll(chosen.keySet());
        List<ParameterProblem> problems = each(description, keys, parameter -> {
            String key = parameter.key();
            if (parameter.kind() == Parameter.Kind.CHOICE && chosen.containsKey(key)) {
                choices.put(key, choice(parameter, chosen.get(key)));
            } else if (given.containsKey(key)) {
                figures.put(key, checked(parameter, given.get(key)));
            }
            return figures.containsKey(key) || choices.containsKey(key);
        });
        return new ParameterReading(new ParameterValues(figures, choices), problems);
    }

    /** @param taker takes one parameter; false where it is blank */
    private static List<ParameterProblem> each(List<Parameter> description, Set<String> keys, Predicate<Parameter> taker) {
        List<ParameterProblem> problems = new ArrayList<>();
        TreeSet<String> unknown = new TreeSet<>(keys);
        for (Parameter parameter : description) {
            unknown.remove(parameter.key());
            try {
                if (!taker.test(parameter) && parameter.required()) {
                    problems.add(new ParameterProblem(parameter.key(), TEXTS.phrase("isMissing")));
                }
            } catch (QuantityFormatException | NotTakenException e) {
                problems.add(new ParameterProblem(parameter.key(), TEXTS.phrase("said", e)));
            }
        }
        unknown.forEach(key -> problems.add(new ParameterProblem(key, TEXTS.phrase("notAParameterOf"), true)));
        return problems;
    }

    private static double[] checked(Parameter parameter, double[] figures) {
        int count = switch (parameter.kind()) {
            case POINT, AXLE_POINT, DIRECTION -> 3;
            case NUMBER, LENGTH, ANGLE -> 1;
            case CHOICE -> 0;
        };
        if (figures.length != count || !Arrays.stream(figures).allMatch(Double::isFinite)) {
            throw new NotTakenException(TEXTS.phrase("mustHave." + count));
        }
        return parameter.kind() == Parameter.Kind.DIRECTION ? direction(figures) : figures.clone();
    }

    private static String choice(Parameter parameter, String text) {
        if (!parameter.choices().contains(text)) {
            throw new NotTakenException(TEXTS.phrase("mustBeOneOf", String.join(", ", parameter.choices()), text));
        }
        return text;
    }

    private static double[] figures(Parameter parameter, String text) {
        return switch (parameter.kind()) {
            case NUMBER -> new double[] {Quantities.parse(withoutUnit(text, parameter.unit()), Unit.ONE)};
            case LENGTH -> new double[] {Quantities.parse(text, Unit.MM)};
            case ANGLE -> new double[] {Quantities.parse(text, Unit.DEG)};
            case POINT, AXLE_POINT -> three(text, Unit.MM);
            case DIRECTION -> direction(three(text, Unit.ONE));
            case CHOICE -> throw new IllegalStateException("a choice has no figures");
        };
    }

    private static String withoutUnit(String text, String unit) {
        return !unit.isEmpty() && text.endsWith(unit) ? text.substring(0, text.length() - unit.length()).strip() : text;
    }

    private static double[] three(String text, Unit unit) {
        List<OptionalDouble> read = Quantities.parseLine(text, unit);
        if (read.size() != 3 || read.stream().anyMatch(OptionalDouble::isEmpty)) {
            throw new NotTakenException(TEXTS.phrase("needsThreeFiguresForward"));
        }
        return read.stream().mapToDouble(OptionalDouble::getAsDouble).toArray();
    }

    private static double[] direction(double[] xyz) {
        if (Math.hypot(xyz[0], Math.hypot(xyz[1], xyz[2])) == 0) {
            throw new NotTakenException(TEXTS.phrase("directionCannotBeThree"));
        }
        return xyz;
    }
}
