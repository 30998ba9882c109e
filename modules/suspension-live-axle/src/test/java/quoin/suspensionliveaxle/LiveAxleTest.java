package quoin.suspensionliveaxle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quoin.mechanics.InvalidInputException;
import quoin.suspension.AngleResponse;
import quoin.suspension.CornerKinematics;
import quoin.suspension.CornerPosition;
import quoin.suspension.CurveOutput;
import quoin.suspension.ParameterReading;
import quoin.suspension.ParameterValues;
import quoin.suspension.Side;
import quoin.suspension.WheelPosition;

/** Closed forms of a live axle; its links run level along the car where the closed form wants them to. */
class LiveAxleTest {
    private static final Map<String, String> LEVEL_LINKS = Map.of("links.lower.inboard", "480 450 210",
            "links.lower.outboard", "0 450 210", "links.upper.inboard", "480 400 400", "links.upper.outboard", "0 400 400");

    private static CornerKinematics corner(Side side, List<Map<String, String>> pieces) {
        Map<String, String> texts = new HashMap<>(Axles.LOWER);
        pieces.forEach(texts::putAll);
        LiveAxle type = new LiveAxle();
        ParameterReading reading = ParameterValues.read(type.parameters(), texts);
        assertEquals(List.of(), reading.problems());
        return type.corner(reading.values(), side);
    }

    private static double value(CornerPosition position, CurveOutput output) {
        return position.value(output).orElseThrow();
    }

    private static Map<String, String> panhard(double heightAtBody, double heightAtAxle) {
        return Map.of("panhard.inboard", "0 -450 " + heightAtBody, "panhard.outboard", "0 450 " + heightAtAxle);
    }

    @Test
    void aLevelPanhardRodSwingsTheAxleAlongItsCircle() {
        double aside = 900 - Math.sqrt(900 * 900 - 40 * 40);
        for (double travel : new double[] {-40, 40}) {
            // the body's end is on the right, so the axle is drawn to the right: the left wheel goes inboard
            CornerKinematics left = corner(Side.LEFT, List.of(LEVEL_LINKS, panhard(280, 280)));
            CornerKinematics right = corner(Side.RIGHT, List.of(LEVEL_LINKS, panhard(280, 280)));
            assertEquals(-aside, value(left.at(WheelPosition.travel(travel)), CurveOutput.HALF_TRACK_CHANGE), 2e-3);
            assertEquals(aside, value(right.at(WheelPosition.travel(travel)), CurveOutput.HALF_TRACK_CHANGE), 2e-3);
        }
    }

    @Test
    void levelEqualLinksKeepTheAxleSquare() {
        CornerKinematics corner = corner(Side.LEFT, List.of(LEVEL_LINKS, panhard(280, 280)));
        CornerPosition at = corner.at(WheelPosition.travel(40));
        assertEquals(Math.sqrt(480 * 480 - 40 * 40) - 480, -value(at, CurveOutput.WHEELBASE_CHANGE), 2e-3);
        assertEquals(0, value(at, CurveOutput.CAMBER), 1e-9);
    }

    @Test
    void theRollCentreIsWhereThePanhardRodCrossesTheMiddle() {
        CornerPosition design = corner(Side.LEFT, List.of(LEVEL_LINKS, panhard(300, 260))).at(WheelPosition.DESIGN);
        assertEquals(280, value(design, CurveOutput.ROLL_CENTRE_HEIGHT), 1e-9);
    }

    @Test
    void theRollCentreOfWattsLinkageIsItsPivot() {
        Map<String, String> watt = Map.of("watt.pivot", "0 0 300", "watt.upper.outboard", "0 0 370", "watt.upper.inboard",
                "0 470 370", "watt.lower.outboard", "0 0 230", "watt.lower.inboard", "0 -470 230");
        CornerKinematics corner = corner(Side.RIGHT, List.of(LEVEL_LINKS, watt));
        assertEquals(300, value(corner.at(WheelPosition.DESIGN), CurveOutput.ROLL_CENTRE_HEIGHT), 1e-9);
        // the path leaves the straight line by travel^5 / (8 link^3 crank) only
        double aside = Math.pow(40, 5) / (8 * Math.pow(470, 3) * 70);
        assertEquals(aside, value(corner.at(WheelPosition.travel(40)), CurveOutput.HALF_TRACK_CHANGE), 0.02 * aside);
    }

    @Test
    void convergingLinksPutTheRollCentreAtTheirCrossing() {
        // upper links meet in the plan view at x = 10 - 90 * 320 / 330, the lower ones run along the car and level
        Map<String, String> upper = Map.of("links.upper.inboard", "330 420 400", "links.upper.outboard", "10 90 400",
                "links.lower.inboard", "480 450 210", "links.lower.outboard", "0 450 210");
        CornerPosition design = corner(Side.LEFT, List.of(upper)).at(WheelPosition.DESIGN);
        // the roll axis runs through that crossing, level as the lower links are, so it is as high over the axle
        assertEquals(400, value(design, CurveOutput.ROLL_CENTRE_HEIGHT), 1e-6);
    }

    @Test
    void oneWheelUpTiltsBoth() {
        AngleResponse response = corner(Side.LEFT, List.of(LEVEL_LINKS, panhard(280, 280))).response(List.of());
        double tilt = Math.toDegrees(1 / (2 * 690.0));
        assertEquals(-tilt, response.perMmTravel().camberDeg(), 1e-9);
        assertEquals(tilt, response.perMmTravelAcross().camberDeg(), 1e-9);
    }

    @Test
    void whatDoesNotHoldTheAxleIsRefused() {
        assertEquals("panhard", assertThrows(InvalidInputException.class,
                () -> corner(Side.LEFT, List.of(Axles.TOP_LINK))).field());
        assertEquals("topLink", assertThrows(InvalidInputException.class,
                () -> corner(Side.LEFT, List.of(Axles.PANHARD))).field());
        assertEquals("watt", assertThrows(InvalidInputException.class,
                () -> corner(Side.LEFT, List.of(Axles.TOP_LINK, Axles.PANHARD, Axles.WATT))).field());
    }
}
