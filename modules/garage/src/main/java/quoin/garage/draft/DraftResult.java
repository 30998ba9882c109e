package quoin.garage.draft;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quoin.car.Car;

/**
 * What the typed texts mean.
 *
 * @param car     the car; empty exactly where there is a problem
 * @param remarks problems and warnings in the order of the form
 * @param assumed what is used where nothing was typed; empty where there is a problem
 */
public record DraftResult(Optional<Car> car, List<Remark> remarks, List<Assumed> assumed) {

    public DraftResult {
        Objects.requireNonNull(car, "car");
        remarks = List.copyOf(remarks);
        assumed = List.copyOf(assumed);
    }

    /** What keeps the car from being saved. */
    public List<Remark> problems() {
        return remarks.stream().filter(r -> r.level() == Remark.Level.PROBLEM).toList();
    }

    /** What asks for a second look. */
    public List<Remark> warnings() {
        return remarks.stream().filter(r -> r.level() == Remark.Level.WARNING).toList();
    }
}
