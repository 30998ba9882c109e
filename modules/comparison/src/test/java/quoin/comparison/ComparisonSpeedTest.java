package quoin.comparison;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quoin.car.AdjusterKind;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.logbook.Day;
import quoin.workflow.CarState;
import quoin.workflow.StateComparison;

/** Two long days of some hundred entries each are compared, from entries to lines, well inside what a person notices. */
class ComparisonSpeedTest {

    private static final double MOST_MS = 50;
    private static final int ROUNDS = 60;

    private static Day longDay(double camber) {
        Book book = new Book();
        for (int round = 0; round < ROUNDS; round++) {
            Map<ReadingId, Double> all = new LinkedHashMap<>(Book.loads(50 + 0.01 * (round % 7)));
            all.putAll(Book.angles(camber, 0.1));
            book.read(all).condition("settled", "yes").read(all).turn(AdjusterKind.PERCH, Corner.values()[round % 4], 0.125);
        }
        return book.day();
    }

    @Test
    void twoLongDaysInLessThanFiftyMilliseconds() {
        Day one = longDay(-2);
        Day other = longDay(-2.3);
        double best = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 20; i++) {
            long start = System.nanoTime();
            StateComparison compared = StateComparison.of(CarState.at("a", one, one.revision()), CarState.at("b", other, other.revision()),
                    StateComparison.Part.ALL);
            best = Math.min(best, (System.nanoTime() - start) / 1e6);
            assertTrue(compared.lines().size() > 12);
        }
        System.out.printf("comparison of two days of %d entries: %.2f ms%n", one.written().size(), best);
        assertTrue(best < MOST_MS, "took " + best + " ms");
    }
}
