package quoin.car;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The text forms that files store. */
class IdsTest {

    @ParameterizedTest
    @EnumSource
    void everyAdjusterComesBackFromItsText(AdjusterKind kind) {
        for (Corner corner : Corner.values()) {
            AdjusterId id = new AdjusterId(kind, corner);
            assertEquals(id, AdjusterId.parse(id.toString()));
        }
    }

    @ParameterizedTest
    @EnumSource
    void everyReadingComesBackFromItsText(ReadingKind kind) {
        for (String place : List.of("LF", ReadingId.CAR, "rail LF", "a.b", "sill (left)")) {
            ReadingId id = new ReadingId(kind, place);
            assertEquals(id, ReadingId.parse(id.toString()));
        }
    }

    @Test
    void textsStayAsFilesHoldThem() {
        assertEquals("perch.RR", new AdjusterId(AdjusterKind.PERCH, Corner.RR).toString());
        assertEquals("camber-rod.LF", new AdjusterId(AdjusterKind.CAMBER_ROD, Corner.LF).toString());
        assertEquals(List.of("perch", "pushrod", "camber rod", "camber shim", "caster rod", "toe link", "bar link"),
                Arrays.stream(AdjusterKind.values()).map(AdjusterKind::words).toList());
        assertEquals(List.of("load", "height", "camber", "caster", "toe", "pad-height", "pressure", "scale-zero", "total", "cross",
                "front-share", "left-share", "rake", "total-toe", "thrust-angle", "kpi", "wheelbase", "setback", "turn-toe-out",
                "circumference", "cg-height"),
                Arrays.stream(ReadingKind.values()).map(ReadingKind::key).toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "perch", "perch.", ".RR", "perch.XX", "perch.rr", "camber rod.LF", "spring.LF", "perch.RR "})
    void whatIsNoAdjusterIsRefused(String text) {
        IllegalArgumentException e = assertThrows(IllegalArgumentException.class, () -> AdjusterId.parse(text));
        assertTrue(e.getMessage().contains("write"), e.getMessage());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "load", "load.", "load. ", ".LF", "weight.LF", "LOAD.LF"})
    void whatIsNoReadingIsRefused(String text) {
        assertThrows(IllegalArgumentException.class, () -> ReadingId.parse(text));
    }

    @Test
    void wordsAreThoseOfTheTrade() {
        assertEquals("RR perch", AdjusterId.parse("perch.RR").words());
        assertEquals("LF weight", ReadingId.parse("load.LF").words());
        assertEquals("cross weight RF+LR", ReadingId.ofCar(ReadingKind.CROSS).words());
    }

    @Test
    void idsSortByCornerAndByKind() {
        assertEquals(List.of("perch.LF", "toe-link.LF", "perch.RR"), new TreeSet<>(List.of(AdjusterId.parse("perch.RR"),
                AdjusterId.parse("toe-link.LF"), AdjusterId.parse("perch.LF"))).stream().map(AdjusterId::toString).toList());
        assertEquals(List.of("load.LF", "load.RR", "toe.LF"), new TreeSet<>(List.of(ReadingId.parse("toe.LF"), ReadingId.parse("load.RR"),
                ReadingId.parse("load.LF"))).stream().map(ReadingId::toString).toList());
    }
}
