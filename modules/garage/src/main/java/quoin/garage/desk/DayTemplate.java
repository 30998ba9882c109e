package quoin.garage.desk;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
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

    /**
     * A car with its adjusters where the last day left them. An adjuster that was measured anew in the car's file since that day began
     * stands as the file says.
     *
     * @param car  what the day begins with
     * @param file the car as its file has it; empty = it has none
     * @param last the last day of the car
     */
    static Car standing(Car car, Optional<Car> file, Day last) {
        return withAdjusters(car, a -> {
            Optional<Adjuster> then = last.car().adjuster(a.id());
            Optional<Adjuster> filed = file.flatMap(f -> f.adjuster(a.id()));
            boolean measuredAnew = then.isPresent() && filed.isPresent() && !(filed.get().startMm().equals(then.get().startMm())
                    && filed.get().setting().equals(then.get().setting()));
            return measuredAnew ? filed.get() : then.map(t -> adjuster(last, t)).orElse(a);
        });
    }

    /** A car with the adjusters of another description of it, where it has them. */
    static Car withAdjustersOf(Car car, Car from) {
        return withAdjusters(car, a -> from.adjuster(a.id()).orElse(a));
    }

    static Car withAdjusters(Car car, UnaryOperator<Adjuster> change) {
        return new Car(car.id(), car.name(), car.wheelbaseMm(), car.axles(), car.corners().map(c -> with(c, c.adjusters().stream().map(change)
                .toList())), car.masses(), car.heightPoints(), car.targets(), car.loadCase(), car.instruments(), car.walkingOrder());
    }

    private static CornerSetup corner(Day day, CornerSetup corner) {
        return with(corner, corner.adjusters().stream().map(a -> adjuster(day, a)).toList());
    }

    private static CornerSetup with(CornerSetup corner, List<Adjuster> adjusters) {
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
