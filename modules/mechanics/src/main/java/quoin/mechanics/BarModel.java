package quoin.mechanics;

/**
 * An anti-roll bar seen at the wheels: it adds {@code rate / 2 * (travelLeft - travelRight + offset)} to the left
 * wheel's load and takes the same from the right's.
 *
 * @param wheelRateInRollNPerMm load at one wheel per mm of that wheel's travel when the other moves the opposite way; 0
 *        = disconnected
 * @param linkPreloadOffsetMm link offset at the wheel; + loads the left wheel
 */
public record BarModel(double wheelRateInRollNPerMm, double linkPreloadOffsetMm) {
    /** A bar with its link off. */
    public static final BarModel DISCONNECTED = new BarModel(0, 0);

    void check(String path) {
        Require.notNegative(path + ".wheelRateInRoll_N_per_mm", wheelRateInRollNPerMm);
        Require.finite(path + ".linkPreloadOffset_mm", linkPreloadOffsetMm);
    }
}
