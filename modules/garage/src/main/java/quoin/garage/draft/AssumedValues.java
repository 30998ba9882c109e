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

    private static final Map<String, String> CORNER_FIELDS = Map.of("unsprung mass", "unsprung", "motion ratio", "motionRatio",
            "pushrod ratio", "pushrodRatio", "spring rate", "springRate", "tyre rate", "tyreRate", "rim chord", "rimChord",
            "perch pitch", "perch.pitch");
    private static final Map<String, String> CAR_FIELDS = Map.of("total mass", Paths.TOTAL, "centre of gravity height",
            Paths.CG_HEIGHT);

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
        return new Assumed(path(made.field()), made.field(), value, made.rule());
    }

    private String shown(double value, Dimension dimension) {
        return draft.figures().shown(value, dimension);
    }

    private Optional<String> path(String field) {
        if (CAR_FIELDS.containsKey(field)) {
            return Optional.of(CAR_FIELDS.get(field));
        }
        String what = field.length() > 3 ? CORNER_FIELDS.get(field.substring(3)) : null;
        if (what != null) {
            return Optional.of("corners." + field.substring(0, 2) + "." + what);
        }
        int end = field.lastIndexOf(' ');
        return draft.pointRows().stream().filter(r -> end > 0 && draft.text(Paths.point(r, "name")).strip().equals(field.substring(0, end)))
                .map(r -> Paths.point(r, field.substring(end + 1))).findFirst();
    }
}
