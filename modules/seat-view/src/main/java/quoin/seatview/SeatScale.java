package quoin.seatview;

/**
 * How large the seat view is drawn.
 *
 * @param pixelsPerMm of the screen, as measured with a rule or as the system says
 * @param factor      the racer's own enlargement, 1 = as recommended
 */
record SeatScale(double pixelsPerMm, double factor) {

    /** Height of the figures that is read at 3 m without leaning, mm (common practice, no source: 40 mm figures, 20 mm lines). */
    static final double FIGURE_MM = 40;
    /** Height of a line of text that is read at 3 m, mm. */
    static final double LINE_MM = 20;
    /** From how far a line is read, m per mm of its height: 150 times the height (common practice, no source). */
    static final double METRES_PER_MM = 0.15;
    /** Length of the bar that is held against a rule, mm. */
    static final double RULE_MM = 100;

    private static final double STEP = 1.1;
    private static final double SMALLEST = 0.4;
    private static final double LARGEST = 4;
    private static final double RULE_STEP = 1.01;

    SeatScale {
        if (!(pixelsPerMm > 0) || !(factor > 0)) {
            throw new IllegalArgumentException("sizes must be positive");
        }
    }

    /** Height of figures in pixels. */
    double figurePx() {
        return FIGURE_MM * pixelsPerMm * factor;
    }

    /** Height of lines in pixels. */
    double linePx() {
        return LINE_MM * pixelsPerMm * factor;
    }

    SeatScale larger() {
        return new SeatScale(pixelsPerMm, Math.min(LARGEST, factor * STEP));
    }

    SeatScale smaller() {
        return new SeatScale(pixelsPerMm, Math.max(SMALLEST, factor / STEP));
    }

    /** The bar on the screen was too short for its rule. */
    SeatScale longerRule() {
        return new SeatScale(pixelsPerMm * RULE_STEP, factor);
    }

    SeatScale shorterRule() {
        return new SeatScale(pixelsPerMm / RULE_STEP, factor);
    }
}
