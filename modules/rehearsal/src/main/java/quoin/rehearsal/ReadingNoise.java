package quoin.rehearsal;

import java.util.SplittableRandom;

/** Random figures that depend on nothing but a seed, an entry number and what they are for. */
final class ReadingNoise {

    private final long seed;

    ReadingNoise(long seed) {
        this.seed = seed;
    }

    /** A figure of the standard normal distribution (Box and Muller's method). */
    double normal(long entry, String purpose) {
        SplittableRandom random = new SplittableRandom(seed * 0x9E3779B97F4A7C15L + entry * 0xBF58476D1CE4E5B9L
                + purpose.hashCode() * 0x94D049BB133111EBL);
        double u = 1 - random.nextDouble();
        return Math.sqrt(-2 * Math.log(u)) * Math.cos(2 * Math.PI * random.nextDouble());
    }
}
