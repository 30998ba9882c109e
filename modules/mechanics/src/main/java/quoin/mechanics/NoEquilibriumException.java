package quoin.mechanics;

/** The car cannot stand: no state of rest exists, or none that is stable. The message says what to look at. */
public final class NoEquilibriumException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public NoEquilibriumException(String message) {
        super(message);
    }
}
