package quoin.workflow;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import quoin.adjustment.Goal;
import quoin.adjustment.PlanProbability;
import quoin.adjustment.ReadingForecast;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.HeightPoint;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Target;
import quoin.logbook.Day;
import quoin.logbook.Figure;
import quoin.mechanics.KilogramForce;
import quoin.mechanics.Sensitivity;

/**
 * Loads, shares and heights as rows: each a weighted sum of the eight learnt readings (four loads in N, four corner
 * heights in mm), so that means, covariances and sensitivities of all of them follow from one forecast.
 */
final class LegReadings {

    /**
     * One row.
     *
     * @param reading which reading
     * @param weights its weight of each of the eight learnt readings, in the reading's base unit
     * @param target  what it should be; empty where it only is predicted
     */
    private record Row(ReadingId reading, double[] weights, Optional<Target> target) {
    }

    private final Day day;
    private final LegBelief legs;
    private final List<Row> rows;
    private final List<Row> goals;
    private final ReadingForecast now;
    private final List<Sensitivity> exact;

    private LegReadings(Day day, LegBelief legs, List<Row> rows) {
        this.day = day;
        this.legs = legs;
        this.rows = rows;
        this.goals = rows.stream().filter(r -> r.target().isPresent()).toList();
        this.now = legs.belief().predict(new double[legs.adjusters().size()]);
        this.exact = LegBelief.sensitivities(legs.adjusters(), legs.standing().car());
    }

    static LegReadings of(Day day, LegBelief legs) {
        Car car = day.car();
        List<Row> rows = new ArrayList<>();
        if (legs.weighed()) {
            for (Corner corner : car.walkingOrder()) {
                ReadingId load = ReadingId.of(ReadingKind.LOAD, corner);
                rows.add(new Row(load, unit(corner.ordinal(), 1 / KilogramForce.toNewtons(1)), day.targets().of(load)));
            }
            double percent = 100 / KilogramForce.toNewtons(legs.assumed().totalKg());
            rows.add(share(ReadingKind.CROSS, percent, CrossAim.of(day), Corner.RF, Corner.LR));
            rows.add(share(ReadingKind.FRONT_SHARE, percent, target(day, ReadingKind.FRONT_SHARE), Corner.LF, Corner.RF));
            rows.add(share(ReadingKind.LEFT_SHARE, percent, target(day, ReadingKind.LEFT_SHARE), Corner.LF, Corner.LR));
        }
        for (Corner corner : car.walkingOrder()) {
            Optional<HeightPoint> point = car.heightPoint(corner).filter(p -> day.latest(p.reading()).isPresent());
            point.ifPresent(p -> rows.add(new Row(p.reading(), unit(4 + corner.ordinal(), 1), day.targets().of(p.reading()))));
        }
        return new LegReadings(day, legs, rows);
    }

    private static Row share(ReadingKind kind, double percent, Optional<Target> target, Corner one, Corner two) {
        double[] weights = unit(one.ordinal(), percent);
        weights[two.ordinal()] = percent;
        return new Row(ReadingId.ofCar(kind), weights, target);
    }

    private static Optional<Target> target(Day day, ReadingKind kind) {
        return day.targets().of(ReadingId.ofCar(kind));
    }

    private static double[] unit(int index, double weight) {
        double[] weights = new double[8];
        weights[index] = weight;
        return weights;
    }

    /** Readings with a target, in the order of the errors. */
    List<ReadingId> goals() {
        return goals.stream().map(Row::reading).toList();
    }

    /** The same as the belief's goals. */
    List<Goal> beliefGoals() {
        return goals.stream().map(r -> goal(r.reading(), r.target().orElseThrow())).toList();
    }

    private Goal goal(ReadingId reading, Target target) {
        return switch (reading.kind()) {
            case CROSS -> Goal.cross(target.value(), target.tolerance());
            case FRONT_SHARE -> new Goal(Goal.Kind.FRONT_PERCENT, Corner.LF, target.value(), target.tolerance());
            case LEFT_SHARE -> new Goal(Goal.Kind.LEFT_PERCENT, Corner.LF, target.value(), target.tolerance());
            case LOAD -> Goal.load(Corner.valueOf(reading.place()), KilogramForce.toNewtons(target.value()),
                    KilogramForce.toNewtons(target.tolerance()));
            default -> Goal.height(cornerOf(reading), target.value(), target.tolerance());
        };
    }

    private Corner cornerOf(ReadingId height) {
        return day.car().heightPoints().stream().filter(p -> p.reading().equals(height)).findFirst()
                .flatMap(HeightPoint::corner).orElseThrow();
    }

    /** Believed value less target per goal, in the goal's unit. */
    double[] errors() {
        return goals.stream().mapToDouble(r -> dot(r.weights(), now.mean()) - r.target().orElseThrow().value()).toArray();
    }

    double[] tolerances() {
        return goals.stream().mapToDouble(r -> r.target().orElseThrow().tolerance()).toArray();
    }

    /** Rows as {@link #goals()}, columns as the adjusters. */
    double[][] sensitivityPerTurn() {
        List<List<Double>> response = legs.belief().responsePerTurn();
        double[][] matrix = new double[goals.size()][legs.adjusters().size()];
        for (int i = 0; i < matrix.length; i++) {
            for (int j = 0; j < matrix[i].length; j++) {
                for (int k = 0; k < 8; k++) {
                    matrix[i][j] += goals.get(i).weights()[k] * response.get(k).get(j);
                }
            }
        }
        return matrix;
    }

    /** Covariance of the true values of the goals after the turns. */
    double[][] covarianceAfter(double[] turns) {
        ReadingForecast after = legs.belief().predict(turns);
        return covariance(goals, after.mean(), after.truthCovariance());
    }

    /** Probability that every goal is met after the turns, friction left aside. */
    double probabilityInside(double[] turns) {
        double[] errors = errors();
        double[][] sensitivity = sensitivityPerTurn();
        for (int i = 0; i < errors.length; i++) {
            errors[i] += dot(sensitivity[i], turns);
        }
        return PlanProbability.inside(errors, covarianceAfter(turns), tolerances()).value();
    }

    /** Every row, and every further height point, as read and as it will be read after the turns. */
    Map<ReadingId, Predicted> predicted(double[] turns) {
        ReadingForecast after = legs.belief().predict(turns);
        double[][] covariance = covariance(rows, after.mean(), after.readingCovariance());
        Map<ReadingId, Predicted> all = new LinkedHashMap<>();
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            all.put(row.reading(), new Predicted(lastRead(row), dot(row.weights(), after.mean()),
                    Math.sqrt(covariance[i][i]), row.target()));
        }
        for (HeightPoint point : day.car().heightPoints()) {
            Optional<Figure> read = day.latest(point.reading());
            if (read.isPresent() && !all.containsKey(point.reading())) {
                double move = 0;
                for (int j = 0; j < turns.length; j++) {
                    move += exact.get(j).rideHeightsMm().get(point.name()) * turns[j];
                }
                all.put(point.reading(), new Predicted(read.get().value(), read.get().value() + move, 0,
                        day.targets().of(point.reading())));
            }
        }
        return all;
    }

    /** How far each wheel moves against the body by the turns, mm, plus in bump; by the exact mechanics of the car as described. */
    PerCorner<Double> travelMm(double[] turns) {
        return PerCorner.of(c -> {
            double travel = 0;
            for (int j = 0; j < turns.length; j++) {
                travel += exact.get(j).wheelTravelMm().get(c) * turns[j];
            }
            return travel;
        });
    }

    private double lastRead(Row row) {
        return Derived.value(day.car(), row.reading(),
                id -> day.latest(id).map(f -> OptionalDouble.of(f.value())).orElse(OptionalDouble.empty()))
                .orElse(dot(row.weights(), now.mean()));
    }

    private static double[][] covariance(List<Row> rows, List<Double> mean, List<List<Double>> eight) {
        List<double[]> slopes = rows.stream().map(row -> slope(row, mean)).toList();
        double[][] out = new double[rows.size()][rows.size()];
        for (int i = 0; i < out.length; i++) {
            for (int j = 0; j < out.length; j++) {
                for (int a = 0; a < 8; a++) {
                    for (int b = 0; b < 8; b++) {
                        out[i][j] += slopes.get(i)[a] * eight.get(a).get(b) * slopes.get(j)[b];
                    }
                }
            }
        }
        return out;
    }

    /** What an error of each of the eight readings does to a row: it moves the total too, of which a share is one. */
    private static double[] slope(Row row, List<Double> eight) {
        double[] slope = row.weights().clone();
        if (LoadErrors.isMadeOfLoads(row.reading().kind())) {
            double total = eight.subList(0, 4).stream().mapToDouble(Double::doubleValue).sum();
            double share = dot(row.weights(), eight);
            for (int k = 0; k < 4; k++) {
                slope[k] -= share / total;
            }
        }
        return slope;
    }

    private static double dot(double[] weights, List<Double> values) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * values.get(i);
        }
        return sum;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }
}
