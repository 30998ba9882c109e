package quoin.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.CrossGoal;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Target;
import quoin.car.Targets;

/** A day that was carried on entry by entry is the day of all its entries, and what was derived from it likewise. */
class DayOnwardTest {

    private static final List<String> STAGES = List.of("ride-height", "corner-weights");
    private static final List<String> KEYS = List.of(Conditions.DRIVER, Conditions.SETTLED, Conditions.FUEL);

    /** Sum of what was turned anywhere, and how often it was carried on. */
    private record Turned(double sum, int times) {
    }

    private record TurnedIn(AdjusterKind kind) implements Derivation<Turned> {
        @Override
        public Turned of(Day day) {
            return new Turned(sum(0, day.effective()), 0);
        }

        @Override
        public Turned onward(Day earlier, Turned known, Day day) {
            assertEquals(earlier.effective(), day.effective().subList(0, earlier.effective().size()));
            assertEquals(earlier.car(), day.car());
            return new Turned(sum(known.sum(), day.effective().subList(earlier.effective().size(), day.effective().size())), known.times() + 1);
        }

        private double sum(double before, List<Entry> entries) {
            double sum = before;
            for (Entry entry : entries) {
                if (entry instanceof Entry.Adjustment a) {
                    sum += a.turns().stream().filter(t -> t.adjuster().kind() == kind).mapToDouble(Entry.Turn::amount).sum();
                }
            }
            return sum;
        }
    }

    private static Entry anything(Random random, long number) {
        Header draft = Header.draft(STAGES.get(random.nextInt(2)));
        Corner corner = Corner.values()[random.nextInt(4)];
        ReadingId load = ReadingId.of(ReadingKind.LOAD, corner);
        int dice = random.nextInt(100);
        if (dice < 30) {
            return new Entry.Reading(draft, Map.of(load, 100.0 + random.nextInt(100)), Map.of(), Entry.Source.RACER);
        } else if (dice < 45) {
            return new Entry.Adjustment(draft, List.of(new Entry.Turn(new AdjusterId(AdjusterKind.PERCH, corner),
                    (random.nextInt(17) - 8) / 8.0, OptionalDouble.empty())), "");
        } else if (dice < 60) {
            return new Entry.Condition(draft, KEYS.get(random.nextInt(3)), List.of("in", "out", "yes").get(random.nextInt(3)), "");
        } else if (dice < 65) {
            return new Entry.SignOff(draft, Optional.empty());
        } else if (dice < 68) {
            return new Entry.Reopened(draft, "");
        } else if (dice < 72) {
            return new Entry.TargetSet(draft, load, new Target(100 + random.nextInt(20), 1));
        } else if (dice < 74) {
            return new Entry.GoalSet(draft, CrossGoal.values()[random.nextInt(CrossGoal.values().length)]);
        } else if (dice < 76) {
            return new Entry.DayClosed(draft, Optional.empty());
        } else if (dice < 77) {
            return new Entry.CarDescribed(draft, random.nextBoolean() ? Samples.fullCar() : Samples.bareCar());
        } else if (dice < 80) {
            return Samples.note("note " + number);
        }
        return correction(random, number, draft, load);
    }

    /** Mostly of the last entries, now and then of an old one, of the car, or of one that is not there. */
    private static Entry correction(Random random, long number, Header draft, ReadingId load) {
        long back = random.nextInt(4) > 0 ? 1 + random.nextInt(3) : random.nextInt((int) number + 1);
        Entry other = random.nextInt(30) == 0 ? new Entry.CarDescribed(draft, Samples.fullCar())
                : new Entry.Reading(draft, Map.of(load, 1.0 * random.nextInt(300)), Map.of(), Entry.Source.RACER);
        return new Entry.Correction(draft, Math.max(2, number - back), random.nextInt(3) == 0 ? Optional.of(other) : Optional.empty(), "");
    }

    private static Day begun() {
        return Day.of(List.of(new Entry.CarDescribed(Samples.header(1), Samples.bareCar())));
    }

    private static void walk(long seed, int steps, int lookEvery, boolean numbersInOrder) {
        Random random = new Random(seed);
        Day day = begun();
        List<Entry> all = new ArrayList<>(day.written());
        for (int step = 0; step < steps; step++) {
            long number = numbersInOrder || random.nextInt(10) > 0 ? all.size() + 1 : 1 + random.nextInt(2 * all.size());
            Entry entry = anything(random, number).withHeader(new Header(number, Samples.NOON.plusSeconds(step), STAGES.get(random.nextInt(2))));
            all.add(entry);
            day = day.with(entry);
            if (random.nextInt(3) > 0) {
                day.derive(new TurnedIn(AdjusterKind.PERCH));
            }
            if (step % lookEvery == 0) {
                assertSame(all, day);
            }
        }
        assertSame(all, day);
    }

    /** Against the whole fold, and against a plain account of it. */
    private static void assertSame(List<Entry> all, Day day) {
        Day whole = Day.of(all);
        assertEquals(all, day.written());
        assertEquals(Corrections.apply(all), day.effective());
        assertEquals(whole.effective(), day.effective());
        assertEquals(whole.revision(), day.revision());
        assertEquals(whole.turned(), day.turned());
        assertEquals(whole.readings(), day.readings());
        for (ReadingId id : whole.readings()) {
            assertEquals(whole.history(id), day.history(id));
            assertEquals(whole.latestAt(id, all.size() / 2), day.latestAt(id, all.size() / 2));
        }
        assertEquals(List.copyOf(whole.conditions()), List.copyOf(day.conditions()));
        assertEquals(whole.closed(), day.closed());
        STAGES.forEach(s -> assertEquals(plainSignOff(day.effective(), s), day.signOff(s)));
        Car car = day.effective().stream().filter(Entry.CarDescribed.class::isInstance).map(e -> ((Entry.CarDescribed) e).car())
                .reduce((first, second) -> second).orElseThrow();
        assertEquals(car, day.car());
        assertEquals(plainTargets(day.effective(), car), day.targets());
        assertEquals(plainTargets(whole.effective(), car), whole.targets());
        assertEquals(whole.derive(new TurnedIn(AdjusterKind.PERCH)).sum(), day.derive(new TurnedIn(AdjusterKind.PERCH)).sum());
        long middle = all.size() / 2;
        assertEquals(day.effective().stream().filter(e -> e.number() > middle).toList(), List.copyOf(day.after(middle)));
        assertEquals(day.effective().stream().filter(e -> e.number() == middle).reduce((a, b) -> b), day.counting(middle));
    }

    private static Optional<Entry.SignOff> plainSignOff(List<Entry> effective, String stage) {
        Map<String, Entry.SignOff> signed = new HashMap<>();
        for (Entry entry : effective) {
            if (entry instanceof Entry.SignOff signOff) {
                signed.put(entry.header().stage(), signOff);
            } else if (entry instanceof Entry.Reopened) {
                signed.remove(entry.header().stage());
            }
        }
        return Optional.ofNullable(signed.get(stage));
    }

    private static Targets plainTargets(List<Entry> effective, Car car) {
        Targets targets = car.targets();
        for (Entry entry : effective) {
            if (entry instanceof Entry.TargetSet set) {
                targets = targets.with(set.reading(), set.target());
            } else if (entry instanceof Entry.GoalSet set) {
                targets = targets.with(set.goal());
            }
        }
        return targets;
    }

    @Property(tries = 200)
    @net.jqwik.api.Tag("slow")
    void carriedOnIsTheWholeFold(@ForAll long seed) {
        walk(seed, 60, 1, true);
    }

    @Property(tries = 50)
    void alsoWhereNumbersAreInDisorder(@ForAll long seed) {
        walk(seed, 40, 1, false);
    }

    @Property(tries = 3)
    @net.jqwik.api.Tag("slow")
    void alsoOnALongDay(@ForAll long seed) {
        walk(seed, 1200, 40, true);
    }

    /** Long enough that earlier states are kept and let go. */
    @Test
    void alsoOnADayOfFourHundredEntries() {
        walk(7, 400, 400, true);
    }

    /** Opened as a whole, then undone back to its middle and done again. */
    @Test
    @Tag("slow")
    void undoingGoesBackAsFarAsOneLikes() {
        Random random = new Random(5);
        List<Entry> all = new ArrayList<>(begun().written());
        while (all.size() < 700) {
            Entry entry = anything(random, all.size() + 1);
            all.add((entry instanceof Entry.Correction ? Samples.note("") : entry).withHeader(Samples.header(all.size() + 1)));
        }
        Day day = Day.of(all);
        for (int i = 0; i < 350; i++) {
            Entry undo = new Entry.Correction(Samples.header(all.size() + 1), 700 - i, Optional.empty(), "undo");
            all.add(undo);
            day = day.with(undo);
        }
        assertEquals(Day.of(all.subList(0, 350)).effective(), day.effective());
        assertSame(all, day);
        Entry redo = new Entry.Correction(Samples.header(all.size() + 1), 1050, Optional.empty(), "redo");
        all.add(redo);
        assertSame(all, day.with(redo));
    }

    @Test
    void anOlderDayIsLeftAsItWas() {
        Day day = begun().with(Samples.reading(100).withHeader(Samples.header(2)));
        Day one = day.with(Samples.reading(101).withHeader(Samples.header(3)));
        Day other = day.with(Samples.reading(102).withHeader(Samples.header(3)));
        Day undone = one.with(new Entry.Correction(Samples.header(4), 2, Optional.empty(), "undo"));
        assertEquals(List.of(100.0), values(day));
        assertEquals(List.of(100.0, 101.0), values(one));
        assertEquals(List.of(100.0, 102.0), values(other));
        assertEquals(List.of(101.0), values(undone));
    }

    private static List<Double> values(Day day) {
        return day.history(Samples.LF_LOAD).stream().map(Figure::value).toList();
    }

    @Test
    void whatIsDerivedIsCarriedOn() {
        Day day = begun();
        for (int i = 2; i < 50; i++) {
            day.derive(new TurnedIn(AdjusterKind.PERCH));
            day = day.with(new Entry.Adjustment(Samples.header(i), List.of(new Entry.Turn(Samples.RR_PERCH, 0.25, OptionalDouble.empty())), ""));
        }
        assertEquals(new Turned(12, 48), day.derive(new TurnedIn(AdjusterKind.PERCH)));
        assertEquals(new Turned(12, 48), day.derive(new TurnedIn(AdjusterKind.PERCH)), "once for a day");
        assertEquals(new Turned(0, 0), day.derive(new TurnedIn(AdjusterKind.TOE_LINK)));
    }

    /** The thousand entries after nine thousand cost no more than a thousand after a thousand, give or take what machines do. */
    @Test
    @Tag("slow")
    void anEntryCostsTheSameOnALongDay() {
        Day day = begun();
        List<Entry> entries = Stream.iterate(2L, n -> n <= 10_000, n -> n + 1).<Entry>map(n -> n % 5 == 3
                ? new Entry.Correction(Samples.header(n), n - 1, Optional.empty(), "undo") : Samples.reading(n).withHeader(Samples.header(n))).toList();
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        double best = Double.MAX_VALUE;
        for (int run = 0; run < 3; run++) {
            day = begun();
            long start = 0;
            for (Entry entry : entries) {
                if (entry.number() == 9001) {
                    start = threads.getCurrentThreadCpuTime();
                }
                day = day.with(entry);
            }
            best = Math.min(best, (threads.getCurrentThreadCpuTime() - start) / 1e9);
        }
        assertEquals(10_000, day.written().size());
        assertTrue(best < 0.5, "a thousand entries took " + best + " s");
    }
}
