package quoin.garage.draft;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import quoin.car.Assumptions;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.CornerSetup;
import quoin.car.CrossGoal;
import quoin.car.HeightPoint;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Target;
import quoin.car.Targets;
import quoin.quantities.Dimension;

/** Reads the targets of a draft. Targets of readings that the form does not ask for stay as they were. */
final class TargetReader {

    private static final double HALF = 50;

    private final CarDraft draft;
    private final TypedValues in;
    private final List<Assumed> assumed;
    private final PerCorner<Double> chordMm;
    private final Map<Integer, HeightPoint> points;
    private final CrossGoal goal;

    TargetReader(CarDraft draft, TypedValues in, List<Assumed> assumed, PerCorner<CornerSetup> corners,
            Map<Integer, HeightPoint> points) {
        this.draft = draft;
        this.in = in;
        this.assumed = assumed;
        this.points = points;
        double usual = Assumptions.complete(CarDraft.unknownCar()).corners().lf().rimChordMm();
        this.chordMm = corners.map(c -> c.rimChordMm().orElse(usual));
        this.goal = CrossGoal.valueOf(in.choice(Paths.CROSS_GOAL));
    }

    Targets read() {
        Map<ReadingId, Target> typed = new LinkedHashMap<>();
        points.forEach((row, point) -> target(Paths.heightTarget(row), point.reading()).ifPresent(t -> typed.put(point.reading(), t)));
        TargetReadings.all().forEach(r -> target(TargetReadings.path(r), r).ifPresent(t -> typed.put(r, t)));
        Map<ReadingId, Target> ordered = new LinkedHashMap<>();
        draft.basis().ifPresent(car -> car.targets().readings().forEach((reading, old) -> {
            if (typed.containsKey(reading)) {
                ordered.put(reading, typed.get(reading));
            } else if (!isAsked(car, reading)) {
                ordered.put(reading, old);
            }
        }));
        typed.forEach(ordered::putIfAbsent);
        return new Targets(ordered, goal);
    }

    private static boolean isAsked(Car car, ReadingId reading) {
        return TargetReadings.offered(reading) || car.heightPoints().stream().anyMatch(p -> p.reading().equals(reading));
    }

    private Optional<Target> target(String path, ReadingId reading) {
        String valuePath = path + ".value";
        String tolerancePath = path + ".tolerance";
        OptionalDouble value = figure(valuePath, reading);
        OptionalDouble tolerance = figure(tolerancePath, reading);
        if (value.isEmpty()) {
            return without(reading, valuePath, tolerancePath, tolerance);
        }
        if (in.isBlank(tolerancePath)) {
            tolerance = OptionalDouble.of(usual(reading, tolerancePath));
        }
        return tolerance.isPresent() ? Optional.of(new Target(value.getAsDouble(), tolerance.getAsDouble())) : Optional.empty();
    }

    /** A tolerance alone is enough for a cross weight whose goal tells the value. */
    private Optional<Target> without(ReadingId reading, String valuePath, String tolerancePath, OptionalDouble tolerance) {
        boolean cross = reading.kind() == ReadingKind.CROSS;
        if (!in.isBlank(valuePath)) {
            return Optional.empty();
        }
        if (cross && goal == CrossGoal.WANTED) {
            in.problem(valuePath, Texts.of("problem.missing"), Texts.of("remedy.crossWanted"));
        } else if (cross && tolerance.isPresent()) {
            return Optional.of(new Target(HALF, tolerance.getAsDouble()));
        } else if (!cross && !in.isBlank(tolerancePath)) {
            in.problem(valuePath, Texts.of("problem.noValue"), Texts.of("remedy.noValue"));
        }
        return Optional.empty();
    }

    private OptionalDouble figure(String path, ReadingId reading) {
        return isToe(reading) ? in.toe(path, chordMm(reading)) : in.figure(path);
    }

    private double usual(ReadingId reading, String path) {
        double usual = TargetReadings.usualTolerance(reading.kind());
        Dimension dimension = isToe(reading) ? Dimension.LENGTH : TargetReadings.dimension(reading.kind());
        assumed.add(new Assumed(Optional.of(path), new FieldNames(draft).of(path), "± " + draft.figures().shown(usual, dimension),
                Texts.of("assumed.tolerance")));
        return isToe(reading) ? Math.toDegrees(Math.asin(usual / chordMm(reading))) : usual;
    }

    private static boolean isToe(ReadingId reading) {
        return reading.kind() == ReadingKind.TOE || reading.kind() == ReadingKind.TOTAL_TOE;
    }

    private double chordMm(ReadingId toe) {
        if (toe.kind() == ReadingKind.TOTAL_TOE) {
            Axle axle = Axle.valueOf(toe.place());
            return (chordMm.get(axle.left()) + chordMm.get(axle.right())) / 2;
        }
        return chordMm.get(Corner.valueOf(toe.place()));
    }
}
