package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Target;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Figure;
import quoin.logbook.Header;
import quoin.logbook.Measurement;

/** What the order of work says of a day that was carried on entry by entry is what it says of all its entries at once. */
class StatusOnwardTest {

    private static final List<String> STAGES = List.of("preparation", "ride-height", "corner-weights", "wheel-angles", "final-recheck");
    private static final List<AdjusterKind> KINDS = List.of(AdjusterKind.PERCH, AdjusterKind.PERCH, AdjusterKind.TOE_LINK,
            AdjusterKind.CAMBER_ROD, AdjusterKind.CASTER_ROD, AdjusterKind.BAR_LINK);
    private static final List<List<String>> STATES = List.of(List.of(Conditions.SETTLED, "yes", "yes", "yes", "no"),
            List.of(Conditions.DRIVER, "in", "in", "out"), List.of(Conditions.FUEL, "20", "20.0", "18"),
            List.of(Conditions.PADS, "levelled", "moved"), List.of("front-bar", "connected", "disconnected"),
            List.of(Conditions.STEERING, "locked", "free"), List.of(Conditions.LOCKNUTS, "yes", "no"), List.of(Conditions.DAMPERS, "soft", "running"),
            List.of("check.front-hubs", "yes", "open"), List.of("tightened.part.seat", "loose", "tight", "25"));

    private final OrderOfWork order = new OrderOfWork(PlainStage.day());

    private static Map<ReadingId, Double> figures(Random random) {
        Map<ReadingId, Double> values = new LinkedHashMap<>(switch (random.nextInt(3)) {
            case 0 -> DayBook.goodHeights();
            case 1 -> DayBook.loads(50 + random.nextInt(3) * 0.2);
            default -> DayBook.goodAngles();
        });
        values.replaceAll((id, value) -> value + 0.1 * random.nextInt(5) * (id.kind() == ReadingKind.LOAD ? 1 : 0.1));
        values.keySet().removeIf(id -> random.nextInt(12) == 0);
        return values;
    }

    private static Entry anything(Random random, DayBook book) {
        Header draft = new Header(0, Instant.EPOCH, STAGES.get(random.nextInt(5)));
        Corner corner = Corner.values()[random.nextInt(4)];
        int dice = random.nextInt(100);
        if (dice < 35) {
            Entry.Reading read = new Entry.Reading(draft, figures(random), Map.of(), Entry.Source.RACER);
            return ScaleCorrection.of(book.day()).filter(c -> random.nextInt(3) > 0).map(c -> c.applied(read, 0.1)).orElse(read);
        } else if (dice < 50) {
            AdjusterId id = new AdjusterId(KINDS.get(random.nextInt(KINDS.size())), corner);
            return new Entry.Adjustment(draft, List.of(new Entry.Turn(id, (random.nextInt(9) - 4) / 8.0, OptionalDouble.empty())), "");
        } else if (dice < 75) {
            List<String> state = STATES.get(random.nextInt(random.nextBoolean() ? 2 : STATES.size()));
            return new Entry.Condition(draft, state.get(0), state.get(1 + random.nextInt(state.size() - 1)), "");
        } else if (dice < 84) {
            return new Entry.SignOff(draft, random.nextBoolean() ? Optional.empty() : Optional.of("dark soon"));
        } else if (dice < 86) {
            return new Entry.Reopened(draft, "");
        } else if (dice < 88) {
            return new Entry.TargetSet(draft, DayBook.height(corner), new Target(60 + random.nextInt(12), 1));
        } else if (dice < 89) {
            return new Entry.Check(draft, ScaleCorrection.SUBJECT, Map.of("factor.LF", 1 + random.nextInt(5) / 1000.0, "u.LF", 0.001), new Measurement("scales", Map.of(), "", Map.of()));
        } else if (dice < 90) {
            return new Entry.Condition(draft, Conditions.PART, random.nextBoolean() ? "whole" : "ride-height,corner-weights", "");
        } else if (dice < 91) {
            return new Entry.CarDescribed(draft, DayBook.car());
        }
        long back = random.nextInt(4) > 0 ? 1 + random.nextInt(3) : random.nextInt(book.size());
        return new Entry.Correction(draft, Math.max(2, book.size() + 1 - back), Optional.empty(), "undo");
    }

    private void walk(long seed, int steps, int lookEvery) {
        Random random = new Random(seed);
        DayBook book = random.nextBoolean() ? new DayBook().prepared() : new DayBook().signedToAngles(order);
        for (int step = 0; step < steps; step++) {
            book.add(anything(random, book));
            if (random.nextInt(4) > 0) {
                order.status(book.day());
            }
            if (step % lookEvery == 0) {
                assertSame(book);
            }
        }
        assertSame(book);
    }

    private void assertSame(DayBook book) {
        Day carried = book.day();
        Day whole = Day.of(book.entries());
        assertEquals(order.status(whole), order.status(carried));
        assertEquals(order.recheck(whole), order.recheck(carried));
        assertEquals(order.part(whole), order.part(carried));
        assertEquals(order.close(whole).reasons(), order.close(carried).reasons());
        assertEquals(Closing.states(whole), Closing.states(carried));
        assertEquals(Loosened.of(whole), Loosened.of(carried));
        assertEquals(CarCheck.recorded(whole), CarCheck.recorded(carried));
        assertEquals(new ReadingsAt(whole).at(book.size() / 2), new ReadingsAt(carried).at(book.size() / 2));
        for (ReadingKind kind : List.of(ReadingKind.LOAD, ReadingKind.HEIGHT, ReadingKind.CAMBER)) {
            assertEquals(RepeatSpread.of(whole, kind), RepeatSpread.of(carried, kind));
            assertPlain(plainSpread(whole, kind), RepeatSpread.of(carried, kind));
        }
    }

    private static void assertPlain(RepeatSpread expected, RepeatSpread actual) {
        assertEquals(expected.freedom(), actual.freedom());
        assertEquals(expected.squares(), actual.squares(), 1e-9);
        assertEquals(expected.greatest(), actual.greatest());
    }

    /** The same spread in the plainest way: every reading, the newest first, with all that repeats it. */
    private static RepeatSpread plainSpread(Day day, ReadingKind kind) {
        RepeatSpread all = RepeatSpread.NONE;
        for (ReadingId reading : day.readings().stream().filter(id -> id.kind() == kind).toList()) {
            List<Figure> history = day.history(reading);
            Set<Long> seen = new HashSet<>();
            for (int i = history.size() - 1; i >= 0; i--) {
                if (!seen.contains(history.get(i).entry())) {
                    Map<Long, Double> group = new Repeats(day).of(history.get(i));
                    all = all.with(group.entrySet().stream().filter(e -> seen.add(e.getKey())).map(Map.Entry::getValue).toList());
                }
            }
        }
        return all;
    }

    @Property(tries = 25)
    @net.jqwik.api.Tag("slow")
    void carriedOnIsTheWholeDay(@ForAll long seed) {
        walk(seed, 60, 3);
    }

    @Property(tries = 2)
    @net.jqwik.api.Tag("slow")
    void alsoOnALongDay(@ForAll long seed) {
        walk(seed, 900, 60);
    }

    /** What is computed anew for an entry does not grow with the day: the derivations are carried on. */
    @Test
    @Tag("slow")
    void theLastThousandEntriesOfALongDayAreJudgedAsQuicklyAsTheSecond() {
        Random random = new Random(23);
        DayBook book = new DayBook().signedToAngles(order);
        List<Double> spent = new ArrayList<>();
        java.lang.management.ThreadMXBean threads = java.lang.management.ManagementFactory.getThreadMXBean();
        while (book.size() < 6000) {
            Entry next = anything(random, book);
            book.add(next instanceof Entry.Correction ? new Entry.Note(next.header(), "") : next);
            long begun = threads.getCurrentThreadCpuTime();
            order.status(book.day());
            spent.add((threads.getCurrentThreadCpuTime() - begun) / 1e6);
        }
        double early = median(spent.subList(1000, 2000));
        double last = median(spent.subList(spent.size() - 1000, spent.size()));
        assertTrue(last < 2 * early, "half of the last thousand took more than " + last + " ms, of the second thousand " + early + " ms");
    }

    private static double median(List<Double> values) {
        return values.stream().sorted().toList().get(values.size() / 2);
    }
}
