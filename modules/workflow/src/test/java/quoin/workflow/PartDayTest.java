package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quoin.car.AdjusterKind;
import quoin.car.Corner;
import quoin.logbook.Conditions;
import quoin.logbook.Entry;
import quoin.logbook.Header;

/** Days for part of the job: entered at any stage, closed with what they did not prove. */
class PartDayTest {

    private final OrderOfWork order = new OrderOfWork(PlainStage.day());

    private static DayBook weighOnly() {
        return new DayBook().condition(Conditions.PART, "corner-weights");
    }

    /** Everything a weighing asks for, without the stages before it. */
    private static DayBook weighed(double cross) {
        return weighOnly().prepared().settle().read("corner-weights", DayBook.loads(cross));
    }

    @Test
    void theWholeJobIsNoPartOfIt() {
        assertEquals(Optional.empty(), order.part(new DayBook().day()));
        assertEquals(Optional.empty(), order.part(new DayBook().condition(Conditions.PART, Conditions.WHOLE).day()));
        List<String> all = order.stages().stream().map(s -> s.id()).toList();
        assertEquals(Conditions.WHOLE, PartDay.value(order.stages(), all));
        assertEquals("corner-weights", PartDay.value(order.stages(), List.of("corner-weights")));
    }

    @Test
    void readingsCountWithoutTheStagesBefore() {
        DayBook whole = new DayBook().prepared().settle().read("corner-weights", DayBook.loads(50));
        assertEquals(Freshness.OUT_OF_ORDER, order.status(whole.day()).reading(DayBook.load(Corner.LF)).freshness());
        assertEquals(Freshness.FRESH, order.status(weighed(50).day()).reading(DayBook.load(Corner.LF)).freshness());
        assertEquals(StageState.READY, order.status(weighed(50).day()).stage("corner-weights").state());
        assertTrue(order.signOff(weighed(50).day(), "corner-weights").allowed());
    }

    @Test
    void conditionsAreStillAskedFor() {
        DayBook bare = weighOnly().read("corner-weights", DayBook.loads(50));
        assertEquals(Freshness.OUT_OF_ORDER, order.status(bare.day()).reading(DayBook.load(Corner.LF)).freshness());
        assertFalse(order.signOff(bare.day(), "corner-weights").allowed());
        List<String> open = order.part(bare.day()).orElseThrow().notProved();
        assertTrue(open.stream().anyMatch(w -> w.startsWith("Corner weights: not signed off")), open.toString());
    }

    @Test
    void nextStepStaysInsideThePart() {
        assertEquals("corner-weights", order.status(weighOnly().day()).next().stageId());
        assertEquals(NextStep.Kind.SIGN_OFF, order.status(weighed(50).day()).next().kind());
    }

    @Test
    void closesWithoutAReasonAndSaysWhatWasNotProved() {
        DayBook day = weighed(52).condition("front-bar", Conditions.CONNECTED).condition("rear-bar", Conditions.CONNECTED)
                .condition(Conditions.DAMPERS, Conditions.RUNNING).condition(Conditions.STEERING, Conditions.FREE);
        Gate<Entry.DayClosed> gate = order.close(day.day());
        assertTrue(gate.allowed(), gate.reasons().toString());
        assertEquals(Optional.empty(), gate.entry().orElseThrow().outOfOrder());
        List<String> open = order.part(day.day()).orElseThrow().notProved();
        assertEquals(order.stages().size(), open.size(), open.toString());
        assertEquals(open, gate.entry().orElseThrow().notProved(), "the closing entry keeps it");
        assertTrue(open.stream().filter(w -> w.endsWith("not part of the day")).count() == order.stages().size() - 1, open.toString());
        assertTrue(order.status(day.day()).stage("wheel-angles").reasons().get(0).startsWith("not part of this day"));
    }

    @Test
    void whatWasTakenOffMustGoBackOn() {
        Gate<Entry.DayClosed> bars = order.close(weighed(50).day());
        assertFalse(bars.allowed());
        assertTrue(bars.reasons().get(0).startsWith("Join the front bar"), bars.reasons().toString());
        DayBook turned = weighOnly().turn(AdjusterKind.PERCH, Corner.LF, 1);
        Gate<Entry.DayClosed> nuts = order.close(turned.day());
        assertTrue(nuts.reasons().get(0).startsWith("Tighten every nut"), nuts.reasons().toString());
        assertTrue(order.close(turned.condition(Conditions.LOCKNUTS, Conditions.YES).day()).allowed());
    }

    @Test
    void aSignedPartIsProved() {
        DayBook day = weighed(50).sign(order, "corner-weights");
        List<String> open = order.part(day.day()).orElseThrow().notProved();
        assertTrue(open.stream().noneMatch(w -> w.startsWith("Corner weights")), open.toString());
    }

    private List<String> notProved(DayBook day) {
        return order.part(day.day()).orElseThrow().notProved().stream().filter(w -> w.startsWith("Corner weights")).toList();
    }

    /** The racer's own words for the job, where there are any. */
    @Test
    void theDayIsCalledWhatTheRacerCallsIt() {
        DayBook day = weighed(50);
        assertEquals("part of the job", order.part(day.day()).orElseThrow().words());
        day.add(new Entry.Condition(new Header(0, Instant.EPOCH, "preparation"), Conditions.PART, "corner-weights", "weigh only"));
        assertEquals("weigh only", order.part(day.day()).orElseThrow().words());
        assertEquals(List.of("not part of this day (weigh only): nothing is proved here"), order.status(day.day()).stage("wheel-angles").reasons());
    }

    @Test
    void whatIsRightAndNotSignedIsSaidAsThat() {
        assertEquals(List.of("Corner weights: not signed off"), notProved(weighed(50)));
        String outside = notProved(weighed(52)).get(0);
        assertTrue(outside.startsWith("Corner weights: not signed off, cross weight RF+LR: outside, 52.00 %"), outside);
    }

    /** A signature against the rules, and one that no longer holds, prove less than a stage signed in order. */
    @Test
    void whyASignatureProvesLessIsSaid() {
        DayBook waived = weighed(52);
        waived.add(order.signOff(waived.day(), "corner-weights", "oval").entry().orElseThrow());
        assertEquals(List.of("Corner weights: signed out of order, oval"), notProved(waived));
        List<String> stale = notProved(weighed(50).sign(order, "corner-weights").condition(Conditions.FUEL, "12"));
        assertEquals(1, stale.size(), stale.toString());
        assertTrue(stale.get(0).endsWith("fuel changed from 20 to 12 kg after this"), stale.toString());
    }
}
