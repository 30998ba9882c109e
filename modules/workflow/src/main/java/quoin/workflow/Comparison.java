package quoin.workflow;

import java.util.OptionalDouble;
import quoin.car.ReadingId;

/**
 * A reading now beside its signed value, base units.
 *
 * @param reading    which reading
 * @param signed     value its stage was signed off with; empty = not signed, or not read then
 * @param now        value as it stands, read in order; empty = not read
 * @param difference now less signed; empty where either is missing
 * @param noise      standard uncertainty of the difference of two readings
 * @param word       what the difference says
 */
public record Comparison(ReadingId reading, OptionalDouble signed, OptionalDouble now, OptionalDouble difference, double noise,
        Word word) {

    /** What a difference says. */
    public enum Word {
        /** Within the noise: one standard uncertainty or less. */
        SAME,
        /** Beyond the noise: more than two standard uncertainties. */
        MOVED,
        /** Between the two. */
        TOO_CLOSE,
        /** Not read since something disturbed it. */
        NOT_READ
    }

    static Comparison of(ReadingId reading, OptionalDouble signed, ReadingState state) {
        double noise = Math.sqrt(2) * state.uncertainty();
        boolean usable = state.freshness() == Freshness.FRESH || state.freshness() == Freshness.DOUBTFUL;
        if (signed.isEmpty() || state.value().isEmpty() || !usable) {
            return new Comparison(reading, signed, usable ? state.value() : OptionalDouble.empty(), OptionalDouble.empty(), noise,
                    Word.NOT_READ);
        }
        double difference = state.value().getAsDouble() - signed.getAsDouble();
        double size = Math.abs(difference);
        Word word = size <= noise ? Word.SAME : size > 2 * noise ? Word.MOVED : Word.TOO_CLOSE;
        return new Comparison(reading, signed, state.value(), OptionalDouble.of(difference), noise, word);
    }
}
