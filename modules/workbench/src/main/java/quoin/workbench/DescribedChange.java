package quoin.workbench;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.openide.util.NbBundle.Messages;
import quoin.car.Axle;
import quoin.car.AxleSetup;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.PerAxle;
import quoin.car.PerCorner;

/**
 * What differs between two descriptions of a car, part by part.
 *
 * @param before as it was described
 * @param after  as it is described now
 */
@Messages({
    "# {0} - what changed", "car.changed=Car changed: {0}",
    "car.same=Car described again, nothing changed",
    "# {0} - car", "car.name=name, now {0}",
    "car.wheelbase=wheelbase", "car.axle.FRONT=front axle", "car.axle.REAR=rear axle",
    "# {0} - corner", "car.corner=springs and adjusters {0}",
    "car.masses=masses", "car.heightPoints=height points", "car.targets=targets", "car.loadCase=load case",
    "car.instruments=measuring instruments",
    "# {0} - corners", "car.walk=walking order, now {0}"})
record DescribedChange(Car before, Car after) {

    /** What changed, in words: "Car changed: load case, walking order, now LF LR RR RF". */
    String words() {
        List<String> parts = new ArrayList<>();
        note(parts, Car::name, Bundle.car_name(after.name()));
        note(parts, Car::wheelbaseMm, Bundle.car_wheelbase());
        note(parts, c -> c.axles().get(Axle.FRONT), Bundle.car_axle_FRONT());
        note(parts, c -> c.axles().get(Axle.REAR), Bundle.car_axle_REAR());
        String corners = after.walkingOrder().stream().filter(c -> !before.corners().get(c).equals(after.corners().get(c)))
                .map(Corner::words).collect(Collectors.joining(" "));
        if (!corners.isEmpty()) {
            parts.add(Bundle.car_corner(corners));
        }
        note(parts, Car::masses, Bundle.car_masses());
        note(parts, Car::heightPoints, Bundle.car_heightPoints());
        note(parts, Car::targets, Bundle.car_targets());
        note(parts, Car::loadCase, Bundle.car_loadCase());
        note(parts, Car::instruments, Bundle.car_instruments());
        note(parts, Car::walkingOrder, Bundle.car_walk(after.walkingOrder().stream().map(Corner::words).collect(Collectors.joining(" "))));
        return parts.isEmpty() ? Bundle.car_same() : Bundle.car_changed(String.join(", ", parts));
    }

    private void note(List<String> parts, Function<Car, Object> part, String words) {
        if (!Objects.equals(part.apply(before), part.apply(after))) {
            parts.add(words);
        }
    }

    /** The same change made to another description: a part that was described there otherwise than before the change stays. */
    Car on(Car other) {
        PerAxle<AxleSetup> axles = new PerAxle<>(part(other, c -> c.axles().front()), part(other, c -> c.axles().rear()));
        return new Car(other.id(), part(other, Car::name), part(other, Car::wheelbaseMm), axles,
                PerCorner.of(corner -> part(other, c -> c.corners().get(corner))), part(other, Car::masses), part(other, Car::heightPoints),
                part(other, Car::targets), part(other, Car::loadCase), part(other, Car::instruments), part(other, Car::walkingOrder));
    }

    private <T> T part(Car other, Function<Car, T> part) {
        T there = part.apply(other);
        return Objects.equals(there, part.apply(before)) ? part.apply(after) : there;
    }
}
