package quoin.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;

/** Fields before they are recorded. */
class TypedSetTest {

    private static final Car CAR = TestCars.car();
    private static final List<ReadingId> LOADS = CAR.cornerReadings(ReadingKind.LOAD);
    private final ReadingFormat format = new ReadingFormat(CAR, DisplayUnits.usual());

    private static OptionalDouble nothingBefore(ReadingId id) {
        return OptionalDouble.empty();
    }

    @Test
    void aWholeLineSpreadsInWalkingOrder() {
        TypedSet typed = TypedSet.empty(LOADS).with(0, "107,9 93,2 122,8 146,2");
        assertTrue(typed.isLine(0, format));
        TypedSet spread = typed.spread(0, format);
        assertEquals(List.of("107.9", "93.2", "122.8", "146.2"), spread.texts());
        assertEquals(Map.of(LOADS.get(0), 107.9, LOADS.get(1), 93.2, LOADS.get(2), 122.8, LOADS.get(3), 146.2),
                spread.read(format, TypedSetTest::nothingBefore).values());
    }

    @Test
    void aDashInTheLineLeavesItsFieldBlankAndShortLinesLeaveTheRest() {
        TypedSet typed = TypedSet.empty(LOADS).with(3, "140").with(0, "107.9 - 122.8");
        assertEquals(List.of("107.9", "", "122.8", "140"), typed.spread(0, format).texts());
    }

    @Test
    void aLineStopsWhereTheKindOfReadingChanges() {
        List<ReadingId> both = Stream.concat(LOADS.stream(), CAR.heightReadings().stream()).toList();
        TypedSet typed = TypedSet.empty(both).with(2, "122.8 146.2 62");
        assertEquals(2, typed.room(2));
        TypedSet.TooManyFigures refused = assertThrows(TypedSet.TooManyFigures.class, () -> typed.spread(2, format));
        assertEquals(3, refused.typed());
        assertEquals(2, refused.fields());
    }

    @Test
    void oneFigureIsNoLineEvenAsAFraction() {
        assertFalse(TypedSet.empty(LOADS).with(0, "107.9").isLine(0, format));
        assertFalse(TypedSet.empty(CAR.heightReadings()).with(0, "2 7/16 in").isLine(0, format));
    }

    @Test
    void blanksAreNotReadAndTheEqualsSignRepeats() {
        TypedSet typed = TypedSet.empty(LOADS).with(0, "=").with(2, "122.8");
        TypedSet.Understood understood = typed.read(format, id -> id.equals(LOADS.get(0)) ? OptionalDouble.of(160.4) : OptionalDouble.empty());
        assertEquals(Map.of(LOADS.get(0), 160.4, LOADS.get(2), 122.8), understood.values());
        assertTrue(understood.problems().isEmpty());
    }

    @Test
    void whatCannotBeReadIsNamedWithItsRemedyAndTheRestIsKept() {
        TypedSet typed = TypedSet.empty(LOADS).with(0, "107.9").with(1, "9e").with(2, "1.234,5");
        TypedSet.Understood understood = typed.read(format, TypedSetTest::nothingBefore);
        assertEquals(Map.of(LOADS.get(0), 107.9), understood.values());
        assertEquals(List.of(LOADS.get(1), LOADS.get(2)), List.copyOf(understood.problems().keySet()));
        assertTrue(understood.problems().values().stream().allMatch(p -> p.contains("; ")));
        assertEquals("9e", typed.texts().get(1));
    }

    @Test
    void aSetNeedsOneTextPerReading() {
        assertThrows(IllegalArgumentException.class, () -> new TypedSet(LOADS, List.of("1")));
        assertTrue(TypedSet.empty(List.of(ReadingId.of(ReadingKind.LOAD, Corner.LF))).isBlank());
    }
}
