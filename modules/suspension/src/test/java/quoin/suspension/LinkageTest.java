package quoin.suspension;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import quoin.mechanics.InvalidInputException;
import quoin.mechanics.SpacePoint;

/** A linkage put together by hand, as the author of a type does. */
class LinkageTest {
    private static final Wheel WHEEL = Wheel.ofAngles(new SpacePoint(0, 700, 300), -1, 0.1, 300);

    private static Linkage swingAxle(Side side) {
        Linkage linkage = new Linkage(side, WHEEL);
        linkage.hinge(new SpacePoint(200, 60, 280), new SpacePoint(-200, 60, 280));
        linkage.coil("coilOver", new SpacePoint(0, 400, 600), linkage.carrier(new SpacePoint(0, 450, 290)));
        return linkage;
    }

    @Test
    void aSwingAxleTiltsItsWheelWithItsArm() {
        CornerKinematics corner = swingAxle(Side.RIGHT).build();
        double arm = Math.hypot(640, 20);
        double start = Math.atan2(20, 640);
        for (double travel : new double[] {-60, -10, 25, 70}) {
            double turned = Math.asin((20 + travel) / arm) - start;
            CornerPosition at = corner.at(WheelPosition.travel(travel));
            // toe makes the tilt to the vertical a little less than the turn in the front view
            double tilt = -1 - Math.toDegrees(turned);
            assertEquals(tilt, at.value(CurveOutput.CAMBER).orElseThrow(), 2e-5);
            assertEquals(-(60 + arm * Math.cos(start + turned)), at.wheelCentre().orElseThrow().yMm(), 1e-8);
        }
    }

    @Test
    void theRollCentreOfASwingAxleIsOnTheLineThroughItsPivot() {
        CornerPosition design = swingAxle(Side.LEFT).build().at(WheelPosition.DESIGN);
        SpacePoint contact = design.contactPoint().orElseThrow();
        double slope = (280 - contact.zMm()) / (contact.yMm() - 60);
        assertEquals(slope * contact.yMm(), design.value(CurveOutput.ROLL_CENTRE_HEIGHT).orElseThrow(), 1e-9);
    }

    @Test
    void aWheelLeftLooseIsRefused() {
        Linkage loose = new Linkage(Side.LEFT, WHEEL);
        loose.link("links.one", new SpacePoint(0, 300, 200), new SpacePoint(0, 650, 200));
        assertThrows(IllegalArgumentException.class, loose::build);
    }

    @Test
    void linksThatLockAreRefused() {
        Linkage parallel = new Linkage(Side.LEFT, WHEEL);
        for (int i = 0; i < 5; i++) {
            // five links in one plane hold neither the third direction nor a turn
            parallel.link("links.link" + i, new SpacePoint(40 * i, 300, 200), new SpacePoint(40 * i, 650, 200));
        }
        assertEquals("links", assertThrows(InvalidInputException.class, parallel::build).field());
    }

    @Test
    void theSameJointTwiceIsRefusedByItsName() {
        Linkage linkage = new Linkage(Side.LEFT, WHEEL);
        SpacePoint point = new SpacePoint(0, 300, 200);
        assertEquals("links.tie.outboard",
                assertThrows(InvalidInputException.class, () -> linkage.link("links.tie", point, point)).field());
    }

    @Test
    void aWheelThatPointsTheWrongWayIsRefused() {
        SpacePoint centre = new SpacePoint(0, 700, 300);
        assertEquals("loadedRadius_mm", assertThrows(InvalidInputException.class,
                () -> new Wheel(centre, new SpacePoint(0, 1, 0), 0)).field());
        assertEquals("spinAxisOutboardUnitVector", assertThrows(InvalidInputException.class,
                () -> new Wheel(centre, new SpacePoint(0, -1, 0), 300)).field());
        assertEquals("wheelCentre", assertThrows(InvalidInputException.class,
                () -> new Wheel(new SpacePoint(0, -700, 300), new SpacePoint(0, 1, 0), 300)).field());
    }

    @Test
    void positionsComeInTheOrderAsked() {
        List<CornerPosition> found = swingAxle(Side.LEFT).build().along(List.of(WheelPosition.travel(20), WheelPosition.travel(-5)));
        assertEquals(List.of(20.0, -5.0), found.stream().map(p -> p.position().travelMm()).toList());
    }
}
