package quoin.suspensiondoublewishbone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static quoin.suspensiondoublewishbone.Corners.value;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quoin.car.Adjuster;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Corner;
import quoin.car.Setting;
import quoin.suspension.AngleSensitivity;
import quoin.suspension.CornerKinematics;
import quoin.suspension.CornerPosition;
import quoin.suspension.CurveOutput;
import quoin.suspension.WheelPosition;

/**
 * Hard points and curves that a maker printed: Formula Renault 2.0, Chassis manual (edition of 2009), part 2, "Suspension
 * adjustment tables", rear axle, wishbone position 25 AE. Its travel is that of the contact point. The exact values beside
 * the printed ones were derived with another solver; they differ from the print where its definitions are plane ones.
 */
class PublishedRearAxleTest {
    private static final Map<String, String> TEXTS = Map.ofEntries(
            Map.entry("wheelCentre", "0 634.730 283.920"), Map.entry("staticCamber_deg", "-5"),
            Map.entry("staticToe_deg", "0"), Map.entry("loadedRadius_mm", "283.92"),
            Map.entry("links.upper_front.inboard", "214.300 106.440 348.080"),
            Map.entry("links.upper_front.outboard", "-5.900 516.350 409.310"),
            Map.entry("links.upper_rear.inboard", "-214.300 106.440 350.470"),
            Map.entry("links.upper_rear.outboard", "-5.900 516.350 409.310"),
            Map.entry("links.lower_front.inboard", "264.300 105.500 178.500"),
            Map.entry("links.lower_front.outboard", "77.880 587.570 180.530"),
            Map.entry("links.lower_rear.inboard", "-110.490 105.500 162.300"),
            Map.entry("links.lower_rear.outboard", "77.880 587.570 180.530"),
            Map.entry("links.tie.inboard", "-110.490 105.500 152.300"),
            Map.entry("links.tie.outboard", "-69.160 583.780 170.130"),
            Map.entry("pushrodRocker.rockerPivot", "21.900 125.030 355.640"),
            Map.entry("pushrodRocker.rockerAxis", "0 24.400 54.820"),
            Map.entry("pushrodRocker.pushrodInboard", "63.800 87.410 388.810"),
            Map.entry("pushrodRocker.pushrodOutboard", "76.660 507.590 200.510"),
            Map.entry("pushrodRocker.pushrodOutboardOn", "lowerArm"),
            Map.entry("pushrodRocker.coilOverOnRocker", "21.900 45.250 407.580"),
            Map.entry("pushrodRocker.coilOverOnBody", "-297.970 47.630 390.340"),
            Map.entry("camberShimAt", "upright"));
    private static final CornerKinematics REAR = Corners.left(TEXTS);

    private static double contactHeight(CornerPosition position) {
        return position.contactPoint().orElseThrow().zMm();
    }

    private static CornerPosition atContactTravel(double dz) {
        double design = contactHeight(REAR.at(WheelPosition.DESIGN));
        return Corners.where(REAR, 0, dz, design + dz, PublishedRearAxleTest::contactHeight);
    }

    @ParameterizedTest(name = "contact travel {0} mm")
    @CsvSource({
        "-30, 342.19, -0.87, 20.38, 16.48", "-25, 338.89, -0.73, 20.33, 16.61", "-20, 335.48, -0.58, 20.29, 16.74",
        "-15, 331.93, -0.44, 20.24, 16.88", "-10, 328.23, -0.29, 20.20, 17.01", "-5, 324.38, -0.15, 20.16, 17.15",
        "0, 320.34, 0, 20.11, 17.29"})
    void comesToThePrintedTable(double dz, double coil, double wheelbase, double caster, double kpi) {
        CornerPosition at = atContactTravel(dz);
        CornerPosition design = REAR.at(WheelPosition.DESIGN);
        double print = 0.011;
        assertEquals(coil, value(at, CurveOutput.COIL_LENGTH), print);
        // the print's wheelbase is that of the wheel centre, and longer is plus: a rear wheel that moves back
        assertEquals(wheelbase, design.wheelCentre().orElseThrow().xMm() - at.wheelCentre().orElseThrow().xMm(), print);
        assertEquals(caster, value(at, CurveOutput.CASTER), print);
        assertEquals(kpi, value(at, CurveOutput.KPI), print);
    }

    /** The print's plane definitions: camber by the change of KPI, half-track by wheel centre and radius in plane. */
    @ParameterizedTest(name = "contact travel {0} mm")
    @CsvSource({"-30, -4.19, -2.61", "-20, -4.45, -1.57", "-10, -4.72, -0.70", "0, -5.00, 0"})
    void comesToThePrintByItsOwnDefinitions(double dz, double camber, double halfTrack) {
        CornerPosition design = REAR.at(WheelPosition.DESIGN);
        CornerPosition at = atContactTravel(dz);
        double planeCamber = -5 - (value(at, CurveOutput.KPI) - value(design, CurveOutput.KPI));
        assertEquals(camber, planeCamber, 0.0051);
        double centre = at.wheelCentre().orElseThrow().yMm() - design.wheelCentre().orElseThrow().yMm();
        assertEquals(halfTrack, centre + 283.92 * (Math.sin(Math.toRadians(-planeCamber)) - Math.sin(Math.toRadians(5))), 0.0051);
    }

    @ParameterizedTest(name = "contact travel {0} mm")
    @CsvSource({"-30, -4.2208, 0.1637, -2.447", "-20, -4.4756, 0.1130, -1.450", "-10, -4.7353, 0.0584, -0.635",
        "-5, -4.8670, 0.0297, -0.295"})
    void hasTheExactAngles(double dz, double camber, double toe, double halfTrack) {
        CornerPosition at = atContactTravel(dz);
        assertEquals(camber, value(at, CurveOutput.CAMBER), 6e-5);
        assertEquals(toe, value(at, CurveOutput.TOE), 6e-5);
        assertEquals(halfTrack, value(at, CurveOutput.HALF_TRACK_CHANGE), 6e-4);
    }

    @ParameterizedTest(name = "contact travel {0} mm")
    @CsvSource({"10, -5.2700, -0.0622, 311.643", "30, -5.8270, -0.1980, 290.539"})
    void forecastsBump(double dz, double camber, double toe, double coil) {
        CornerPosition at = atContactTravel(dz);
        assertEquals(camber, value(at, CurveOutput.CAMBER), 6e-5);
        assertEquals(toe, value(at, CurveOutput.TOE), 6e-5);
        assertEquals(coil, value(at, CurveOutput.COIL_LENGTH), 6e-4);
    }

    /** From the true path of the contact point, bump steer included; the printed plane section is 8.7 mm higher. */
    @ParameterizedTest(name = "wheel centre travel {0} mm")
    @CsvSource({"-30, 71.892", "-15, 53.873", "0, 35.909"})
    void hasTheExactRollCentre(double dz, double height) {
        assertEquals(height, value(REAR.at(WheelPosition.travel(dz)), CurveOutput.ROLL_CENTRE_HEIGHT_PATH), 6e-4);
    }

    @Test
    void hasThePrintedSteeringAxis() {
        CornerPosition design = REAR.at(WheelPosition.DESIGN);
        assertEquals(20.1129, value(design, CurveOutput.CASTER), 6e-5);
        assertEquals(17.2915, value(design, CurveOutput.KPI), 6e-5);
        assertEquals(143.595, value(design, CurveOutput.TRAIL), 6e-4);
        assertEquals(16.0420, value(design, CurveOutput.SCRUB_RADIUS), 6e-5);
        assertEquals(1.08040, contactHeight(design), 6e-6);
    }

    /** Contact travel per spring travel. The print's 1.218 is 0.8 % from the slope of its own column of lengths. */
    @Test
    void hasTheSlopeOfThePrintedLengths() {
        double slope = (value(atContactTravel(-0.5), CurveOutput.COIL_LENGTH) - value(atContactTravel(0.5), CurveOutput.COIL_LENGTH));
        assertEquals(1.2103, 1 / slope, 6e-5);
        assertEquals(1.218, 1 / slope, 0.008 * 1.218);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "uprightTopShimOutboard, -1, 0.228311, 0.015441, -0.026242, -0.005976",
        "upperArmBothLegsLength, 1, 0.259869, 0.017373, -0.026170, -0.266039",
        "upperArmFrontLegLength, 1, 0.127493, -0.007657, 0.255888, -0.104971",
        "upperArmRearLegLength, 1, 0.132208, 0.024890, -0.281708, -0.160337",
        "tieRodLength, 1, -0.130928, 0.390990, 0.002411, -0.007778"})
    void adjustersDoWhatWasDerived(String name, double sign, double camber, double toe, double caster, double kpi) {
        // those figures are for a whole mm; the slope at the start is within 0.4 % of them
        AngleSensitivity found = REAR.sensitivities().get(name);
        assertEquals(camber, sign * found.camberDegPerMm(), 0.0015);
        assertEquals(toe, sign * found.toeDegPerMm(), 0.0015);
        assertEquals(caster, sign * found.casterDegPerMm().orElseThrow(), 0.0015);
        assertEquals(kpi, sign * found.kpiDegPerMm().orElseThrow(), 0.0015);
    }

    @Test
    void aPushrodTurnLiftsTheBody() {
        Adjuster rod = Adjuster.unmeasured(new AdjusterId(AdjusterKind.PUSHROD, Corner.LR),
                new Setting.Thread(25.4 / 24, true, 6, "flat"));
        double perTurn = REAR.response(List.of(rod)).of(AdjusterKind.PUSHROD).legLiftMm();
        assertEquals(2.63131, perTurn / (2 * 25.4 / 24), 0.01);
        assertEquals(5.57616, perTurn, 0.02);
    }

    @Test
    void aPerchMmLiftsByTheRatioAtTheContactPoint() {
        Adjuster perch = Adjuster.unmeasured(new AdjusterId(AdjusterKind.PERCH, Corner.LR), new Setting.Thread(1.5, false, 8, "notch"));
        double lift = REAR.response(List.of(perch)).of(AdjusterKind.PERCH).legLiftMm();
        assertEquals(1.5 * 1.2103, lift, 1e-4);
    }
}
