package quoin.suspension;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import quoin.mechanics.SpacePoint;
import quoin.suspension.solver.Loops;
import quoin.suspension.solver.Segment;
import quoin.suspension.solver.Vectors;
import quoin.suspension.solver.Walker;

/** The pieces of a linkage where a walker stands. */
final class LinkageOutline {
    private final CarriedWheel wheel;
    private final Loops loops;
    private final Function<double[], SpacePoint> place;

    /** @param place turns a point with y outboard into the axes of the car */
    LinkageOutline(CarriedWheel wheel, Loops loops, Function<double[], SpacePoint> place) {
        this.wheel = wheel;
        this.loops = loops;
        this.place = place;
    }

    List<Member> at(Walker walker) {
        List<Member> members = new ArrayList<>();
        double[] centre = walker.pose().origin();
        double[] end = loops.drives() == 1 ? centre : loops.driven(walker, 1);
        if (loops.drives() > 1) {
            members.add(member(Member.Kind.CARRIER, centre, end));
        }
        for (Segment segment : loops.outline(walker)) {
            members.add(member(segment));
            switch (segment.part()) {
                case LINK, STRUT -> members.add(member(Member.Kind.CARRIER, segment.to(), nearest(segment.to(), centre, end)));
                case HINGE -> {
                    members.add(member(Member.Kind.CARRIER, segment.from(), centre));
                    members.add(member(Member.Kind.CARRIER, segment.to(), centre));
                }
                case CRANK, ROD, ROCKER, COIL -> { }
            }
        }
        if (wheel.coil() != null) {
            wheel.coil().outline(walker.pose(), walker.geometry()).forEach(segment -> members.add(member(segment)));
        }
        double[][] axis = wheel.axis().find(walker);
        if (axis != null) {
            double ground = wheel.contactPoint(walker)[2];
            members.add(member(Member.Kind.STEERING_AXIS, level(axis, ground), level(axis, 2 * centre[2] - ground)));
        }
        return members;
    }

    private static double[] level(double[][] axis, double height) {
        return Vectors.plus(axis[0], (height - axis[0][2]) / axis[1][2], axis[1]);
    }

    /** The nearest point of the axle, so that a tube and its brackets are drawn. */
    private static double[] nearest(double[] point, double[] start, double[] end) {
        double[] along = Vectors.minus(end, start);
        double square = Vectors.dot(along, along);
        double share = square == 0 ? 0 : Vectors.dot(Vectors.minus(point, start), along) / square;
        return Vectors.plus(start, Math.max(0, Math.min(1, share)), along);
    }

    private Member member(Segment segment) {
        return member(Member.Kind.valueOf(segment.part().name()), segment.from(), segment.to());
    }

    private Member member(Member.Kind kind, double[] from, double[] to) {
        return new Member(kind, place.apply(from), place.apply(to));
    }
}
