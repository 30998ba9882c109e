package quoin.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import quoin.car.PerCorner;

/** Toe arithmetic and frame attitude. Recomputed independently unless a source is named. */
class WheelAnglesTest {
    @Test
    void millimetresOnAChord() {
        assertEquals(0.173519, WheelAngles.toeDeg(1, 330.2), 6e-7);
        assertEquals(0.150383, WheelAngles.toeDeg(1, 381), 6e-7);
        assertEquals(1.66242, WheelAngles.toeMm(0.25, 381), 6e-6);
        assertEquals(0.265382, WheelAngles.toeDeg(2, 431.8), 6e-7);
        assertEquals(-0.3, WheelAngles.toeDeg(WheelAngles.toeMm(-0.3, 372), 372), 1e-14);
    }

    /** BMW 633CSi data of 1984: total toe 0 deg 18 min is 2.0 mm on 14-inch wheels, which means a chord of 382 mm. */
    @Test
    void publishedPair() {
        assertEquals(2.0, 2 * WheelAngles.toeMm(0.3 / 2, 381.97), 1e-4);
    }

    @Test
    void totalsAndThrust() {
        PerCorner<Double> toe = new PerCorner<>(0.10, 0.14, 0.20, 0.06);
        assertEquals(0.24, WheelAngles.totalToeDeg(toe).front(), 1e-12);
        assertEquals(0.26, WheelAngles.totalToeDeg(toe).rear(), 1e-12);
        assertEquals(-0.07, WheelAngles.thrustAngleDeg(toe), 1e-12);
        assertEquals(0.03, WheelAngles.toeToThrustLineDeg(toe).lf(), 1e-12);
        assertEquals(0.21, WheelAngles.toeToThrustLineDeg(toe).rf(), 1e-12);
    }

    @Test
    void setback() {
        assertEquals(0.226166, WheelAngles.setbackDeg(6, 1520), 6e-7);
    }

    @Test
    void refusesByName() {
        assertEquals("chord_mm", assertThrows(InvalidInputException.class, () -> WheelAngles.toeDeg(1, 0)).field());
        assertEquals("toe_mm", assertThrows(InvalidInputException.class, () -> WheelAngles.toeDeg(400, 372)).field());
        assertEquals("toe_deg", assertThrows(InvalidInputException.class, () -> WheelAngles.toeMm(90, 372)).field());
    }

    /** Rake of 15 mm over 2730 mm is 0.3148 deg (the geometry printed in the F308 manual, page 8). */
    @Test
    void rakeAndFlatness() {
        PerCorner<PlanPoint> points = CentreOfGravity.contactPoints(2730, 800, 600);
        FrameAttitude level = FrameAttitude.of(points, new PerCorner<>(15.0, 15.0, 30.0, 30.0));
        assertEquals(0.314809, level.rakeDeg(), 6e-7);
        assertEquals(15, level.rakeMm(), 1e-12);
        assertEquals(0, level.flatnessMm(), 1e-12);
        FrameAttitude misread = FrameAttitude.of(points, new PerCorner<>(45.3, 43.5, 60.0, 60.0));
        assertEquals(Math.toDegrees(Math.atan(1.8 / 800)), misread.tiltDeg().front(), 1e-12);
        assertEquals(0, misread.tiltDeg().rear(), 1e-12);
        assertEquals(1.8, misread.flatnessMm(), 1e-12);
        assertEquals(Math.sqrt(2 + 2 * Math.pow(800 / 600.0, 2)), misread.flatnessSdPerReading(), 1e-12);
        // The same tilt of 0.1 deg at both ends is a flat frame that leans.
        double lean = Math.tan(Math.toRadians(0.1));
        FrameAttitude leaning = FrameAttitude.of(points,
                new PerCorner<>(60 + 400 * lean, 60 - 400 * lean, 70 + 300 * lean, 70 - 300 * lean));
        assertEquals(0, leaning.flatnessMm(), 1e-12);
        assertEquals(0.1, leaning.tiltDeg().rear(), 1e-12);
    }
}
