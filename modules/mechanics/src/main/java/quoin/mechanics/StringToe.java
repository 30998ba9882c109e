package quoin.mechanics;

import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.PerAxle;
import quoin.car.PerCorner;
import quoin.quantities.Texts;

/**
 * Toe from strings along both sides of the car: the shortest distance from the string to each rim edge at hub height.
 * Strings that are not parallel to the car are corrected by arithmetic, from the hub gaps.
 *
 * @param gaps        gaps at each wheel
 * @param trackMm     distance between the wheels of an axle where the rims are measured
 * @param wheelbaseMm of the left side and of the right side
 * @param chordMm     distance between the two rim edges of a wheel, per axle
 */
public record StringToe(PerCorner<Gaps> gaps, PerAxle<Double> trackMm, Sides wheelbaseMm, PerAxle<Double> chordMm) {
    private static final Texts TEXTS = Texts.of(StringToe.class);

    /**
     * Gaps of one wheel, mm.
     *
     * @param frontEdgeMm at the rim's front edge
     * @param rearEdgeMm  at the rim's rear edge
     */
    public record Gaps(double frontEdgeMm, double rearEdgeMm) {
        /** Gap at the hub: the mean of both edges. */
        public double hubMm() {
            return (frontEdgeMm + rearEdgeMm) / 2;
        }
    }

    /** A figure of each side of the car. */
    public record Sides(double left, double right) {
        double of(Corner corner) {
            return corner.isLeft() ? left : right;
        }
    }

    /**
     * Toe of every wheel with the strings' own angles taken out.
     *
     * @param toeInDeg  of each wheel, + in
     * @param splayDeg  of each string, + further outboard in front
     */
    public record Result(PerCorner<Double> toeInDeg, Sides splayDeg) {
    }

    /** @throws InvalidInputException naming the reading that cannot be */
    public StringToe {
        for (Axle axle : Axle.values()) {
            String name = axle == Axle.FRONT ? "Front" : "Rear";
            Require.positive("track" + name + "_mm", trackMm.get(axle));
            Require.positive("rimChord" + name + "_mm", chordMm.get(axle));
        }
        Require.positive("wheelbaseLeft_mm", wheelbaseMm.left());
        Require.positive("wheelbaseRight_mm", wheelbaseMm.right());
        for (Corner corner : Corner.values()) {
            String field = (corner.isLeft() ? "left." : "right.") + (corner.isFront() ? "frontWheel" : "rearWheel");
            Gaps at = gaps.get(corner);
            Require.notNegative(field + "FrontEdge_mm", at.frontEdgeMm());
            Require.notNegative(field + "RearEdge_mm", at.rearEdgeMm());
            if (Math.abs(at.frontEdgeMm() - at.rearEdgeMm()) >= chordMm.get(corner.axle())) {
                throw new InvalidInputException(field + "FrontEdge_mm", TEXTS.phrase("differsFromTheRearEdge"));
            }
        }
    }

    /** Each string at its own angle, the tracks known. */
    public Result independent() {
        return corrected(new Sides(splay(Corner.LF, Corner.LR, wheelbaseMm.left()), splay(Corner.RF, Corner.RR, wheelbaseMm.right())));
    }

    /**
     * Angle at which the hub gaps differ as read: L sin(a) - h cos(a) = front gap - rear gap, h half the difference of the
     * tracks.
     */
    private double splay(Corner front, Corner rear, double wheelbase) {
        double half = (trackMm.get(Axle.FRONT) - trackMm.get(Axle.REAR)) / 2;
        double sine = (gaps.get(front).hubMm() - gaps.get(rear).hubMm()) / Math.hypot(wheelbase, half);
        return Math.toDegrees(Math.asin(sineOf(front.isLeft() ? "wheelbaseLeft_mm" : "wheelbaseRight_mm", sine)) + Math.atan2(half, wheelbase));
    }

    private static double sineOf(String field, double sine) {
        if (Math.abs(sine) >= 1) {
            throw new InvalidInputException(field, TEXTS.phrase("shorterThanTheString"));
        }
        return sine;
    }

    /** Strings parallel to each other at one angle to the car; the tracks are not needed. */
    public Result parallelPair() {
        double left = gaps.lf().hubMm() - gaps.lr().hubMm();
        double right = gaps.rf().hubMm() - gaps.rr().hubMm();
        double yaw = Math.toDegrees(Math.asin(sineOf("wheelbaseLeft_mm", (left - right) / (wheelbaseMm.left() + wheelbaseMm.right()))));
        return corrected(new Sides(yaw, -yaw));
    }

    private Result corrected(Sides splay) {
        return new Result(PerCorner.of(corner -> {
            Gaps at = gaps.get(corner);
            return WheelAngles.toeDeg(at.frontEdgeMm() - at.rearEdgeMm(), chordMm.get(corner.axle())) - splay.of(corner);
        }), splay);
    }

    /** How far the right front wheel stands behind the left, with the rear axle square; mm. */
    public double setbackMm() {
        return wheelbaseMm.left() - wheelbaseMm.right();
    }
}
