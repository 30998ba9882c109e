package quoin.preparation.scales;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quoin.car.Corner;
import quoin.car.PerCorner;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.mechanics.ScaleFactors;
import quoin.preparation.sheet.Cell;
import quoin.preparation.sheet.Figures;
import quoin.preparation.standing.CarOnPads;
import quoin.quantities.UnitPreferences;
import quoin.rehearsal.Ouzel23;

/** Tests of scales as they are typed, and weighing with fewer than four. */
class ScalesTest {

    private static final UnitPreferences KG = UnitPreferences.metric();
    private static final double[] FACTORS = {1.004, 0.997, 1.001, 1.0};
    private static final double[] LOADS = {107.9, 93.2, 122.8, 146.2};
    private static final CarOnPads CAR = CarOnPads.of(Day.of(List.of(new Entry.CarDescribed(new Header(1, Instant.EPOCH, ""), Ouzel23.car()))));

    private static Figures typed(java.util.stream.Stream<Cell> cells, Map<String, Double> values) {
        Map<String, String> texts = new HashMap<>();
        values.forEach((k, v) -> texts.put(k, String.format(java.util.Locale.ROOT, "%.9f", v)));
        Figures figures = Figures.read(cells, texts, KG);
        assertEquals(Map.of(), figures.problems());
        return figures;
    }

    private static Figures twice(ScaleTest test, java.util.function.UnaryOperator<Corner> second) {
        Map<String, Double> values = new HashMap<>();
        for (Corner wheel : Corner.values()) {
            values.put(wheel + ".first", FACTORS[wheel.ordinal()] * LOADS[wheel.ordinal()]);
            values.put(wheel + ".second", FACTORS[second.apply(wheel).ordinal()] * LOADS[wheel.ordinal()]);
        }
        return typed(test.lines().cells(), values);
    }

    private static double ratio(ScaleFactors found, Corner one, Corner two) {
        return found.factors().get(one.ordinal()) / found.factors().get(two.ordinal());
    }

    @Test
    void personOnEachScaleTellsEachFactor() {
        Map<String, Double> values = new HashMap<>(Map.of(ScaleTest.MASS, 80.0));
        for (Corner corner : Corner.values()) {
            values.put(corner + ".first", FACTORS[corner.ordinal()] * 80);
        }
        Figures figures = typed(ScaleTest.PERSON.lines().cells(), values);
        assertTrue(figures.hasAll(ScaleTest.PERSON.needed()), "the edge may stay blank");
        ScaleFactors found = ScaleTest.PERSON.solve(figures, null, 0.005, 0.1, 0.5);
        for (Corner corner : Corner.values()) {
            assertEquals(FACTORS[corner.ordinal()], found.factors().get(corner.ordinal()), 6e-4);
        }
    }

    @Test
    void exchangedScalesTellTheirRatioAndOnlyTheirs() {
        ScaleTest.Pair pair = new ScaleTest.Pair(Corner.LF, Corner.RF);
        ScaleFactors found = ScaleTest.SWAP.solve(twice(ScaleTest.SWAP, pair::other), pair, 0.05, 0.1, 0.2);
        assertEquals(1.004 / 0.997, ratio(found, Corner.LF, Corner.RF), 1e-4);
        assertEquals(1, found.factors().get(Corner.RR.ordinal()), 1e-9);
        assertTrue(found.standard().get(Corner.RR.ordinal()) > 0.049);
        assertEquals(6, ScaleTest.Pair.all().size());
    }

    /** Turned round, each wheel stands on the scale of the opposite corner. */
    @Test
    void carTurnedRoundTellsTheDiagonals() {
        ScaleFactors found = ScaleTest.TURN.solve(twice(ScaleTest.TURN, Corner::diagonal), null, 0.05, 0.1, 0.2);
        assertEquals(1.004 / 1.0, ratio(found, Corner.LF, Corner.RR), 1e-4);
        assertEquals(0.997 / 1.001, ratio(found, Corner.RF, Corner.LR), 1e-4);
    }

    @Test
    void twoScalesUnderAWheelLessThePlank() {
        Map<String, Double> values = new HashMap<>(Map.of("plank", 3.5));
        for (Corner corner : Corner.values()) {
            values.put(corner.name(), 60.0 + corner.ordinal());
            values.put(corner + ".b", 50.0);
        }
        Figures figures = typed(FewerScales.TWO_UNDER.lines().cells(), values);
        assertTrue(figures.hasAll(FewerScales.TWO_UNDER.needed()));
        assertEquals(new PerCorner<>(106.5, 107.5, 108.5, 109.5), FewerScales.TWO_UNDER.loadsKg(figures, CAR));
        assertEquals(0.2 / 2, FewerScales.TWO_UNDER.uncertaintyKg(0.2).get(Corner.LF), 1e-12, "sqrt(3) * 0.2 / sqrt(12)");
    }

    /** What blocks 2 mm high do to this car is put on and must come off again; the sum is that of the four true loads. */
    @Test
    void blocksOfAnotherHeightAreTakenOut() {
        for (FewerScales way : List.of(FewerScales.ONE_ROUND, FewerScales.AXLE_BY_AXLE, FewerScales.SIDE_BY_SIDE)) {
            Map<String, Double> values = new HashMap<>(Map.of("block", 2.0));
            for (Corner corner : Corner.values()) {
                PerCorner<Double> heights = PerCorner.of(o -> switch (way) {
                    case ONE_ROUND -> o == corner ? 0.0 : 2.0;
                    case AXLE_BY_AXLE -> o.axle() == corner.axle() ? 0.0 : 2.0;
                    default -> o.isLeft() == corner.isLeft() ? 0.0 : 2.0;
                });
                values.put(corner.name(), LOADS[corner.ordinal()] + CAR.loadChangeKg(heights).get(corner));
            }
            PerCorner<Double> found = way.loadsKg(typed(way.lines().cells(), values), CAR);
            for (Corner corner : Corner.values()) {
                assertEquals(LOADS[corner.ordinal()], found.get(corner), 1e-8, way + " " + corner);
            }
            boolean warps = Math.abs(values.get("LF") - LOADS[0]) > 0.5;
            assertEquals(way == FewerScales.ONE_ROUND, warps, way + ": only one low pad warps the floor");
        }
    }

    /** OIML R 76-1:2006 table 6 and 3.5.2: 120 kg in steps of 0.1 kg are 1200 steps, 2 e in service. */
    @Test
    void classesSayWhatAScaleMayBeOffBy() {
        assertEquals(0.2, Accuracy.CLASS_III.limitKg(120, 0.1).getAsDouble(), 1e-12);
        assertEquals(0.2 / 120 / Math.sqrt(3), Accuracy.CLASS_III.relative(120, 0.1), 1e-12);
        assertTrue(Accuracy.UNMARKED.limitKg(120, 0.1).isEmpty());
        String said = new ScaleWords(KG).limit(Accuracy.CLASS_III, 120, 0.1);
        assertTrue(said.contains("\u00b1 0.20 kg at 120.0 kg"), said);
        assertTrue(said.endsWith("NIST Handbook 44 allows \u00b1 0.20 kg."), said);
        assertEquals(0.3, Accuracy.CLASS_III.handbookLimitKg(300, 0.1).getAsDouble(), 1e-12, "3 d to 4000 d");
        assertEquals(0.5, Accuracy.CLASS_III.handbookLimitKg(400.1, 0.1).getAsDouble(), 1e-12, "5 d beyond");
        assertFalse(new ScaleWords(KG).limit(Accuracy.UNMARKED, 120, 0.1).contains("OIML"));
    }
}
