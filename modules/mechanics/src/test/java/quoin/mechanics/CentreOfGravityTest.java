package quoin.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import quoin.car.PerCorner;

/** Shares and centre of gravity. Examples 2A to 2D: derived, recomputed independently; loads in N cancel in shares. */
class CentreOfGravityTest {
    private static final PerCorner<Double> LOADS = new PerCorner<>(1480.0, 1420.0, 1320.0, 1175.0);

    @Test
    void example2aSharesAndPlan() {
        Shares shares = Shares.of(LOADS);
        assertEquals(5395, shares.totalKgf(), 1e-9);
        assertEquals(53.7535, shares.frontPercent(), 6e-5);
        assertEquals(51.8999, shares.leftPercent(), 6e-5);
        assertEquals(50.7878, shares.crossPercent(), 6e-5);
        PlanPoint cg = CentreOfGravity.inPlan(LOADS, TestCars.CONTACTS);
        assertEquals(-1237.09, cg.xMm(), 6e-3);
        assertEquals(1437.91, cg.xMm() + 2675, 6e-3);
        assertEquals(28.2067, cg.yMm(), 6e-5);
    }

    /** Common practice, no source: a light car with driver, as a racer's sheet shows it. */
    @Test
    void lightCarShares() {
        Shares shares = Shares.of(new PerCorner<>(90.0, 101.0, 146.0, 132.0));
        assertEquals(469, shares.totalKgf(), 0);
        assertEquals(19.2, 100 * 90 / shares.totalKgf(), 0.05);
        assertEquals(21.5, 100 * 101 / shares.totalKgf(), 0.05);
        assertEquals(40.7, shares.frontPercent(), 0.05);
        assertEquals(59.3, shares.rearPercent(), 0.05);
        assertEquals(50.3, shares.leftPercent(), 0.05);
        assertEquals(49.7, shares.rightPercent(), 0.05);
        assertEquals(52.7, shares.crossPercent(), 0.05);
        assertEquals(47.3, shares.otherDiagonalPercent(), 0.05);
    }

    /** Published axle distances 1.425 and 1.029 m from the centre of gravity (Beckman, Physics of Racing, part 27). */
    @Test
    void levelBalanceOfTwoAxles() {
        PerCorner<PlanPoint> points = CentreOfGravity.contactPoints(2454, 1500, 1500);
        double front = 0.419315;
        PerCorner<Double> loads = new PerCorner<>(front / 2, front / 2, (1 - front) / 2, (1 - front) / 2);
        assertEquals(-1425, CentreOfGravity.inPlan(loads, points).xMm(), 0.01);
    }

    @Test
    void sharesAndLoadsAreInverse() {
        PerCorner<Double> again = Shares.of(LOADS).loadsKgf();
        LOADS.zip(again, (a, b) -> {
            assertEquals(a, b, 1e-9);
            return a;
        });
    }

    @Test
    void example2bEqualRadii() {
        AxleLift lift = new AxleLift(10000, 5000, 5148.335416, 2500, 300, 300, 600);
        assertEquals(13.8865, lift.liftAngleDeg(), 6e-5);
        assertEquals(450.000, lift.cgHeightMm(), 1e-5);
        assertEquals(450.000, lift.cgHeightTextbookMm(), 1e-5);
        AxleLift heavier = new AxleLift(10000, 5000, 5149.335416, 2500, 300, 300, 600);
        assertEquals(1.01122, heavier.cgHeightMm() - lift.cgHeightMm(), 6e-6);
        AxleLift higher = new AxleLift(10000, 5000, 5148.335416, 2500, 300, 300, 600.01);
        assertEquals(-0.265280, (higher.cgHeightMm() - lift.cgHeightMm()) / 0.01, 1e-5);
    }

    @Test
    void example2cUnequalRadii() {
        AxleLift lift = new AxleLift(5395, 5395 * (2675 - 1498) / 2675.0, 2385.604992, 2675, 272, 285, 500);
        assertEquals(10.777853, lift.liftAngleDeg(), 6e-7);
        assertEquals(310.000, lift.cgHeightMm(), 1e-5);
        assertEquals(310.028446, handbook(lift), 1e-5);
    }

    /** A handbook's formula takes the level share in the term of the radii; it is off by (Rr - Rf)(N - N0)/W exactly. */
    private static double handbook(AxleLift lift) {
        double transferred = (lift.frontLiftedKgf() - lift.frontLevelKgf()) / lift.totalKgf();
        return lift.cgHeightMm() + transferred * (lift.rearWheelCentreMm() - lift.frontWheelCentreMm());
    }

    @Test
    void example2dUnequalRadii() {
        double level = 14000 * (2794 - 1400) / 2794.0;
        AxleLift lift = new AxleLift(14000, level, level + 171.106965, 2794, 330, 380, 457.2);
        assertEquals(9.432079, lift.liftAngleDeg(), 6e-7);
        assertEquals(560.000, lift.cgHeightMm(), 1e-5);
        assertEquals(560.611096, handbook(lift), 1e-5);
    }

    /** Published example: lifting 18 in on a wheelbase of 110 in makes a slope of 0.1659, not 18/110. */
    @Test
    void theSlopeIsTheTangent() {
        AxleLift lift = new AxleLift(1000, 500, 510, 110 * 25.4, 300, 300, 18 * 25.4);
        assertEquals(0.165872, Math.tan(Math.toRadians(lift.liftAngleDeg())), 6e-7);
    }

    /** Contract example, worked out by an independent program. */
    @Test
    void contractExample() {
        ContractExample example = ContractExample.read("cg-height");
        var in = example.input();
        AxleLift lift = new AxleLift(in.get("total_kgf").asDouble(), in.get("frontAxleLevel_kgf").asDouble(),
                in.get("frontAxleRearLifted_kgf").asDouble(), in.get("wheelbase_mm").asDouble(),
                in.get("frontWheelCentreHeight_mm").asDouble(), in.get("rearWheelCentreHeight_mm").asDouble(),
                in.get("rearLift_mm").asDouble());
        assertEquals(example.expected().get("cgHeight_mm").asDouble(), lift.cgHeightMm(), 1e-8);
        assertEquals(example.expected().get("cgHeightTextbook_mm").asDouble(), lift.cgHeightTextbookMm(), 1e-8);
        assertEquals(example.expected().get("cgAheadOfRearAxle_mm").asDouble(), lift.cgAheadOfRearAxleMm(), 1e-8);
        assertEquals(example.expected().get("liftAngle_deg").asDouble(), lift.liftAngleDeg(), 1e-9);
    }

    @Test
    void refusesByName() {
        assertEquals("rearLift_mm", assertThrows(InvalidInputException.class,
                () -> new AxleLift(1000, 500, 510, 2500, 300, 300, 2600)).field());
        assertEquals("frontAxleRearLifted_kgf", assertThrows(InvalidInputException.class,
                () -> new AxleLift(1000, 500, 1000, 2500, 300, 300, 600)).field());
        assertEquals("total_kgf", assertThrows(InvalidInputException.class,
                () -> new AxleLift(Double.NaN, 500, 510, 2500, 300, 300, 600)).field());
        assertEquals("cornerLoads_kgf.LR", assertThrows(InvalidInputException.class,
                () -> Shares.of(new PerCorner<>(1.0, 1.0, Double.NaN, 1.0))).field());
    }
}
