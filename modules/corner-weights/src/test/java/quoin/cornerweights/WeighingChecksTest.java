package quoin.cornerweights;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.rehearsal.Ouzel23;
import quoin.workflow.spi.Finding;

/** Perches move weight between the diagonals only; loads of a light car as found in common practice: 90, 101, 146, 132 kg. */
class WeighingChecksTest {

    private static Day day(Entry... entries) {
        List<Entry> all = new ArrayList<>(List.of(new Entry.CarDescribed(new Header(1, Instant.EPOCH, ""), Ouzel23.car())));
        for (Entry entry : entries) {
            all.add(entry.withHeader(new Header(all.size() + 1, Instant.EPOCH, "")));
        }
        return Day.of(all);
    }

    private static Entry read(Map<ReadingId, Double> values) {
        return new Entry.Reading(new Header(0, Instant.EPOCH, ""), values, Map.of(), Entry.Source.RACER);
    }

    /** Diagonal LF and RR heavier by this much each, as perches do, and a scale that reads high by some more. */
    private static Entry weighed(double diagonal, Corner wrong, double by) {
        double[] loads = {90 + diagonal, 101 - diagonal, 146 - diagonal, 132 + diagonal};
        loads[wrong.ordinal()] += by;
        return read(Map.of(load(Corner.LF), loads[0], load(Corner.RF), loads[1], load(Corner.LR), loads[2], load(Corner.RR), loads[3]));
    }

    private static ReadingId load(Corner corner) {
        return ReadingId.of(ReadingKind.LOAD, corner);
    }

    private static Entry condition(String key, String value) {
        return new Entry.Condition(new Header(0, Instant.EPOCH, ""), key, value, "");
    }

    private static Entry turned(AdjusterKind kind) {
        return new Entry.Adjustment(new Header(0, Instant.EPOCH, ""),
                List.of(new Entry.Turn(new AdjusterId(kind, Corner.LF), 1, OptionalDouble.empty())), "");
    }

    @Test
    void whatPerchesDoIsNothingToSpeakOf() {
        assertEquals(List.of(), WeighingChecks.of(day(weighed(0, Corner.LF, 0), turned(AdjusterKind.PERCH), weighed(6.5, Corner.LF, 0))));
    }

    @Test
    void aDriftingScaleShowsInTheTotal() {
        List<Finding> findings = WeighingChecks.of(day(weighed(0, Corner.LR, 0), turned(AdjusterKind.PERCH), weighed(3, Corner.LR, 1.5)));
        assertEquals(Optional.of(ReadingId.ofCar(ReadingKind.TOTAL)), findings.get(0).about());
        assertTrue(findings.get(0).words().contains("+1.50 kg"), findings.get(0).words());
    }

    /** 1 kg from the left pair to the right is 1/469 = 0.21 % of left share, with the total as before. */
    @Test
    void aLeaningDriverShowsInTheLeftShare() {
        Entry leaning = read(Map.of(load(Corner.LF), 89.5, load(Corner.RF), 101.5, load(Corner.LR), 145.5, load(Corner.RR), 132.5));
        List<Finding> findings = WeighingChecks.of(day(weighed(0, Corner.LF, 0), leaning));
        assertEquals(List.of(Optional.of(ReadingId.ofCar(ReadingKind.LEFT_SHARE))), findings.stream().map(Finding::about).toList());
        assertTrue(findings.get(0).words().contains("-0.21 %"), findings.get(0).words());
    }

    @Test
    void whatMayMoveMassExplainsIt() {
        Entry before = weighed(0, Corner.LR, 0);
        Entry after = weighed(0, Corner.LR, 6);
        assertEquals(List.of(), WeighingChecks.of(day(before, condition(Conditions.FUEL, "15"), after)));
        assertEquals(List.of(), WeighingChecks.of(day(before, condition(Conditions.BALLAST, "battery moved"), after)));
        assertEquals(List.of(), WeighingChecks.of(day(before, turned(AdjusterKind.CAMBER_ROD), after)));
        assertTrue(WeighingChecks.of(day(before, condition(Conditions.SETTLED, Conditions.YES), after)).size() > 0);
    }

    @Test
    void onlyWholeWeighingsAreCompared() {
        assertEquals(List.of(), WeighingChecks.of(day(weighed(0, Corner.LF, 0), read(Map.of(load(Corner.LF), 95.0)))));
        Day interrupted = day(weighed(0, Corner.LF, 0), read(Map.of(load(Corner.LF), 95.0)), weighed(0, Corner.LF, 5));
        assertTrue(WeighingChecks.of(interrupted).get(0).words().contains("+5.00 kg"), "the incomplete one is passed over");
    }

    @Test
    void theCrossWeightIsAlwaysJudged() {
        assertEquals(List.of(ReadingId.ofCar(ReadingKind.CROSS)), new CornerWeightsStage().judged(Ouzel23.car()));
    }
}
