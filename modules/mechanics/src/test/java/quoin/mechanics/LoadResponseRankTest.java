package quoin.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.ejml.simple.SimpleMatrix;
import org.ejml.simple.SimpleSVD;
import org.junit.jupiter.api.Test;
import quoin.car.Corner;
import quoin.car.PerCorner;

/** Singular values of "perch turns move loads", by a general-purpose linear algebra library (EJML). */
class LoadResponseRankTest {
    private static final OptionalDouble RIGID = OptionalDouble.empty();

    private static double[] singularValues(double cgHeight, List<LoadInput> inputs) {
        return svd(cgHeight, inputs).getSingularValues();
    }

    private static SimpleSVD<SimpleMatrix> svd(double cgHeight, List<LoadInput> inputs) {
        CarModel car = TestCars.formula(RIGID, cgHeight);
        List<Sensitivity> all = CornerLoads.sensitivities(car, Turns.NONE, inputs);
        SimpleMatrix response = new SimpleMatrix(4, all.size());
        for (int column = 0; column < all.size(); column++) {
            for (Corner c : Corner.values()) {
                response.set(c.ordinal(), column, all.get(column).loadsKgf().get(c));
            }
        }
        return response.svd();
    }

    /** Four loads and three equations of balance: one freedom is left for whatever is turned or shimmed. */
    @Test
    void oneFreedomWithTheCentreOfGravityInTheRoad() {
        for (List<LoadInput> inputs : List.of(CornerLoads.ADJUSTERS, List.of(LoadInput.PAD_HEIGHT), List.of(LoadInput.values()))) {
            double[] values = singularValues(0, inputs);
            assertTrue(values[0] > 1);
            assertEquals(0, values[1] / values[0], 1e-12);
        }
    }

    /** The freedom that is left is n = (1/tf, -1/tf, -1/tr, 1/tr). */
    @Test
    void theFreedomIsTheTransferVector() {
        SimpleMatrix u = svd(0, CornerLoads.ADJUSTERS).getU().extractVector(false, 0);
        PerCorner<Double> n = TestCars.flat(90, 70, RIGID).transferVectorPerMm();
        for (Corner c : Corner.values()) {
            assertEquals(n.get(c) / n.lf(), u.get(c.ordinal()) / u.get(0), 1e-12);
        }
    }

    /** The smallest perch moves that make a couple of -20000 N mm, by the pseudo-inverse; recomputed independently. */
    @Test
    void smallestMovesForAGivenCouple() {
        CarModel car = TestCars.formula(RIGID, 0);
        List<Sensitivity> perches = CornerLoads.sensitivities(car, Turns.NONE, List.of(LoadInput.PERCH));
        PerCorner<Double> wanted = TestCars.flat(90, 70, RIGID).loadChangeN(-20000);
        SimpleMatrix response = new SimpleMatrix(4, 4);
        SimpleMatrix change = new SimpleMatrix(4, 1);
        for (Corner c : Corner.values()) {
            change.set(c.ordinal(), 0, wanted.get(c));
            for (Corner moved : Corner.values()) {
                response.set(c.ordinal(), moved.ordinal(),
                        KilogramForce.toNewtons(perches.get(moved.ordinal()).loadsKgf().get(c)));
            }
        }
        double[] moves = response.pseudoInverse().mult(change).getDDRM().data;
        double[] expected = {-0.167783, 0.167783, 0.173490, -0.173490};
        for (int i = 0; i < expected.length; i++) {
            assertEquals(expected[i], moves[i], 6e-7);
        }
    }

    /**
     * A centre of gravity above the road moves as the body leans: roll and pitch each add a freedom that grows with the
     * height, to a hundredth of the first one. The fourth never opens: the total is the weight.
     */
    @Test
    void twoMoreFreedomsGrowWithTheHeight() {
        double[] atHundred = singularValues(100, CornerLoads.ADJUSTERS);
        for (double height : new double[] {50, 200, 300, 400}) {
            double[] values = singularValues(height, CornerLoads.ADJUSTERS);
            for (int freedom = 1; freedom <= 2; freedom++) {
                assertEquals(height / 100, values[freedom] / atHundred[freedom], 0.12 * height / 100, height + " mm");
                assertTrue(values[freedom] / values[0] < 0.05 && values[freedom] > 1e-4, height + " mm");
            }
            assertEquals(0, values[3] / values[0], 1e-12);
        }
    }
}
