package quoin.mechanics;

import java.util.concurrent.CancellationException;

/** Watches long work such as a search: is told how far it is, and may give it up. Called often and on the thread of the work. */
@FunctionalInterface
public interface SearchWatch {

    /** Lets the work run to its end. */
    SearchWatch NONE = share -> true;

    /**
     * @param share done so far, 0 to 1
     * @return false to give the work up; it then throws {@link CancellationException}
     */
    boolean goesOn(double share);

    /**
     * Tells how far the work is.
     *
     * @param share done so far, 0 to 1
     * @throws CancellationException where it is given up
     */
    default void orGiveUp(double share) {
        if (!goesOn(share)) {
            throw new CancellationException("given up");
        }
    }
}
