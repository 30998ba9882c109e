package quoin.logbook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import quoin.car.AdjusterId;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.Targets;

/**
 * A day as its entries tell it. Nothing here is stored: {@link #of(List)} computes it from the entries, corrections
 * applied, and the same entries always give the same day.
 */
public final class Day {

    private final List<Entry> written;
    private final List<Entry> effective;
    private final Car car;
    private final Map<ReadingId, List<Figure>> figures = new TreeMap<>();
    private final Map<AdjusterId, Double> turns = new TreeMap<>();
    private final Map<String, Entry.Condition> conditions = new LinkedHashMap<>();
    private final Map<Corner, Entry.BumpSteer> bumpSteer = new EnumMap<>(Corner.class);
    private final Map<String, Entry.Check> checks = new LinkedHashMap<>();
    private Targets targets;

    private Day(List<Entry> written) {
        this.written = List.copyOf(written);
        this.effective = Corrections.apply(this.written);
        this.car = lastCar(effective);
        this.targets = car.targets();
        Map<String, String> inForce = Map.of();
        for (Entry entry : effective) {
            inForce = take(entry, inForce);
        }
    }

    /**
     * Computes the day.
     *
     * @param entries every entry in the order of writing; the first describes the car
     * @throws IllegalArgumentException where no entry describes the car
     */
    public static Day of(List<Entry> entries) {
        return new Day(entries);
    }

    private static Car lastCar(List<Entry> entries) {
        Car found = null;
        for (Entry entry : entries) {
            if (entry instanceof Entry.CarDescribed described) {
                found = described.car();
            }
        }
        if (found == null) {
            throw new IllegalArgumentException("the day has no entry that describes its car");
        }
        return found;
    }

    /** Takes one entry in and returns the conditions in force after it; figures share them until they change. */
    private Map<String, String> take(Entry entry, Map<String, String> inForce) {
        if (entry instanceof Entry.Reading reading) {
            reading.values().forEach((id, value) -> figures.computeIfAbsent(id, k -> new ArrayList<>())
                    .add(new Figure(id, value, entry.number(), entry.header().stage(), inForce, reading.source(),
                            reading.measured().map(m -> m.uncertaintyOf(id)).orElse(OptionalDouble.empty()))));
        } else if (entry instanceof Entry.BumpSteer curve) {
            bumpSteer.put(curve.corner(), curve);
        } else if (entry instanceof Entry.Check check) {
            checks.put(check.subject(), check);
        } else if (entry instanceof Entry.Adjustment adjustment) {
            adjustment.turns().forEach(t -> turns.merge(t.adjuster(), t.amount(), Double::sum));
        } else if (entry instanceof Entry.Condition condition) {
            conditions.put(condition.key(), condition);
            Map<String, String> changed = new HashMap<>(inForce);
            changed.put(condition.key(), condition.value());
            return Map.copyOf(changed);
        } else if (entry instanceof Entry.TargetSet set) {
            targets = targets.with(set.reading(), set.target());
        } else if (entry instanceof Entry.GoalSet set) {
            targets = targets.with(set.goal());
        }
        return inForce;
    }

    /** Every entry as written, corrected ones and corrections included. */
    public List<Entry> written() {
        return written;
    }

    /** The entries that count: corrections applied, withdrawn entries gone. */
    public List<Entry> effective() {
        return effective;
    }

    /** The car as last described. */
    public Car car() {
        return car;
    }

    /** The car's targets with those set during the day. */
    public Targets targets() {
        return targets;
    }

    /** Every value of a reading, oldest first. */
    public List<Figure> history(ReadingId reading) {
        return Collections.unmodifiableList(figures.getOrDefault(reading, List.of()));
    }

    public Optional<Figure> latest(ReadingId reading) {
        List<Figure> all = figures.getOrDefault(reading, List.of());
        return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
    }

    /** The last value written at or before an entry. */
    public Optional<Figure> latestAt(ReadingId reading, long entryNumber) {
        List<Figure> all = figures.getOrDefault(reading, List.of());
        for (int i = all.size() - 1; i >= 0; i--) {
            if (all.get(i).entry() <= entryNumber) {
                return Optional.of(all.get(i));
            }
        }
        return Optional.empty();
    }

    /** The bump steer of a wheel as last measured; what was turned since is in {@link #after}. */
    public Optional<Entry.BumpSteer> bumpSteer(Corner corner) {
        return Optional.ofNullable(bumpSteer.get(corner));
    }

    /** The last check of a subject; empty where it was not measured today. */
    public Optional<Entry.Check> check(String subject) {
        return Optional.ofNullable(checks.get(subject));
    }

    /** What an earlier day taught, taken over when this one began; empty where nothing was, or it was declined. */
    public Optional<Entry.ResponseTakenOver> takenOver() {
        return effective.stream().filter(Entry.ResponseTakenOver.class::isInstance).map(Entry.ResponseTakenOver.class::cast)
                .reduce((first, second) -> second);
    }

    /** Sum of what was turned today (turns, or mm of shim); 0 where it was not touched. */
    public double turned(AdjusterId adjuster) {
        return turns.getOrDefault(adjuster, 0.0);
    }

    /** Adjusters touched today with what was turned in all. */
    public Map<AdjusterId, Double> turned() {
        return Collections.unmodifiableMap(turns);
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
        for (Entry done : effective) {
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
        return condition(Conditions.DRIVER_NAME).filter(name -> !name.isBlank()).orElse(car.loadCase().driver()).strip();
    }

    public Optional<String> condition(String key) {
        return Optional.ofNullable(conditions.get(key)).map(Entry.Condition::value);
    }

    /** The entry that last set a condition. */
    public Optional<Entry.Condition> conditionEntry(String key) {
        return Optional.ofNullable(conditions.get(key));
    }

    /** Entries that count after an entry number, in order. */
    public List<Entry> after(long entryNumber) {
        return effective.stream().filter(e -> e.number() > entryNumber).toList();
    }

    /** The last sign-off of a stage that counts and was not followed by reopening it. */
    public Optional<Entry.SignOff> signOff(String stage) {
        Entry.SignOff found = null;
        for (Entry entry : effective) {
            if (!entry.header().stage().equals(stage)) {
                continue;
            }
            if (entry instanceof Entry.SignOff signOff) {
                found = signOff;
            } else if (entry instanceof Entry.Reopened) {
                found = null;
            }
        }
        return Optional.ofNullable(found);
    }

    public Optional<Entry.DayClosed> closed() {
        return effective.stream().filter(Entry.DayClosed.class::isInstance).map(Entry.DayClosed.class::cast)
                .reduce((first, second) -> second);
    }

    /** Number of the last entry written, 0 in an empty logbook: the revision everything computed from the day carries. */
    public long revision() {
        return written.isEmpty() ? 0 : written.get(written.size() - 1).number();
    }
}
