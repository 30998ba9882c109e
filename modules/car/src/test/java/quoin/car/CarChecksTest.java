package quoin.car;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What no car can have is refused in words that name it. */
class CarChecksTest {

    private static final OptionalDouble NONE = OptionalDouble.empty();

    private static void refused(String words, Executable making) {
        IllegalArgumentException e = assertThrows(IllegalArgumentException.class, making);
        assertTrue(e.getMessage().contains(words), e.getMessage());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void lengthsRatesAndMassesAreAboveZero(double bad) {
        OptionalDouble wrong = OptionalDouble.of(bad);
        refused("spring rate must be a number greater than 0, not " + bad, () -> new CornerSetup(wrong, NONE, NONE, NONE, NONE, NONE, List.of()));
        refused("motion ratio", () -> new CornerSetup(NONE, wrong, NONE, NONE, NONE, NONE, List.of()));
        refused("pushrod ratio", () -> new CornerSetup(NONE, NONE, wrong, NONE, NONE, NONE, List.of()));
        refused("tyre rate", () -> new CornerSetup(NONE, NONE, NONE, wrong, NONE, NONE, List.of()));
        refused("unsprung mass", () -> new CornerSetup(NONE, NONE, NONE, NONE, wrong, NONE, List.of()));
        refused("rim chord", () -> new CornerSetup(NONE, NONE, NONE, NONE, NONE, wrong, List.of()));
        refused("track", () -> new AxleSetup(bad, Optional.empty(), new SuspensionChoice("measured", Map.of())));
        refused("anti-roll bar rate", () -> new AntiRollBar(wrong));
        refused("total mass", () -> new Masses(wrong, NONE, List.of()));
        refused("centre of gravity height", () -> new Masses(NONE, wrong, List.of()));
        refused("scale resolution", () -> new Instruments(bad, 0.5, 0.1, 0.25));
        refused("height resolution", () -> new Instruments(0.2, bad, 0.1, 0.25));
        refused("angle resolution", () -> new Instruments(0.2, 0.5, bad, 0.25));
        refused("toe resolution", () -> new Instruments(0.2, 0.5, 0.1, bad));
        refused("thread pitch", () -> new Setting.Thread(bad, false, 8, "notch"));
        refused("tolerance", () -> new Target(1, bad));
    }

    @Test
    void otherImpossibleValues() {
        refused("steps per turn", () -> new Setting.Thread(1.5, false, 0, "notch"));
        refused("shim", () -> new Setting.Shim(0, 2));
        refused("shim", () -> new Setting.Shim(1, -1));
        refused("target must be a number", () -> new Target(Double.NaN, 1));
        refused("lead: mass must be 0 kg or more", () -> new KnownMass("lead", KnownMass.Role.BALLAST, -1, 0, 0, 0));
        refused("lead: mass", () -> new KnownMass("lead", KnownMass.Role.BALLAST, Double.NaN, 0, 0, 0));
        refused("height point needs a name", () -> TestCars.point(" ", Corner.LF));
        refused("type id", () -> new SuspensionChoice("", Map.of()));
        refused("reading needs a place", () -> new ReadingId(ReadingKind.LOAD, " "));
        refused("LF perch: the shortest thread length is above the longest", () -> new Adjuster(new AdjusterId(AdjusterKind.PERCH, Corner.LF),
                new Setting.Thread(1.5, false, 8, "notch"), NONE, OptionalDouble.of(50), OptionalDouble.of(40), false));
    }

    @Test
    void carNeedsIdNameAndARoundWalk() {
        refused("needs an id", () -> TestCars.bare().withId("", "x"));
        refused("needs a name", () -> TestCars.bare().withId("x", " "));
        PerCorner<CornerSetup> corners = PerCorner.all(CornerSetup.unknown());
        refused("walking order", () -> TestCars.with(corners, List.of(), List.of(Corner.LF, Corner.RF, Corner.LR)));
        refused("walking order", () -> TestCars.with(corners, List.of(), List.of(Corner.LF, Corner.RF, Corner.LR, Corner.LF)));
        refused("two height points are called 'rail'",
                () -> TestCars.with(corners, List.of(TestCars.point("rail", Corner.LF), TestCars.point("rail", null)), TestCars.ROUND));
    }

    @Test
    void recordsDoNotChangeWhenTheirSourcesDo() {
        Map<String, String> parameters = new LinkedHashMap<>(Map.of("a", "1"));
        SuspensionChoice choice = new SuspensionChoice("measured", parameters);
        Map<ReadingId, Target> readings = new LinkedHashMap<>();
        Targets targets = new Targets(readings, CrossGoal.WANTED);
        parameters.put("b", "2");
        readings.put(ReadingId.parse("load.LF"), new Target(1, 1));
        assertEquals(Map.of("a", "1"), choice.parameters());
        assertEquals(Map.of(), targets.readings());
        assertThrows(UnsupportedOperationException.class, () -> targets.readings().clear());
    }

    @Test
    void targetsChangeByCopyAndKeepTheirOrder() {
        ReadingId lf = ReadingId.parse("load.LF");
        ReadingId cross = ReadingId.ofCar(ReadingKind.CROSS);
        Targets first = new Targets(Map.of(), CrossGoal.EQUAL_FRONTS).with(cross, new Target(50, 0.3)).with(lf, new Target(100, 1));
        Targets second = first.with(cross, new Target(51, 0.5)).with(CrossGoal.WANTED);
        assertEquals(List.of(cross, lf), List.copyOf(second.readings().keySet()));
        assertEquals(Optional.of(new Target(51, 0.5)), second.of(cross));
        assertEquals(Optional.of(new Target(50, 0.3)), first.of(cross));
        assertEquals(CrossGoal.WANTED, second.crossGoal());
        assertEquals(second, TestCars.bare().withTargets(second).targets());
    }

    @Test
    void bandIncludesItsEdges() {
        Target target = new Target(62, 1);
        assertTrue(target.contains(61) && target.contains(63));
        assertFalse(target.contains(60.99) || target.contains(63.01) || target.contains(Double.NaN));
    }

    @Test
    void linkThreadedAtBothEndsMovesTwoPitchesATurn() {
        assertEquals(2.117, new Setting.Thread(25.4 / 24, true, 6, "flat").mmPerTurn(), 5e-4);
        assertEquals(1.5, new Setting.Thread(1.5, false, 8, "notch").mmPerTurn());
        assertEquals(0.125, new Setting.Thread(1.5, false, 8, "notch").turnsPerStep());
    }
}
