package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import quoin.car.AdjusterKind;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Target;
import quoin.car.Targets;
import quoin.logbook.Conditions;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.workflow.spi.Stage;

/** What keeps a stage from its sign-off and what undoes one, with the reason as the racer reads it. */
class StageRulesTest {

    private final OrderOfWork order = new OrderOfWork(PlainStage.day());

    private List<String> toSign(DayBook book, String stage) {
        return order.signOff(book.day(), stage).reasons();
    }

    private StageStatus stage(DayBook book, String id) {
        return order.status(book.day()).stage(id);
    }

    private static DayBook reopen(DayBook book, String stage) {
        book.add(new Entry.Reopened(new Header(0, Instant.EPOCH, stage), "once more"));
        return book;
    }

    private DayBook heightsSigned() {
        return new DayBook().prepared().sign(order, "preparation").read("ride-height", DayBook.goodHeights()).sign(order, "ride-height");
    }

    /** A racer who has no height in mind still reads them before the weights: they say in which state the car was weighed. */
    @Test
    void heightsWithoutATargetAreReadAllTheSame() {
        Car car = DayBook.car();
        Map<ReadingId, Target> targets = new LinkedHashMap<>(car.targets().readings());
        targets.keySet().removeIf(id -> id.kind() == ReadingKind.HEIGHT);
        DayBook book = new DayBook(car.withTargets(new Targets(targets, car.targets().crossGoal()))).prepared().sign(order, "preparation");
        List<String> reasons = toSign(book, "ride-height");
        assertEquals(1, reasons.size(), reasons.toString());
        assertTrue(reasons.get(0).endsWith(": not read yet"), reasons.toString());
        assertTrue(order.signOff(book.read("ride-height", DayBook.heights(31, 47, 58, 69)).day(), "ride-height").allowed(), "any height will do");
    }

    @Test
    void whatWasReadOutOfTurnIsNotCalledUnread() {
        DayBook book = new DayBook().read("ride-height", DayBook.goodHeights()).prepared().sign(order, "preparation");
        String reason = toSign(book, "ride-height").get(0);
        assertTrue(reason.contains(": does not count, as found: kept as the way home; "), reason);
        assertTrue(reason.matches(".*(; .*){2}; and \\d+ more"), reason);
    }

    /** A stage that reads something of its own is not asked for it again because an earlier one was signed once more. */
    @Test
    void signingAnEarlierStageAnewLeavesWhatWasRead() {
        DayBook book = reopen(heightsSigned().read("corner-weights", DayBook.loads(50)), "ride-height").sign(order, "ride-height");
        assertEquals(StageState.READY, stage(book, "corner-weights").state());
        DayBook end = reopen(book.sign(order, "corner-weights").read("wheel-angles", DayBook.goodAngles()).sign(order, "wheel-angles")
                .read("final-recheck", DayBook.everything()).sign(order, "final-recheck"), "wheel-angles");
        end.read("wheel-angles", DayBook.goodAngles()).sign(order, "wheel-angles");
        StageStatus recheck = stage(end, "final-recheck");
        assertEquals(StageState.CHECK_AGAIN, recheck.state(), "the last look comes last");
        assertTrue(recheck.reasons().get(1).endsWith("not read again since the stages before were signed off"), recheck.reasons().toString());
        assertEquals(StageState.SIGNED, stage(end.read("final-recheck", DayBook.everything()), "final-recheck").state());
    }

    /** What camber work does to the heights waits for the final re-check; fuel that was taken off does not. */
    @Test
    void onlyItsOwnWorkIsForgivenAStage() {
        DayBook book = reopen(new DayBook().signedToAngles(order), "wheel-angles").turn(AdjusterKind.CAMBER_ROD, Corner.LF, 0.5).settle()
                .read("wheel-angles", DayBook.goodAngles());
        assertEquals(StageState.READY, stage(book, "wheel-angles").state());
        book.condition(Conditions.FUEL, "12").read("wheel-angles", DayBook.goodAngles());
        assertEquals(StageState.WAITING, stage(book, "wheel-angles").state());
        assertTrue(toSign(book, "wheel-angles").stream().anyMatch(r -> r.startsWith("Ride height: ")
                && r.endsWith("fuel changed from 20 to 12 kg after this")), toSign(book, "wheel-angles").toString());
    }

    /** Three reasons are said in full; of more, how many. */
    @Test
    void aLongListOfReasonsIsCutShort() {
        DayBook book = heightsSigned().turn(AdjusterKind.PERCH, Corner.LF, 0.125).turn(AdjusterKind.PERCH, Corner.RF, 0.125)
                .turn(AdjusterKind.PERCH, Corner.LR, 0.125);
        String three = "LF perch turned 1 notch after this; RF perch turned 1 notch after this; LR perch turned 1 notch after this";
        assertTrue(stage(book, "ride-height").reasons().get(1).endsWith(": " + three), stage(book, "ride-height").reasons().toString());
        book.turn(AdjusterKind.PERCH, Corner.RR, 0.125).turn(AdjusterKind.PUSHROD, Corner.RR, 1);
        assertTrue(stage(book, "ride-height").reasons().get(1).endsWith(": " + three + "; and 2 more"), stage(book, "ride-height").reasons().toString());
    }

    @Test
    void aSignatureSaysHowItCameAbout() {
        DayBook book = heightsSigned();
        String signed = "signed off at entry " + book.size();
        assertEquals(List.of(signed), stage(book, "ride-height").reasons());
        book.read("ride-height", DayBook.goodHeights());
        assertEquals(List.of(signed), stage(book, "ride-height").reasons(), "nothing had happened to the first reading");
        DayBook waived = new DayBook().prepared().sign(order, "preparation").read("ride-height", DayBook.heights(64, 62, 70, 70));
        waived.add(order.signOff(waived.day(), "ride-height", " rough track, nose up on purpose ").entry().orElseThrow());
        assertEquals(List.of("signed off at entry " + waived.size() + ", out of order: rough track, nose up on purpose"),
                stage(waived, "ride-height").reasons());
        assertFalse(order.close(waived.day()).reasons().stream().anyMatch(r -> r.startsWith("Ride height: ")), "the reason stands for it");
    }

    /** A stage without a target is judged by what belongs to it; what it reads along with that belongs to the stage that was passed over. */
    @Test
    void aStageIsNotJudgedByWhatItReadsAlong() {
        Function<Car, List<ReadingId>> both = c -> Stream.concat(c.cornerReadings(ReadingKind.LOAD).stream(), c.heightReadings().stream()).toList();
        List<Stage> stages = List.of(order.stages().get(0), order.stages().get(1), new PlainStage("weighing", 300, "Weighing", both, List.of(),
                order.stages().get(2)::requirements, Set.of(AdjusterKind.PERCH)));
        OrderOfWork weighing = new OrderOfWork(stages);
        Car bare = DayBook.car().withTargets(new Targets(Map.of(), DayBook.car().targets().crossGoal()));
        DayBook book = new DayBook(bare).prepared().sign(weighing, "preparation");
        book.add(weighing.signOff(book.day(), "ride-height", "no rule at hand").entry().orElseThrow());
        assertFalse(weighing.signOff(book.day(), "weighing").allowed(), "not weighed");
        assertEquals(List.of(), weighing.signOff(book.read("weighing", DayBook.loads(51)).day(), "weighing").reasons());
    }
}
