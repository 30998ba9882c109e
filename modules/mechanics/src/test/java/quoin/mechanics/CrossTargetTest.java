package quoin.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import quoin.car.PerCorner;

/** Three rules for cross weight. Derived, recomputed independently, unless a source is named. */
class CrossTargetTest {
    private static final PerCorner<Double> LOADS = new PerCorner<>(1480.0, 1420.0, 1320.0, 1175.0);

    private static CrossTarget target(CrossTarget.Kind kind, double track) {
        List<CrossTarget> all = CrossTarget.all(LOADS, CentreOfGravity.contactPoints(2675, 1520, track));
        return all.stream().filter(t -> t.kind() == kind).findFirst().orElseThrow();
    }

    @Test
    void equalDiagonalsIsTheWorkedCorrection() {
        CrossTarget target = target(CrossTarget.Kind.EQUAL_DIAGONALS, 1470);
        assertEquals(1500.895, target.loadsKgf().lf(), 6e-4);
        assertEquals(1399.105, target.loadsKgf().rf(), 6e-4);
        assertEquals(1298.395, target.loadsKgf().lr(), 6e-4);
        assertEquals(1196.605, target.loadsKgf().rr(), 6e-4);
        assertEquals(50, target.shares().crossPercent(), 1e-12);
        assertEquals(53.753475, target.shares().frontPercent(), 6e-7);
        assertEquals(51.886734, target.shares().leftPercent(), 6e-7);
    }

    @Test
    void equalFrontsWithUnlikeTracks() {
        CrossTarget target = target(CrossTarget.Kind.EQUAL_FRONTS, 1470);
        assertEquals(1450, target.loadsKgf().lf(), 1e-9);
        assertEquals(1450, target.loadsKgf().rf(), 1e-9);
        assertEquals(1351.020, target.loadsKgf().lr(), 6e-4);
        assertEquals(1143.980, target.loadsKgf().rr(), 6e-4);
        assertEquals(51.9188, target.shares().crossPercent(), 6e-5);
        assertEquals(target.shares().leftPercent(), target.shares().crossPercent(), 1e-12);
    }

    @Test
    void sameFrontShareFollowsItsFormula() {
        Shares shares = target(CrossTarget.Kind.SAME_FRONT_SHARE, 1520).shares();
        double f = shares.frontPercent() / 100;
        double l = shares.leftPercent() / 100;
        assertEquals(49.8574, shares.crossPercent(), 6e-5);
        assertEquals(100 * (f + l - 2 * f * l), shares.crossPercent(), 1e-11);
        PerCorner<Double> loads = target(CrossTarget.Kind.SAME_FRONT_SHARE, 1470).loadsKgf();
        assertEquals(loads.lf() / loads.lr(), loads.rf() / loads.rr(), 1e-12);
    }

    /** A spring maker's printed example: left 1364 lb, right 1191 lb, front fractions 52.8 and 49.0 to their mean. */
    @Test
    void publishedExampleOfTheSameFrontShare() {
        double left = 1364;
        double right = 1191;
        PerCorner<Double> now = new PerCorner<>(0.528 * left, 0.490 * right, 0.472 * left, 0.510 * right);
        double total = left + right;
        double share = 0.509;
        // Bring the front share to the printed mean first; the rule then splits each side by it.
        Shares mean = new Shares(total, 100 * share, 100 * left / total, Shares.of(now).crossPercent());
        CrossTarget target = CrossTarget.all(mean.loadsKgf(), CentreOfGravity.contactPoints(2700, 1500, 1500)).get(2);
        assertEquals(694.276, target.loadsKgf().lf(), 6e-4);
        assertEquals(606.219, target.loadsKgf().rf(), 6e-4);
        assertEquals(669.724, target.loadsKgf().lr(), 6e-4);
        assertEquals(584.781, target.loadsKgf().rr(), 6e-4);
        assertEquals(1276, target.loadsKgf().rf() + target.loadsKgf().lr(), 0.5);
        assertEquals(1279, target.loadsKgf().lf() + target.loadsKgf().rr(), 0.5);
        assertEquals(49.9391, target.shares().crossPercent(), 6e-5);
    }

    /** Only a car with half its weight on the left can have all three rules agree, at 50 %. */
    @Test
    void theRulesAgreeAtHalfTheWeightLeft() {
        PerCorner<PlanPoint> square = CentreOfGravity.contactPoints(2675, 1500, 1500);
        PerCorner<Double> even = new Shares(1000, 46, 50, 53).loadsKgf();
        CrossTarget.all(even, square).forEach(t -> assertEquals(50, t.shares().crossPercent(), 1e-12, t.kind().name()));
        PerCorner<Double> heavyLeft = new Shares(1000, 46, 52, 53).loadsKgf();
        assertEquals(List.of(50.0, 52.0, 50.16), CrossTarget.all(heavyLeft, square).stream()
                .map(t -> Math.round(1e9 * t.shares().crossPercent()) / 1e9).toList());
    }

    @Test
    void anyWantedCross() {
        PerCorner<Double> loads = CrossTarget.loadsAtCrossKgf(LOADS, TestCars.CONTACTS, 48.5);
        assertEquals(48.5, Shares.of(loads).crossPercent(), 1e-12);
        assertEquals(CentreOfGravity.inPlan(LOADS, TestCars.CONTACTS).yMm(),
                CentreOfGravity.inPlan(loads, TestCars.CONTACTS).yMm(), 1e-9);
    }
}
