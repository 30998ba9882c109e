package quoin.preparation.pads;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import quoin.car.Car;
import quoin.car.PerCorner;
import quoin.car.Setting;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.GaragePlace;
import quoin.logbook.Header;
import quoin.mechanics.PadSurvey;
import quoin.preparation.sheet.Figures;
import quoin.preparation.standing.CarOnPads;
import quoin.quantities.DecimalMark;
import quoin.quantities.UnitPreferences;
import quoin.rehearsal.Ouzel23;

/** Surveys by each method, what they cost this car, and what is said of them. */
class PadsTest {

    private static final UnitPreferences MM = UnitPreferences.metric();
    private static final Car CAR = Ouzel23.car();
    private static final PadAdvice.Wanted PLANE = new PadAdvice.Wanted(false, 0.5, 1, List.of(new Setting.Shim(0.5, 4), new Setting.Shim(1, 2)));

    private static Figures typed(PadMethod method, String... texts) {
        Map<String, String> byKey = new HashMap<>();
        List<String> keys = method.keys();
        for (int i = 0; i < texts.length; i++) {
            byKey.put(keys.get(i), texts[i]);
        }
        return Figures.read(method.lines().cells(), byKey, MM);
    }

    private static Day day(Entry... entries) {
        List<Entry> all = new java.util.ArrayList<>(List.of(new Entry.CarDescribed(new Header(1, Instant.EPOCH, ""), CAR)));
        all.addAll(List.of(entries));
        return Day.of(all);
    }

    /** Water stands level: the bigger the reading on the rule, the lower the pad. */
    @Test
    void biggerReadingIsALowerPad() {
        Figures figures = typed(PadMethod.WATER_LEVEL, "100", "103", "101.5", "100");
        assertEquals(new PerCorner<>(3.0, 0.0, 1.5, 3.0), PadMethod.WATER_LEVEL.heightsMm(figures));
        assertEquals(OptionalDouble.empty(), PadMethod.WATER_LEVEL.closingErrorMm(figures));
        assertEquals(PadMethod.WATER_LEVEL.heightsMm(figures), PadMethod.RULE.heightsMm(typed(PadMethod.RULE, "100", "103", "101.5", "100")));
    }

    /** RF 2 above LF, RR 1 above RF, RR 4 above LR, LR 1 below LF: closes. */
    @Test
    void levelFromPadToPadOnceRound() {
        Figures figures = typed(PadMethod.LEVEL_BETWEEN, "2", "1", "4", "-1");
        assertEquals(new PerCorner<>(1.0, 3.0, 0.0, 4.0), PadMethod.LEVEL_BETWEEN.heightsMm(figures));
        assertEquals(0, PadMethod.LEVEL_BETWEEN.closingErrorMm(figures).getAsDouble(), 1e-12);
        assertEquals(0.5, PadMethod.LEVEL_BETWEEN.warpUncertaintyMm(typed(PadMethod.LEVEL_BETWEEN, "3", "1", "4", "-1"), 0.1), 1e-12,
                "1 mm of closing error over four readings");
    }

    @Test
    void whatCannotBeReadIsNamed() {
        Figures figures = typed(PadMethod.WATER_LEVEL, "100", "1o3");
        assertFalse(figures.hasAll(PadMethod.WATER_LEVEL.keys()));
        assertTrue(figures.problem().orElseThrow().startsWith("RF, reading on the rule:"), figures.problem().toString());
    }

    /**
     * The linear closed form for a rigid body on four springs in series with their tyres: cross = warp at LF / sum of the squares of the
     * transfer vector times each compliance. The exact solution stays within 2 % of it.
     */
    @Test
    void oneMillimetreOnThisCar() {
        double exact = CarOnPads.of(day()).crossChangePercent(new PerCorner<>(1.0, 0.0, 0.0, 0.0));
        var assumed = quoin.car.Assumptions.complete(CAR);
        PerCorner<Double> n = new PadSurvey(CarOnPads.pads(CAR), PerCorner.all(0.0)).transferVector();
        double compliance = 0;
        for (quoin.car.Corner corner : quoin.car.Corner.values()) {
            var c = assumed.corners().get(corner);
            compliance += n.get(corner) * n.get(corner) * (1 / c.wheelRateNPerMm() + 1 / c.tyreRateNPerMm());
        }
        double moved = (n.rf() + n.lr()) / compliance / 9.80665 / assumed.totalKg() * 100;
        assertEquals(1, exact / moved, 0.02, exact + " against " + moved);
        assertTrue(exact < 0, "a high LF takes load off RF and LR");
        assertEquals(0, CarOnPads.of(day()).crossChangePercent(new PerCorner<>(0.0, 4.0, 0.0, 4.0)), 0.02, "a tilt is no warp");
    }

    @Test
    void adviceSaysWarpCostAndShims() {
        PadSurvey survey = new PadSurvey(CarOnPads.pads(CAR), new PerCorner<>(2.0, 2.0, 2.0, 0.0));
        PadAdvice advice = PadAdvice.of(survey, 0.3, OptionalDouble.empty(), PLANE, CarOnPads.of(day()));
        assertEquals(List.of(1.0, 1.0), advice.plan().shimsMm().rr());
        assertTrue(advice.crossPercent() > 0.4 && advice.crossPercent() < 0.6, "2 mm low: " + advice.crossPercent());
        assertEquals(0, advice.crossAfterPercent(), 0.01);
        PadWords words = new PadWords(MM);
        String said = String.join(" ", words.survey(advice, PLANE, 0.14));
        assertTrue(said.startsWith("2.0 mm of warp (\u00b1 0.6 mm) = 0.") && said.contains("RF and LR stand high."), said);
        assertEquals("Lay under RR 1 + 1 mm.", words.plan(advice, PLANE).get(0));
        assertEquals("RR 1 + 1 mm", words.shims(advice.plan().shimsMm()));
        PadAdvice flat = PadAdvice.of(new PadSurvey(survey.positionsMm(), PerCorner.all(0.0)), 0.3, OptionalDouble.empty(), PLANE, CarOnPads.of(day()));
        assertEquals(List.of("No shim is needed."), words.plan(flat, PLANE));
    }

    @Test
    void aPadThatMovedIsNamed() {
        PerCorner<Double> before = new PerCorner<>(0.0, 1.0, 0.5, 1.5);
        GaragePlace.Survey then = new GaragePlace.Survey(Instant.parse("2026-03-03T19:30:00Z"), "water-level", before, false);
        PadSurvey now = new PadSurvey(CarOnPads.pads(CAR), new PerCorner<>(0.0, 1.0, 0.5, 3.5));
        PadAdvice advice = PadAdvice.of(now, 0.3, OptionalDouble.empty(), PLANE, CarOnPads.of(day()));
        String said = new PadWords(MM).since(advice, then, then.carOn(), ZoneOffset.UTC);
        assertTrue(said.contains("changed by") && said.contains("RR moved most"), said);
        String under = new PadWords(MM).since(advice, then, !then.carOn(), ZoneOffset.UTC);
        assertTrue(under.contains("With the car on") && under.contains("RR gives way most"), under);
        assertEquals(OptionalDouble.empty(), PadAdvice.warpMoved(now, new PerCorner<>(1.0, 2.0, 1.5, 4.3), 0.3));
    }

    @Test
    void stockIsReadAndWhatLiesUnderPadsIsNotFree() {
        List<Setting.Shim> stock = Stock.read("0.5 x 4; 1 x 6", MM);
        assertEquals(List.of(new Setting.Shim(0.5, 4), new Setting.Shim(1, 6)), stock);
        assertEquals("0.5 x 4; 1 x 6", Stock.text(stock, MM));
        assertEquals(List.of(new Setting.Shim(2.5, 3)), Stock.read("2,5 x 3", MM.withDecimalMark(DecimalMark.COMMA)));
        assertEquals(List.of(new Setting.Shim(0.5, 3), new Setting.Shim(1, 4)),
                Stock.free(stock, new PerCorner<>(List.of(1.0, 1.0), List.of(), List.of(0.5), List.of())));
        String said = assertThrows(IllegalArgumentException.class, () -> Stock.read("0.5 x 4; some", MM)).getMessage();
        assertTrue(said.contains("some") && said.contains("0.5 x 4"), said);
        assertEquals(List.of(), Stock.read("  ", MM));
    }
}
