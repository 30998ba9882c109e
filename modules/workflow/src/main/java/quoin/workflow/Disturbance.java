package quoin.workflow;

import quoin.car.AdjusterKind;

/** What can happen to a car on the pads that makes an older reading doubtful or stale: the rows of {@link Staleness}. */
public enum Disturbance {
    /** Pads shimmed or moved, or the car placed on them anew. */
    PADS,
    /** Another tyre set, or a pressure changed. */
    TYRES,
    /** The scales found to show too much or too little: loads read before were not put right. */
    SCALES,
    /** Driver, fuel or ballast changed. */
    MASS,
    /** A perch or pushrod turned. */
    SPRING_LEG,
    /** Camber of a wheel set. */
    CAMBER,
    /** Caster rods turned. */
    CASTER,
    /** Tie rod or toe link turned. */
    TOE_LINK,
    /** Anti-roll bar joined, taken off or its link turned. */
    BAR,
    /** Car jacked, steered or driven: it has to settle. */
    MOVED,
    /** Steering lock taken out: the wheels may no longer stand straight. */
    STEERING_FREED,
    /** Locknuts tightened, which turns the rods a little. */
    LOCKNUTS;

    static Disturbance of(AdjusterKind kind) {
        return switch (kind) {
            case PERCH, PUSHROD -> SPRING_LEG;
            case CAMBER_ROD, CAMBER_SHIM -> CAMBER;
            case CASTER_ROD -> Disturbance.CASTER;
            case TOE_LINK -> Disturbance.TOE_LINK;
            case BAR_LINK -> BAR;
        };
    }
}
