package quoin.adjustment;

/**
 * What is believed of the reading noise before the first reading. Friction and height noise are learnt for each car;
 * both are log-normal, given by a median and the standard deviation of the logarithm.
 *
 * @param frictionSdN median of the standard deviation of the friction force at one suspension, drawn anew at every
 *     settling, N at the wheel
 * @param frictionLogSd standard deviation of its natural logarithm
 * @param heightSdMm median of the standard deviation of one height reading, mm
 * @param heightLogSd standard deviation of its natural logarithm
 * @param scaleSdN standard deviation of one scale, N: rounding and repeatability without the car's friction
 */
public record NoisePrior(double frictionSdN, double frictionLogSd, double heightSdMm, double heightLogSd,
        double scaleSdN) {

    public NoisePrior {
        if (!(frictionSdN > 0) || !(heightSdMm > 0) || !(scaleSdN > 0)) {
            throw new IllegalArgumentException("frictionSdN, heightSdMm and scaleSdN must be positive");
        }
        if (!(frictionLogSd > 0) || !(heightLogSd > 0)) {
            throw new IllegalArgumentException("frictionLogSd and heightLogSd must be positive; use 0.01 for a known sd");
        }
    }

    /**
     * A garage: friction of 1 to 4 kg either way at each corner (uniform within, so sd = half-width / sqrt 3), heights
     * read to 0.5 to 1 mm either way, scales of 0.1 to 0.5 kg (common practice, no source).
     */
    public static NoisePrior garage() {
        return new NoisePrior(2.3 * 9.80665 / Math.sqrt(3), 0.45, 0.73 / Math.sqrt(3), 0.22, 0.1 * 9.80665);
    }

    /** Slip plates, a quarter of the garage's friction, heights to 0.5 mm either way. */
    public static NoisePrior wellSettled() {
        return new NoisePrior(2.3 * 9.80665 / Math.sqrt(3) / 4, 0.45, 0.5 / Math.sqrt(3), 0.15, 0.1 * 9.80665);
    }
}
