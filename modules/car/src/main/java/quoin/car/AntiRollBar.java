package quoin.car;

import java.util.OptionalDouble;

/**
 * An anti-roll bar.
 *
 * @param rollRateNPerMm force at one wheel per mm of left-right wheel difference times two (the contract's
 *                       {@code wheelRateInRoll}): the bar adds rate/2 * (left travel - right travel + offset) to the
 *                       left wheel, N/mm; empty = unknown
 */
public record AntiRollBar(OptionalDouble rollRateNPerMm) {
    public AntiRollBar {
        Checks.positive(rollRateNPerMm, "name.antirollBarRate");
    }
}
