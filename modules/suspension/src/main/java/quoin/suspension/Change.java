package quoin.suspension;

import java.util.ArrayList;
import java.util.List;
import quoin.mechanics.SpacePoint;
import quoin.suspension.solver.Geometry;

/** What 1 mm of an adjuster changes in a linkage: lengths of links and places of joints. Immutable. */
public final class Change {
    private final List<Step> steps;

    private interface Step {
        Geometry apply(Geometry change);
    }

    private Change(List<Step> steps) {
        this.steps = List.copyOf(steps);
    }

    /** A link becomes longer by so many mm. */
    public static Change lengthen(Link link, double mm) {
        return new Change(List.of(change -> change.lengthen(link.lengthIndex(), mm)));
    }

    /** A joint moves, with y outboard; mm. */
    public static Change shift(Joint joint, double forward, double outboard, double up) {
        double[] by = {forward, outboard, up};
        return new Change(List.of(change -> joint.onBody() ? change.shiftFixed(joint.index(), by)
                : change.shiftMoving(joint.index(), by)));
    }

    /** Both together. */
    public Change and(Change other) {
        List<Step> both = new ArrayList<>(steps);
        both.addAll(other.steps);
        return new Change(both);
    }

    Geometry on(Geometry design) {
        Geometry change = design.noChange();
        for (Step step : steps) {
            change = step.apply(change);
        }
        return change;
    }

    static double[] array(SpacePoint point) {
        return new double[] {point.xMm(), point.yMm(), point.zMm()};
    }
}
