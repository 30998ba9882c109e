package quoin.suspension;

import java.util.Objects;
import quoin.mechanics.SpacePoint;

/**
 * A straight piece of a suspension as it stands at one position, for drawing; in the axes of the car, so y is negative on
 * the right.
 *
 * @param kind what it is
 * @param from one end, mm; on the car's body where the piece is held there
 * @param to   the other end, mm
 */
public record Member(Kind kind, SpacePoint from, SpacePoint to) {

    /** What a piece is. */
    public enum Kind {
        /** A link or a leg of an arm. */
        LINK,
        /** An axis on the car's body that the wheel swings about. */
        HINGE,
        /** A telescopic strut. */
        STRUT,
        /** The crank of Watt's linkage. */
        CRANK,
        /** A push- or pullrod, or a rod of Watt's linkage. */
        ROD,
        /** A side of a rocker. */
        ROCKER,
        /** A coil-over. */
        COIL,
        /** From a joint to the wheel centre: upright, hub carrier or axle tube. */
        CARRIER,
        /** Steering axis, from the ground up. */
        STEERING_AXIS
    }

    public Member {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
    }
}
