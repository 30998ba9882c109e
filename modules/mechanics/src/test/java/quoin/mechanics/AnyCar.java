package quoin.mechanics;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import quoin.car.Corner;
import quoin.car.PerAxle;
import quoin.car.PerCorner;

/**
 * Any race car: 460 to 1500 kg with driver, ride frequencies 1.6 to 4 Hz, motion ratios 0.5 to 1, tyres 170 to 350 N/mm,
 * wheelbase 2.2 to 2.9 m, tracks 1.3 to 1.65 m, loads unlike from corner to corner. It stands level with the loads drawn.
 */
final class AnyCar {
    private static final double G_MM = 9806.65;

    private final Random random;
    private final double wheelbase;
    private final PerAxle<Double> track;
    private final PerCorner<Double> loadsKgf;

    AnyCar(long seed) {
        random = new Random(seed);
        wheelbase = between(2200, 2900);
        track = new PerAxle<>(between(1300, 1650), between(1300, 1650));
        loadsKgf = new Shares(between(460, 1500), between(38, 55), between(46, 54), between(46, 54)).loadsKgf();
    }

    double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    int below(int bound) {
        return random.nextInt(bound);
    }

    Corner corner() {
        return Corner.values()[below(4)];
    }

    /** Perches and rods anywhere within so many turns. */
    Turns turns(double most) {
        return new Turns(PerCorner.of(c -> between(-most, most)), PerCorner.of(c -> between(-most, most)));
    }

    /** Tyres, a rising or falling rate, bars with preloaded links, roll centres, a soft chassis and uneven pads. */
    CarModel withEverything() {
        CarModel car = stand(between(200, 500), PerCorner.of(c -> OptionalDouble.of(between(170, 350))),
                PerCorner.of(c -> between(5, 25)), 0.002);
        Map<String, SpacePoint> points = new LinkedHashMap<>(car.rideHeightPoints());
        points.put("somewhere", somewhere());
        return new CarModel(car.sprungMassKg(), car.sprungCg(),
                car.corners().map(m -> m.withPadHeightMm(between(-2, 2))), new PerAxle<>(bar(), bar()),
                new PerAxle<>(OptionalDouble.of(between(-20, 90)), OptionalDouble.of(between(-20, 120))),
                OptionalDouble.of(between(2000, 20000)), between(100, 400), points);
    }

    /** A car whose tyres all sink alike and whose centre of gravity is in the plane of its contact points. */
    CarModel flat() {
        double sunk = below(2) * between(2, 6);
        PerCorner<OptionalDouble> tyres = loadsKgf.map(load -> sunk == 0 ? OptionalDouble.empty()
                : OptionalDouble.of(KilogramForce.toNewtons(load) / sunk));
        CarModel car = stand(-sunk, tyres, PerCorner.all(0.0), 0);
        return car.withBars(new PerAxle<>(new BarModel(bar().wheelRateInRollNPerMm(), 0), BarModel.DISCONNECTED));
    }

    SpacePoint somewhere() {
        return new SpacePoint(between(-wheelbase, 0), between(-600, 600), between(50, 600));
    }

    private BarModel bar() {
        return new BarModel(between(0, 60), between(-3, 3));
    }

    private CarModel stand(double cgHeight, PerCorner<OptionalDouble> tyres, PerCorner<Double> unsprungKg, double slope) {
        PerCorner<PlanPoint> contacts = CentreOfGravity.contactPoints(wheelbase, track.front(), track.rear());
        PerCorner<CornerModel> corners = PerCorner.of(c -> {
            double ratio = between(0.5, 1);
            double frequency = 2 * Math.PI * between(1.6, 4);
            double wheelRate = loadsKgf.get(c) * 9.80665 * frequency * frequency / G_MM;
            return new CornerModel(contacts.get(c).xMm(), contacts.get(c).yMm(), unsprungKg.get(c),
                    wheelRate / (ratio * ratio), ratio, between(-slope, slope), 0, between(1, 2), between(0.5, 2),
                    tyres.get(c), 0);
        });
        Map<String, SpacePoint> points = new LinkedHashMap<>();
        for (Corner c : Corner.values()) {
            points.put(c.name(), new SpacePoint(contacts.get(c).xMm(), 0.6 * contacts.get(c).yMm(), 60));
        }
        CarModel car = CarModel.plain(100, new SpacePoint(-wheelbase / 2, 0, cgHeight), corners, points);
        return StateFit.toReadings(car, Turns.NONE, loadsKgf, Map.of()).car();
    }
}
