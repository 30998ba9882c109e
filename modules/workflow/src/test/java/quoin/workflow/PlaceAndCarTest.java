package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quoin.car.Corner;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.logbook.Measurement;

/** Loads put right by a test of the scales, and what is left open in the check of the car. */
class PlaceAndCarTest {

    private static final ReadingId LF = ReadingId.of(ReadingKind.LOAD, Corner.LF);
    private static final ReadingId RR = ReadingId.of(ReadingKind.LOAD, Corner.RR);

    private static Day day(Entry... entries) {
        List<Entry> all = new ArrayList<>(List.of(new Entry.CarDescribed(header(1), DayBook.car())));
        for (Entry entry : entries) {
            all.add(entry.withHeader(header(all.size() + 1)));
        }
        return Day.of(all);
    }

    private static Header header(long number) {
        return new Header(number, Instant.EPOCH, "preparation");
    }

    private static Entry.Check test(double lf, double uLf) {
        return new Entry.Check(header(0), ScaleCorrection.SUBJECT, Map.of("factor.LF", lf, "u.LF", uLf),
                new Measurement("known-person", Map.of("LF", "80.4"), "", Map.of()));
    }

    private static Entry.Reading loads(double lf, double rr) {
        return new Entry.Reading(header(0), Map.of(LF, lf, RR, rr), Map.of(LF, "100.5"), Entry.Source.RACER);
    }

    /** 100.5 kg on a scale that shows 0.5 % too much is 100 kg. */
    @Test
    void loadsArePutRightAndKeepWhatWasShown() {
        ScaleCorrection correction = ScaleCorrection.of(day(test(1.005, 0.001))).orElseThrow();
        Entry.Reading right = correction.applied(loads(100.5, 120), 0.2);
        assertEquals(100, right.values().get(LF), 1e-9);
        assertEquals(120, right.values().get(RR), 1e-9, "not tested, left alone");
        assertEquals(Optional.of(100.5), ScaleCorrection.shown(right, LF));
        assertEquals(Math.hypot(0.2 / Math.sqrt(12), 100 * 0.001 / 1.005), right.measured().orElseThrow().uncertaintyOf(LF).getAsDouble(), 1e-12);
        assertTrue(right.measured().orElseThrow().words().contains("LF 100.5 kg"), right.measured().toString());
        assertSame(right, correction.applied(right, 0.2), "never twice");
        Entry.Reading slip = ScaleCorrection.retyped(right, Map.of(LF, 105.525));
        assertEquals(105, slip.values().get(LF), 1e-9, "a misread display is put right by the same test");
        assertEquals(Optional.of(105.525), ScaleCorrection.shown(slip, LF));
        assertTrue(slip.measured().orElseThrow().words().endsWith("test of entry 2"), slip.measured().toString());
        Entry.Reading heights = new Entry.Reading(header(0), Map.of(ReadingId.of(ReadingKind.PRESSURE, Corner.LF), 1.4), Map.of(), Entry.Source.RACER);
        assertSame(heights, correction.applied(heights, 0.2));
    }

    @Test
    void aLaterTestLeavesWhatWasRead() {
        Entry.Reading read = ScaleCorrection.of(day(test(1.005, 0))).orElseThrow().applied(loads(100.5, 120), 0.2);
        Day later = day(test(1.005, 0), read, test(1.01, 0));
        assertEquals(100, later.latest(LF).orElseThrow().value(), 1e-9);
        assertEquals(1.01, ScaleCorrection.of(later).orElseThrow().factors().lf());
        assertEquals(PerCorner.all(0.0), ScaleCorrection.of(later).orElseThrow().standard());
        assertEquals(Optional.empty(), ScaleCorrection.of(day(loads(100, 100))));
    }

    /** What the file of a day calls the relation of two scales, whichever is named first. */
    @Test
    void twoScalesAreNamedInOneOrder() {
        assertEquals("r.LF.RR", ScaleCorrection.correlationKey(Corner.LF, Corner.RR));
        assertEquals("r.LF.RR", ScaleCorrection.correlationKey(Corner.RR, Corner.LF));
        assertEquals("factor.LR", ScaleCorrection.factorKey(Corner.LR));
        assertEquals("u.LR", ScaleCorrection.uncertaintyKey(Corner.LR));
    }

    private static Entry.Reading measured(String method, Map<String, String> raw, String words) {
        return new Entry.Reading(header(0), Map.of(LF, 100.0), Map.of(), Entry.Source.RACER, Optional.of(new Measurement(method, raw, words, Map.of())));
    }

    /** Scales that were zeroed were not tested; a load got another way was not put right by a test, whatever its words end in. */
    @Test
    void onlyATestOfTheScalesPutsLoadsRight() {
        Entry.Check zeroed = new Entry.Check(header(0), ScaleCorrection.SUBJECT, Map.of("zero.LF", 0.2), new Measurement("zero", Map.of(), "", Map.of()));
        assertEquals(Optional.empty(), ScaleCorrection.of(day(zeroed)));
        Entry.Reading lifted = measured("load-cell", Map.of(LF.toString(), "100.5", "test", "2"), "lifted; test of entry 2");
        assertEquals(Optional.empty(), ScaleCorrection.test(lifted));
        assertEquals(Optional.empty(), ScaleCorrection.shown(lifted, LF));
        assertThrows(IllegalArgumentException.class, () -> ScaleCorrection.retyped(lifted, Map.of(LF, 99.0)));
        assertThrows(IllegalArgumentException.class, () -> ScaleCorrection.retyped(loads(100, 120), Map.of(LF, 99.0)));
    }

    /** Days written before the test had a place of its own name it in their words. */
    @Test
    void olderReadingsNameTheirTestInWords() {
        Map<String, String> raw = Map.of(LF.toString(), "100.5");
        assertEquals(Optional.of(12L), ScaleCorrection.test(measured(ScaleCorrection.METHOD, raw, "the scales showed LF 100.5 kg; test of entry 12")));
        assertEquals(Optional.empty(), ScaleCorrection.test(measured(ScaleCorrection.METHOD, raw, "the scales showed LF 100.5 kg")));
        assertEquals(Optional.of(2L), ScaleCorrection.test(measured(ScaleCorrection.METHOD, Map.of("test", "2"), "; test of entry 12")));
        assertEquals(Optional.of(100.5), ScaleCorrection.shown(measured(ScaleCorrection.METHOD, raw, ""), LF));
    }

    @Test
    void loadsReadBeforeTheTestAreDoubtful() {
        assertEquals(Staleness.Effect.DOUBTFUL, Staleness.of(Disturbance.SCALES, Optional.empty(), LF));
        assertEquals(Staleness.Effect.STAYS, Staleness.of(Disturbance.SCALES, Optional.empty(), ReadingId.of(ReadingKind.CAMBER, Corner.LF)));
        assertEquals(List.of(Disturbance.SCALES), Timeline.of(day(loads(100, 100), test(1.005, 0))).events().stream()
                .map(Timeline.Event::what).toList());
    }

    /**
     * Pooled by hand: 0.4 and 0.2 kg apart at two corners are squares of 0.08 and 0.02 with one degree of freedom each; t for two
     * degrees of freedom is 4.302653 (JCGM 100:2008, table G.2: 4.30).
     */
    @Test
    void repeatsOfEveryCornerArePooled() {
        Day day = day(new Entry.Condition(header(0), "settled", "yes", ""), loads(100, 120), loads(100.4, 120.2));
        RepeatSpread spread = RepeatSpread.of(day, ReadingKind.LOAD);
        assertEquals(2, spread.freedom());
        assertEquals(0.10, spread.squares(), 1e-9);
        assertEquals(0.4, spread.greatest(), 1e-9);
        assertEquals(Math.sqrt(0.05), spread.standardDeviation().getAsDouble(), 1e-9);
        assertEquals(4.302653 * Math.sqrt(0.05), spread.within95().getAsDouble(), 1e-6);
        assertEquals(0, RepeatSpread.of(day(loads(100, 120)), ReadingKind.LOAD).freedom());
        double one = new ReadingUncertainty(DayBook.car()).ofMean(LF, new double[] {100.2}, spread, java.util.OptionalDouble.of(0), 2);
        assertEquals(Math.sqrt((3 * 0.3 * 0.3 + 0.10) / 5 / 2), one, 1e-9, "the usual 0.3 kg counts like three repeats");
        Day turned = day(loads(100, 120), new Entry.Condition(header(0), "settled", "no", ""), loads(104, 124), loads(104.2, 124));
        assertEquals(2, RepeatSpread.of(turned, ReadingKind.LOAD).freedom(), "a car disturbed between is another car");
    }

    @Test
    void whatIsLeftOpenIsNamedUntilItIsFoundGood() {
        Entry open = new Entry.Condition(header(0), CarCheck.key("damper-shafts"), CarCheck.OPEN, "new one ordered");
        Entry own = new Entry.Condition(header(0), CarCheck.ownKey(" rain light "), CarCheck.OPEN, "");
        assertEquals(List.of("left open in the check of the car: damper shafts (new one ordered)",
                "left open in the check of the car: rain light"), CarCheck.leftOpen(day(open, own)).stream().map(CarCheck.Item::words).toList());
        Day done = day(open, own, new Entry.Condition(header(0), CarCheck.key("damper-shafts"), CarCheck.GOOD, ""),
                new Entry.Condition(header(0), CarCheck.ownKey("rain light"), CarCheck.GONE, ""));
        assertEquals(List.of(), CarCheck.leftOpen(done));
        assertEquals(List.of("damper shafts"), CarCheck.recorded(done).stream().map(CarCheck.Item::name).toList());
    }
}
