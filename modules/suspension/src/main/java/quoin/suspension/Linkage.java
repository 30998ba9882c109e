package quoin.suspension;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import quoin.car.AdjusterKind;
import quoin.mechanics.InvalidInputException;
import quoin.mechanics.SpacePoint;
import quoin.quantities.Texts;
import quoin.suspension.solver.Coil;
import quoin.suspension.solver.Constraint;
import quoin.suspension.solver.Geometry;
import quoin.suspension.solver.Hinge;
import quoin.suspension.solver.Loops;
import quoin.suspension.solver.Pickup;
import quoin.suspension.solver.Rod;
import quoin.suspension.solver.Shared;
import quoin.suspension.solver.Slider;
import quoin.suspension.solver.Vectors;
import quoin.suspension.solver.WattLink;

/**
 * Puts a suspension together from links, hinges and slides; curves and adjuster effects follow. All points are at the
 * design position, in mm, with y outboard from the centre line; the part that carries the wheel must be left one motion
 * (two where it carries both wheels). Example, a swing axle:
 *
 * <pre>
 *   Linkage linkage = new Linkage(side, wheel);
 *   linkage.hinge("pivot", front, rear);
 *   linkage.coil("coilOver", top, linkage.carrier(bottom));
 *   CornerKinematics corner = linkage.build();
 * </pre>
 */
public final class Linkage {
    private static final Texts TEXTS = Texts.of(Linkage.class);
    private final Side side;
    private final Wheel wheel;
    private final double[] origin;
    private final List<double[]> body = new ArrayList<>();
    private final List<double[]> carrier = new ArrayList<>();
    private final List<Double> lengths = new ArrayList<>();
    private final List<BiFunction<Geometry, double[], Constraint>> guides = new ArrayList<>();
    private final List<Integer> driven = new ArrayList<>();
    private final List<Joint> rack = new ArrayList<>();
    private final Map<String, Change> adjusters = new LinkedHashMap<>();
    private final Map<AdjusterKind, Change> kinds = new EnumMap<>(AdjusterKind.class);
    private Joint axisLower;
    private Joint axisUpper;
    private BiFunction<Geometry, double[], Coil> coil;

    public Linkage(Side side, Wheel wheel) {
        this.side = side;
        this.wheel = wheel;
        origin = Change.array(wheel.centre());
        driven.add(carrier(wheel.centre()).index());
    }

    /** A joint on the car's body. */
    public Joint body(SpacePoint at) {
        body.add(Change.array(at));
        return new Joint(true, body.size() - 1);
    }

    /** A joint on the part that carries the wheel. */
    public Joint carrier(SpacePoint at) {
        carrier.add(Vectors.minus(Change.array(at), origin));
        return new Joint(false, carrier.size() - 1);
    }

    /**
     * A link with a ball joint at each end.
     *
     * @param key names the link where it is refused
     */
    public Link link(String key, SpacePoint inboard, SpacePoint outboard) {
        Link link = rod(key, inboard, carrier(outboard));
        guides.add((geometry, o) -> constraint(link));
        return link;
    }

    /** A link to a joint that another link has already. */
    public Link link(String key, SpacePoint inboard, Joint outboard) {
        Link link = rod(key, inboard, outboard);
        guides.add((geometry, o) -> constraint(link));
        return link;
    }

    /** Two links whose bushes share one motion: what they hold is the mean of the two. */
    public List<Link> shared(String key, List<SpacePoint> inboard, List<SpacePoint> outboard) {
        Link one = rod(key, inboard.get(0), carrier(outboard.get(0)));
        Link other = rod(key, inboard.get(1), carrier(outboard.get(1)));
        guides.add((geometry, o) -> new Shared(constraint(one), constraint(other)));
        return List.of(one, other);
    }

    private static Rod constraint(Link link) {
        return new Rod(link.inboard().index(), link.outboard().index(), link.lengthIndex());
    }

    private Link rod(String key, SpacePoint inboard, Joint outboard) {
        lengths.add(apart(key + ".outboard", Change.array(inboard), place(outboard)));
        return new Link(body(inboard), outboard, lengths.size() - 1);
    }

    private double[] place(Joint joint) {
        return joint.onBody() ? body.get(joint.index()) : Vectors.plus(origin, 1, carrier.get(joint.index()));
    }

    static double apart(String field, double[] one, double[] other) {
        double distance = Vectors.distance(one, other);
        if (!(distance > 1)) {
            throw new InvalidInputException(field, TEXTS.phrase("mustNotCoincideWith"));
        }
        return distance;
    }

    /** An axis on the car's body that the part carrying the wheel turns about; the joints on the body are returned. */
    public List<Joint> hinge(SpacePoint first, SpacePoint second) {
        return hinge("hinge", first, second);
    }

    /** As {@link #hinge(SpacePoint, SpacePoint)}. @param key names the hinge where it is refused */
    public List<Joint> hinge(String key, SpacePoint first, SpacePoint second) {
        apart(key + ".innerPivot", Change.array(first), Change.array(second));
        List<Joint> fixed = List.of(body(first), body(second));
        int one = carrier(first).index();
        int other = carrier(second).index();
        guides.add((geometry, o) -> new Hinge(fixed.get(0).index(), fixed.get(1).index(), one, other));
        return fixed;
    }

    /**
     * A telescopic strut clamped to the part that carries the wheel, its axis through a joint on the car's body.
     *
     * @param top   joint on the car's body
     * @param lower any point of the strut's axis on the part that carries the wheel
     */
    public Joint slider(String key, SpacePoint top, SpacePoint lower) {
        apart(key + ".lowerPointOnStrutAxis", Change.array(top), Change.array(lower));
        Joint fixed = body(top);
        int moving = carrier(lower).index();
        double[] axis = Vectors.minus(Change.array(top), Change.array(lower));
        guides.add((geometry, o) -> new Slider(fixed.index(), moving, axis));
        return fixed;
    }

    /**
     * Watt's linkage with its crank on the part that carries the wheel.
     *
     * @param key  names it where it is refused
     * @param ends the two ends of the crank
     * @param held the two joints on the car's body, each with the end of the same place in the list
     */
    public void watt(String key, SpacePoint pivot, List<SpacePoint> ends, List<SpacePoint> held) {
        Link[] rods = new Link[2];
        for (int i = 0; i < 2; i++) {
            rods[i] = rod(key, held.get(i), carrier(ends.get(i)));
        }
        double[] centre = Vectors.minus(Change.array(pivot), origin);
        double[] arm = Vectors.minus(Change.array(ends.get(0)), Change.array(pivot));
        double[] rod = Vectors.minus(Change.array(held.get(0)), Change.array(ends.get(0)));
        double[] axis = Vectors.cross(arm, rod);
        if (!(Vectors.length(axis) > 1e-6)) {
            throw new InvalidInputException(key + ".pivot", TEXTS.phrase("mustNotBeIn"));
        }
        guides.add((geometry, o) -> new WattLink(geometry, o, new int[] {rods[0].inboard().index(), rods[1].inboard().index()},
                new int[] {rods[0].outboard().index(), rods[1].outboard().index()},
                new int[] {rods[0].lengthIndex(), rods[1].lengthIndex()}, centre, axis));
    }

    /** The part carries a second wheel, whose height is given too. */
    public void otherWheel(SpacePoint centre) {
        driven.add(carrier(centre).index());
    }

    /** The rack moves this joint. */
    public void rack(Joint onBody) {
        rack.add(onBody);
    }

    /**
     * The steering axis runs through two joints. Without them it is the screw about which the wheel turns when the rack
     * moves and the spring is held (its height, where no spring is described); without a rack there is none.
     */
    public void steeringAxis(Joint lower, Joint upper) {
        if (!(place(upper)[2] > place(lower)[2])) {
            throw new InvalidInputException("links", TEXTS.phrase("upperJointOfThe"));
        }
        axisLower = lower;
        axisUpper = upper;
    }

    /** A coil-over straight from the car's body to a joint of the part that carries the wheel. */
    public void coil(String key, SpacePoint onBody, Joint onCarrier) {
        apart(key, Change.array(onBody), place(onCarrier));
        int top = body(onBody).index();
        coil = (geometry, o) -> new Coil.Direct(top, new Pickup.OnBody(onCarrier.index()));
    }

    /** A coil-over from the car's body to a place on an arm that two links form. */
    public void coil(String key, SpacePoint onBody, Link first, Link second, SpacePoint onArm) {
        apart(key, Change.array(onBody), Change.array(onArm));
        int top = body(onBody).index();
        coil = (geometry, o) -> new Coil.Direct(top, arm(geometry, o, first, second, onArm));
    }

    private static Pickup arm(Geometry geometry, double[] origin, Link first, Link second, SpacePoint place) {
        return Pickup.OnArm.at(geometry, origin, first.inboard().index(), second.inboard().index(),
                first.outboard().index(), Change.array(place));
    }

    /** A push- or pullrod from the part that carries the wheel, a rocker and a coil-over. */
    public void rocker(Rocker rocker) {
        int moving = carrier(rocker.rodOutboard()).index();
        coil = (geometry, o) -> rocker.coil(new Pickup.OnBody(moving));
    }

    /** A push- or pullrod from an arm that two links form, a rocker and a coil-over. */
    public void rocker(Rocker rocker, Link first, Link second) {
        coil = (geometry, o) -> rocker.coil(arm(geometry, o, first, second, rocker.rodOutboard()));
    }

    /** What 1 mm of an adjuster does, by the calculator's name. */
    public void adjuster(String name, Change perMm) {
        adjusters.put(name, perMm);
    }

    /** What 1 mm of thread or shim does where this kind is fitted; either sign, the effect decides which way is plus. */
    public void adjuster(AdjusterKind kind, Change perMm) {
        kinds.put(kind, perMm);
    }

    /**
     * The corner.
     *
     * @throws InvalidInputException where the links are locked or leave the wheel loose
     */
    public CornerKinematics build() {
        List<double[]> fixed = new ArrayList<>(body);
        for (int point : driven) {
            fixed.add(Vectors.plus(origin, 1, carrier.get(point)));
        }
        Geometry design = new Geometry(flat(fixed), flat(carrier), lengths.stream().mapToDouble(l -> l).toArray());
        List<Constraint> constraints = guides.stream().map(g -> g.apply(design, origin)).toList();
        Loops loops = new Loops(constraints, design, origin, driven.stream().mapToInt(i -> i).toArray(),
                rack.stream().mapToInt(Joint::index).toArray());
        if (loops.walker().isLocked()) {
            throw new InvalidInputException("links", TEXTS.phrase("areLockedOrLeave"));
        }
        Coil spring = coil == null ? null : coil.apply(design, origin);
        SteeringAxis axis = axisLower != null ? SteeringAxis.through(axisLower, axisUpper)
                : rack.isEmpty() ? SteeringAxis.NONE : SteeringAxis.screw(spring);
        Map<String, Geometry> named = new LinkedHashMap<>();
        adjusters.forEach((name, change) -> named.put(name, change.on(design)));
        Map<AdjusterKind, Geometry> byKind = new EnumMap<>(AdjusterKind.class);
        kinds.forEach((kind, change) -> byKind.put(kind, change.on(design)));
        return new LinkageCorner(side, new CarriedWheel(wheel, axis, spring), loops, named, byKind);
    }

    private static double[] flat(List<double[]> points) {
        return points.stream().flatMapToDouble(java.util.Arrays::stream).toArray();
    }
}
