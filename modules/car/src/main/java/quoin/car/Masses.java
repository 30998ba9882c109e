package quoin.car;

import java.util.List;
import java.util.OptionalDouble;
import quoin.quantities.NotTakenException;
import quoin.quantities.Texts;

/**
 * Masses as far as known.
 *
 * @param totalKg    whole car in the load case of the day, driver in, kg
 * @param cgHeightMm height of its centre of gravity above the pads, mm
 * @param known      driver, fuel and other masses with a place
 * @param zones      where masses may be fixed; names are unique
 */
public record Masses(OptionalDouble totalKg, OptionalDouble cgHeightMm, List<KnownMass> known, List<MassZone> zones) {
    private static final Texts TEXTS = Texts.of(Masses.class);

    public Masses {
        Checks.positive(totalKg, "name.totalMass");
        Checks.positive(cgHeightMm, "name.centreOfGravityHeight");
        known = List.copyOf(known);
        zones = List.copyOf(zones);
        if (zones.stream().map(MassZone::name).distinct().count() < zones.size()) {
            throw new NotTakenException(TEXTS.phrase("twoPlacesForBallast"));
        }
    }

    /** Masses of a car whose places for ballast are not stated. */
    public Masses(OptionalDouble totalKg, OptionalDouble cgHeightMm, List<KnownMass> known) {
        this(totalKg, cgHeightMm, known, List.of());
    }

    public Masses withCgHeightMm(double heightMm) {
        return new Masses(totalKg, OptionalDouble.of(heightMm), known, zones);
    }

    public Masses with(List<KnownMass> changed, List<MassZone> changedZones) {
        return new Masses(totalKg, cgHeightMm, changed, changedZones);
    }

    public double massOf(KnownMass.Role role) {
        return known.stream().filter(m -> m.role() == role).mapToDouble(KnownMass::massKg).sum();
    }
}
