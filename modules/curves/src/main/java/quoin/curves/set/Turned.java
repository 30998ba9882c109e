package quoin.curves.set;

import quoin.car.AdjusterId;

/**
 * One adjuster turned by an amount, to be looked at before the spanner is picked up.
 *
 * @param amount turns of a thread or mm of shim; plus as the adjuster's kind says
 */
public record Turned(AdjusterId adjuster, double amount) {
}
