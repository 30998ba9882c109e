package quoin.adjustment;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Slips of the finger: what a typed figure may have been meant to be.
 *
 * @param value the figure meant
 * @param kind which slip
 */
record TypingSlip(double value, Kind kind) {

    /** The slip. */
    enum Kind {
        /** Two digits beside each other exchanged: 34.5 for 43.5. */
        DIGITS_SWAPPED,
        /** The decimal point forgotten or set wrong: 435 for 43.5. */
        DECIMAL_POINT,
        /** Pounds in place of kilograms. */
        POUNDS,
        /** One of the leading digits wrong: 147.9 for 107.9. */
        ONE_DIGIT,
        /** The decimal point forgotten and two digits exchanged: 453 for 43.5. */
        POINT_AND_DIGITS
    }

    private static final double POUNDS_PER_KILOGRAM = 1 / 0.45359237;
    /** Digits from the tens on are worth a guess: a wrong unit digit could explain anything. */
    private static final double LEAST_DIGIT = 10;

    /**
     * The likeliest slip that leads from the wanted value to the typed one.
     *
     * @param typed as typed, in the unit typed
     * @param wanted what the other readings say it should be
     * @param within how far off the wanted value the meant figure may lie
     * @param load whether it is a load, in kg
     */
    static Optional<TypingSlip> of(double typed, double wanted, double within, boolean load) {
        return likeliest(all(typed, load), typed, wanted, within);
    }

    /** The same where it can only be the decimal point. */
    static Optional<TypingSlip> ofThePoint(double typed, double wanted, double within) {
        return likeliest(all(typed, false).stream().filter(s -> s.kind() == Kind.DECIMAL_POINT).toList(), typed, wanted, within);
    }

    private static Optional<TypingSlip> likeliest(List<TypingSlip> slips, double typed, double wanted, double within) {
        TypingSlip best = null;
        for (TypingSlip slip : slips) {
            if (Math.abs(slip.value() - wanted) > within || slip.value() == typed) {
                continue;
            }
            boolean better = best == null || slip.kind().compareTo(best.kind()) < 0
                    || slip.kind() == best.kind() && Math.abs(slip.value() - wanted) < Math.abs(best.value() - wanted);
            best = better ? slip : best;
        }
        return Optional.ofNullable(best);
    }

    private static List<TypingSlip> all(double typed, boolean load) {
        List<TypingSlip> out = new ArrayList<>();
        for (double v : swapped(typed)) {
            out.add(new TypingSlip(v, Kind.DIGITS_SWAPPED));
        }
        for (double factor : new double[] {0.01, 0.1, 10, 100}) {
            double shifted = tidy(typed * factor);
            out.add(new TypingSlip(shifted, Kind.DECIMAL_POINT));
            for (double v : swapped(shifted)) {
                out.add(new TypingSlip(v, Kind.POINT_AND_DIGITS));
            }
        }
        if (load) {
            out.add(new TypingSlip(tidy(typed / POUNDS_PER_KILOGRAM), Kind.POUNDS));
        }
        for (double place = LEAST_DIGIT; place <= Math.abs(typed); place *= 10) {
            for (int d = -9; d <= 9; d++) {
                double other = typed + d * place;
                if (Math.floor(other / place / 10) == Math.floor(typed / place / 10)) {
                    out.add(new TypingSlip(tidy(other), Kind.ONE_DIGIT));
                }
            }
        }
        return out;
    }

    /** Every value with two neighbouring digits exchanged, the point staying where it is. */
    private static List<Double> swapped(double value) {
        char[] text = BigDecimal.valueOf(tidy(value)).toPlainString().toCharArray();
        List<Double> out = new ArrayList<>();
        for (int i = 0; i < text.length; i++) {
            int j = i + 1 < text.length && text[i + 1] == '.' ? i + 2 : i + 1;
            if (j < text.length && Character.isDigit(text[i]) && Character.isDigit(text[j])) {
                char[] other = text.clone();
                other[i] = text[j];
                other[j] = text[i];
                out.add(Double.parseDouble(new String(other)));
            }
        }
        return out;
    }

    private static double tidy(double value) {
        return Math.rint(value * 1000) / 1000;
    }
}
