package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import quoin.adjustment.NextStep;
import quoin.adjustment.OddCorner;
import quoin.adjustment.Verdict;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.workflow.spi.Finding;

/** Verdict, stop, odd corner and judging at entry, on the light car of the plan's tests. */
class RoundAdviceTest {

    private static final ReadingId CROSS = ReadingId.ofCar(ReadingKind.CROSS);
    private static final PerCorner<Double> LOADS = new PerCorner<>(90.0, 101.0, 146.0, 132.0);
    private static final PerCorner<Double> HEIGHTS = new PerCorner<>(62.5, 61.5, 71.0, 69.0);

    private final List<Entry> entries = new ArrayList<>();
    private final Car car = RoundPlannerTest.car(false, Map.of());

    private Header next() {
        return new Header(entries.size() + 1, Instant.EPOCH.plusSeconds(entries.size()), "corner-weights");
    }

    private Day read(PerCorner<Double> loads, PerCorner<Double> heights) {
        if (entries.isEmpty()) {
            entries.add(new Entry.CarDescribed(next(), car));
        }
        entries.add(new Entry.Condition(next(), Conditions.SETTLED, Conditions.YES, ""));
        entries.add(new Entry.Reading(next(), RoundPlannerTest.readings(loads, heights), Map.of(), Entry.Source.RACER));
        return Day.of(entries);
    }

    private void turn(Corner corner, double turns) {
        entries.add(new Entry.Adjustment(next(), List.of(new Entry.Turn(new AdjusterId(AdjusterKind.PERCH, corner), turns,
                OptionalDouble.empty())), ""));
    }

    /** What the response believed on a day says the car reads after turns of one perch. */
    private static PerCorner<Double> after(Day day, Corner corner, double turns, ReadingKind kind) {
        Map<ReadingId, Predicted> forecast = RoundPlanner.forecast(day, Map.of(new AdjusterId(AdjusterKind.PERCH, corner), turns));
        return PerCorner.of(c -> forecast.get(kind == ReadingKind.LOAD ? ReadingId.of(kind, c)
                : new ReadingId(kind, c + " point")).predicted());
    }

    @Test
    void nothingReadNothingToSay() {
        entries.add(new Entry.CarDescribed(next(), car));
        assertEquals(Optional.empty(), RoundAdvice.of(Day.of(entries)));
    }

    @Test
    void farOutTurns() {
        RoundAdvice advice = RoundAdvice.of(read(LOADS, HEIGHTS)).orElseThrow();
        assertEquals(NextStep.Action.TURN, advice.next());
        assertEquals(Verdict.Answer.OUTSIDE, advice.verdicts().get(CROSS).answer());
        assertEquals(Verdict.Answer.OUTSIDE, advice.all().answer());
        assertTrue(advice.open().contains(CROSS));
        assertFalse(advice.stops());
        assertTrue(advice.nextWords().startsWith("Turn: inside with 0 % now, "), advice.nextWords());
        assertEquals(Optional.empty(), advice.oddCornerWords());
    }

    @Test
    void onTargetIsReadAgainAndThenStops() {
        PerCorner<Double> loads = new PerCorner<>(97.0, 94.0, 140.5, 137.5);
        PerCorner<Double> heights = new PerCorner<>(62.0, 62.0, 70.0, 70.0);
        RoundAdvice once = RoundAdvice.of(read(loads, heights)).orElseThrow();
        assertEquals(NextStep.Action.READ_AGAIN, once.next(), once.nextWords());
        assertTrue(once.readAgainWords().orElseThrow().startsWith("One more settled reading: "));
        Day day = read(loads, heights);
        for (int i = 0; i < 4; i++) {
            day = read(loads, heights);
        }
        RoundAdvice often = RoundAdvice.of(day).orElseThrow();
        assertEquals(NextStep.Action.STOP_INSIDE, often.next(), often.nextWords());
        assertTrue(often.stopWords().orElseThrow().startsWith("Inside with a probability of "));
        assertTrue(often.all().probabilityInside() > once.all().probabilityInside());
        assertEquals(Verdict.Answer.INSIDE, often.verdicts().get(CROSS).answer());
        assertEquals(List.of(), often.open());
    }

    /** Three rounds in which the RR ring does nothing. */
    @Test
    void aSeizedRingIsNamed() {
        Day asFound = read(LOADS, HEIGHTS);
        Day day = asFound;
        double front = 0;
        for (double turns : new double[] {3, -4, 5}) {
            turn(Corner.RR, turns);
            turn(Corner.LF, -turns / 2);
            front -= turns / 2;
            day = read(after(asFound, Corner.LF, front, ReadingKind.LOAD), after(asFound, Corner.LF, front, ReadingKind.HEIGHT));
        }
        RoundAdvice advice = RoundAdvice.of(day).orElseThrow();
        OddCorner odd = advice.oddCorner().orElseThrow();
        assertEquals(Optional.of(odd.words()), advice.oddCornerWords());
        assertEquals(OddCorner.Cause.SEIZED_RING, odd.cause(), odd.words());
        assertEquals(Corner.RR, odd.corner());
        assertTrue(odd.amount() < 0.3, odd.words());
    }

    @Test
    void slipsAreFoundAsTheyAreTyped() {
        Day day = read(LOADS, HEIGHTS);
        Map<ReadingId, Double> same = RoundPlannerTest.readings(LOADS, HEIGHTS);
        assertEquals(List.of(), ReadingChecks.of(day, same));
        Map<ReadingId, Double> typo = new HashMap<>(same);
        ReadingId load = ReadingId.of(ReadingKind.LOAD, Corner.LR);
        typo.put(load, 164.0);
        Finding finding = ReadingChecks.of(day, typo).get(0);
        assertEquals(Optional.of(load), finding.about(), finding.words());
        assertEquals(146, finding.suggested().orElseThrow(), 1e-6);
        assertTrue(finding.words().startsWith("LR load reads 164.0 kg; the other readings allow 14"), finding.words());
    }

    @Test
    void theFirstReadingIsJudgedByTheFrameAlone() {
        entries.add(new Entry.CarDescribed(next(), car));
        Map<ReadingId, Double> typed = RoundPlannerTest.readings(LOADS, new PerCorner<>(63.0, 26.5, 71.5, 70.5));
        Finding finding = ReadingChecks.of(Day.of(entries), typed).get(0);
        assertEquals(Optional.of(new ReadingId(ReadingKind.HEIGHT, "RF point")), finding.about());
        assertEquals(62.5, finding.suggested().orElseThrow(), finding.words());
        Map<ReadingId, Double> fine = RoundPlannerTest.readings(LOADS, new PerCorner<>(63.0, 62.5, 71.5, 70.5));
        assertEquals(List.of(), ReadingChecks.of(Day.of(entries), fine));
        assertEquals(List.of(), ReadingChecks.of(Day.of(entries), Map.of(CROSS, 12.0)), "other readings are not judged");
    }

    /** A perch turned down and recorded as up shows as soon as the readings are typed. */
    @Test
    void aTurnTheOtherWayIsFoundAtEntry() {
        Day before = read(LOADS, HEIGHTS);
        Map<ReadingId, Double> readings = RoundPlannerTest.readings(after(before, Corner.RF, -2, ReadingKind.LOAD),
                after(before, Corner.RF, -2, ReadingKind.HEIGHT));
        turn(Corner.RF, 2);
        List<Finding> findings = ReadingChecks.of(Day.of(entries), readings);
        assertEquals(1, findings.size(), findings.toString());
        assertTrue(findings.get(0).words().startsWith("RF perch is recorded as 2.00 turns up; the readings fit "),
                findings.get(0).words());
        assertTrue(findings.get(0).words().endsWith("turned the other way?"), findings.get(0).words());
    }

    /** Heights typed with a bar joined tell nothing of the rounds, but a slip among them shows by the frame alone. */
    @Test
    void aSlipIsFoundWhereTheReadingDoesNotCount() {
        DayBook book = new DayBook().prepared().read("ride-height", DayBook.heights(63, 62.5, 71.5, 70.5)).condition("front-bar", Conditions.CONNECTED);
        assertEquals(List.of(), ReadingChecks.of(book.day(), DayBook.heights(63, 62.5, 71.5, 70.5)));
        List<Finding> found = ReadingChecks.of(book.day(), DayBook.heights(63, 26.5, 71.5, 70.5));
        assertEquals(Optional.of(DayBook.height(Corner.RF)), found.get(0).about(), found.toString());
        Finding left = ReadingChecks.of(book.day(), DayBook.heights(36, 62.5, 71.5, 70.5)).get(0);
        assertEquals(Optional.of(DayBook.height(Corner.LF)), left.about(), left.toString());
        assertEquals(63, left.suggested().orElseThrow(), 1, left.toString());
    }
}
