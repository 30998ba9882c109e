package quoin.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.geometry.euclidean.twod.Line;
import org.hipparchus.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import quoin.car.Corner;
import quoin.car.PerAxle;
import quoin.car.PerCorner;

class StringToeTest {
    private static final PerAxle<Double> TRACK = new PerAxle<>(1520.0, 1470.0);
    private static final StringToe.Sides WHEELBASE = new StringToe.Sides(2675, 2675);
    private static final PerAxle<Double> CHORD = new PerAxle<>(381.0, 381.0);
    private static final PerCorner<Double> TRUE_TOE = new PerCorner<>(0.10, 0.14, 0.20, 0.06);

    /** Strings at +-900 mm through mid-wheelbase, turned about z (+ to the left), read by Hipparchus' lines. */
    private static StringToe read(double leftTurnDeg, double rightTurnDeg, PerCorner<Double> toe) {
        return new StringToe(PerCorner.of(corner -> {
            double turn = Math.toRadians(corner.isLeft() ? leftTurnDeg : rightTurnDeg);
            double side = corner.isLeft() ? 1 : -1;
            Vector2D through = new Vector2D(0, side * 900);
            Line string = new Line(through, through.add(new Vector2D(Math.cos(turn), Math.sin(turn))), 1e-10);
            return new StringToe.Gaps(string.distance(edge(corner, toe.get(corner), 1)), string.distance(edge(corner, toe.get(corner), -1)));
        }), TRACK, WHEELBASE, CHORD);
    }

    private static Vector2D edge(Corner corner, double toeDeg, double forward) {
        double side = corner.isLeft() ? 1 : -1;
        double heading = -side * Math.toRadians(toeDeg);
        double x = corner.isFront() ? 1337.5 : -1337.5;
        Vector2D hub = new Vector2D(x, side * TRACK.get(corner.axle()) / 2);
        return hub.add(new Vector2D(forward * 190.5 * Math.cos(heading), forward * 190.5 * Math.sin(heading)));
    }

    /** Gaps derived with another program: strings turned by 0.05 deg on the left, -0.03 deg on the right. */
    @Test
    void takesTheStringsOwnAnglesOut() {
        StringToe read = read(0.05, -0.03, TRUE_TOE);
        assertEquals(141.665863, read.gaps().lf().frontEdgeMm(), 6e-7);
        assertEquals(164.000427, read.gaps().rr().rearEdgeMm(), 6e-7);
        StringToe.Result result = read.independent();
        for (Corner corner : Corner.values()) {
            assertEquals(TRUE_TOE.get(corner), result.toeInDeg().get(corner), 1e-9);
        }
        assertEquals(0.05, result.splayDeg().left(), 1e-9);
        assertEquals(0.03, result.splayDeg().right(), 1e-9);
    }

    @Property(tries = 100)
    void aParallelPairMayStandAtAnyAngle(@ForAll @DoubleRange(min = -2, max = 2) double turn,
            @ForAll @DoubleRange(min = -1, max = 1) double toe) {
        PerCorner<Double> all = new PerCorner<>(toe, -toe / 2, 0.3, toe / 3);
        StringToe.Result result = read(turn, turn, all).parallelPair();
        for (Corner corner : Corner.values()) {
            assertEquals(all.get(corner), result.toeInDeg().get(corner), 1e-9);
        }
        assertEquals(turn, result.splayDeg().left(), 1e-9);
    }

    /** Equal gaps on unequal tracks: each string is off by 0.535459 deg, the total toe by 1.070918 deg. */
    @Test
    void equalGapsDoNotMakeStringsParallelToTheCar() {
        StringToe.Gaps same = new StringToe.Gaps(140, 140);
        StringToe.Result result = new StringToe(PerCorner.all(same), TRACK, WHEELBASE, CHORD).independent();
        assertEquals(0.535459, result.splayDeg().left(), 6e-7);
        assertEquals(1.070918, -WheelAngles.totalToeDeg(result.toeInDeg()).front(), 6e-7);
    }

    @Test
    void aWheelBehindItsNeighbourIsSetBack() {
        StringToe toe = new StringToe(PerCorner.all(new StringToe.Gaps(140, 140)), TRACK, new StringToe.Sides(2678, 2672), CHORD);
        assertEquals(6, toe.setbackMm(), 1e-12);
    }

    @Test
    void aGapThatCannotBeIsRefusedByName() {
        PerCorner<StringToe.Gaps> gaps = new PerCorner<>(new StringToe.Gaps(140, 140), new StringToe.Gaps(140, 540),
                new StringToe.Gaps(140, 140), new StringToe.Gaps(140, 140));
        assertEquals("right.frontWheelFrontEdge_mm", assertThrows(InvalidInputException.class,
                () -> new StringToe(gaps, TRACK, WHEELBASE, CHORD)).field());
    }
}
