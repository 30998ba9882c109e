package quoin.garage.desk;

import java.util.List;
import java.util.OptionalDouble;
import quoin.car.Adjuster;
import quoin.car.Car;
import quoin.car.CornerSetup;
import quoin.car.Setting;
import quoin.logbook.Day;

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
            OptionalDouble start = day.lengthMm(adjuster.id(), adjuster.startMm(), 1, day.revision());
            return new Adjuster(adjuster.id(), now, start, adjuster.minMm(), adjuster.maxMm(), adjuster.locked());
        }
        double perTurn = ((Setting.Thread) adjuster.setting()).mmPerTurn();
        return new Adjuster(adjuster.id(), adjuster.setting(), day.lengthMm(adjuster.id(), adjuster.startMm(), perTurn, day.revision()), adjuster.minMm(),
                adjuster.maxMm(), adjuster.locked());
    }
}
