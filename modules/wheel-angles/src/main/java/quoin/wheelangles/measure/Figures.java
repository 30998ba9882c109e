package quoin.wheelangles.measure;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import quoin.mechanics.InvalidInputException;

/**
 * What a form holds, understood.
 *
 * @param values  base-unit value per key; a field that is blank is not in it
 * @param chosen  key of the option per choice
 * @param setting what the day knows
 * @param wording how figures are said
 */
record Figures(Map<String, Double> values, Map<String, String> chosen, Setting setting, Wording wording) {

    /** A figure is not there though others make it necessary. */
    static final class MissingFigure extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final String key;

        MissingFigure(String key) {
            super(key, null, false, false);
            this.key = key;
        }

        String key() {
            return key;
        }
    }

    /** A figure that cannot be, in words for the racer. */
    static final class BadFigure extends RuntimeException {
        private static final long serialVersionUID = 1L;
        private final String key;

        BadFigure(String key, String words) {
            super(words, null, false, false);
            this.key = key;
        }

        String key() {
            return key;
        }
    }

    Figures {
        values = Map.copyOf(values);
        chosen = Map.copyOf(chosen);
    }

    double get(String key) {
        Double value = values.get(key);
        if (value == null) {
            throw new MissingFigure(key);
        }
        return value;
    }

    OptionalDouble maybe(String key) {
        Double value = values.get(key);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /** True where one of these is typed, so that all of them are needed. */
    boolean any(String... keys) {
        for (String key : keys) {
            if (values.containsKey(key)) {
                return true;
            }
        }
        return false;
    }

    boolean is(String choice, String option) {
        return option.equals(chosen.get(choice));
    }

    /** The same form with other figures under these keys. */
    Figures with(List<String> keys, double[] others) {
        Map<String, Double> changed = new HashMap<>(values);
        for (int i = 0; i < others.length; i++) {
            changed.put(keys.get(i), others[i]);
        }
        return new Figures(changed, chosen, setting, wording);
    }

    /**
     * Runs a computation whose refusals name fields of their own.
     *
     * @param key the form's key for such a field
     */
    static <T> T compute(Supplier<T> computation, UnaryOperator<String> key) {
        try {
            return computation.get();
        } catch (InvalidInputException e) {
            throw new BadFigure(key.apply(e.field()), e.getLocalizedMessage());
        }
    }
}
