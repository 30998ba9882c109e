package quoin.workflow;

import java.util.Optional;
import java.util.OptionalDouble;
import quoin.car.ReadingId;

/**
 * A reading now beside its signed value, base units. Each is the mean of its repeats.
 *
 * @param reading which reading
 * @param signed  as its stage was signed off; empty = not signed, or not read then
 * @param now     as it stands, read in order; empty = not read since something disturbed it
 */
public record Comparison(ReadingId reading, Optional<Measured> signed, Optional<Measured> now) {

    /** What a difference says. */
    public enum Word {
        /** Within half the noise band. */
        SAME,
        /** Beyond the noise band. */
        MOVED,
        /** Between the two. */
        TOO_CLOSE,
        /** Not read since something disturbed it, or not signed. */
        NOT_READ
    }

    static Comparison of(ReadingId reading, Optional<Measured> signed, ReadingState state) {
        boolean usable = state.value().isPresent() && (state.freshness() == Freshness.FRESH || state.freshness() == Freshness.DOUBTFUL);
        return new Comparison(reading, signed, usable ? Optional.of(new Measured(state.value().getAsDouble(), state.uncertainty(),
                state.count(), state.entry(), state.lasting())) : Optional.empty());
    }

    /** Now less signed; empty where either is missing. A reading beside itself has not moved. */
    public Optional<Difference> difference() {
        if (signed.isEmpty() || now.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(signed.get().entry() == now.get().entry() ? new Difference(0, now.get().uncertainty())
                : Difference.of(signed.get(), now.get()));
    }

    /** True where the reading was not taken again since it was signed and nothing disturbed it: it stands as it was. */
    public boolean isStanding() {
        return signed.isPresent() && now.isPresent() && signed.get().entry() == now.get().entry();
    }

    public Word word() {
        return difference().map(d -> switch (d.word()) {
            case SAME -> Word.SAME;
            case MOVED -> Word.MOVED;
            case TOO_CLOSE -> Word.TOO_CLOSE;
        }).orElse(Word.NOT_READ);
    }

    /** Value signed, base unit. */
    public OptionalDouble signedValue() {
        return signed.isPresent() ? OptionalDouble.of(signed.get().value()) : OptionalDouble.empty();
    }
}
