package quoin.quantities;

/** How angles are shown; both are always read. */
public enum AngleStyle {
    /** Figure and decimals in the chosen angle unit: -1.50. */
    DECIMAL,
    /** Degrees and whole minutes: -1°30'. */
    DEGREES_MINUTES
}
