package quoin.garage.desk;

import java.util.List;
import java.util.OptionalDouble;
import quoin.car.Adjuster;
import quoin.car.AdjusterId;
import quoin.car.Car;
import quoin.car.CornerSetup;
import quoin.car.Setting;
import quoin.logbook.Day;
import quoin.logbook.Entry;

/** The car a day hands on to the next: its targets, and its adjusters where the day left them. */
final class DayTemplate {

    private DayTemplate() {
    }

    static Car car(Day day) {
        Car car = day.car().withTargets(day.targets());
        return new Car(car.id(), car.name(), car.wheelbaseMm(), car.axles(), car.corners().map(c -> corner(day, c)), car.masses(),
                car.heightPoints(), car.targets(), car.loadCase(), car.instruments(), car.walkingOrder());
    }

    private static CornerSetup corner(Day day, CornerSetup corner) {
        List<Adjuster> adjusters = corner.adjusters().stream().map(a -> adjuster(day, a)).toList();
        return new CornerSetup(corner.springRateNPerMm(), corner.motionRatio(), corner.pushrodRatio(), corner.tyreRateNPerMm(),
                corner.unsprungMassKg(), corner.rimChordMm(), adjusters);
    }

    private static Adjuster adjuster(Day day, Adjuster adjuster) {
        if (adjuster.setting() instanceof Setting.Shims shims) {
            Setting now = new Setting.Shims(shims.stock(), shims.fittedMm() + day.turned(adjuster.id()));
            OptionalDouble start = length(day, adjuster.id(), adjuster.startMm(), 1);
            return new Adjuster(adjuster.id(), now, start, adjuster.minMm(), adjuster.maxMm(), adjuster.locked());
        }
        double perTurn = ((Setting.Thread) adjuster.setting()).mmPerTurn();
        return new Adjuster(adjuster.id(), adjuster.setting(), length(day, adjuster.id(), adjuster.startMm(), perTurn), adjuster.minMm(),
                adjuster.maxMm(), adjuster.locked());
    }

    /** As measured last, and what was turned since; turned without ever being measured it stays unknown. */
    private static OptionalDouble length(Day day, AdjusterId id, OptionalDouble start, double perTurn) {
        OptionalDouble now = start;
        for (Entry entry : day.effective()) {
            if (entry instanceof Entry.Adjustment adjustment) {
                for (Entry.Turn turn : adjustment.turns()) {
                    if (turn.adjuster().equals(id)) {
                        now = turn.lengthMm().isPresent() || now.isEmpty() ? turn.lengthMm()
                                : OptionalDouble.of(now.getAsDouble() + turn.amount() * perTurn);
                    }
                }
            }
        }
        return now;
    }
}
