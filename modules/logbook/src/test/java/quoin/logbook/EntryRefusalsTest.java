package quoin.logbook;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;

/** Beside each entry that can be stands the nearest one that cannot. */
class EntryRefusalsTest {

    private static final Header HEADER = Header.draft("stage");
    private static final ReadingId TOE = ReadingId.of(ReadingKind.TOE, Corner.LF);
    private static final AdjusterId PERCH = new AdjusterId(AdjusterKind.PERCH, Corner.RR);
    private static final Measurement HOW = new Measurement("x", Map.of(), "", Map.of());

    private static Arguments edge(String what, Executable can, Executable cannot) {
        return Arguments.of(what, can, cannot);
    }

    private static Entry.BumpSteer curve(double... travels) {
        List<Entry.BumpSteer.Point> points = new ArrayList<>();
        for (double travel : travels) {
            points.add(new Entry.BumpSteer.Point(travel, 0));
        }
        return new Entry.BumpSteer(HEADER, Corner.LF, points, HOW);
    }

    private static Entry.ResponseTakenOver.Effect effect(double described, double value, double uncertainty) {
        return new Entry.ResponseTakenOver.Effect("rate.LF", described, value, uncertainty);
    }

    private static Entry.ResponseTakenOver takenOver(double loadKg) {
        return new Entry.ResponseTakenOver(HEADER, "day", Instant.EPOCH, loadKg, List.of());
    }

    static Stream<Arguments> entries() {
        Entry.Correction undo = new Entry.Correction(HEADER, 2, Optional.empty(), "undo");
        return Stream.of(
                edge("reading", () -> new Entry.Reading(HEADER, Map.of(TOE, 0.0), Map.of(), Entry.Source.RACER),
                        () -> new Entry.Reading(HEADER, Map.of(TOE, Double.NaN), Map.of(), Entry.Source.RACER)),
                edge("point travel", () -> new Entry.BumpSteer.Point(0, 0), () -> new Entry.BumpSteer.Point(Double.NaN, 0)),
                edge("point toe", () -> new Entry.BumpSteer.Point(0, 0), () -> new Entry.BumpSteer.Point(0, Double.POSITIVE_INFINITY)),
                edge("curve of two", () -> curve(0, 10), () -> curve(0)),
                edge("travels apart", () -> curve(0, 10, 20), () -> curve(0, 10, 10)),
                edge("check's subject", () -> new Entry.Check(HEADER, "scales", Map.of("a", 1.0), HOW), () -> new Entry.Check(HEADER, " ", Map.of("a", 1.0), HOW)),
                edge("check's result", () -> new Entry.Check(HEADER, "scales", Map.of("a", 0.0), HOW), () -> new Entry.Check(HEADER, "scales", Map.of(), HOW)),
                edge("check's figure", () -> new Entry.Check(HEADER, "scales", Map.of("a", 0.0), HOW),
                        () -> new Entry.Check(HEADER, "scales", Map.of("a", Double.NaN), HOW)),
                edge("turn", () -> new Entry.Turn(PERCH, 0, OptionalDouble.empty()), () -> new Entry.Turn(PERCH, Double.NaN, OptionalDouble.empty())),
                edge("condition's key", () -> new Entry.Condition(HEADER, "fuel", "", ""), () -> new Entry.Condition(HEADER, " ", "", "")),
                edge("effect described", () -> effect(0, 0, 0), () -> effect(Double.NaN, 0, 0)),
                edge("effect value", () -> effect(0, 0, 0), () -> effect(0, Double.NEGATIVE_INFINITY, 0)),
                edge("effect uncertainty", () -> effect(0, 0, 0), () -> effect(0, 0, -1e-9)),
                edge("effect boundless", () -> effect(0, 0, 1e9), () -> effect(0, 0, Double.POSITIVE_INFINITY)),
                edge("load", () -> takenOver(0), () -> takenOver(-1e-9)),
                edge("load boundless", () -> takenOver(1e6), () -> takenOver(Double.POSITIVE_INFINITY)),
                edge("waived", () -> new Entry.SignOff(HEADER, Optional.of("tyres late")), () -> new Entry.SignOff(HEADER, Optional.of(" "))),
                edge("closed", () -> new Entry.DayClosed(HEADER, Optional.empty()), () -> new Entry.DayClosed(HEADER, Optional.of(""))),
                edge("correction", () -> new Entry.Correction(HEADER, 2, Optional.of(Samples.note("a")), ""),
                        () -> new Entry.Correction(HEADER, 2, Optional.of(undo), "")),
                edge("method", () -> new Measurement("x", Map.of(), "", Map.of()), () -> new Measurement("", Map.of(), "", Map.of())),
                edge("uncertainty", () -> new Measurement("x", Map.of(), "", Map.of(TOE, 1e-9)), () -> new Measurement("x", Map.of(), "", Map.of(TOE, 0.0))),
                edge("uncertainty boundless", () -> new Measurement("x", Map.of(), "", Map.of(TOE, 1e9)),
                        () -> new Measurement("x", Map.of(), "", Map.of(TOE, Double.POSITIVE_INFINITY))),
                edge("place", () -> GaragePlace.named("home", "Home"), () -> GaragePlace.named("home", " ")));
    }

    @ParameterizedTest(name = "{index} {0}")
    @MethodSource("entries")
    void whatCannotBeIsRefusedAndItsNeighbourIsNot(String what, Executable can, Executable cannot) {
        assertDoesNotThrow(can);
        assertFalse(assertThrows(IllegalArgumentException.class, cannot).getMessage().isBlank());
    }

    /** What an entry holds cannot be changed from outside: it was recorded. */
    @Test
    void entriesKeepWhatTheyWereGiven() {
        Map<ReadingId, Double> values = new HashMap<>(Map.of(TOE, 0.1));
        Map<String, Double> results = new HashMap<>(Map.of("a", 1.0));
        Entry.Reading reading = new Entry.Reading(HEADER, values, Map.of(), Entry.Source.RACER);
        Entry.Check check = new Entry.Check(HEADER, "scales", results, HOW);
        values.clear();
        results.clear();
        assertEquals(Map.of(TOE, 0.1), reading.values());
        assertEquals(OptionalDouble.of(1), check.result("a"));
        assertEquals(OptionalDouble.empty(), check.result("b"));
        assertThrows(UnsupportedOperationException.class, () -> reading.values().clear());
    }

    @Test
    void aMeasurementKnowsItsFiguresByName() {
        Measurement string = new Measurement("string", Map.of("LF.front", "140,5"), " skew ", Map.of(TOE, 0.03));
        assertEquals("skew", string.words());
        assertEquals(Optional.of("140,5"), string.raw("LF.front"));
        assertTrue(string.raw("LF.rear").isEmpty());
        assertEquals(OptionalDouble.of(0.03), string.uncertaintyOf(TOE));
        assertTrue(string.uncertaintyOf(ReadingId.of(ReadingKind.TOE, Corner.RF)).isEmpty());
    }

    @Test
    void conditionsThatAreFiguresAreKnown() {
        assertTrue(Conditions.isFigure(Conditions.FUEL) && Conditions.isFigure("pressure.RR"));
        assertTrue(List.of(Conditions.DRIVER, "pressure.", "pressure.XX", Conditions.PRESSURES).stream().noneMatch(Conditions::isFigure));
        assertEquals("RR", Conditions.cornerOfPressure("pressure.RR").orElseThrow().name());
        assertTrue(Conditions.cornerOfPressure("pressure.XX").isEmpty());
    }

    @Test
    void conditionsOfAnAxleOrCornerHaveKeysOfTheirOwn() {
        assertEquals("front-bar", Conditions.bar(Axle.FRONT));
        assertEquals("rear-bar", Conditions.bar(Axle.REAR));
        assertEquals("pressure.RR", Conditions.pressure(Corner.RR));
    }

    /** A hostile line may be a megabyte long and hold letters that hide or turn the words around it. */
    @Test
    void whatIsQuotedIsShortAndSeen() {
        assertEquals("a".repeat(800), Brief.of("a".repeat(800)));
        String long801 = "a".repeat(500) + "b" + "c".repeat(300);
        assertEquals("a".repeat(500) + " \u2026 " + "c".repeat(300), Brief.of(long801));
        assertEquals("a?b?c?", Brief.of("a\u0007b\u202ec\n"));
    }

    @Test
    void lengthsFollowTheTurnsFromTheLastMeasuredOne() {
        List<Entry> entries = List.of(new Entry.CarDescribed(Samples.header(1), Samples.fullCar()), turned(2, 2, OptionalDouble.empty()),
                turned(3, 1, OptionalDouble.of(40)), turned(4, -0.5, OptionalDouble.empty()));
        Day day = Day.of(entries);
        assertEquals(OptionalDouble.of(33), day.lengthMm(PERCH, OptionalDouble.of(30), 1.5, 2));
        assertEquals(OptionalDouble.of(40), day.lengthMm(PERCH, OptionalDouble.of(30), 1.5, 3));
        assertEquals(OptionalDouble.of(39.25), day.lengthMm(PERCH, OptionalDouble.of(30), 1.5, 4));
        assertEquals(OptionalDouble.empty(), day.lengthMm(PERCH, OptionalDouble.empty(), 1.5, 2), "never measured");
        assertEquals(OptionalDouble.of(39.25), day.lengthMm(PERCH, OptionalDouble.empty(), 1.5, 4));
        AdjusterId other = new AdjusterId(AdjusterKind.PERCH, Corner.LF);
        assertEquals(OptionalDouble.of(30), day.lengthMm(other, OptionalDouble.of(30), 1.5, 4));
        assertEquals(2.5, day.turned(PERCH), 1e-12);
        assertEquals(Map.of(PERCH, 2.5), day.turned());
        assertEquals(0, day.turned(other));
    }

    private static Entry turned(long number, double amount, OptionalDouble length) {
        return new Entry.Adjustment(Samples.header(number), List.of(new Entry.Turn(PERCH, amount, length)), "");
    }
}
