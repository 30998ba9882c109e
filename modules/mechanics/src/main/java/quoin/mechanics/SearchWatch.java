package quoin.mechanics;

/** Watches a long search: is told how far it is, and may give it up. Called often and on the thread of the search. */
@FunctionalInterface
public interface SearchWatch {

    /** Lets a search run to its end. */
    SearchWatch NONE = share -> true;

    /**
     * @param share done so far, 0 to 1
     * @return false to give the search up; it then throws {@link java.util.concurrent.CancellationException}
     */
    boolean goesOn(double share);
}
