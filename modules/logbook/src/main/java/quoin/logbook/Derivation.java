package quoin.logbook;

/**
 * Something computed from a day that can be carried on when the day goes on, so that one more entry costs what it changes
 * and not the whole day. {@link Day#derive} computes it once for a day and keeps it. Two derivations that are equal give the
 * same result for the same day: whatever the result depends on beside the day belongs to what makes them equal. What a
 * derivation and its result hold is never changed, and never leads to a {@link Day}.
 *
 * @param <T> the result
 */
public interface Derivation<T> {

    /** The result for a day, computed from all of it. */
    T of(Day day);

    /**
     * The result for a day that continues an earlier state of it; equal to {@link #of}.
     *
     * @param earlier a state of the day: the same entries count in it as in the first part of the day, and the car is
     *                described alike; targets may differ
     * @param known   the result for that
     */
    T onward(Day earlier, T known, Day day);
}
