package quoin.car;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CornerTest {

    @ParameterizedTest
    @EnumSource
    void neighboursAreMutualAndMakeUpTheCar(Corner corner) {
        assertEquals(corner, corner.acrossAxle().acrossAxle());
        assertEquals(corner, corner.sameSide().sameSide());
        assertEquals(corner, corner.diagonal().diagonal());
        assertEquals(corner.diagonal(), corner.acrossAxle().sameSide());
        assertEquals(Set.of(Corner.values()), Set.of(corner, corner.acrossAxle(), corner.sameSide(), corner.diagonal()));
        assertEquals(corner.axle(), corner.acrossAxle().axle());
        assertNotEquals(corner.isLeft(), corner.acrossAxle().isLeft());
        assertEquals(corner, Corner.of(corner.axle(), corner.isLeft()));
        assertEquals(corner, Corner.parse(corner.name()));
    }

    @Test
    void namesAreSeenByTheDriver() {
        assertTrue(Corner.LF.isFront() && Corner.LF.isLeft());
        assertEquals(Corner.RR, Corner.LF.diagonal());
        assertEquals(Corner.LR, Axle.REAR.left());
        assertEquals(Corner.RF, Axle.FRONT.right());
        assertEquals(Axle.REAR, Axle.FRONT.other());
        assertEquals("'FL' is not a corner; write LF, RF, LR or RR",
                assertThrows(IllegalArgumentException.class, () -> Corner.parse("FL")).getMessage());
    }

    @Test
    void perCornerKeepsEveryValueAtItsPlace() {
        PerCorner<String> names = PerCorner.of(Corner::name);
        assertEquals(new PerCorner<>("LF", "RF", "LR", "RR"), names);
        assertEquals(new PerCorner<>("LF", "x", "LR", "RR"), names.with(Corner.RF, "x"));
        assertEquals(PerCorner.all(2), names.map(String::length));
        assertEquals(names.map(n -> n + n), names.zip(names, String::concat));
        assertEquals("LR", assertThrows(NullPointerException.class, () -> new PerCorner<>(1, 2, null, 4)).getMessage());
    }

    @Test
    void perAxleKeepsEveryValueAtItsPlace() {
        PerAxle<String> names = new PerAxle<>("f", "r");
        assertEquals("f", names.get(Axle.FRONT));
        assertEquals(new PerAxle<>("f", "x"), names.with(Axle.REAR, "x"));
        assertEquals(new PerAxle<>("x", "r"), names.with(Axle.FRONT, "x"));
        assertEquals(List.of(1, 1), List.of(names.map(String::length).front(), names.map(String::length).rear()));
        assertEquals(PerAxle.both("z"), new PerAxle<>("z", "z"));
    }
}
