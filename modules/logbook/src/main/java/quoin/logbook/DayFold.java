package quoin.logbook;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
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
 * What the entries of a day amount to, one entry after another. It changes while entries are taken in and no more once a
 * {@link Day} holds it; {@link #copy} goes on from there and shares what does not change.
 */
final class DayFold {

    final Car car;
    GrowingList<Entry> written = GrowingList.empty();
    GrowingList<Entry> effective = GrowingList.empty();
    GrowingList<Entry.Correction> corrections = GrowingList.empty();
    Targets targets;
    /** Numbers rise from entry to entry and corrections name older ones, as this program writes them. */
    boolean orderly = true;
    final Map<ReadingId, GrowingList<Figure>> figures;
    final Map<AdjusterId, Double> turns;
    final Map<String, Entry.Condition> conditions;
    final Map<Corner, Entry.BumpSteer> bumpSteer;
    final Map<String, Entry.Check> checks;
    final Map<String, Entry.SignOff> signOffs;
    Optional<Entry.DayClosed> closed = Optional.empty();
    Optional<Entry.ResponseTakenOver> takenOver = Optional.empty();
    private Map<String, String> inForce = Map.of();

    DayFold(Car car) {
        this.car = car;
        targets = car.targets();
        figures = new TreeMap<>();
        turns = new TreeMap<>();
        conditions = new LinkedHashMap<>();
        bumpSteer = new EnumMap<>(Corner.class);
        checks = new LinkedHashMap<>();
        signOffs = new HashMap<>();
    }

    private DayFold(DayFold from) {
        car = from.car;
        written = from.written;
        effective = from.effective;
        corrections = from.corrections;
        targets = from.targets;
        orderly = from.orderly;
        figures = new TreeMap<>(from.figures);
        turns = new TreeMap<>(from.turns);
        conditions = new LinkedHashMap<>(from.conditions);
        bumpSteer = new EnumMap<>(from.bumpSteer);
        checks = new LinkedHashMap<>(from.checks);
        signOffs = new HashMap<>(from.signOffs);
        closed = from.closed;
        takenOver = from.takenOver;
        inForce = from.inForce;
    }

    DayFold copy() {
        return new DayFold(this);
    }

    /** Number of the last entry written; 0 before the first. */
    long revision() {
        return written.isEmpty() ? 0 : written.last().number();
    }

    /**
     * Takes in what was written next.
     *
     * @param corrected the corrections in force, by the number of the entry each corrects
     */
    void take(Entry entry, Map<Long, Entry.Correction> corrected) {
        orderly &= entry.number() > revision();
        written = written.with(entry);
        if (entry instanceof Entry.Correction correction) {
            orderly &= correction.corrects() < correction.number();
            corrections = corrections.with(correction);
            return;
        }
        Entry.Correction correction = corrected.get(entry.number());
        if (correction == null) {
            count(entry);
        } else {
            correction.replacement().ifPresent(r -> count(r.withHeader(entry.header())));
        }
    }

    private void count(Entry entry) {
        effective = effective.with(entry);
        if (entry instanceof Entry.Reading reading) {
            reading.values().forEach((id, value) -> figures.merge(id, GrowingList.<Figure>empty().with(figure(reading, id, value)),
                    (all, one) -> all.with(one.get(0))));
        } else if (entry instanceof Entry.BumpSteer curve) {
            bumpSteer.put(curve.corner(), curve);
        } else if (entry instanceof Entry.Check check) {
            checks.put(check.subject(), check);
        } else if (entry instanceof Entry.Adjustment adjustment) {
            adjustment.turns().forEach(t -> turns.merge(t.adjuster(), t.amount(), Double::sum));
        } else if (entry instanceof Entry.Condition condition) {
            condition(condition);
        } else if (entry instanceof Entry.TargetSet set) {
            targets = targets.with(set.reading(), set.target());
        } else if (entry instanceof Entry.GoalSet set) {
            targets = targets.with(set.goal());
        } else if (entry instanceof Entry.SignOff signOff) {
            signOffs.put(entry.header().stage(), signOff);
        } else if (entry instanceof Entry.Reopened) {
            signOffs.remove(entry.header().stage());
        } else if (entry instanceof Entry.DayClosed end) {
            closed = Optional.of(end);
        } else if (entry instanceof Entry.ResponseTakenOver response) {
            takenOver = Optional.of(response);
        }
    }

    private Figure figure(Entry.Reading reading, ReadingId id, double value) {
        return new Figure(id, value, reading.number(), reading.header().stage(), inForce, reading.source(),
                reading.measured().map(m -> m.uncertaintyOf(id)).orElse(OptionalDouble.empty()));
    }

    /** Figures share the conditions in force until one of them changes. */
    private void condition(Entry.Condition condition) {
        conditions.put(condition.key(), condition);
        if (!condition.value().equals(inForce.get(condition.key()))) {
            Map<String, String> changed = new HashMap<>(inForce);
            changed.put(condition.key(), condition.value());
            inForce = Map.copyOf(changed);
        }
    }
}
