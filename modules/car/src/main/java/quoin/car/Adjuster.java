package quoin.car;

import java.util.Objects;
import java.util.OptionalDouble;
import quoin.quantities.NotTakenException;
import quoin.quantities.Texts;

/**
 * One adjuster as it is built into the car.
 *
 * @param id      which adjuster
 * @param setting its thread or its shims
 * @param startMm thread length (or shim thickness) at the start of the day as measured with a caliper, mm; empty = not measured
 * @param minMm   shortest usable thread length, mm; empty = unknown
 * @param maxMm   longest usable thread length, mm (rod-end engagement ends here); empty = unknown
 * @param locked  true where the racer will not touch it
 */
public record Adjuster(AdjusterId id, Setting setting, OptionalDouble startMm, OptionalDouble minMm, OptionalDouble maxMm,
        boolean locked) {
    private static final Texts TEXTS = Texts.of(Adjuster.class);

    public Adjuster {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(setting, "setting");
        Objects.requireNonNull(startMm, "startMm");
        Objects.requireNonNull(minMm, "minMm");
        Objects.requireNonNull(maxMm, "maxMm");
        if (minMm.isPresent() && maxMm.isPresent() && minMm.getAsDouble() > maxMm.getAsDouble()) {
            throw new NotTakenException(TEXTS.phrase("shortestThreadLengthIs", id.words()));
        }
    }

    /** Where it stood as the day began, mm: as measured, else the shims fitted; empty where neither is known. */
    public OptionalDouble beganMm() {
        return startMm.isEmpty() && setting instanceof Setting.Shims shims ? OptionalDouble.of(shims.fittedMm()) : startMm;
    }

    public static Adjuster unmeasured(AdjusterId id, Setting setting) {
        return new Adjuster(id, setting, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), false);
    }
}
