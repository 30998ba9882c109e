package quoin.seatview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;

class SeatEntryTest {

    private static final List<ReadingId> WALK = List.of(Corner.LF, Corner.LR, Corner.RR, Corner.RF).stream()
            .map(c -> ReadingId.of(ReadingKind.LOAD, c)).toList();

    @Test
    void figuresGoRoundTheCarInWalkingOrder() {
        SeatEntry entry = SeatEntry.empty(WALK).type('1').type('0').type('7').next().type('9');
        assertEquals(List.of("107", "9", "", ""), entry.typed().texts());
        assertEquals(WALK.get(1), entry.reading());
    }

    @Test
    void backTakesACharacterAwayThenGoesToTheFieldBefore() {
        SeatEntry entry = SeatEntry.empty(WALK).type('1').next().type('9').back();
        assertEquals("", entry.text());
        assertEquals(WALK.get(0), entry.back().reading());
        assertEquals(WALK.get(0), entry.back().back().back().reading(), "there is nothing before the first");
    }

    @Test
    void theLastFieldStaysTheLast() {
        SeatEntry entry = SeatEntry.empty(WALK).next().next().next().next();
        assertTrue(entry.isLast());
        assertTrue(entry.isBlank());
    }

    @Test
    void aFieldHoldsNoNovel() {
        SeatEntry entry = SeatEntry.empty(WALK);
        for (int i = 0; i < 100; i++) {
            entry = entry.type('8');
        }
        assertEquals(12, entry.text().length());
    }

    /** "0" stands in the doubted field by then; what was typed there first belongs in the other one. */
    @Test
    void exchangedFiguresAreBothPutRight() {
        SeatEntry doubted = SeatEntry.empty(WALK).with("148.2").next().with("162.6").to(WALK.get(0)).with("0");
        SeatEntry both = doubted.mended("162.6", Optional.of(WALK.get(1)), "148.2");
        assertEquals(List.of("162.6", "148.2", "", ""), both.typed().texts());
        assertEquals(WALK.get(0), both.reading());
        assertEquals(List.of("162.6", "162.6", "", ""), doubted.mended("162.6", Optional.empty(), "148.2").typed().texts());
    }
}
