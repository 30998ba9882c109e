package quoin.workflow;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import quoin.car.AdjusterId;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Derivation;
import quoin.logbook.Entry;
import quoin.logbook.GrowingList;
import quoin.workflow.Staleness.Effect;

/**
 * What happened to the car in the order it happened: the events that disturb readings, and how things stood at each reading.
 * Whatever is turned has its nut loosened: the locknuts are no longer tight after it. It is carried on from entry to entry.
 */
final class Timeline {

    /**
     * Something that disturbs readings.
     *
     * @param entry    entry that tells of it
     * @param what     row of the staleness table
     * @param axle     where; empty = the whole car
     * @param adjuster what was turned; empty = a condition changed
     * @param amount   turns or mm of shim; 0 for a condition
     * @param key      condition key; empty = an adjuster was turned
     * @param value    what the condition became
     */
    record Event(long entry, Disturbance what, Optional<Axle> axle, Optional<AdjusterId> adjuster, double amount, String key,
            String value) {
    }

    /**
     * How things stood when a reading was taken.
     *
     * @param settled settled since the last work on the car
     * @param signed  stages with a sign-off in force
     * @param asFound nothing had been turned yet
     */
    record Moment(boolean settled, Set<String> signed, boolean asFound) {
    }

    /** Readings that the same events disturb. */
    enum Column {
        HEIGHT(ReadingId.ofCar(ReadingKind.HEIGHT)),
        LOAD(ReadingId.of(ReadingKind.LOAD, Corner.LF)),
        CAMBER(ReadingId.of(ReadingKind.CAMBER, Corner.LF)),
        CASTER(ReadingId.of(ReadingKind.CASTER, Corner.LF)),
        FRONT_TOE(ReadingId.of(ReadingKind.TOE, Corner.LF)),
        REAR_TOE(ReadingId.of(ReadingKind.TOE, Corner.LR)),
        PAD_HEIGHT(ReadingId.of(ReadingKind.PAD_HEIGHT, Corner.LF)),
        PRESSURE(ReadingId.of(ReadingKind.PRESSURE, Corner.LF)),
        /** Whatever nothing disturbs. */
        OTHER(ReadingId.ofCar(ReadingKind.WHEELBASE));

        private final ReadingId example;

        Column(ReadingId example) {
            this.example = example;
        }

        /** The column of a typed reading. */
        static Column of(ReadingId typed) {
            return switch (typed.kind()) {
                case HEIGHT -> HEIGHT;
                case LOAD -> LOAD;
                case CAMBER -> CAMBER;
                case CASTER -> CASTER;
                case TOE -> Corner.valueOf(typed.place()).isFront() ? FRONT_TOE : REAR_TOE;
                case PAD_HEIGHT -> PAD_HEIGHT;
                case PRESSURE -> PRESSURE;
                default -> OTHER;
            };
        }
    }

    private record Taken(long entry, Moment moment) {
    }

    private record Told() implements Derivation<Timeline> {
        @Override
        public Timeline of(Day day) {
            return new Timeline().after(day.effective());
        }

        @Override
        public Timeline onward(Day earlier, Timeline known, Day day) {
            List<Entry> more = day.beyond(earlier);
            return more.isEmpty() ? known : new Timeline(known).after(more);
        }
    }

    private GrowingList<Event> events = GrowingList.empty();
    private GrowingList<Taken> moments = GrowingList.empty();
    private boolean ascending = true;
    private final Map<Column, GrowingList<Event>> disturbing;
    private final Map<Column, Long> lastStale;
    private final Map<Disturbance, Long> lastOf;
    private final Map<String, String> values;
    private final Map<String, Entry.SignOff> signOffs;
    private Set<String> signed = Set.of();
    private boolean settled;
    private boolean asFound = true;

    private Timeline() {
        disturbing = new EnumMap<>(Column.class);
        Arrays.stream(Column.values()).forEach(c -> disturbing.put(c, GrowingList.empty()));
        lastStale = new EnumMap<>(Column.class);
        lastOf = new EnumMap<>(Disturbance.class);
        values = new HashMap<>();
        signOffs = new HashMap<>();
    }

    private Timeline(Timeline from) {
        events = from.events;
        moments = from.moments;
        ascending = from.ascending;
        disturbing = new EnumMap<>(from.disturbing);
        lastStale = new EnumMap<>(from.lastStale);
        lastOf = new EnumMap<>(from.lastOf);
        values = new HashMap<>(from.values);
        signOffs = new HashMap<>(from.signOffs);
        signed = from.signed;
        settled = from.settled;
        asFound = from.asFound;
    }

    static Timeline of(Day day) {
        return day.derive(new Told());
    }

    private Timeline after(List<Entry> entries) {
        entries.forEach(this::take);
        return this;
    }

    private void add(Event event) {
        events = events.with(event);
        lastOf.merge(event.what(), event.entry(), Math::max);
        for (Column column : Column.values()) {
            Effect effect = Staleness.of(event.what(), event.axle(), column.example);
            if (effect != Effect.STAYS) {
                disturbing.merge(column, GrowingList.empty(), (all, none) -> all.with(event));
            }
            if (effect == Effect.STALE) {
                lastStale.merge(column, event.entry(), Math::max);
            }
        }
    }

    private void take(Entry entry) {
        if (entry instanceof Entry.Reading) {
            ascending &= moments.isEmpty() || moments.last().entry() < entry.number();
            moments = moments.with(new Taken(entry.number(), new Moment(settled, signed, asFound)));
        } else if (entry instanceof Entry.Adjustment adjustment) {
            adjustment.turns().forEach(t -> take(entry.number(), t));
        } else if (entry instanceof Entry.Check check && check.subject().equals(ScaleCorrection.SUBJECT)) {
            add(new Event(check.number(), Disturbance.SCALES, Optional.empty(), Optional.empty(), 0, ScaleCorrection.SUBJECT + ".test", ""));
        } else if (entry instanceof Entry.Condition condition) {
            take(condition);
        } else if (entry instanceof Entry.SignOff signOff) {
            signOffs.put(entry.header().stage(), signOff);
            signed = Set.copyOf(signOffs.keySet());
        } else if (entry instanceof Entry.Reopened) {
            signOffs.remove(entry.header().stage());
            signed = Set.copyOf(signOffs.keySet());
        }
    }

    private void take(long entry, Entry.Turn turn) {
        if (turn.amount() == 0) {
            return;
        }
        settled = false;
        asFound = false;
        values.remove(Conditions.LOCKNUTS);
        AdjusterId id = turn.adjuster();
        add(new Event(entry, Disturbance.of(id.kind()), Optional.of(id.corner().axle()), Optional.of(id), turn.amount(), "", ""));
    }

    private void take(Entry.Condition condition) {
        String before = values.put(condition.key(), condition.value());
        if (condition.key().equals(Conditions.SETTLED)) {
            settled = condition.value().equals(Conditions.YES);
        }
        disturbance(condition.key(), before, condition.value()).ifPresent(what -> {
            if (what == Disturbance.PADS || what == Disturbance.TYRES && !isPressure(condition.key())) {
                settled = false;
            }
            add(new Event(condition.number(), what, axle(condition.key()), Optional.empty(), 0, condition.key(),
                    condition.value()));
        });
    }

    /** What a condition entry disturbs. Recording again what holds already confirms it and disturbs nothing. */
    private static Optional<Disturbance> disturbance(String key, String before, String now) {
        if (key.equals(Conditions.SETTLED)) {
            return now.equals(Conditions.YES) ? Optional.empty() : Optional.of(Disturbance.MOVED);
        }
        if (key.equals(Conditions.BALLAST)) {
            return Optional.of(Disturbance.MASS);
        }
        if (before != null && sameValue(before, now)) {
            return Optional.empty();
        }
        if (isPressure(key) || key.equals(Conditions.TYRES)) {
            return Optional.of(Disturbance.TYRES);
        }
        if (isBar(key)) {
            return Optional.of(Disturbance.BAR);
        }
        return switch (key) {
            case Conditions.DRIVER, Conditions.FUEL -> Optional.of(Disturbance.MASS);
            case Conditions.PADS -> Optional.of(Disturbance.PADS);
            case Conditions.STEERING -> now.equals(Conditions.LOCKED) ? Optional.empty() : Optional.of(Disturbance.STEERING_FREED);
            case Conditions.LOCKNUTS -> now.equals(Conditions.YES) ? Optional.of(Disturbance.LOCKNUTS) : Optional.empty();
            default -> Optional.empty();
        };
    }

    static boolean isPressure(String key) {
        return key.equals(Conditions.PRESSURES) || key.startsWith("pressure.");
    }

    static boolean isBar(String key) {
        return axle(key).isPresent();
    }

    private static Optional<Axle> axle(String key) {
        for (Axle axle : Axle.values()) {
            if (Conditions.bar(axle).equals(key)) {
                return Optional.of(axle);
            }
        }
        return Optional.empty();
    }

    static boolean sameValue(String one, String other) {
        if (one.equals(other)) {
            return true;
        }
        try {
            return Double.parseDouble(one) == Double.parseDouble(other);
        } catch (NumberFormatException e) {
            return false;
        }
    }

    /** Every event, oldest first. */
    List<Event> events() {
        return events;
    }

    /** The events that disturb the readings of a column, oldest first. */
    List<Event> disturbing(Column column) {
        return disturbing.get(column);
    }

    /** The last entry before another one that disturbs a reading; 0 where there is none. */
    long lastDisturbance(ReadingId typed, long before) {
        List<Event> all = disturbing(Column.of(typed));
        int count = firstAfter(all, before - 1);
        return count == 0 ? 0 : all.get(count - 1).entry();
    }

    /** True where something after an entry made a reading stale. */
    boolean staleSince(ReadingId typed, long entry) {
        return lastStale.getOrDefault(Column.of(typed), Long.MIN_VALUE) > entry;
    }

    /** The last entry that did this; empty where none did. */
    OptionalLong last(Disturbance what) {
        Long last = lastOf.get(what);
        return last == null ? OptionalLong.empty() : OptionalLong.of(last);
    }

    /** Index of the first event after an entry. */
    static int firstAfter(List<Event> events, long entry) {
        return GrowingList.firstAfter(events, Event::entry, entry);
    }

    /** How things stood at the reading in this entry. */
    Moment at(long entry) {
        int at = (ascending ? GrowingList.firstAfter(moments, Taken::entry, entry) : moments.size()) - 1;
        while (at >= 0 && moments.get(at).entry() != entry) {
            at--;
        }
        return at < 0 ? null : moments.get(at).moment();
    }

    /** Settled since the last work on the car, as of the last entry. */
    boolean settledNow() {
        return settled;
    }

    /** The sign-off of a stage in force. */
    Optional<Entry.SignOff> signOff(String stage) {
        return Optional.ofNullable(signOffs.get(stage));
    }

    /** The last sign-off in force of any stage. */
    OptionalLong lastSignOff() {
        return signOffs.values().stream().mapToLong(Entry.SignOff::number).max();
    }

    Optional<String> valueNow(String key) {
        return Optional.ofNullable(values.get(key));
    }
}
