package quoin.mechanics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CasterSweepTest {

    /** Cambers to 1e-6 deg, derived from the invariant; the last column is 1.4619 times the difference. */
    @ParameterizedTest(name = "caster {0} kpi {1}")
    @CsvSource({
        "3, 7, 0, 1.453216, -0.602324, 3.004997", "5, 12, -1, 1.450382, -1.974379, 5.006666",
        "7, 12, -2, 1.135420, -3.653012, 7.000218", "10, 8, -3.5, 0.428253, -6.426784, 10.021394",
        "12, 15, -3, 2.078724, -6.163544, 12.049389", "-2, 9, 0.5, 0.362792, 1.735103, -2.006184",
        "20.11, 17.29, -5, 3.205821, -10.800915, 20.476477"})
    void aSweepOf20DegreesGivesBothAngles(double caster, double kpi, double straight, double left, double right, double book) {
        CasterSweep sweep = CasterSweep.symmetric(true, 0, 20, straight, left, right);
        assertEquals(caster, sweep.exact().casterDeg(), 3e-6);
        assertEquals(kpi, sweep.exact().kpiDeg(), 3e-5);
        assertEquals(book, sweep.textbook().casterDeg(), 3e-6);
        CasterSweep mirrored = CasterSweep.symmetric(false, 0, 20, straight, right, left);
        assertEquals(sweep.exact().casterDeg(), mirrored.exact().casterDeg(), 1e-12);
        assertEquals(sweep.textbook().kpiDeg(), mirrored.textbook().kpiDeg(), 1e-12);
    }

    @Test
    void unequalAnglesAndToeAreAllowedFor() {
        // toe-out 0.1 deg: the left wheel points 0.1 deg to the left at straight ahead
        CasterSweep sweep = new CasterSweep(true, -0.1, new double[] {0, 20.4, -19.3},
                new double[] {camber(7, 12, -2, 0.1), camber(7, 12, -2, 20.5), camber(7, 12, -2, -19.2)});
        assertEquals(7, sweep.exact().casterDeg(), 1e-9);
        assertEquals(12, sweep.exact().kpiDeg(), 1e-9);
    }

    /** Turns the wheel about its steering axis with Hipparchus until it points where it is asked, and reads its camber. */
    private static double camber(double caster, double kpi, double camberAtZero, double wantedSteer) {
        Vector3D axis = new Vector3D(-Math.tan(Math.toRadians(caster)), -Math.tan(Math.toRadians(kpi)), 1);
        double c = Math.toRadians(camberAtZero);
        Vector3D spin = new Vector3D(0, Math.cos(c), -Math.sin(c));
        double low = -60;
        double high = 60;
        for (int i = 0; i < 100; i++) {
            double middle = (low + high) / 2;
            Vector3D turned = turned(axis, middle, spin);
            if (Math.toDegrees(Math.atan2(-turned.getX(), turned.getY())) < wantedSteer) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Math.toDegrees(-Math.asin(turned(axis, low, spin).getZ()));
    }

    private static Vector3D turned(Vector3D axis, double deg, Vector3D spin) {
        return new Rotation(axis, Math.toRadians(deg), RotationConvention.VECTOR_OPERATOR).applyTo(spin);
    }

    /** Rotations by an outside library; any straight-ahead camber, caster and inclination come back. */
    @ParameterizedTest(name = "caster {0} kpi {1} camber {2}")
    @CsvSource({"4, 9, -3, 15", "-1, 14, 0.5, 10", "15, 5, -1, 25", "7, 0, 0, 20"})
    void comesBackFromRotations(double caster, double kpi, double camber, double angle) {
        CasterSweep sweep = CasterSweep.symmetric(true, 0, angle, camber(caster, kpi, camber, 0),
                camber(caster, kpi, camber, angle), camber(caster, kpi, camber, -angle));
        assertEquals(caster, sweep.exact().casterDeg(), 1e-9);
        assertEquals(kpi, sweep.exact().kpiDeg(), 1e-9);
    }

    /** What a sweep was made of and what it gives cannot change it. */
    @Test
    void aSweepStaysWhatItIs() {
        double[] steer = {0, 20, -19};
        double[] cambers = {-1, 1.4, -2};
        CasterSweep sweep = new CasterSweep(true, 0, steer, cambers);
        double caster = sweep.exact().casterDeg();
        steer[1] = 5;
        cambers[1] = 9;
        sweep.steerDeg()[2] = -5;
        sweep.cambersDeg()[2] = 9;
        assertArrayEquals(new double[] {0, 20, -19}, sweep.steerDeg());
        assertArrayEquals(new double[] {-1, 1.4, -2}, sweep.cambersDeg());
        assertEquals(caster, sweep.exact().casterDeg());
    }

    /** January's formula (SAE 850219) with unequal angles by hand: (c1 - c2) / (sin 20 + sin 19); mean rise over 1 - mean cosine. */
    @Test
    void theTextbookWithUnequalAngles() {
        CasterSweep sweep = new CasterSweep(true, 0, new double[] {0, 20, -19}, new double[] {-1, 1.4, -2});
        double sines = Math.sin(Math.toRadians(20)) + Math.sin(Math.toRadians(19));
        double cosines = (Math.cos(Math.toRadians(20)) + Math.cos(Math.toRadians(19))) / 2;
        assertEquals(3.4 / sines, sweep.textbook().casterDeg(), 1e-12);
        assertEquals((-0.3 + 1) / (1 - cosines), sweep.textbook().kpiDeg(), 1e-12);
        CasterSweep shifted = new CasterSweep(true, 0, new double[] {1, 21, -18}, new double[] {-1, 1.4, -2});
        assertEquals(sweep.textbook().casterDeg(), shifted.textbook().casterDeg(), 1e-12, "counted from where straight ahead stands");
        assertEquals(1 / (1 - Math.cos(Math.toRadians(19.5))), sweep.kpiErrorFactor(), 1e-12, "half of what lies between left and right");
    }

    @Test
    void anImpossibleSweepIsRefused() {
        assertThrows(InvalidInputException.class, () -> CasterSweep.symmetric(true, 0, 0, 0, 1, -1));
        assertThrows(InvalidInputException.class, () -> CasterSweep.symmetric(true, 0, 90, 0, 1, -1));
    }

    @Test
    void inclinationMultipliesTheCamberError() {
        assertEquals(1 / (1 - Math.cos(Math.toRadians(20))), CasterSweep.symmetric(true, 0, 20, 0, 1, -1).kpiErrorFactor(), 1e-12);
    }
}
