package quoin.suspension;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What 1 mm of one length or one shift of a joint does at constant wheel-centre height, deg/mm.
 *
 * @param camberDegPerMm + top outboard
 * @param toeDegPerMm    + in
 * @param casterDegPerMm + top rearward; empty where the suspension has no fixed steering axis
 * @param kpiDegPerMm    + top inboard; empty where the suspension has no fixed steering axis
 */
public record AngleSensitivity(double camberDegPerMm, double toeDegPerMm, OptionalDouble casterDegPerMm,
        OptionalDouble kpiDegPerMm) {
    public AngleSensitivity {
        Objects.requireNonNull(casterDegPerMm, "casterDegPerMm");
        Objects.requireNonNull(kpiDegPerMm, "kpiDegPerMm");
    }
}
