package quoin.wheelangles.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static quoin.wheelangles.measure.Sheets.measured;
import static quoin.wheelangles.measure.Sheets.sheet;
import static quoin.wheelangles.measure.Sheets.typed;
import static quoin.wheelangles.measure.Sheets.uncertainty;
import static quoin.wheelangles.measure.Sheets.value;
import static quoin.wheelangles.measure.Sheets.words;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Entry;
import quoin.logbook.Header;

/** Camber by gauge and plumb line on any floor; caster by sweep. */
class CamberSheetsTest {

    @Test
    void aGaugeZeroedOnThePadsNeedsNoCorrection() {
        Measured measured = measured(sheet("gauge-camber", typed("LF.camber", "-2.2", "LF.camber2", "-2,0", "RF.camber", "-2.1")));
        assertEquals(-2.1, value(measured, ReadingKind.CAMBER, Corner.LF), 1e-12);
        assertEquals(-2.1, value(measured, ReadingKind.CAMBER, Corner.RF), 1e-12);
        assertEquals(0.1 / Math.sqrt(12) / Math.sqrt(2), uncertainty(measured, ReadingId.of(ReadingKind.CAMBER, Corner.LF)), 1e-9);
        assertEquals(0.1 / Math.sqrt(12), uncertainty(measured, ReadingId.of(ReadingKind.CAMBER, Corner.RF)), 1e-9);
    }

    /** 1 mm across the track is 0.04 deg, opposite on the two sides (common practice). */
    @Test
    void theSlopeIsOppositeOnTheTwoSides() {
        Map<String, String> read = typed("floor", "pads", "LF.camber", "-2", "RF.camber", "-2", "pad.LF", "1", "pad.RF", "0");
        Measured measured = measured(sheet("gauge-camber", read));
        assertEquals(-1.96, value(measured, ReadingKind.CAMBER, Corner.LF), 5e-4);
        assertEquals(-2.04, value(measured, ReadingKind.CAMBER, Corner.RF), 5e-4);
        assertTrue(words(measured).contains("0.04° higher on the left"), words(measured));
    }

    @Test
    void padHeightsOfTheDayAreTakenOver() {
        Entry pads = new Entry.Reading(new Header(0, Instant.EPOCH, ""), Map.of(ReadingId.of(ReadingKind.PAD_HEIGHT, Corner.LF), 0.0,
                ReadingId.of(ReadingKind.PAD_HEIGHT, Corner.RF), 5.0), Map.of(), Entry.Source.RACER);
        Measured measured = measured(sheet("gauge-camber", typed("floor", "pads", "LF.camber", "-2"), Sheets.day(pads)));
        assertEquals(-2 - Math.toDegrees(5 / 1440.0), value(measured, ReadingKind.CAMBER, Corner.LF), 1e-4);
    }

    @Test
    void bothWaysRoundGivesSlopeAndZeroOfTheGauge() {
        Measured measured = measured(sheet("gauge-camber", typed("floor", "both-ways", "LR.camber", "-1.5", "across.REAR", "0.5", "turned.REAR",
                "0.3")));
        assertEquals(-1.1, value(measured, ReadingKind.CAMBER, Corner.LR), 1e-4);
        assertTrue(words(measured).contains("+0.10°"), words(measured));
        assertEquals(Optional.of("turned.REAR"), sheet("gauge-camber", typed("floor", "both-ways", "LR.camber", "-1.5", "across.REAR", "0.5"))
                .check().missing());
    }

    /** 0.5 mm over 330 mm is 0.09 deg (common practice): the step of the rule alone gives 0.0354 deg. */
    @Test
    void plumbLineAndRule() {
        Map<String, String> read = typed("RR.top", "40", "RR.bottom", "40.5", "chord.REAR", "330", "step.RULE", "0.5");
        Measured measured = measured(sheet("plumb-camber", read));
        assertEquals(0.0868, value(measured, ReadingKind.CAMBER, Corner.RR), 5e-5);
        assertEquals(Math.toDegrees(Math.sqrt(2) * 0.5 / Math.sqrt(12) / 330), uncertainty(measured, ReadingId.of(ReadingKind.CAMBER, Corner.RR)), 1e-6);
        Map<String, String> typo = typed("RR.top", "400", "RR.bottom", "40.5", "chord.REAR", "330");
        assertTrue(sheet("plumb-camber", typo).check().problems().get("RR.top").contains("chord"));
    }

    /** A line that touches the rim reads 0, and a rule cannot read less. */
    @Test
    void aGapOfZeroIsAGap() {
        Measured measured = measured(sheet("plumb-camber", typed("LR.top", "0", "LR.bottom", "3", "step.RULE", "0.5")));
        assertEquals(Math.toDegrees(Math.sqrt(2) * 0.5 / Math.sqrt(12) / 372), uncertainty(measured, ReadingId.of(ReadingKind.CAMBER, Corner.LR)), 1e-5);
    }

    /** Cambers to 1e-6 deg from the invariant of the steering axis; book is 1.4619 times the difference. */
    @ParameterizedTest(name = "caster {0} kpi {1}")
    @CsvSource({"3, 7, 0, 1.453216, -0.602324, 3.004997", "12, 15, -3, 2.078724, -6.163544, 12.049389",
        "20.11, 17.29, -5, 3.205821, -10.800915, 20.476477"})
    void casterOfBothWheelsBySweep(double caster, double kpi, String straight, String out, String in, double book) {
        Map<String, String> read = typed("LF.straight", straight, "LF.leftPlate", "20", "LF.leftCamber", out, "LF.rightPlate", "20", "LF.rightCamber",
                in, "RF.straight", straight, "RF.leftPlate", "20", "RF.leftCamber", in, "RF.rightPlate", "20", "RF.rightCamber", out);
        Measured measured = measured(sheet("caster-sweep", read));
        for (Corner corner : new Corner[] {Corner.LF, Corner.RF}) {
            assertEquals(caster, value(measured, ReadingKind.CASTER, corner), 3e-6);
            assertEquals(kpi, value(measured, ReadingKind.KPI, corner), 3e-5);
        }
        assertEquals(book, value(measured, "LF caster, textbook"), 3e-6);
        assertTrue(words(measured).matches("(?s).*comes out (1[789]|20)[.][0-9] times as large.*"), words(measured));
    }

    /** Unequal plates pull the inclination into the textbook's caster: +20 and -17 read as equal gives 5.44 for a true 5.20 (a trade table). */
    @Test
    void unequalPlatesAreTakenAsTheyAre() {
        double[] cambers = {camber(5.2, 12, -2, 0, 0, 0), camber(5.2, 12, -2, 20, 0, 0), camber(5.2, 12, -2, -17, 0, 0)};
        Measured measured = measured(sheet("caster-sweep", sweep(cambers, "20", "17")));
        assertEquals(5.2, value(measured, ReadingKind.CASTER, Corner.LF), 1e-7);
        assertEquals(12, value(measured, ReadingKind.KPI, Corner.LF), 1e-6);
        assertTrue(words(measured).contains("off by +0."), words(measured));
    }

    /** The same wheel on pads that rise 0.5 deg to the left and 0.8 deg forward, gauge to gravity, by Hipparchus' rotations. */
    @Test
    void aSweepOnASlope() {
        double[] cambers = {camber(5.2, 12, -2, 0, 0.5, 0.8), camber(5.2, 12, -2, 20, 0.5, 0.8), camber(5.2, 12, -2, -17, 0.5, 0.8)};
        Map<String, String> read = sweep(cambers, "20", "17");
        read.put("across", "0.5");
        read.put("along", "0.8");
        Measured measured = measured(sheet("caster-sweep", read));
        assertEquals(5.2, value(measured, ReadingKind.CASTER, Corner.LF), 1e-6);
        assertEquals(12, value(measured, ReadingKind.KPI, Corner.LF), 1e-5);
    }

    private static Map<String, String> sweep(double[] cambers, String left, String right) {
        return typed("LF.straight", Sheets.digits(cambers[0]), "LF.leftPlate", left, "LF.leftCamber", Sheets.digits(cambers[1]),
                "LF.rightPlate", right, "LF.rightCamber", Sheets.digits(cambers[2]));
    }

    /** A left wheel turned about its steering axis until it points where asked; its camber to gravity with the floor tilted. */
    private static double camber(double caster, double kpi, double atZero, double wantedSteer, double toLeft, double forward) {
        Vector3D axis = new Vector3D(-Math.tan(Math.toRadians(caster)), -Math.tan(Math.toRadians(kpi)), 1);
        double c = Math.toRadians(atZero);
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
        double across = Math.sin(Math.toRadians(toLeft));
        double along = Math.sin(Math.toRadians(forward));
        Rotation floor = new Rotation(new Vector3D(along, across, Math.sqrt(1 - across * across - along * along)), Vector3D.PLUS_K);
        return Math.toDegrees(-Math.asin(floor.applyTo(turned(axis, low, spin)).getZ()));
    }

    private static Vector3D turned(Vector3D axis, double deg, Vector3D spin) {
        return new Rotation(axis, Math.toRadians(deg), RotationConvention.VECTOR_OPERATOR).applyTo(spin);
    }

    /** u(caster) = 2.06744 u(camber) at 20 deg; about 20 for the inclination. Plates taken as exact here by a tiny step. */
    @Test
    void noiseOfTheSweep() {
        Map<String, String> read = typed("LF.straight", "0", "LF.leftPlate", "20", "LF.leftCamber", "0", "LF.rightPlate", "20", "LF.rightCamber", "0",
                "step.TURN_PLATE", "0.0001");
        Measured measured = measured(sheet("caster-sweep", read));
        double gauge = 0.1 / Math.sqrt(12);
        assertEquals(2.06744 * gauge, uncertainty(measured, ReadingId.of(ReadingKind.CASTER, Corner.LF)), 1e-4);
        assertEquals(20.3084 * gauge, uncertainty(measured, ReadingId.of(ReadingKind.KPI, Corner.LF)), 1e-3);
        assertTrue(sheet("caster-sweep", typed("LF.straight", "0", "LF.leftPlate", "-20", "LF.leftCamber", "0", "LF.rightPlate", "20",
                "LF.rightCamber", "0")).check().problems().get("LF.leftPlate").contains("without a sign"));
    }
}
