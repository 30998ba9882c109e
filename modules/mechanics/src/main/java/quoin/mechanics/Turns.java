package quoin.mechanics;

import quoin.car.Corner;
import quoin.car.PerCorner;

/**
 * Turns made since the design position, in turns; + raises the corner for both kinds.
 *
 * @param perch turns of the spring seats
 * @param rod turns of the push or pull rods
 */
public record Turns(PerCorner<Double> perch, PerCorner<Double> rod) {
    /** Nothing turned. */
    public static final Turns NONE = new Turns(PerCorner.all(0.0), PerCorner.all(0.0));

    public Turns {
        Require.present("turns.perch", perch);
        Require.present("turns.rod", rod);
        for (Corner corner : Corner.values()) {
            Require.finite("turns.perch." + corner, perch.get(corner));
            Require.finite("turns.rod." + corner, rod.get(corner));
        }
    }

    public static Turns perch(Corner corner, double turns) {
        return new Turns(NONE.perch.with(corner, turns), NONE.rod);
    }

    public static Turns rod(Corner corner, double turns) {
        return new Turns(NONE.perch, NONE.rod.with(corner, turns));
    }

    public Turns plus(Turns more) {
        return new Turns(perch.zip(more.perch, Double::sum), rod.zip(more.rod, Double::sum));
    }
}
