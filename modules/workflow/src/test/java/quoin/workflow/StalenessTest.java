package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import quoin.car.AdjusterKind;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;

/**
 * The trade's table of what must be read again, cell by cell, through the day's entries (common practice, no source).
 * Columns: height, weight, camber, caster, toe front, toe rear; X no longer valid, ~ doubtful, . stays.
 */
class StalenessTest {

    private static final List<ReadingId> COLUMNS = List.of(DayBook.height(Corner.LF), DayBook.load(Corner.LF),
            DayBook.camber(Corner.LF), DayBook.caster(Corner.LF), DayBook.toe(Corner.LF), DayBook.toe(Corner.LR));

    private final OrderOfWork order = new OrderOfWork(PlainStage.day());

    private record Row(String name, String cells, Consumer<DayBook> event) {
    }

    private static List<Row> rows() {
        List<Row> rows = new ArrayList<>(List.of(
                new Row("pads moved", "X X X X ~ ~", b -> b.condition(Conditions.PADS, Conditions.MOVED)),
                new Row("pads shimmed anew", "X X X X ~ ~", b -> b.condition(Conditions.PADS, Conditions.MOVED)
                        .condition(Conditions.PADS, Conditions.LEVELLED)),
                new Row("tyre set", "X X ~ ~ ~ ~", b -> b.condition(Conditions.TYRES, "wets")),
                new Row("pressure", "X X ~ ~ ~ ~", b -> b.condition("pressure.RR", "1.6")),
                new Row("driver out", "X X ~ ~ ~ ~", b -> b.condition(Conditions.DRIVER, Conditions.OUT)),
                new Row("fuel", "X X ~ ~ ~ ~", b -> b.condition(Conditions.FUEL, "12")),
                new Row("ballast", "X X ~ ~ ~ ~", b -> b.condition(Conditions.BALLAST, "battery 190 mm to the left")),
                new Row("ring", "X X ~ ~ ~ ~", b -> b.turn(AdjusterKind.PERCH, Corner.RR, 0.25)),
                new Row("push rod", "X X ~ ~ ~ ~", b -> b.turn(AdjusterKind.PUSHROD, Corner.LF, -0.5)),
                new Row("caster rods", "X X X X X .", b -> b.turn(AdjusterKind.CASTER_ROD, Corner.LF, 0.5)),
                new Row("toe link, front", ". ~ ~ ~ X .", b -> b.turn(AdjusterKind.TOE_LINK, Corner.RF, 0.5)),
                new Row("toe link, rear", ". ~ ~ ~ . X", b -> b.turn(AdjusterKind.TOE_LINK, Corner.RR, 0.5)),
                new Row("bar joined", ". ~ . . . .", b -> b.condition("front-bar", Conditions.CONNECTED)),
                new Row("jacked, steered, driven", "~ ~ ~ ~ ~ ~", b -> b.condition(Conditions.SETTLED, Conditions.NO)),
                new Row("steering lock out", "~ ~ ~ . ~ ~", b -> b.condition(Conditions.STEERING, Conditions.FREE)),
                new Row("locknuts", ". . . . ~ ~", b -> b.condition(Conditions.LOCKNUTS, Conditions.YES)),
                new Row("dampers", ". . . . . .", b -> b.condition(Conditions.DAMPERS, Conditions.RUNNING)),
                new Row("confirmed again", ". . . . . .", b -> b.condition(Conditions.PADS, Conditions.LEVELLED)
                        .condition(Conditions.DRIVER, Conditions.IN).condition(Conditions.FUEL, "20.0").settle())));
        for (AdjusterKind kind : List.of(AdjusterKind.CAMBER_ROD, AdjusterKind.CAMBER_SHIM)) {
            rows.add(new Row(kind.words() + ", front", "X X X ~ X .", b -> b.turn(kind, Corner.RF, 0.5)));
            rows.add(new Row(kind.words() + ", rear", "X X X ~ . X", b -> b.turn(kind, Corner.LR, 0.5)));
        }
        return rows;
    }

    private DayBook read() {
        DayBook book = new DayBook().signedToAngles(order);
        return book.read("final-recheck", DayBook.everything());
    }

    @TestFactory
    Stream<DynamicTest> everyCell() {
        return rows().stream().map(row -> DynamicTest.dynamicTest(row.name(), () -> {
            DayBook book = read();
            row.event().accept(book);
            DayStatus status = order.status(book.day());
            String[] cells = row.cells().split(" ");
            assertAll(IntStream.range(0, cells.length).mapToObj(i -> () -> assertCell(cells[i], status.reading(COLUMNS.get(i)))));
        }));
    }

    private static void assertCell(String cell, ReadingState state) {
        Freshness expected = switch (cell) {
            case "X" -> Freshness.STALE;
            case "~" -> Freshness.DOUBTFUL;
            default -> Freshness.FRESH;
        };
        assertEquals(expected, state.freshness(), () -> state.reading().words() + ": " + state.reasons());
        assertEquals(expected == Freshness.FRESH, state.reasons().isEmpty());
    }

    /** Shims are measured anew where pads moved, a pressure where tyres or pressures were set; nothing else touches either. */
    @Test
    void whatThePreparationMeasuredIsDisturbedByItsOwn() {
        ReadingId pad = ReadingId.of(ReadingKind.PAD_HEIGHT, Corner.LR);
        ReadingId pressure = ReadingId.of(ReadingKind.PRESSURE, Corner.LR);
        for (Disturbance what : Disturbance.values()) {
            assertEquals(what == Disturbance.PADS ? Staleness.Effect.STALE : Staleness.Effect.STAYS, Staleness.of(what, Optional.empty(), pad), what.name());
            assertEquals(what == Disturbance.TYRES ? Staleness.Effect.STALE : Staleness.Effect.STAYS, Staleness.of(what, Optional.empty(), pressure),
                    what.name());
            assertEquals(Staleness.Effect.STAYS, Staleness.of(what, Optional.empty(), ReadingId.ofCar(ReadingKind.WHEELBASE)), what.name());
        }
    }

    @Test
    void saysWhatHappenedInTheAdjustersOwnSteps() {
        DayBook book = read().turn(AdjusterKind.PERCH, Corner.RR, 0.25).turn(AdjusterKind.PERCH, Corner.LF, -1.375)
                .turn(AdjusterKind.CAMBER_SHIM, Corner.LR, 0.5).turn(AdjusterKind.PERCH, Corner.RF, 1).turn(AdjusterKind.PERCH, Corner.RF, -1)
                .condition("front-bar", Conditions.CONNECTED);
        assertEquals(List.of("RR perch turned 2 notches after this", "LF perch turned 1 turn + 3 notches after this",
                "LR camber shim changed by 0.5 mm after this", "RF perch turned and turned back after this",
                "front bar connected after this"), order.status(book.day()).reading(DayBook.load(Corner.LF)).reasons());
    }

    @Test
    void saysWhatConditionsDid() {
        DayBook book = read().condition(Conditions.DRIVER, Conditions.OUT).condition(Conditions.FUEL, "12")
                .condition(Conditions.PADS, Conditions.MOVED).condition(Conditions.SETTLED, Conditions.NO);
        assertEquals(List.of("driver got out after this", "fuel changed from 20 to 12 kg after this", "pads moved after this",
                "car jacked, steered or driven after this: settle it and read again"),
                order.status(book.day()).reading(DayBook.height(Corner.LF)).reasons());
    }

    @Test
    void whatIsPutBackLeavesOnlyADoubt() {
        DayBook book = read().condition(Conditions.DRIVER, Conditions.OUT).condition(Conditions.DRIVER, Conditions.IN);
        ReadingState height = order.status(book.day()).reading(DayBook.height(Corner.LF));
        assertEquals(Freshness.DOUBTFUL, height.freshness());
        assertEquals(List.of("driver got out and in again after this"), height.reasons());
    }

    /** Pitch 1.5 mm over a motion ratio of 0.75: one turn is 2 mm of leg. */
    @Test
    void anglesGoStaleBeyondTwoMillimetresOfLeg() {
        DayBook book = read().turn(AdjusterKind.PERCH, Corner.LF, 0.5).turn(AdjusterKind.PERCH, Corner.LF, 0.5);
        assertEquals(Freshness.DOUBTFUL, order.status(book.day()).reading(DayBook.toe(Corner.RR)).freshness());
        book.turn(AdjusterKind.PERCH, Corner.LF, 0.125);
        ReadingState toe = order.status(book.day()).reading(DayBook.toe(Corner.RR));
        assertEquals(Freshness.STALE, toe.freshness());
        assertEquals(List.of("LF perch turned 1 turn + 1 notch after this, with more than 2 mm of leg in all: read it again"), toe.reasons());
    }

    @Test
    void theResponseAddsHowFarButForgivesNothing() {
        OrderOfWork knowing = order.withExpectedMove((turns, reading) -> Optional.of(
                new ExpectedMove.Move(reading.equals(DayBook.height(Corner.LF)) ? 0.4 : 0.001, 0.01)));
        DayStatus status = knowing.status(read().turn(AdjusterKind.PERCH, Corner.RR, 0.25).day());
        assertEquals(List.of("RR perch turned 2 notches after this (expected to move +0.4 mm)"),
                status.reading(DayBook.height(Corner.LF)).reasons());
        ReadingState other = status.reading(DayBook.height(Corner.RF));
        assertEquals(List.of("RR perch turned 2 notches after this (expected unchanged)"), other.reasons());
        assertEquals(Freshness.STALE, other.freshness());
    }

    @Test
    void aWithdrawnTurnDisturbsNothing() {
        DayBook book = read().turn(AdjusterKind.PERCH, Corner.RR, 0.25);
        book.withdraw(book.size());
        assertTrue(order.status(book.day()).reading(DayBook.height(Corner.LF)).reasons().isEmpty());
    }

    @Test
    void onlyWhatWasReadAgainIsFresh() {
        DayBook book = read().turn(AdjusterKind.PERCH, Corner.RR, 0.25).settle()
                .read("corner-weights", Map.of(DayBook.load(Corner.LF), 150.0));
        DayStatus status = order.status(book.day());
        assertEquals(Freshness.FRESH, status.reading(DayBook.load(Corner.LF)).freshness());
        assertEquals(Freshness.STALE, status.reading(DayBook.load(Corner.RF)).freshness());
        assertEquals(Freshness.STALE, status.reading(DayBook.CROSS).freshness(), "a sum of new and old figures");
    }
}
