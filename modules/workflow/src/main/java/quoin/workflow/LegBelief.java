package quoin.workflow;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import quoin.adjustment.CarModels;
import quoin.adjustment.CornerSpring;
import quoin.adjustment.Learner;
import quoin.adjustment.LearningPrior;
import quoin.adjustment.LiftAdjuster;
import quoin.adjustment.NoisePrior;
import quoin.adjustment.ResponseBelief;
import quoin.adjustment.SettledReading;
import quoin.car.Adjuster;
import quoin.car.AdjusterKind;
import quoin.car.AssumedCar;
import quoin.car.AssumedCorner;
import quoin.car.Assumptions;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.HeightPoint;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Setting;
import quoin.logbook.Day;
import quoin.logbook.Figure;
import quoin.mechanics.CarModel;
import quoin.mechanics.CornerLoads;
import quoin.mechanics.KilogramForce;
import quoin.mechanics.LoadInput;
import quoin.mechanics.Sensitivity;
import quoin.mechanics.StateFit;
import quoin.mechanics.Turns;

/**
 * What the day has taught about springs, perches and pushrods: the exact response of the car as described, corrected by
 * every settled reading.
 *
 * @param assumed   the car with nothing unknown
 * @param adjusters perches and pushrods in walking order: the columns of every array of turns
 * @param weighed   true where all four loads were read today
 * @param standing  the car as last read, before the mechanics
 * @param belief    response, present state and noise as learnt
 */
record LegBelief(AssumedCar assumed, List<Adjuster> adjusters, boolean weighed, StateFit.FittedCar standing,
        ResponseBelief belief) {

    /** Standard deviation of one scale set on again, friction of the car left aside (common practice, no source). */
    private static final double SCALE_REPEATABILITY_KG = 0.15;

    /** What is believed now; empty where neither loads nor heights were read in a state that counts. */
    static Optional<LegBelief> of(Day day) {
        Car car = day.car();
        PerCorner<Optional<Figure>> read = PerCorner.of(c -> day.latest(ReadingId.of(ReadingKind.LOAD, c)));
        boolean weighed = PerCorner.of(c -> read.get(c).isPresent()).equals(PerCorner.all(true));
        PerCorner<Double> typed = read.map(f -> f.map(Figure::value).orElse(0.0));
        double sum = typed.lf() + typed.rf() + typed.lr() + typed.rr();
        OptionalDouble total = weighed && sum > 0 ? OptionalDouble.of(sum) : OptionalDouble.empty();
        AssumedCar described = Assumptions.complete(car, total);
        TakenOver before = TakenOver.of(day);
        AssumedCar assumed = before.applied(described);
        List<Adjuster> adjusters = car.walkingOrder().stream().flatMap(c -> assumed.corners().get(c).springLeg().stream()).toList();
        List<List<SettledReading>> stretches = RoundHistory.of(day, adjusters.stream().map(Adjuster::id).toList());
        if (stretches.isEmpty()) {
            return Optional.empty();
        }
        Map<String, Double> heights = new HashMap<>();
        car.heightPoints().forEach(p -> day.latest(p.reading()).ifPresent(f -> heights.put(p.name(), f.value())));
        StateFit.FittedCar standing = CarModels.standing(assumed, weighed ? typed : CarModels.unweighed(assumed), heights);
        LearningPrior prior = prior(described, before, adjusters, exactResponse(described, before, adjusters, standing.car()));
        ResponseBelief belief = null;
        for (List<SettledReading> stretch : stretches) {
            belief = Learner.learn(belief == null ? prior : carriedOn(prior, belief), stretch);
        }
        return Optional.of(new LegBelief(assumed, adjusters, weighed, standing, weighed ? onItsScales(day, read.map(Optional::get), belief) : belief));
    }

    /** The factors of the scales are the same in every reading of the day: learning cannot see them, the chances must. */
    private static ResponseBelief onItsScales(Day day, PerCorner<Figure> loads, ResponseBelief belief) {
        double newtons = KilogramForce.toNewtons(1);
        return belief.onScalesOff(new LoadErrors(day).lasting(loads).stream()
                .map(row -> row.stream().map(kg2 -> kg2 * newtons * newtons).toList()).toList());
    }

    /** Perches and pushrods in walking order. */
    static List<Adjuster> adjusters(Day day) {
        AssumedCar assumed = Assumptions.complete(day.car());
        return day.car().walkingOrder().stream().flatMap(c -> assumed.corners().get(c).springLeg().stream()).toList();
    }

    /** What is believed before anything was read: the linear response at the believed rates. */
    static LearningPrior unread(Day day) {
        return prior(Assumptions.complete(day.car()), TakenOver.of(day), adjusters(day), List.of());
    }

    /** Rates learnt in an earlier stretch of the day are where the next one starts. */
    private static LearningPrior carriedOn(LearningPrior prior, ResponseBelief earlier) {
        List<CornerSpring> corners = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            CornerSpring c = prior.corners().get(i);
            corners.add(new CornerSpring(c.xMm(), c.yMm(), c.heightXMm(), c.heightYMm(), earlier.wheelRatesNPerMm().get(i),
                    c.tyreRateNPerMm(), earlier.wheelRateRelativeSds().get(i)));
        }
        return new LearningPrior(corners, prior.adjusters(), prior.barRatesNPerMm(), prior.noise(), List.of());
    }

    /** Relative standard uncertainty of a wheel rate as described. */
    static double rateSd(Car car, Corner corner) {
        return car.corners().get(corner).springRateNPerMm().isPresent() ? CornerSpring.TYPED_RATE_SD : CornerSpring.UNKNOWN_RATE_SD;
    }

    private static LearningPrior prior(AssumedCar assumed, TakenOver before, List<Adjuster> adjusters, List<List<Double>> exact) {
        Car car = assumed.car();
        List<CornerSpring> springs = new ArrayList<>();
        for (Corner corner : Corner.values()) {
            AssumedCorner c = assumed.corners().get(corner);
            AssumedCar.PlacedPoint point = place(assumed, corner);
            double rate = c.wheelRateNPerMm();
            ExpectedMove.Move learnt = before.wheelRate(corner, rate, rateSd(car, corner))
                    .orElse(new ExpectedMove.Move(rate, rate * rateSd(car, corner)));
            springs.add(new CornerSpring(corner.isFront() ? 0 : -car.wheelbaseMm(),
                    (corner.isLeft() ? 0.5 : -0.5) * car.trackMm(corner.axle()), point.xMm(), point.yMm(), learnt.amount(),
                    c.tyreRateNPerMm(), learnt.uncertainty() / learnt.amount()));
        }
        List<LiftAdjuster> lifts = adjusters.stream().map(a -> lift(a, assumed, before)).toList();
        return new LearningPrior(springs, lifts, List.of(0.0, 0.0), noise(car), exact);
    }

    private static NoisePrior noise(Car car) {
        NoisePrior garage = NoisePrior.garage();
        double scale = KilogramForce.toNewtons(Math.hypot(SCALE_REPEATABILITY_KG, car.instruments().scaleResolutionKg() / Math.sqrt(12)));
        double height = Math.max(0.2, car.instruments().heightResolutionMm() * 0.73 / Math.sqrt(3));
        return new NoisePrior(garage.frictionSdN(), garage.frictionLogSd(), height, garage.heightLogSd(), scale);
    }

    private static LiftAdjuster lift(Adjuster adjuster, AssumedCar assumed, TakenOver before) {
        double perTurn = liftMmPerTurn(adjuster, assumed);
        Axle axle = adjuster.id().corner().axle();
        ExpectedMove.Move factor = before.liftFactor(axle, adjuster.id().kind(), perTurn, LiftAdjuster.USUAL_LIFT_SD)
                .orElse(new ExpectedMove.Move(1, LiftAdjuster.USUAL_LIFT_SD));
        return new LiftAdjuster(adjuster.id().words(), adjuster.id().corner(), perTurn * factor.amount(), axle + " " + adjuster.id().kind(),
                factor.uncertainty() / factor.amount());
    }

    /** Lift of one turn by the car as described, mm at the wheel. */
    static double liftMmPerTurn(Adjuster adjuster, AssumedCar assumed) {
        AssumedCorner corner = assumed.corners().get(adjuster.id().corner());
        return ((Setting.Thread) adjuster.setting()).mmPerTurn() * corner.liftPerThreadMm(adjuster.id().kind());
    }

    private static AssumedCar.PlacedPoint place(AssumedCar assumed, Corner corner) {
        Car car = assumed.car();
        Optional<String> name = car.heightPoint(corner).map(HeightPoint::name);
        return assumed.heightPoints().stream().filter(p -> name.filter(p.name()::equals).isPresent()).findFirst()
                .orElseGet(() -> new AssumedCar.PlacedPoint(corner.name(), corner.isFront() ? 0 : -car.wheelbaseMm(),
                        (corner.isLeft() ? 0.5 : -0.5) * car.trackMm(corner.axle())));
    }

    /** Exact response of the car as it stands, each column times what the lift of its adjuster was learnt to be. */
    private static List<List<Double>> exactResponse(AssumedCar described, TakenOver before, List<Adjuster> adjusters, CarModel standing) {
        Car car = described.car();
        for (Corner corner : Corner.values()) {
            if (car.heightPoint(corner).isEmpty()) {
                return List.of();
            }
        }
        List<Sensitivity> columns = sensitivities(adjusters, standing);
        double[] factors = adjusters.stream().mapToDouble(a -> lift(a, described, before).liftMmPerTurn() / liftMmPerTurn(a, described)).toArray();
        List<List<Double>> rows = new ArrayList<>();
        for (Corner corner : Corner.values()) {
            rows.add(IntStream.range(0, factors.length)
                    .mapToObj(i -> factors[i] * KilogramForce.toNewtons(columns.get(i).loadsKgf().get(corner))).toList());
        }
        for (Corner corner : Corner.values()) {
            String point = car.heightPoint(corner).orElseThrow().name();
            rows.add(IntStream.range(0, factors.length).mapToObj(i -> factors[i] * columns.get(i).rideHeightsMm().get(point)).toList());
        }
        return rows;
    }

    /** What one turn of each adjuster does, in their order. */
    static List<Sensitivity> sensitivities(List<Adjuster> adjusters, CarModel standing) {
        List<Sensitivity> all = CornerLoads.sensitivities(standing, Turns.NONE);
        return adjusters.stream().map(a -> all.stream()
                .filter(s -> s.corner() == a.id().corner() && (s.input() == LoadInput.PERCH) == (a.id().kind() == AdjusterKind.PERCH))
                .findFirst().orElseThrow()).toList();
    }
}
