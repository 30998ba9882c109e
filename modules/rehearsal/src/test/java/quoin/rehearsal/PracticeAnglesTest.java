package quoin.rehearsal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import quoin.car.Corner;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;

class PracticeAnglesTest {

    private static PracticeDay ready() {
        return PracticeDay.ready(PracticeCar.ouzel23(1));
    }

    @Test
    void plusTurnsMoveTheOwnAngleUp() {
        PracticeDay before = ready();
        for (Corner corner : Corner.values()) {
            assertEquals(0.32, gain(before, ready().turn("camber-rod." + corner, 1), ReadingKind.CAMBER, corner), 0.03);
            assertEquals(0.505, gain(before, ready().turn("toe-link." + corner, 1), ReadingKind.TOE, corner), 1e-3);
            assertEquals(0, gain(before, ready().turn("toe-link." + corner, 1), ReadingKind.CAMBER, corner), 1e-9);
        }
        assertEquals(0.32, caster(ready().turn("caster-rod.LF", 1)) - caster(before), 0.03);
    }

    private static double caster(PracticeDay day) {
        ReadingId id = ReadingId.of(ReadingKind.CASTER, Corner.LF);
        return day.car.exact(day.day(), List.of(id)).get(id);
    }

    private static double gain(PracticeDay before, PracticeDay after, ReadingKind kind, Corner corner) {
        return after.exact(kind).get(corner) - before.exact(kind).get(corner);
    }

    @Test
    void loweringTheCarTipsTheWheelsIn() {
        PracticeDay before = ready();
        PracticeDay lower = ready();
        for (Corner corner : Corner.values()) {
            lower.turn("perch." + corner, corner.isFront() ? -1 : -0.5);
        }
        for (Corner corner : Corner.values()) {
            double drop = before.heights().get(corner) - lower.heights().get(corner);
            assertTrue(drop > 1, corner + " drops " + drop);
            double perMm = gain(before, lower, ReadingKind.CAMBER, corner) / drop;
            assertEquals(-0.028, perMm, 0.012, "common practice: 0.02 to 0.04 deg a mm");
        }
    }

    @Test
    void camberMovesToeAndWeights() {
        PracticeDay before = ready();
        PracticeDay after = ready().turn("camber-rod.LF", 1);
        assertTrue(Math.abs(gain(before, after, ReadingKind.TOE, Corner.LF)) > 0.05);
        assertTrue(after.shares().crossPercent() < before.shares().crossPercent() - 0.03, "LF was raised");
    }

    @Test
    void settingTheAnglesCostsSomeCross() {
        PracticeDay day = ready().turn("perch.LF", -2.25).turn("perch.RF", 2.25).turn("perch.LR", 1.25).turn("perch.RR", -1.25);
        double before = day.shares().crossPercent();
        double perTurn = Math.toDegrees(25.4 / 24 / 190);
        PerCorner<Double> camber = day.exact(ReadingKind.CAMBER);
        for (Corner corner : Corner.values()) {
            day.turn("camber-rod." + corner, Math.round(6 * ((corner.isFront() ? -2.2 : -1.6) - camber.get(corner)) / perTurn) / 6.0);
        }
        day.turn("caster-rod.LF", Math.round(6 * 0.45 / perTurn) / 6.0).turn("caster-rod.RF", Math.round(-6 * 0.35 / perTurn) / 6.0);
        for (Corner corner : Corner.values()) {
            assertEquals(corner.isFront() ? -2.2 : -1.6, day.exact(ReadingKind.CAMBER).get(corner), 0.08);
        }
        double cost = Math.abs(day.shares().crossPercent() - before);
        assertTrue(cost > 0.2 && cost < 0.6, "cross moved by " + cost);
    }

    @Test
    void toeIsReadInQuarterMillimetresOnTheChord() {
        PerCorner<Double> toe = ready().read(ReadingKind.TOE);
        for (Corner corner : Corner.values()) {
            double mm = 372 * Math.sin(Math.toRadians(toe.get(corner)));
            assertEquals(Math.round(mm * 4) / 4.0, mm, 1e-9);
        }
        assertEquals(-1.6, 372 * Math.sin(Math.toRadians(ready().exact(ReadingKind.TOE).lf())), 1e-6);
    }
}
