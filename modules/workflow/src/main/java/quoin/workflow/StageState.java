package quoin.workflow;

/** Where a stage stands. */
public enum StageState {
    /** An earlier stage comes first. */
    WAITING,
    /** Being worked on: something is missing, out of date or outside. */
    OPEN,
    /** May be signed off. */
    READY,
    /** Signed off, and what was signed still holds. */
    SIGNED,
    /** Signed off, but what was signed no longer holds or is outside now. */
    CHECK_AGAIN
}
