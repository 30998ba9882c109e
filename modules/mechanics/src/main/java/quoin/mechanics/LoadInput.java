package quoin.mechanics;

/** What can be changed at a corner; the unit is that of one step in a {@link Sensitivity}. */
public enum LoadInput {
    /** One turn of the spring seat, + raises the corner. */
    PERCH,
    /** One turn of the push or pull rod, + raises the corner. */
    ROD,
    /** One mm of pad or shim under the wheel. */
    PAD_HEIGHT,
    /** One N/mm of spring rate. */
    SPRING_RATE,
    /** One mm of spring compression at the design position. */
    SPRING_COMPRESSION
}
