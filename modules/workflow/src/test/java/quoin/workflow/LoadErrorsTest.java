package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import quoin.adjustment.Goal;
import quoin.car.AdjusterKind;
import quoin.car.Corner;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.logbook.Measurement;
import quoin.suspension.spi.SuspensionTypes;

/**
 * What scales that were tested leave uncertain in the cross weight, against drawing their errors at random (JCGM 101:2008, 5.9):
 * the factors of the four share one error and have one of their own each, displays step by 0.2 kg.
 */
class LoadErrorsTest {

    private static final int DRAWS = 400_000;
    private static final double STEP_KG = 0.2;
    private static final double SHARED = 0.003;
    private static final double[] OWN = {0.001, 0.002, 0.0015, 0.001};
    private static final double[] FACTORS = {1.004, 0.997, 1.001, 1};
    private static final PerCorner<Double> LOADS = new PerCorner<>(131.0, 149.5, 158.0, 161.5);
    /** The usual spread of a cross weight, which counts like three degrees of freedom, %. */
    private static final double USUAL = 0.1;

    private final OrderOfWork order = new OrderOfWork(PlainStage.day());

    private static Entry.Check test(double shared, double[] own) {
        Map<String, Double> results = new LinkedHashMap<>();
        for (Corner one : Corner.values()) {
            double u = Math.hypot(shared, own[one.ordinal()]);
            results.put(ScaleCorrection.factorKey(one), FACTORS[one.ordinal()]);
            results.put(ScaleCorrection.uncertaintyKey(one), FACTORS[one.ordinal()] * u);
            for (Corner other : Corner.values()) {
                if (other.ordinal() > one.ordinal()) {
                    results.put(ScaleCorrection.correlationKey(one, other), shared * shared / (u * Math.hypot(shared, own[other.ordinal()])));
                }
            }
        }
        return new Entry.Check(new Header(0, Instant.EPOCH, "preparation"), ScaleCorrection.SUBJECT, results,
                new Measurement("known-person", Map.of("LF", "80.4"), "", Map.of()));
    }

    private DayBook tested(Entry.Check test) {
        DayBook book = new DayBook().prepared();
        book.add(test);
        return book.sign(order, "preparation").read("ride-height", DayBook.goodHeights()).sign(order, "ride-height");
    }

    /** Weighs: the displays show the factor times the load, the reading is put right by the test in force. */
    private static void weigh(DayBook book, double crossMore) {
        weigh(book, crossMore, Corner.values());
    }

    private static void weigh(DayBook book, double crossMore, Corner... corners) {
        Map<ReadingId, Double> shown = new LinkedHashMap<>();
        double kg = crossMore / 100 * 600 / 2;
        for (Corner corner : corners) {
            boolean diagonal = corner == Corner.RF || corner == Corner.LR;
            shown.put(DayBook.load(corner), FACTORS[corner.ordinal()] * (LOADS.get(corner) + (diagonal ? kg : -kg)));
        }
        Entry.Reading typed = new Entry.Reading(new Header(0, Instant.EPOCH, "corner-weights"), shown, Map.of(), Entry.Source.RACER);
        book.add(ScaleCorrection.of(book.day()).orElseThrow().applied(typed, STEP_KG));
    }

    private Measured cross(DayBook book) {
        return new ReadingsAt(book.day()).at(DayBook.CROSS, book.size()).orElseThrow();
    }

    /** Standard deviation of the cross weight when the factors, and the displays if wanted, are off at random, %. */
    private static double drawn(double shared, double[] own, boolean displays) {
        Random random = new Random(20);
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < DRAWS; i++) {
            double common = shared * random.nextGaussian();
            double diagonal = 0;
            double total = 0;
            for (Corner corner : Corner.values()) {
                double load = LOADS.get(corner) * (1 + common + own[corner.ordinal()] * random.nextGaussian())
                        + (displays ? STEP_KG * (random.nextDouble() - 0.5) : 0);
                total += load;
                diagonal += corner == Corner.RF || corner == Corner.LR ? load : 0;
            }
            double cross = 100 * diagonal / total;
            sum += cross;
            squares += cross * cross;
        }
        return Math.sqrt(squares / DRAWS - Math.pow(sum / DRAWS, 2));
    }

    @Test
    void crossIsAsUncertainAsItsScales() {
        DayBook book = tested(test(SHARED, OWN));
        weigh(book, 0);
        Measured cross = cross(book);
        double drawn = drawn(SHARED, OWN, true);
        assertEquals(Math.hypot(drawn, USUAL), cross.uncertainty(), 0.004 * cross.uncertainty());
        assertEquals(drawn(SHARED, OWN, false), cross.lasting().uncertainty(), 0.004 * drawn);
        ReadingState state = order.status(book.day()).reading(DayBook.CROSS);
        assertEquals(cross.uncertainty(), state.uncertainty(), 1e-12, "what the verdict is taken on");
        assertEquals(cross.lasting(), state.lasting());
    }

    /** What all four scales read high alike is no error of a share; it is one of the total. */
    @Test
    void whatTheyShareDropsOut() {
        DayBook book = tested(test(0.005, new double[] {1e-6, 1e-6, 1e-6, 1e-6}));
        weigh(book, 0);
        assertEquals(0, cross(book).lasting().uncertainty(), 1e-4);
        assertEquals(0.005 * 600, new ReadingsAt(book.day()).at(ReadingId.ofCar(ReadingKind.TOTAL), book.size()).orElseThrow().lasting()
                .uncertainty(), 1e-4);
        DayBook apart = tested(test(0, OWN));
        weigh(apart, 0);
        assertEquals(drawn(0, OWN, false), cross(apart).lasting().uncertainty(), 1e-3);
    }

    /** The chances of a plan are those of the true cross weight: what the scales are off by is in them, once. */
    @Test
    void chancesKnowThatScalesMayBeOff() {
        double[] none = {1e-9, 1e-9, 1e-9, 1e-9};
        DayBook sure = tested(test(0, none));
        DayBook unsure = tested(test(SHARED, OWN));
        for (DayBook book : List.of(sure, unsure)) {
            weigh(book, 0);
            weigh(book, 0.05);
        }
        double before = forecast(sure);
        double after = forecast(unsure);
        double factors = drawn(SHARED, OWN, false);
        assertEquals(Math.hypot(before, factors), after, 0.03 * after);
        assertEquals(Math.hypot(planned(sure), factors), planned(unsure), 0.03 * after, "what plans are weighed by");
    }

    private static double planned(DayBook book) {
        LegBelief legs = LegBelief.of(book.day()).orElseThrow();
        LegReadings readings = LegReadings.of(book.day(), legs);
        int cross = readings.goals().indexOf(DayBook.CROSS);
        return Math.sqrt(readings.covarianceAfter(new double[legs.adjusters().size()])[cross][cross]);
    }

    /** Standard uncertainty of the true cross weight as the car stands, %. */
    private static double forecast(DayBook book) {
        Goal cross = Goal.cross(50, 0.3);
        LegBelief legs = LegBelief.of(book.day()).orElseThrow();
        return legs.belief().forecast(List.of(cross), new double[legs.adjusters().size()]).get(0).sd();
    }

    /** Four readings are worth four in settling and one in the scales: their error is in each of them. */
    @Test
    void theirErrorCountsOnceHoweverOftenItIsRead() {
        DayBook book = tested(test(SHARED, OWN));
        double[] more = {0, 0.2, -0.1, 0.1};
        double mean = 0.05;
        double spread = 0;
        for (double m : more) {
            weigh(book, m);
            spread += (m - mean) * (m - mean);
        }
        Measured cross = cross(book);
        assertEquals(4, cross.count());
        double repeat2 = (3 * USUAL * USUAL + spread) / 6;
        double step = 100 * STEP_KG / Math.sqrt(12) / 600;
        double factors = drawn(SHARED, OWN, false);
        assertEquals(Math.sqrt(factors * factors + step * step + repeat2 / 4), cross.uncertainty(), 0.003 * cross.uncertainty());
        assertTrue(cross.uncertainty() > factors);
    }

    /** Weighings before a turn tell how the car repeats after it too. */
    @Test
    void theSpreadIsPooledOverTheDay() {
        DayBook book = new DayBook().prepared().sign(order, "preparation").read("ride-height", DayBook.goodHeights())
                .sign(order, "ride-height").read("corner-weights", DayBook.loads(50.0)).read("corner-weights", DayBook.loads(50.4))
                .turn(AdjusterKind.PERCH, Corner.LF, 1).settle().read("corner-weights", DayBook.loads(51));
        Measured cross = cross(book);
        assertEquals(1, cross.count());
        double step = 100 * STEP_KG / Math.sqrt(12) / 600;
        assertEquals(Math.sqrt(step * step + (3 * USUAL * USUAL + 2 * 0.2 * 0.2) / 4), cross.uncertainty(), 1e-4);
        assertEquals(Measured.Lasting.NONE.uncertainty(), cross.lasting().uncertainty(), "scales that were not tested");
    }

    /** The same scales before and after: their error drops out of what changed, another test's does not. */
    @Test
    void aDifferenceOnTheSameScalesIsFreeOfTheirError() {
        DayBook book = tested(test(SHARED, OWN));
        weigh(book, 0);
        Measured before = cross(book);
        book.turn(AdjusterKind.PERCH, Corner.LF, 1).settle();
        weigh(book, 1);
        Measured after = cross(book);
        double own2 = Math.pow(before.uncertainty(), 2) - Math.pow(before.lasting().uncertainty(), 2);
        assertEquals(Math.sqrt(2 * own2), Difference.of(before, after).uncertainty(), 1e-4);
        ObservedTurns turn = ObservedTurns.of(book.day(), new SuspensionTypes(List.of())).stream()
                .filter(o -> o.reading().equals(DayBook.CROSS)).findFirst().orElseThrow();
        assertEquals(after.value() - before.value(), turn.observed().amount(), 1e-9, "one turn");
        assertEquals(Math.sqrt(2 * own2), turn.observed().uncertainty(), 1e-4, "what a turn did is a difference too");
        book.add(test(SHARED, OWN));
        weigh(book, 1);
        Measured other = cross(book);
        assertNotEquals(before.lasting().source(), other.lasting().source());
        assertEquals(Math.hypot(before.uncertainty(), other.uncertainty()), Difference.of(before, other).uncertainty(), 1e-12);
        assertEquals(List.of(1, 1), List.of(before.count(), after.count()));
    }

    /** 131 kg on a scale known to 0.3 % shared and 0.1 % of its own. */
    @Test
    void oneLoadHasTheErrorOfItsScale() {
        DayBook book = tested(test(SHARED, OWN));
        weigh(book, 0);
        Measured load = new ReadingsAt(book.day()).at(DayBook.load(Corner.LF), book.size()).orElseThrow();
        assertEquals(131 * Math.hypot(SHARED, OWN[0]), load.lasting().uncertainty(), 1e-9);
        assertEquals(cross(book).lasting().source(), load.lasting().source(), "the same test");
        assertEquals(Measured.Lasting.NONE, new ReadingsAt(book.day()).at(DayBook.height(Corner.LF), book.size()).orElseThrow().lasting());
    }

    /** The front wheels weighed under one test and the rear ones under the next: each pair shares an error, the pairs none. */
    @Test
    void loadsOfTwoTestsShareNoError() {
        DayBook book = tested(test(SHARED, OWN));
        weigh(book, 0);
        book.add(test(SHARED, OWN));
        weigh(book, 0);
        book.withdraw(book.size());
        weigh(book, 0, Corner.LR, Corner.RR);
        double cross = (149.5 + 158) / 600;
        double own = 0;
        double[] shared = new double[2];
        for (Corner corner : Corner.values()) {
            boolean diagonal = corner == Corner.RF || corner == Corner.LR;
            double part = LOADS.get(corner) * ((diagonal ? 1 : 0) - cross) / 6;
            own += Math.pow(part * OWN[corner.ordinal()], 2);
            shared[corner.axle().ordinal()] += part * SHARED;
        }
        assertEquals(Math.sqrt(own + shared[0] * shared[0] + shared[1] * shared[1]), cross(book).lasting().uncertainty(), 1e-9);
        assertEquals("", cross(book).lasting().source(), "no one test stands for it");
    }

    /** A reading that names a test which came after it was not put right by that one. */
    @Test
    void aReadingIsPutRightByAnEarlierTestOnly() {
        DayBook book = tested(test(SHARED, OWN));
        Measurement later = new Measurement(ScaleCorrection.METHOD, Map.of("test", Integer.toString(book.size() + 2)), "", Map.of());
        book.add(new Entry.Reading(new Header(0, Instant.EPOCH, "corner-weights"), DayBook.loads(50), Map.of(), Entry.Source.RACER, Optional.of(later)));
        int read = book.size();
        book.add(test(SHARED, OWN));
        assertEquals(Measured.Lasting.NONE, new ReadingsAt(book.day()).at(DayBook.load(Corner.LF), read).orElseThrow().lasting());
    }
}
