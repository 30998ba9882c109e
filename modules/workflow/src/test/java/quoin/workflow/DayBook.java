package quoin.workflow;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import quoin.car.Adjuster;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.AntiRollBar;
import quoin.car.AxleSetup;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.CornerSetup;
import quoin.car.CrossGoal;
import quoin.car.HeightPoint;
import quoin.car.Instruments;
import quoin.car.LoadCase;
import quoin.car.Masses;
import quoin.car.PerAxle;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Setting;
import quoin.car.SuspensionChoice;
import quoin.car.Target;
import quoin.car.Targets;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;

/** A logbook in memory for the tests, and a car with every kind of adjuster. */
final class DayBook {

    static final ReadingId CROSS = ReadingId.ofCar(ReadingKind.CROSS);
    private static final OptionalDouble NONE = OptionalDouble.empty();

    private final List<Entry> entries = new ArrayList<>();
    private Day day;

    DayBook() {
        this(car());
    }

    DayBook(Car car) {
        entries.add(new Entry.CarDescribed(next(""), car));
    }

    static Car car() {
        SuspensionChoice measured = new SuspensionChoice("measured", Map.of());
        AxleSetup axle = new AxleSetup(1400, Optional.of(new AntiRollBar(NONE)), measured);
        List<HeightPoint> points = new ArrayList<>();
        Map<ReadingId, Target> targets = new LinkedHashMap<>();
        for (Corner corner : Corner.values()) {
            points.add(new HeightPoint(corner + " rail", Optional.of(corner), NONE, NONE));
            targets.put(height(corner), new Target(corner.isFront() ? 62 : 70, 1));
            targets.put(camber(corner), new Target(-2, 0.1));
            targets.put(toe(corner), new Target(0.1, 0.04));
        }
        targets.put(caster(Corner.LF), new Target(5.8, 0.25));
        targets.put(caster(Corner.RF), new Target(5.8, 0.25));
        targets.put(CROSS, new Target(50, 0.3));
        return new Car("test", "Test car", 2300, PerAxle.both(axle), PerCorner.of(DayBook::corner),
                new Masses(NONE, NONE, List.of()), points, new Targets(targets, CrossGoal.EQUAL_DIAGONALS), LoadCase.unknown(),
                Instruments.usual(), List.of(Corner.LF, Corner.LR, Corner.RR, Corner.RF));
    }

    private static CornerSetup corner(Corner corner) {
        Setting notches = new Setting.Thread(1.5, false, 8, "notch");
        Setting flats = new Setting.Thread(1.25, false, 6, "flat");
        List<Adjuster> adjusters = new ArrayList<>();
        for (AdjusterKind kind : AdjusterKind.values()) {
            Setting setting = kind == AdjusterKind.PERCH ? notches
                    : kind == AdjusterKind.CAMBER_SHIM ? new Setting.Shims(List.of(new Setting.Shim(0.5, 4)), 2) : flats;
            adjusters.add(Adjuster.unmeasured(new AdjusterId(kind, corner), setting));
        }
        return new CornerSetup(NONE, OptionalDouble.of(0.75), NONE, NONE, NONE, OptionalDouble.of(360), adjusters);
    }

    static ReadingId height(Corner corner) {
        return new ReadingId(ReadingKind.HEIGHT, corner + " rail");
    }

    static ReadingId load(Corner corner) {
        return ReadingId.of(ReadingKind.LOAD, corner);
    }

    static ReadingId camber(Corner corner) {
        return ReadingId.of(ReadingKind.CAMBER, corner);
    }

    static ReadingId caster(Corner corner) {
        return ReadingId.of(ReadingKind.CASTER, corner);
    }

    static ReadingId toe(Corner corner) {
        return ReadingId.of(ReadingKind.TOE, corner);
    }

    private Header next(String stage) {
        return new Header(entries.size() + 1, Instant.EPOCH.plusSeconds(entries.size()), stage);
    }

    Day day() {
        day = day == null ? Day.of(entries) : day.goingOn(entries);
        return day;
    }

    int size() {
        return entries.size();
    }

    List<Entry> entries() {
        return entries;
    }

    /** Appends an entry under the next number, as the journal does. */
    Entry add(Entry template) {
        Entry entry = template.withHeader(next(template.header().stage()));
        entries.add(entry);
        return entry;
    }

    DayBook read(String stage, Map<ReadingId, Double> values) {
        add(new Entry.Reading(next(stage), values, Map.of(), Entry.Source.RACER));
        return this;
    }

    DayBook turn(AdjusterKind kind, Corner corner, double amount) {
        add(new Entry.Adjustment(next(""), List.of(new Entry.Turn(new AdjusterId(kind, corner), amount, NONE)), ""));
        return this;
    }

    DayBook turn(Map<AdjusterId, Double> amounts) {
        List<Entry.Turn> turns = amounts.entrySet().stream().map(e -> new Entry.Turn(e.getKey(), e.getValue(), NONE)).toList();
        add(new Entry.Adjustment(next(""), turns, ""));
        return this;
    }

    DayBook condition(String key, String value) {
        add(new Entry.Condition(next("preparation"), key, value, ""));
        return this;
    }

    DayBook settle() {
        return condition(Conditions.SETTLED, Conditions.YES);
    }

    DayBook withdraw(long entry) {
        add(new Entry.Correction(next(""), entry, Optional.empty(), "undo"));
        return this;
    }

    DayBook sign(OrderOfWork order, String stage) {
        Gate<Entry.SignOff> gate = order.signOff(day(), stage);
        add(gate.entry().orElseThrow(() -> new AssertionError(stage + " refused: " + gate.reasons())));
        return this;
    }

    DayBook prepared() {
        condition(Conditions.SOUND, Conditions.YES).condition(Conditions.FUEL, "20").condition(Conditions.PRESSURES, Conditions.SET);
        condition("front-bar", Conditions.DISCONNECTED).condition("rear-bar", Conditions.DISCONNECTED);
        condition(Conditions.DAMPERS, Conditions.SOFT).condition(Conditions.BRAKES, Conditions.FREE);
        condition(Conditions.STEERING, Conditions.LOCKED).condition(Conditions.PADS, Conditions.LEVELLED);
        return condition(Conditions.SCALES, Conditions.ZEROED).condition(Conditions.DRIVER, Conditions.IN).settle();
    }

    static Map<ReadingId, Double> heights(double lf, double rf, double lr, double rr) {
        return Map.of(height(Corner.LF), lf, height(Corner.RF), rf, height(Corner.LR), lr, height(Corner.RR), rr);
    }

    static Map<ReadingId, Double> goodHeights() {
        return heights(62, 62, 70, 70);
    }

    /** Loads of a 600 kg car, half on each axle and side, with a given cross weight in %. */
    static Map<ReadingId, Double> loads(double cross) {
        double diagonal = 3 * cross;
        return Map.of(load(Corner.LF), 300 - diagonal, load(Corner.RF), diagonal, load(Corner.LR), diagonal, load(Corner.RR), 300 - diagonal);
    }

    static Map<ReadingId, Double> goodAngles() {
        Map<ReadingId, Double> values = new LinkedHashMap<>();
        for (Corner corner : Corner.values()) {
            values.put(camber(corner), -2.0);
            values.put(toe(corner), 0.1);
            if (corner.isFront()) {
                values.put(caster(corner), 5.8);
            }
        }
        return values;
    }

    /** Every typed reading on target. */
    static Map<ReadingId, Double> everything() {
        Map<ReadingId, Double> values = new LinkedHashMap<>(goodHeights());
        values.putAll(loads(50));
        values.putAll(goodAngles());
        return values;
    }

    /** Prepared, heights and weights and angles signed off: the final re-check is open. */
    DayBook signedToAngles(OrderOfWork order) {
        prepared().sign(order, "preparation").read("ride-height", goodHeights()).sign(order, "ride-height");
        read("corner-weights", loads(50)).sign(order, "corner-weights");
        return read("wheel-angles", goodAngles()).sign(order, "wheel-angles");
    }
}
