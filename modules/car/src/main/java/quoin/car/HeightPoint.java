package quoin.car;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import quoin.quantities.NotTakenException;
import quoin.quantities.Texts;

/**
 * A marked point under the frame where ride height is measured from the pad plane.
 *
 * @param name   what the racer calls it; unique in a car
 * @param corner the corner it stands for in rake and tilt; empty for an extra point such as a splitter
 * @param xMm    forward of the front axle line, mm (behind is negative); empty = unknown
 * @param yMm    left of the centre line, mm (right is negative); empty = unknown
 */
public record HeightPoint(String name, Optional<Corner> corner, OptionalDouble xMm, OptionalDouble yMm) {
    private static final Texts TEXTS = Texts.of(HeightPoint.class);

    public HeightPoint {
        if (name.isBlank()) {
            throw new NotTakenException(TEXTS.phrase("heightPointNeedsA"));
        }
        Objects.requireNonNull(corner, "corner");
        Objects.requireNonNull(xMm, "xMm");
        Objects.requireNonNull(yMm, "yMm");
    }

    public ReadingId reading() {
        return new ReadingId(ReadingKind.HEIGHT, name);
    }
}
