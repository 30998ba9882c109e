package quoin.workflow;

/**
 * The difference of two measured values and what can be said of it.
 *
 * @param amount      later less earlier, base unit
 * @param uncertainty standard uncertainty of the difference: both in squares under the root, less what both share (JCGM 100:2008,
 *                    5.1.2 and 5.2.2)
 */
public record Difference(double amount, double uncertainty) {

    /** Coverage factor of the noise band: about 95 % of a normal error (JCGM 100:2008, 6.3.3). */
    public static final double COVERAGE = 2;

    /** What a difference says. */
    public enum Word {
        /** Within half the noise band: readings taken twice of an unchanged car differ as much more often than not. */
        SAME,
        /** Beyond the noise band: an unchanged car would read so one time in twenty. */
        MOVED,
        /** Between the two. */
        TOO_CLOSE
    }

    public static Difference of(Measured earlier, Measured later) {
        double shared = earlier.lasting().isSharedWith(later.lasting())
                ? 2 * earlier.lasting().uncertainty() * later.lasting().uncertainty() : 0;
        double squares = Math.pow(earlier.uncertainty(), 2) + Math.pow(later.uncertainty(), 2);
        return new Difference(later.value() - earlier.value(), Math.sqrt(Math.max(0, squares - shared)));
    }

    /** Half width of the band that an unchanged car stays in with about 95 %: the expanded uncertainty, base unit. */
    public double band() {
        return COVERAGE * uncertainty;
    }

    /** True where the difference lies inside the noise: nothing can be said to have changed. */
    public boolean isNoise() {
        return Math.abs(amount) <= band();
    }

    public Word word() {
        return Math.abs(amount) <= uncertainty ? Word.SAME : isNoise() ? Word.TOO_CLOSE : Word.MOVED;
    }
}
