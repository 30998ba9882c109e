package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import quoin.adjustment.PlanCancellation;
import quoin.car.Adjuster;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.CornerSetup;
import quoin.car.CrossGoal;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Setting;
import quoin.car.Target;
import quoin.car.Targets;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.suspension.spi.SuspensionTypes;

/** What a plan says beside its turns: the chance of the others, and what no turning can do with its remedy. */
class PlanSaysTest {

    private static final PerCorner<Double> LOADS = new PerCorner<>(90.0, 101.0, 146.0, 132.0);
    private static final PerCorner<Double> HEIGHTS = new PerCorner<>(63.5, 60.0, 71.5, 69.5);

    private static Day read(Car car) {
        return read(car, LOADS);
    }

    private static Day read(Car car, PerCorner<Double> loads) {
        return Day.of(List.of(new Entry.CarDescribed(new Header(1, Instant.EPOCH, ""), car), new Entry.Reading(
                new Header(2, Instant.EPOCH, "corner-weights"), RoundPlannerTest.readings(loads, HEIGHTS), Map.of(), Entry.Source.RACER)));
    }

    private static List<String> notReachable(Car car) {
        return RoundPlanner.plan(read(car)).orElseThrow().notReachable();
    }

    /** The light car with other perches. */
    private static Car perches(OptionalDouble start, OptionalDouble min, OptionalDouble max, boolean locked) {
        Car car = RoundPlannerTest.car(false, Map.of());
        PerCorner<CornerSetup> corners = car.corners().map(c -> {
            List<Adjuster> adjusters = c.adjusters().stream().map(a -> new Adjuster(a.id(), a.setting(), start, min, max, locked)).toList();
            return new CornerSetup(c.springRateNPerMm(), c.motionRatio(), c.pushrodRatio(), c.tyreRateNPerMm(), c.unsprungMassKg(),
                    c.rimChordMm(), adjusters);
        });
        return new Car(car.id(), car.name(), car.wheelbaseMm(), car.axles(), corners, car.masses(), car.heightPoints(), car.targets(),
                car.loadCase(), car.instruments(), car.walkingOrder());
    }

    @Test
    void theOtherPlansNameTheirCornersAndTheirChance() {
        List<RoundPlan> plans = RoundPlanner.options(read(RoundPlannerTest.car(false, Map.of())), PlanCancellation.NEVER);
        assertTrue(plans.size() > 2, "several numbers of corners");
        List<Integer> visits = new ArrayList<>();
        for (RoundPlan plan : plans.subList(1, plans.size())) {
            int corners = plan.visits().size();
            visits.add(corners);
            String start = corners == 0 ? "Leave everything: " : corners == 1 ? "One corner: " : corners + " corners: ";
            String chance = String.format("%.0f %% chance of ending inside", 100 * plan.probabilityInside().orElseThrow());
            assertEquals(start + chance + ".", plan.why(), "each corner more leaves smaller errors here");
        }
        assertEquals(visits.stream().sorted().toList(), visits, "fewest corners first");
        assertFalse(plans.get(0).why().contains("chance of ending inside,"), plans.get(0).why());
    }

    /** Perches that have to turn so far for the cross weight that the heights leave their targets: none of them is out of reach alone. */
    @Test
    void targetsThatCannotBeMetTogetherAreNamed() {
        PerCorner<Double> crossed = new PerCorner<>(70.0, 121.0, 166.0, 112.0);
        List<String> conflict = RoundPlanner.plan(read(RoundPlannerTest.car(false, Map.of()), crossed)).orElseThrow().notReachable();
        assertEquals(1, conflict.size(), conflict.toString());
        assertTrue(conflict.get(0).startsWith("No turning brings all targets inside at once; "), conflict.toString());
        assertTrue(conflict.get(0).endsWith(" stay outside. Widen a tolerance or change a target."), conflict.toString());
        assertTrue(conflict.get(0).contains("cross weight RF+LR") && conflict.get(0).contains("LF point height"), conflict.toString());
        assertEquals(List.of(), notReachable(RoundPlannerTest.car(false, Map.of())), "a car that can be set right");
    }

    @Test
    void aThreadThatEndsIsNamed() {
        List<String> ends = notReachable(perches(OptionalDouble.of(60), OptionalDouble.of(60), OptionalDouble.of(60.2), false));
        assertTrue(ends.stream().anyMatch(s -> s.contains("cannot reach its target: the thread ends at ") && s.contains("perch")), ends.toString());
    }

    @Test
    void whatNothingMovesIsSaidSo() {
        List<String> nothing = notReachable(perches(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(), true));
        assertTrue(nothing.stream().anyMatch(s -> s.startsWith("No perch or pushrod that may be turned moves the ")), nothing.toString());
    }

    /**
     * Shares follow the masses: of 469 kg on a wheelbase of 2300 mm, 1 % of front share is a moment of 4.69 kg times 2300 mm, which
     * 5 kg give at 2157 mm; on a mean track of 1370 mm 1 % of left share is 5 kg at 1285 mm.
     */
    @Test
    void massThatMustMoveIsToldByWayAndLength() {
        double front = 100.0 * (90 + 101) / 469;
        double left = 100.0 * (90 + 146) / 469;
        assertMass(ReadingKind.FRONT_SHARE, front - 1, "rearward", 2157, front);
        assertMass(ReadingKind.FRONT_SHARE, front + 1, "forward", 2157, front);
        assertMass(ReadingKind.LEFT_SHARE, left - 1, "to the right", 1285, left);
        assertMass(ReadingKind.LEFT_SHARE, left + 1, "to the left", 1285, left);
    }

    private static void assertMass(ReadingKind kind, double target, String way, double mm, double share) {
        List<String> lines = notReachable(RoundPlannerTest.car(false, Map.of(ReadingId.ofCar(kind), new Target(target, 0.1))));
        String line = lines.stream().filter(s -> s.startsWith("Perches cannot change the " + kind.words())).findFirst()
                .orElseThrow(() -> new AssertionError(lines.toString()));
        String[] words = line.substring(line.indexOf("move 5 kg ") + 10).split(" mm | or accept ");
        assertEquals(mm, Double.parseDouble(words[0]), 0.03 * mm, line);
        assertEquals(way, words[1]);
        assertEquals(share, Double.parseDouble(words[2].replace(" %.", "")), 0.15, line);
    }

    @Test
    void turnsAreSaidAsARacerSaysThem() {
        Setting notches = new Setting.Thread(1.5, false, 8, "notch");
        Setting flats = new Setting.Thread(1.25, false, 6, "flat");
        Setting shims = new Setting.Shims(List.of(new Setting.Shim(0.5, 4)), 2);
        assertWords("2 turns + 3 notches up", "1 notch down", AdjusterKind.PERCH, notches, 2.375, -0.125);
        assertWords("1 turn up", "1 turn down", AdjusterKind.PUSHROD, flats, 1, -1);
        assertWords("1 flat top out", "1 flat top in", AdjusterKind.CAMBER_ROD, flats, 1 / 6.0, -1 / 6.0);
        assertWords("0.50 mm top out", "1.50 mm top in", AdjusterKind.CAMBER_SHIM, shims, 0.5, -1.5);
        assertWords("3 flats top rearward", "3 flats top forward", AdjusterKind.CASTER_ROD, flats, 0.5, -0.5);
        assertWords("1 flat toe in", "1 flat toe out", AdjusterKind.TOE_LINK, flats, 1 / 6.0, -1 / 6.0);
        assertWords("3 flats onto the left wheel", "3 flats onto the right wheel", AdjusterKind.BAR_LINK, flats, 0.5, -0.5);
    }

    private static void assertWords(String plus, String minus, AdjusterKind kind, Setting setting, double up, double down) {
        Adjuster adjuster = Adjuster.unmeasured(new AdjusterId(kind, Corner.LF), setting);
        assertEquals(plus, RoundPlanner.words(adjuster, up));
        assertEquals(minus, RoundPlanner.words(adjuster, down));
    }

    /** The range left on the thread is counted from where the turns of the day have brought it. */
    @Test
    void turnsOfTheDayUseUpTheThread() {
        Car car = perches(OptionalDouble.of(60), OptionalDouble.of(57), OptionalDouble.of(63), false);
        Day day = read(car).with(new Entry.Adjustment(new Header(3, Instant.EPOCH, ""), List.of(new Entry.Turn(
                new AdjusterId(AdjusterKind.PERCH, Corner.LF), 1, OptionalDouble.empty())), ""));
        Adjuster perch = car.adjuster(new AdjusterId(AdjusterKind.PERCH, Corner.LF)).orElseThrow();
        assertEquals(1, RoundPlanner.step(day, perch).maxTurns(), 1e-9, "1.5 of 3 mm are left above");
        assertEquals(-3, RoundPlanner.step(day, perch).minTurns(), 1e-9);
        assertEquals(62.25, RoundPlanner.lengthMm(day, perch, 0.5).orElseThrow(), 1e-9);
        Adjuster unmeasured = Adjuster.unmeasured(perch.id(), perch.setting());
        assertEquals(RoundPlanner.UNKNOWN_RANGE_TURNS, RoundPlanner.step(day, unmeasured).maxTurns(), 1e-9);
        assertEquals(-RoundPlanner.UNKNOWN_RANGE_TURNS, RoundPlanner.step(day, unmeasured).minTurns(), 1e-9);
        assertEquals(Optional.empty(), RoundPlanner.lengthMm(day, unmeasured, 0).stream().boxed().findFirst());
    }

    @Test
    void aThreadAlreadyBeyondItsEndIsNotTurned() {
        Car beyond = perches(OptionalDouble.of(64), OptionalDouble.of(57), OptionalDouble.of(63), false);
        Adjuster perch = beyond.adjuster(new AdjusterId(AdjusterKind.PERCH, Corner.LF)).orElseThrow();
        assertTrue(RoundPlanner.step(read(beyond), perch).isLocked());
        Car atEnd = perches(OptionalDouble.of(63), OptionalDouble.of(57), OptionalDouble.of(63), false);
        assertFalse(RoundPlanner.step(read(atEnd), atEnd.adjuster(perch.id()).orElseThrow()).isLocked(), "it can still be turned down");
    }

    /**
     * Springs that nobody knows: turns chosen for their chance are clearly likelier than those with the smallest errors, and go first.
     * They say what they do to the angles as every plan does.
     */
    @Test
    void theLikeliestTurnsGoFirstWhereTheSpringsAreUnknown() {
        Map<ReadingId, Target> wide = new LinkedHashMap<>();
        Car car = RoundPlannerTest.springsUnknown(RoundPlannerTest.car(false, Map.of()));
        car.targets().readings().forEach((id, t) -> wide.put(id, new Target(t.value(), id.kind() == ReadingKind.HEIGHT ? 2 : 1.2)));
        Map<ReadingId, Double> values = RoundPlannerTest.readings(new PerCorner<>(105.0, 86.0, 131.0, 147.0), new PerCorner<>(61.8, 61.1, 71.9, 72.6));
        values.put(DayBook.camber(Corner.LF), -2.0);
        Day day = Day.of(List.of(new Entry.CarDescribed(new Header(1, Instant.EPOCH, ""), car.withTargets(new Targets(wide, CrossGoal.EQUAL_DIAGONALS))),
                new Entry.Reading(new Header(2, Instant.EPOCH, "corner-weights"), values, Map.of(), Entry.Source.RACER)));
        List<RoundPlan> plans = RoundPlanner.options(day, new SuspensionTypes(List.of(new StraightSuspension("measured"))), PlanCancellation.NEVER);
        RoundPlan first = plans.get(0);
        Matcher said = Pattern.compile("Best chance by what the readings have taught so far: (\\d+) % of ending inside; the smallest expected errors would "
                + "give (\\d+) %\\.").matcher(first.why());
        assertTrue(said.matches(), first.why());
        assertEquals(Math.round(100 * first.probabilityInside().orElseThrow()), Long.parseLong(said.group(1)));
        assertTrue(Long.parseLong(said.group(1)) >= Long.parseLong(said.group(2)) + 5, first.why());
        for (RoundPlan plan : plans) {
            Predicted camber = plan.predicted().get(DayBook.camber(Corner.LF));
            assertEquals(-2, camber.now(), plan.why());
            assertEquals(plan.moves().isEmpty(), camber.change() == 0, "any perch moves every wheel a little: " + plan.why());
        }
    }
}
