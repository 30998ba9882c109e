package quoin.suspension;

import quoin.mechanics.InvalidInputException;
import quoin.mechanics.SpacePoint;
import quoin.quantities.Texts;
import quoin.suspension.solver.Coil;
import quoin.suspension.solver.Pickup;
import quoin.suspension.solver.RockerCoil;
import quoin.suspension.solver.Vectors;

/**
 * A push- or pullrod, its rocker and the coil-over, at the design position, mm, y outboard.
 *
 * @param key          names the group where it is refused
 * @param pivot        a point of the rocker's axis
 * @param axis         direction of the rocker's axis, any length
 * @param rodInboard   rod on the rocker
 * @param rodOutboard  rod on the arm or upright
 * @param coilOnRocker coil-over on the rocker
 * @param coilOnBody   coil-over on the car's body
 */
public record Rocker(String key, SpacePoint pivot, SpacePoint axis, SpacePoint rodInboard, SpacePoint rodOutboard,
        SpacePoint coilOnRocker, SpacePoint coilOnBody) {
    private static final Texts TEXTS = Texts.of(Rocker.class);

    public Rocker {
        Linkage.apart(key + ".pushrodInboard", Change.array(rodInboard), Change.array(rodOutboard));
        Linkage.apart(key + ".coilOverOnRocker", Change.array(coilOnRocker), Change.array(coilOnBody));
        double[] unit = Vectors.unit(Change.array(axis));
        offAxis(key + ".pushrodInboard", pivot, unit, rodInboard);
        offAxis(key + ".coilOverOnRocker", pivot, unit, coilOnRocker);
    }

    private static void offAxis(String field, SpacePoint pivot, double[] unit, SpacePoint point) {
        double[] arm = Vectors.minus(Change.array(point), Change.array(pivot));
        if (!(Vectors.length(Vectors.cross(unit, arm)) > 1)) {
            throw new InvalidInputException(field, TEXTS.phrase("mustNotLieOn"));
        }
    }

    Coil coil(Pickup pickup) {
        RockerCoil coil = new RockerCoil(Change.array(pivot), Change.array(axis), Change.array(rodInboard),
                Change.array(coilOnRocker), Change.array(coilOnBody), pickup, Change.array(rodOutboard));
        if (coil.isDead()) {
            throw new InvalidInputException(key + ".pushrodOutboard", TEXTS.phrase("mustNotBeInLine"));
        }
        return coil;
    }
}
