package quoin.car;

import java.util.List;
import java.util.OptionalDouble;

/**
 * Masses as far as known.
 *
 * @param totalKg    whole car in the load case of the day, driver in, kg
 * @param cgHeightMm height of its centre of gravity above the pads, mm
 * @param known      driver, fuel and other masses with a place
 */
public record Masses(OptionalDouble totalKg, OptionalDouble cgHeightMm, List<KnownMass> known) {

    public Masses {
        Checks.positive(totalKg, "total mass");
        Checks.positive(cgHeightMm, "centre of gravity height");
        known = List.copyOf(known);
    }

    public double massOf(KnownMass.Role role) {
        return known.stream().filter(m -> m.role() == role).mapToDouble(KnownMass::massKg).sum();
    }
}
