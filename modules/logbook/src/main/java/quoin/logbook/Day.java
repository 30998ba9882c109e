package quoin.logbook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import quoin.car.AdjusterId;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.Targets;

/**
 * A day as its entries tell it. Nothing here is stored: {@link #of(List)} computes it from the entries, corrections
 * applied, and the same entries always give the same day. {@link #with} carries it on by one entry at the cost of that entry,
 * {@link #derive} does the same for what is computed from it.
 */
public final class Day {

    /** The day after some of its entries, and what was computed from it then. */
    private record State(DayFold folded, Map<Derivation<?>, Object> known) {
        State(DayFold folded) {
            this(folded, new ConcurrentHashMap<>());
        }

        int size() {
            return folded.written.size();
        }
    }

    /** So many of the latest states are kept, and the same number of each twice as old: undoing goes back to one of them. */
    private static final int KEPT = 4;
    /** A shorter day is folded anew as quickly. */
    private static final int LONG = 256;
    /** Who undoes more in a row after opening a day waits a moment. */
    private static final int UNDONE_AT_MOST = 64;

    private final State state;
    private final DayFold folded;
    /** Earlier states in which the same entries count, and the same car; newest first. */
    private final List<State> earlier;

    private Day(State state, List<State> earlier) {
        this.state = state;
        this.folded = state.folded();
        this.earlier = earlier;
    }

    /**
     * Computes the day.
     *
     * @param entries every entry in the order of writing; the first describes the car
     * @throws IllegalArgumentException where no entry describes the car
     */
    public static Day of(List<Entry> entries) {
        Map<Long, Entry.Correction> corrected = Corrections.inForce(Corrections.of(entries));
        return goOn(new DayFold(lastCar(entries, corrected)), List.of(), entries, corrected);
    }

    /** Takes in what follows a state of the day; the fold given is used up. */
    private static Day goOn(DayFold fold, List<State> earlier, List<Entry> more, Map<Long, Entry.Correction> corrected) {
        int size = fold.written.size() + more.size();
        List<State> kept = new ArrayList<>(earlier);
        for (Entry entry : more) {
            int now = fold.written.size();
            if (size > LONG && now > 0 && isKept(now, size) && (kept.isEmpty() || kept.get(0).size() < now)) {
                kept.add(0, new State(fold.copy()));
            }
            fold.take(entry, corrected);
        }
        kept.removeIf(s -> !fold.orderly || !isKept(s.size(), size));
        return new Day(new State(fold), List.copyOf(kept));
    }

    private static boolean isKept(int size, int now) {
        return size % Math.max(1, Integer.highestOneBit(now - size) / KEPT) == 0;
    }

    private static Car lastCar(List<Entry> entries, Map<Long, Entry.Correction> corrected) {
        for (int i = entries.size() - 1; i >= 0; i--) {
            Entry entry = entries.get(i);
            Entry.Correction correction = corrected.get(entry.number());
            if (correction != null && !(entry instanceof Entry.Correction)) {
                entry = correction.replacement().orElse(correction);
            }
            if (entry instanceof Entry.CarDescribed described) {
                return described.car();
            }
        }
        throw new IllegalArgumentException("the day has no entry that describes its car");
    }

    /** The day after one more entry; equal to that of all entries. Correcting an old entry costs what was written since. */
    public Day with(Entry entry) {
        if (entry instanceof Entry.CarDescribed || !folded.orderly || entry.number() <= revision()) {
            return of(folded.written.with(entry));
        }
        if (entry instanceof Entry.Correction correction) {
            return corrected(correction);
        }
        List<State> states = new ArrayList<>(earlier.size() + 1);
        states.add(state);
        states.addAll(earlier);
        return goOn(folded.copy(), states, List.of(entry), Map.of());
    }

    /**
     * The day of these entries.
     *
     * @param entries as {@link #of}; where they begin with this day's, only the rest is taken in
     */
    public Day goingOn(List<Entry> entries) {
        int size = folded.written.size();
        if (entries.size() < size || entries.get(size - 1) != folded.written.last()) {
            return of(entries);
        }
        Day day = this;
        for (Entry entry : entries.subList(size, entries.size())) {
            day = day.with(entry);
        }
        return day;
    }

    /** Goes back to a state before the entry that is corrected, and on from there. */
    private Day corrected(Entry.Correction correction) {
        GrowingList<Entry> written = folded.written.with(correction);
        Map<Long, Entry.Correction> inForce = Corrections.inForce(folded.corrections.with(correction));
        long first = correctedInTheEnd(correction);
        int from = 0;
        while (from < earlier.size() && earlier.get(from).folded().revision() >= first) {
            from++;
        }
        if (from == earlier.size() || correction.corrects() >= correction.number()) {
            return of(written);
        }
        DayFold base = earlier.get(from).folded();
        Day day = goOn(base.copy(), earlier.subList(from, earlier.size()), written.subList(base.written.size(), written.size()), inForce);
        boolean carChanged = describesCar(folded, base) || describesCar(day.folded, base);
        return carChanged ? of(written) : day;
    }

    private static boolean describesCar(DayFold fold, DayFold base) {
        return fold.effective.subList(base.effective.size(), fold.effective.size()).stream().anyMatch(Entry.CarDescribed.class::isInstance);
    }

    /** A correction of a correction concerns the entry at the end of the row. */
    private long correctedInTheEnd(Entry.Correction correction) {
        Optional<Entry> wrong = at(folded.written, correction.corrects());
        while (wrong.isPresent() && wrong.get() instanceof Entry.Correction older) {
            wrong = at(folded.written, older.corrects());
        }
        return wrong.map(Entry::number).orElse(0L);
    }

    private Optional<Entry> at(List<Entry> entries, long number) {
        int from = GrowingList.firstAfter(entries, Entry::number, number - 1);
        return from < entries.size() && entries.get(from).number() == number ? Optional.of(entries.get(from)) : Optional.empty();
    }

    /** What a derivation gives for this day, carried on from an earlier state where it was computed there. Any thread may ask. */
    public <T> T derive(Derivation<T> what) {
        T found = known(state, what);
        if (found != null) {
            return found;
        }
        int i = 0;
        while (i < earlier.size() && known(earlier.get(i), what) == null) {
            i++;
        }
        if (i == earlier.size()) {
            i = computedBefore(what);
        }
        T result;
        if (i == earlier.size()) {
            result = what.of(this);
        } else {
            State then = earlier.get(i);
            result = what.onward(new Day(then, earlier.subList(i + 1, earlier.size())), known(then, what), this);
        }
        state.known().putIfAbsent(what, result);
        return known(state, what);
    }

    /**
     * Computes what was asked for the first time some entries before the end of a long day, so that undoing one of the last
     * entries goes on from there.
     *
     * @return the place of that state among the earlier ones, their number where there is none
     */
    private int computedBefore(Derivation<?> what) {
        int i = 0;
        while (i < earlier.size() && earlier.get(i).size() > state.size() - UNDONE_AT_MOST) {
            i++;
        }
        if (i < earlier.size()) {
            earlier.get(i).known().put(what, what.of(new Day(earlier.get(i), earlier.subList(i + 1, earlier.size()))));
        }
        return i;
    }

    @SuppressWarnings("unchecked") // only what the derivation itself gave is put in
    private static <T> T known(State state, Derivation<T> what) {
        return (T) state.known().get(what);
    }

    /** Every entry as written, corrected ones and corrections included. */
    public List<Entry> written() {
        return folded.written;
    }

    /** The entries that count: corrections applied, withdrawn entries gone. */
    public List<Entry> effective() {
        return folded.effective;
    }

    /** What counts of an entry; empty where it was withdrawn, or is a correction. */
    public Optional<Entry> counting(long number) {
        return folded.orderly ? at(folded.effective, number)
                : folded.effective.stream().filter(e -> e.number() == number).reduce((first, second) -> second);
    }

    /** Every correction as written, withdrawn ones included. */
    public List<Entry.Correction> corrections() {
        return folded.corrections;
    }

    /** The car as last described. */
    public Car car() {
        return folded.car;
    }

    /** The car's targets with those set during the day. */
    public Targets targets() {
        return folded.targets;
    }

    /** Every reading that was read and counts. */
    public Set<ReadingId> readings() {
        return Collections.unmodifiableSet(folded.figures.keySet());
    }

    /** Every value of a reading, oldest first. */
    public List<Figure> history(ReadingId reading) {
        List<Figure> all = folded.figures.get(reading);
        return all == null ? List.of() : all;
    }

    public Optional<Figure> latest(ReadingId reading) {
        List<Figure> all = history(reading);
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
    }

    /** The last value written at or before an entry. */
    public Optional<Figure> latestAt(ReadingId reading, long entryNumber) {
        int count = countAt(reading, entryNumber);
        return count == 0 ? Optional.empty() : Optional.of(history(reading).get(count - 1));
    }

    /** How many values of a reading there are up to the last one written at or before an entry. */
    public int countAt(ReadingId reading, long entryNumber) {
        List<Figure> all = history(reading);
        if (folded.orderly) {
            return GrowingList.firstAfter(all, Figure::entry, entryNumber);
        }
        int count = all.size();
        while (count > 0 && all.get(count - 1).entry() > entryNumber) {
            count--;
        }
        return count;
    }

    /** The bump steer of a wheel as last measured; what was turned since is in {@link #after}. */
    public Optional<Entry.BumpSteer> bumpSteer(Corner corner) {
        return Optional.ofNullable(folded.bumpSteer.get(corner));
    }

    /** The last check of a subject; empty where it was not measured today. */
    public Optional<Entry.Check> check(String subject) {
        return Optional.ofNullable(folded.checks.get(subject));
    }

    /** What an earlier day taught, taken over when this one began; empty where nothing was, or it was declined. */
    public Optional<Entry.ResponseTakenOver> takenOver() {
        return folded.takenOver;
    }

    /** Sum of what was turned today (turns, or mm of shim); 0 where it was not touched. */
    public double turned(AdjusterId adjuster) {
        return folded.turns.getOrDefault(adjuster, 0.0);
    }

    /** Adjusters touched today with what was turned in all. */
    public Map<AdjusterId, Double> turned() {
        return Collections.unmodifiableMap(folded.turns);
    }

    /**
     * Where an adjuster stood after an entry: thread length or shim thickness, mm. A length measured on the day counts more than the
     * sum of the turns before it; turned without ever having been measured it is not known.
     *
     * @param start     where it stood as the day began, mm
     * @param mmPerUnit mm of one turn; 1 for shims
     * @param entry     the last entry that counts
     */
    public OptionalDouble lengthMm(AdjusterId adjuster, OptionalDouble start, double mmPerUnit, long entry) {
        OptionalDouble now = start;
        for (Entry done : folded.effective) {
            if (done.number() <= entry && done instanceof Entry.Adjustment adjustment) {
                for (Entry.Turn turn : adjustment.turns()) {
                    if (turn.adjuster().equals(adjuster)) {
                        now = turn.lengthMm().isPresent() || now.isEmpty() ? turn.lengthMm()
                                : OptionalDouble.of(now.getAsDouble() + turn.amount() * mmPerUnit);
                    }
                }
            }
        }
        return now;
    }

    /** Who drives: as said on the day, else as the car's load case says; may be blank. */
    public String driver() {
        return condition(Conditions.DRIVER_NAME).filter(name -> !name.isBlank()).orElse(car().loadCase().driver()).strip();
    }

    public Optional<String> condition(String key) {
        return conditionEntry(key).map(Entry.Condition::value);
    }

    /** The entry that last set a condition. */
    public Optional<Entry.Condition> conditionEntry(String key) {
        return Optional.ofNullable(folded.conditions.get(key));
    }

    /** The entry that last set each condition, in the order in which the conditions were first set. */
    public Collection<Entry.Condition> conditions() {
        return Collections.unmodifiableCollection(folded.conditions.values());
    }

    /** Entries that count after an entry number, in order. */
    public List<Entry> after(long entryNumber) {
        List<Entry> all = folded.effective;
        return folded.orderly ? all.subList(GrowingList.firstAfter(all, Entry::number, entryNumber), all.size())
                : all.stream().filter(e -> e.number() > entryNumber).toList();
    }

    /** Entries that count and came after an earlier state of this day, as a {@link Derivation} is given it. */
    public List<Entry> beyond(Day earlier) {
        return folded.effective.subList(earlier.folded.effective.size(), folded.effective.size());
    }

    /** The last sign-off of a stage that counts and was not followed by reopening it. */
    public Optional<Entry.SignOff> signOff(String stage) {
        return Optional.ofNullable(folded.signOffs.get(stage));
    }

    public Optional<Entry.DayClosed> closed() {
        return folded.closed;
    }

    /** Number of the last entry written, 0 in an empty logbook: the revision everything computed from the day carries. */
    public long revision() {
        return folded.revision();
    }
}
