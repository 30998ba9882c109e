package quoin.workflow;

import java.util.OptionalDouble;
import quoin.car.AdjusterId;

/**
 * What to turn at one adjuster.
 *
 * @param adjuster    which one
 * @param turns       turns of its thread (mm of shim for shims), whole steps; plus raises the adjuster's own reading
 * @param newLengthMm thread length (or shim thickness) to find afterwards, mm; empty where it was not measured at the start
 * @param words       as a racer says it: "2 turns + 3 notches up"
 */
public record CornerMove(AdjusterId adjuster, double turns, OptionalDouble newLengthMm, String words) {
}
