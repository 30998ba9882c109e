package quoin.mechanics;

import quoin.car.Corner;

/**
 * Something in an equilibrium that makes its figures doubtful.
 *
 * @param kind what was found
 * @param corner where
 * @param value the figure that shows it: spring force in N, or pad load in kgf
 */
public record LoadFinding(Kind kind, Corner corner, double value) {
    /** Kinds of finding. */
    public enum Kind {
        /** The spring would have to pull: in the car it is loose on its seat, so the figures do not hold. */
        SPRING_UNLOADED,
        /** The pad would have to pull: in the car the wheel is off its scale, so the figures do not hold. */
        WHEEL_LIFTED
    }
}
