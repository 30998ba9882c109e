package quoin.car;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is built into one corner. Everything may be unknown.
 *
 * @param springRateNPerMm  spring rate, N/mm
 * @param motionRatio       spring travel per wheel travel at ride height, greater than 0
 * @param pushrodRatio      push- or pullrod travel per wheel travel at ride height, greater than 0
 * @param tyreRateNPerMm    vertical tyre rate, N/mm
 * @param unsprungMassKg    wheel, tyre, upright and half of the links, kg
 * @param rimChordMm        rim flange to rim flange at hub height where toe is measured, mm
 * @param adjusters         perch, pushrod, rod ends, shims and links of this corner
 */
public record CornerSetup(OptionalDouble springRateNPerMm, OptionalDouble motionRatio, OptionalDouble pushrodRatio,
        OptionalDouble tyreRateNPerMm, OptionalDouble unsprungMassKg, OptionalDouble rimChordMm, List<Adjuster> adjusters) {

    public CornerSetup {
        Checks.positive(springRateNPerMm, "name.springRate");
        Checks.positive(motionRatio, "name.motionRatio");
        Checks.positive(pushrodRatio, "name.pushrodRatio");
        Checks.positive(tyreRateNPerMm, "name.tyreRate");
        Checks.positive(unsprungMassKg, "name.unsprungMass");
        Checks.positive(rimChordMm, "name.rimChord");
        adjusters = List.copyOf(adjusters);
    }

    public Optional<Adjuster> adjuster(AdjusterKind kind) {
        Objects.requireNonNull(kind, "kind");
        return adjusters.stream().filter(a -> a.id().kind() == kind).findFirst();
    }

    public static CornerSetup unknown() {
        OptionalDouble none = OptionalDouble.empty();
        return new CornerSetup(none, none, none, none, none, none, List.of());
    }
}
