package quoin.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import quoin.adjustment.NextStep;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Target;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.rehearsal.PracticeCar;
import quoin.workflow.Derived;
import quoin.workflow.ReadingChecks;
import quoin.workflow.RoundAdvice;
import quoin.workflow.RoundPlan;
import quoin.workflow.RoundPlanner;

/**
 * Days with the practice car, whose springs, motion ratios, frame and scales are not as described: advice followed to the
 * letter, every reading judged as it is typed.
 */
class PracticeRoundsTest {

    private static final int DAYS = 12;

    private final List<Entry> entries = new ArrayList<>();
    private int rounds;
    private int findings;
    private int judged;

    private void add(Entry entry) {
        entries.add(entry.withHeader(new Header(entries.size() + 1, Instant.EPOCH, "corner-weights")));
    }

    private void set(String key, String value) {
        add(new Entry.Condition(Header.draft(""), key, value, ""));
    }

    private void begin(PracticeCar car) {
        entries.clear();
        add(new Entry.CarDescribed(Header.draft(""), car.car()));
        set(Conditions.DRIVER, Conditions.IN);
        set(Conditions.PADS, Conditions.LEVELLED);
        set("front-bar", Conditions.DISCONNECTED);
        set(Conditions.SCALES, Conditions.ZEROED);
        set(Conditions.SETTLED, Conditions.YES);
        rounds = 0;
    }

    /** Reads, turns and reads until the advice says stop. */
    private RoundAdvice work(PracticeCar car) {
        List<ReadingId> wanted = new ArrayList<>(car.car().cornerReadings(ReadingKind.LOAD));
        car.car().heightPoints().forEach(p -> wanted.add(p.reading()));
        for (int reading = 0; reading < 10; reading++) {
            Map<ReadingId, Double> read = car.read(Day.of(entries), wanted);
            judged++;
            findings += ReadingChecks.of(Day.of(entries), read).size();
            add(new Entry.Reading(Header.draft(""), read, Map.of(), Entry.Source.PRACTICE_CAR));
            RoundAdvice advice = RoundAdvice.of(Day.of(entries)).orElseThrow();
            if (advice.stops()) {
                return advice;
            }
            if (advice.next() == NextStep.Action.TURN) {
                rounds++;
                RoundPlan plan = RoundPlanner.plan(Day.of(entries)).orElseThrow();
                add(new Entry.Adjustment(Header.draft(""), plan.moves().stream().map(m -> new Entry.Turn(m.adjuster(), m.turns(),
                        OptionalDouble.empty())).toList(), ""));
            }
            set(Conditions.SETTLED, Conditions.YES);
        }
        throw new AssertionError("no end after ten readings");
    }

    /** Whether the friction-free practice car meets every target the advice judged. */
    private boolean trulyInside(PracticeCar car, RoundAdvice advice) {
        Day day = Day.of(entries);
        return advice.verdicts().keySet().stream().allMatch(id -> {
            Target target = day.targets().of(id).orElseThrow();
            Map<ReadingId, Double> exact = car.exact(day, Derived.parts(car.car(), id));
            double value = Derived.value(car.car(), id, part -> OptionalDouble.of(exact.get(part))).orElseThrow();
            return Math.abs(value - target.value()) <= target.tolerance();
        });
    }

    @Test
    void advisedDaysEndSoonAndHonestly() {
        double claimed = 0;
        double variance = 0;
        int inside = 0;
        int within2 = 0;
        for (long seed = 101; seed < 101 + DAYS; seed++) {
            PracticeCar car = PracticeCar.ouzel23(seed);
            begin(car);
            RoundAdvice end = work(car);
            assertEquals(NextStep.Action.STOP_INSIDE, end.next(), end.nextWords());
            assertTrue(rounds <= 4, rounds + " rounds");
            within2 += rounds <= 2 ? 1 : 0;
            claimed += end.all().probabilityInside();
            variance += end.all().probabilityInside() * (1 - end.all().probabilityInside());
            inside += trulyInside(car, end) ? 1 : 0;
        }
        assertTrue(within2 >= DAYS - 3, within2 + " of " + DAYS + " within two rounds");
        assertTrue(inside >= claimed - 3 * Math.sqrt(variance), inside + " truly inside, " + claimed + " claimed");
        assertTrue(findings <= 1 + judged / 20, findings + " doubts in " + judged + " sound readings");
    }
}
