package quoin.workflow;

/** Whether a reading still tells how the car stands. */
public enum Freshness {
    /** Never read. */
    MISSING,
    /** Nothing that matters to it happened since it was read. */
    FRESH,
    /** Something happened since that may have moved it a little. */
    DOUBTFUL,
    /** Something happened since that moves it: no longer valid. */
    STALE,
    /** Read out of turn or while a condition did not hold: kept, but it does not count for a sign-off. */
    OUT_OF_ORDER;

    /** The one that says less about the car; how a derived reading inherits from its parts. */
    Freshness worse(Freshness other) {
        return badness() >= other.badness() ? this : other;
    }

    private int badness() {
        return switch (this) {
            case FRESH -> 0;
            case DOUBTFUL -> 1;
            case OUT_OF_ORDER -> 2;
            case STALE -> 3;
            case MISSING -> 4;
        };
    }
}
