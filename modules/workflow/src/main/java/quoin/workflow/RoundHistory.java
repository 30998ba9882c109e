package quoin.workflow;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import quoin.adjustment.LoadChange;
import quoin.adjustment.SettledReading;
import quoin.car.AdjusterId;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.KnownMass;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.mechanics.KilogramForce;

/**
 * The day's settled readings of loads and heights, in the form learning wants: stretches within which only perches,
 * pushrods and known masses moved. Whatever else disturbs the car (pads, tyres, camber work) begins a new stretch, because
 * the loads then jump by an amount nobody knows. Readings with a bar connected are left out.
 */
final class RoundHistory {

    private final Car car;
    private final List<AdjusterId> adjusters;
    private final List<List<SettledReading>> stretches = new ArrayList<>();
    private final OptionalDouble[] pending = new OptionalDouble[8];
    private double[] turns;
    private boolean touched;
    private boolean driverIn = true;
    private final boolean[] barOff = new boolean[2];

    private RoundHistory(Car car, List<AdjusterId> adjusters) {
        this.car = car;
        this.adjusters = adjusters;
        this.turns = new double[adjusters.size()];
        stretches.add(new ArrayList<>());
        clearPending();
        for (Axle axle : Axle.values()) {
            barOff[axle.ordinal()] = car.axles().get(axle).bar().isEmpty();
        }
    }

    /**
     * Reads the day.
     *
     * @param adjusters perches and pushrods in the order of the turns
     * @return stretches, oldest first, none empty; the last reading of the last one may hold turns and no figures, where
     *         something was turned after the last reading
     */
    static List<List<SettledReading>> of(Day day, List<AdjusterId> adjusters) {
        RoundHistory history = new RoundHistory(day.car(), adjusters);
        day.effective().forEach(history::take);
        history.flush();
        if (history.touched) {
            history.add();
        }
        return history.stretches.stream().filter(s -> s.stream().anyMatch(RoundHistory::hasFigures)).map(List::copyOf).toList();
    }

    private static boolean hasFigures(SettledReading reading) {
        return reading.loadsN().stream().anyMatch(OptionalDouble::isPresent)
                || reading.heightsMm().stream().anyMatch(OptionalDouble::isPresent);
    }

    private void take(Entry entry) {
        if (entry instanceof Entry.Adjustment adjustment) {
            flush();
            adjustment.turns().forEach(this::turn);
        } else if (entry instanceof Entry.Check check && check.subject().equals(ScaleCorrection.SUBJECT)) {
            newStretch();
        } else if (entry instanceof Entry.Condition condition) {
            condition(condition);
        } else if (entry instanceof Entry.Reading reading && barOff[0] && barOff[1]) {
            reading.values().forEach(this::figure);
        }
    }

    private void turn(Entry.Turn turn) {
        int at = adjusters.indexOf(turn.adjuster());
        if (at >= 0) {
            turns[at] += turn.amount();
            touched = true;
        } else if (turn.amount() != 0) {
            newStretch();
        }
    }

    private void condition(Entry.Condition condition) {
        switch (condition.key()) {
            case Conditions.SETTLED -> flush();
            case Conditions.DRIVER -> {
                flush();
                driverIn = !condition.value().equals(Conditions.OUT);
            }
            case Conditions.PADS, Conditions.TYRES, Conditions.FUEL, Conditions.BALLAST, Conditions.SCALES -> newStretch();
            default -> {
                for (Axle axle : Axle.values()) {
                    if (condition.key().equals(Conditions.bar(axle))) {
                        newStretch();
                        barOff[axle.ordinal()] = condition.value().equals(Conditions.DISCONNECTED);
                    }
                }
            }
        }
    }

    private void figure(ReadingId id, double value) {
        int row = row(id);
        if (row < 0) {
            return;
        }
        if (pending[row].isPresent()) {
            flush();
        }
        pending[row] = OptionalDouble.of(row < 4 ? KilogramForce.toNewtons(value) : value);
    }

    private int row(ReadingId id) {
        for (Corner corner : Corner.values()) {
            if (id.equals(ReadingId.of(ReadingKind.LOAD, corner))) {
                return corner.ordinal();
            }
            if (car.heightPoint(corner).filter(p -> p.reading().equals(id)).isPresent()) {
                return 4 + corner.ordinal();
            }
        }
        return -1;
    }

    private void newStretch() {
        flush();
        if (!stretches.get(stretches.size() - 1).isEmpty()) {
            stretches.add(new ArrayList<>());
        }
        touched = false;
    }

    private void flush() {
        if (Arrays.stream(pending).anyMatch(OptionalDouble::isPresent)) {
            add();
        }
    }

    private void add() {
        List<SettledReading> stretch = stretches.get(stretches.size() - 1);
        double[] made = stretch.isEmpty() ? new double[turns.length] : turns;
        stretch.add(new SettledReading(Arrays.stream(made).boxed().toList(), List.of(pending).subList(0, 4),
                List.of(pending).subList(4, 8), driverIn ? List.of() : driverOut(), 1));
        turns = new double[turns.length];
        touched = false;
        clearPending();
    }

    private List<LoadChange> driverOut() {
        return car.masses().known().stream().filter(m -> m.role() == KnownMass.Role.DRIVER)
                .map(m -> new LoadChange(-m.massKg(), m.xMm(), m.yMm())).toList();
    }

    private void clearPending() {
        Arrays.fill(pending, OptionalDouble.empty());
    }
}
