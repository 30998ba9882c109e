package quoin.suspension;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeSet;
import quoin.quantities.Quantities;
import quoin.quantities.QuantityFormatException;
import quoin.quantities.Unit;

/** Reads parameter texts. */
final class ParameterText {
    private ParameterText() {
    }

    static ParameterReading read(List<Parameter> description, Map<String, String> texts) {
        Map<String, double[]> figures = new HashMap<>();
        Map<String, String> choices = new HashMap<>();
        List<ParameterProblem> problems = new ArrayList<>();
        TreeSet<String> unknown = new TreeSet<>(texts.keySet());
        for (Parameter parameter : description) {
            unknown.remove(parameter.key());
            String text = texts.getOrDefault(parameter.key(), "").strip();
            if (text.isEmpty()) {
                if (parameter.required()) {
                    problems.add(new ParameterProblem(parameter.key(), "is missing"));
                }
                continue;
            }
            try {
                if (parameter.kind() == Parameter.Kind.CHOICE) {
                    choices.put(parameter.key(), choice(parameter, text));
                } else {
                    figures.put(parameter.key(), figures(parameter, text));
                }
            } catch (QuantityFormatException e) {
                problems.add(new ParameterProblem(parameter.key(), e.getMessage()));
            } catch (UnreadableException e) {
                problems.add(new ParameterProblem(parameter.key(), e.getMessage()));
            }
        }
        unknown.forEach(key -> problems.add(new ParameterProblem(key, "is not a parameter of this suspension type")));
        return new ParameterReading(new ParameterValues(figures, choices), problems);
    }

    private static String choice(Parameter parameter, String text) {
        if (!parameter.choices().contains(text)) {
            throw new UnreadableException("must be one of " + String.join(", ", parameter.choices()) + ", is " + text);
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
            throw new UnreadableException("needs three figures, forward, outboard and up, as in \"12.5 480 175\"");
        }
        return read.stream().mapToDouble(OptionalDouble::getAsDouble).toArray();
    }

    private static double[] direction(double[] xyz) {
        if (Math.hypot(xyz[0], Math.hypot(xyz[1], xyz[2])) == 0) {
            throw new UnreadableException("a direction cannot be three zeros");
        }
        return xyz;
    }

    private static final class UnreadableException extends RuntimeException {
        private static final long serialVersionUID = 1L;

        UnreadableException(String words) {
            super(words, null, false, false);
        }
    }
}
