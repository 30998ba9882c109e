package quoin.car;

import java.util.Objects;
import quoin.quantities.NotTakenException;
import quoin.quantities.Texts;

/**
 * A mass whose place is known, such as the driver or the fuel.
 *
 * @param name   what it is
 * @param role   what it counts as
 * @param massKg mass, kg, 0 or more
 * @param xMm    forward of the front axle line, mm (behind is negative)
 * @param yMm    left of the centre line, mm (right is negative)
 * @param zMm    above the pads at ride height, mm
 */
public record KnownMass(String name, Role role, double massKg, double xMm, double yMm, double zMm) {
    private static final Texts TEXTS = Texts.of(KnownMass.class);

    /** What a known mass counts as. */
    public enum Role { DRIVER, FUEL, BALLAST, PART }

    public KnownMass {
        Objects.requireNonNull(role, "role");
        if (!(massKg >= 0) || Double.isInfinite(massKg)) {
            throw new NotTakenException(TEXTS.phrase("massMustBeKg", name, massKg));
        }
    }
}
