package quoin.garage.draft;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.Stream;
import quoin.car.Axle;
import quoin.car.AxleSetup;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.CornerSetup;
import quoin.car.CrossGoal;
import quoin.car.HeightPoint;
import quoin.car.Instruments;
import quoin.car.KnownMass;
import quoin.car.LoadCase;
import quoin.car.Masses;
import quoin.car.PerAxle;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.SuspensionChoice;
import quoin.car.Targets;
import quoin.quantities.Dimension;
import quoin.suspension.Parameter;
import quoin.suspension.spi.SuspensionType;
import quoin.suspension.spi.SuspensionTypes;

/**
 * A car being typed: every field's text exactly as typed, whether it can be read or not. Immutable; every change gives
 * another draft. A car put in comes out again unchanged, with everything the form does not show.
 */
public final class CarDraft {

    /** Stable id of the suspension that is described by what was measured on it. */
    static final String MEASURED = "measured";
    private static final String POINTS = "heightPoints.";
    private static final String MASSES = "masses.known.";

    private final Map<String, String> texts;
    private final Map<String, DraftWriter.Exact> exact;
    private final FigureText figures;
    private final SuspensionTypes types;
    private final Optional<Car> basis;

    private CarDraft(Map<String, String> texts, Map<String, DraftWriter.Exact> exact, FigureText figures, SuspensionTypes types,
            Optional<Car> basis) {
        this.texts = texts;
        this.exact = exact;
        this.figures = figures;
        this.types = types;
        this.basis = basis;
    }

    /** The form of a new car: four height points, nothing known. */
    public static CarDraft blank(FigureText figures, SuspensionTypes types) {
        Map<String, String> texts = DraftWriter.write(unknownCar(), figures).texts();
        texts.put(Paths.NAME, "");
        texts.put(Paths.WHEELBASE, "");
        texts.put(Paths.track(Axle.FRONT), "");
        texts.put(Paths.track(Axle.REAR), "");
        texts.put(TargetReadings.path(ReadingId.ofCar(ReadingKind.CROSS)) + ".tolerance",
                figures.of(TargetReadings.usualTolerance(ReadingKind.CROSS), Dimension.PERCENT));
        texts.put(Paths.mass(1, "name"), Texts.of("mass.driver"));
        texts.put(Paths.mass(1, "role"), KnownMass.Role.DRIVER.name());
        texts.put(Paths.mass(2, "name"), Texts.of("mass.fuel"));
        texts.put(Paths.mass(2, "role"), KnownMass.Role.FUEL.name());
        return new CarDraft(texts, Map.of(), figures, types, Optional.empty());
    }

    /** The form of a car that is known. */
    public static CarDraft from(Car car, FigureText figures, SuspensionTypes types) {
        DraftWriter.Written written = DraftWriter.write(car, figures);
        return new CarDraft(written.texts(), written.exact(), figures, types, Optional.of(car));
    }

    /** A car of which nothing is known; wheelbase and tracks stand for figures yet to be typed. */
    static Car unknownCar() {
        OptionalDouble unknown = OptionalDouble.empty();
        AxleSetup axle = new AxleSetup(1, Optional.empty(), new SuspensionChoice(MEASURED, Map.of()));
        List<HeightPoint> points = Stream.of(Corner.values())
                .map(c -> new HeightPoint(Texts.of("point.of", c), Optional.of(c), unknown, unknown)).toList();
        return new Car("new-car", "new car", 1, PerAxle.both(axle), PerCorner.all(CornerSetup.unknown()),
                new Masses(unknown, unknown, List.of()), points, new Targets(Map.of(), CrossGoal.EQUAL_DIAGONALS),
                LoadCase.unknown(), Instruments.usual(), List.of(Corner.LF, Corner.RF, Corner.LR, Corner.RR));
    }

    /** The text of a field, exactly as typed; empty where nothing was. */
    public String text(String path) {
        return texts.getOrDefault(path, "");
    }

    /** A copy with one text typed. */
    public CarDraft with(String path, String text) {
        if (text.equals(texts.get(path))) {
            return this;
        }
        Map<String, String> changed = new LinkedHashMap<>(texts);
        changed.put(path, text);
        return new CarDraft(changed, exact, figures, types, basis);
    }

    /** True where the car is not in the library yet. */
    public boolean isNew() {
        return basis.isEmpty();
    }

    /** True where another draft holds other texts. */
    public boolean differsFrom(CarDraft other) {
        return !texts.equals(other.texts);
    }

    /** The pages of the form for what is typed now. */
    public List<Section> sections() {
        return new FormPages(this).all();
    }

    /** What the texts mean, with every problem, warning and assumption. */
    public DraftResult read() {
        return new DraftReader(this).read();
    }

    /** The right-hand corners as the left ones, save for thread lengths measured at each corner. */
    public CarDraft copyLeftToRight() {
        Map<String, String> changed = new LinkedHashMap<>(texts);
        Map<String, DraftWriter.Exact> values = new LinkedHashMap<>(exact);
        for (Axle axle : Axle.values()) {
            String left = Paths.corner(axle.left(), "");
            texts.forEach((path, text) -> {
                if (path.startsWith(left) && !path.endsWith(".start")) {
                    String right = Paths.corner(axle.right(), path.substring(left.length()));
                    changed.put(right, text);
                    exactValue(path).ifPresent(v -> values.put(right, new DraftWriter.Exact(text, v)));
                }
            });
        }
        return new CarDraft(changed, values, figures, types, basis);
    }

    /** Numbers of the height points in order. */
    List<Integer> pointRows() {
        return rows(POINTS);
    }

    /** Numbers of the known masses in order. */
    List<Integer> massRows() {
        return rows(MASSES);
    }

    private List<Integer> rows(String start) {
        TreeSet<Integer> rows = new TreeSet<>();
        texts.keySet().stream().filter(p -> p.startsWith(start))
                .forEach(p -> rows.add(Integer.valueOf(p.substring(start.length(), p.indexOf('.', start.length())))));
        return new ArrayList<>(rows);
    }

    /** A copy with one more height point at the end. */
    public CarDraft addHeightPoint() {
        int row = next(pointRows());
        return with(Paths.point(row, "corner"), FieldKinds.NONE).with(Paths.point(row, "name"), "");
    }

    /** A copy with one more mass at the end. */
    public CarDraft addMass() {
        int row = next(massRows());
        return with(Paths.mass(row, "role"), KnownMass.Role.BALLAST.name()).with(Paths.mass(row, "name"), Texts.of("mass.ballast"));
    }

    private static int next(List<Integer> rows) {
        return rows.isEmpty() ? 1 : rows.get(rows.size() - 1) + 1;
    }

    /** A copy without a height point and its target. */
    public CarDraft removeHeightPoint(int row) {
        return without(POINTS + row + ".").without(Paths.heightTarget(row) + ".");
    }

    /** A copy without a mass. */
    public CarDraft removeMass(int row) {
        return without(MASSES + row + ".");
    }

    private CarDraft without(String start) {
        Map<String, String> changed = new LinkedHashMap<>(texts);
        changed.keySet().removeIf(p -> p.startsWith(start));
        return new CarDraft(changed, exact, figures, types, basis);
    }

    /** The value behind a rounded text that was left as it was; empty where the text itself tells it. */
    OptionalDouble exactValue(String path) {
        DraftWriter.Exact kept = exact.get(path);
        return kept != null && kept.text().equals(text(path)) ? OptionalDouble.of(kept.value()) : OptionalDouble.empty();
    }

    FigureText figures() {
        return figures;
    }

    /** The car the form was opened with. */
    Optional<Car> basis() {
        return basis;
    }

    /** Keys of the suspension parameters of an axle that have a text: those of its type and those kept for another. */
    List<String> parameterKeys(Axle axle) {
        String start = Paths.parameter(axle, "");
        return texts.keySet().stream().filter(p -> p.startsWith(start)).map(p -> p.substring(start.length())).sorted().toList();
    }

    /** What the suspension type of an axle asks for; nothing where the type is not installed. */
    List<Parameter> parameters(Axle axle) {
        return types.find(text(Paths.suspension(axle))).map(SuspensionType::parameters).orElse(List.of());
    }

    SuspensionTypes types() {
        return types;
    }
}
