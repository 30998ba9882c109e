package quoin.workflow;

/**
 * A reading as it stood at one moment: the mean of what was read in one and the same state of the car.
 *
 * @param value       the mean, base unit
 * @param uncertainty its standard uncertainty, base unit (JCGM 100:2008, 4.2.3 and F.2.2.1)
 * @param count       how many readings it is the mean of, 1 or more
 * @param entry       number of the last entry that holds one of them
 * @param lasting     what of the uncertainty stays the same from reading to reading
 */
public record Measured(double value, double uncertainty, int count, long entry, Lasting lasting) {

    /** Nothing of the uncertainty lasts. */
    public Measured(double value, double uncertainty, int count, long entry) {
        this(value, uncertainty, count, entry, Lasting.NONE);
    }

    /**
     * An error that all readings share which were corrected by one test of the scales: no mean makes it smaller, and it drops out of
     * their differences.
     *
     * @param uncertainty standard uncertainty, base unit; part of that of the reading
     * @param source      which test; blank = none, or several
     */
    public record Lasting(double uncertainty, String source) {

        /** No such error. */
        public static final Lasting NONE = new Lasting(0, "");

        boolean isSharedWith(Lasting other) {
            return !source.isBlank() && source.equals(other.source);
        }
    }
}
