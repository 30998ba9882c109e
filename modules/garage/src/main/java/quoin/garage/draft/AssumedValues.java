package quoin.garage.draft;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import quoin.car.Assumption;
import quoin.car.Assumptions;
import quoin.car.Car;
import quoin.quantities.Dimension;

/** The car's assumptions with the blank field that each one fills. */
final class AssumedValues {

    private static final Map<String, String> CAR_FIELDS = Map.of("total", Paths.TOTAL, "cgHeight", Paths.CG_HEIGHT);

    private final CarDraft draft;
    private final Car car;

    AssumedValues(CarDraft draft, Car car) {
        this.draft = draft;
        this.car = car;
    }

    List<Assumed> all() {
        return Assumptions.complete(car).assumptions().stream().map(this::assumed).toList();
    }

    private Assumed assumed(Assumption made) {
        String value = FigureText.dimensionOf(made.unit()).map(d -> shown(made.value(), d))
                .orElseGet(() -> made.value() + " " + made.unit());
        return new Assumed(path(made), made.field(), value, made.rule());
    }

    private String shown(double value, Dimension dimension) {
        return draft.figures().shown(value, dimension);
    }

    private Optional<String> path(Assumption made) {
        if (CAR_FIELDS.containsKey(made.key())) {
            return Optional.of(CAR_FIELDS.get(made.key()));
        }
        if (!made.key().equals(Assumption.POINT_X) && !made.key().equals(Assumption.POINT_Y)) {
            return Optional.of("corners." + made.place() + "." + (made.key().equals("perchPitch") ? "perch.pitch" : made.key()));
        }
        return draft.pointRows().stream().filter(r -> draft.text(Paths.point(r, "name")).strip().equals(made.place()))
                .map(r -> Paths.point(r, made.key().equals(Assumption.POINT_X) ? "x" : "y")).findFirst();
    }
}
