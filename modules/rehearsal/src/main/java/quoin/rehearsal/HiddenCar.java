package quoin.rehearsal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import quoin.car.Adjuster;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.AssumedCar;
import quoin.car.AssumedCorner;
import quoin.car.Assumptions;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.KnownMass;
import quoin.car.PerAxle;
import quoin.car.PerCorner;
import quoin.car.Setting;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.mechanics.BarModel;
import quoin.mechanics.CarModel;
import quoin.mechanics.CentreOfGravity;
import quoin.mechanics.CornerLoads;
import quoin.mechanics.CornerModel;
import quoin.mechanics.Equilibrium;
import quoin.mechanics.KilogramForce;
import quoin.mechanics.PlanPoint;
import quoin.mechanics.PointMass;
import quoin.mechanics.SpacePoint;
import quoin.mechanics.StateFit;
import quoin.mechanics.Turns;

/** The car behind the readings: where it really stands in a situation, without any noise. */
final class HiddenCar {

    /** Height of the wheel centres, where the unsprung masses are, as a share of that of the centre of gravity. */
    private static final double WHEEL_CENTRE_SHARE = 0.62;
    /** A turn of a link that the car does not describe. */
    private static final double LINK_MM_PER_TURN = 1;

    private final AssumedCar car;
    private final HiddenTruth truth;
    private final CarModel base;
    private final Equilibrium asFound;

    HiddenCar(Car car, HiddenTruth truth) {
        this.car = Assumptions.complete(car);
        this.truth = truth;
        CarModel model = model(withTyres(truth.levelledMm()));
        this.base = StateFit.toReadings(model, Turns.NONE, truth.asFound().loadsKg(), truth.asFound().heightsMm()).car();
        this.asFound = CornerLoads.solve(base, Turns.NONE);
    }

    /** Loads and heights in the situation of the day so far. */
    Equilibrium standing(Day day) {
        Situation now = Situation.of(day);
        return CornerLoads.solve(loaded(now).withBars(bars(day, now)), turns(now));
    }

    /** Angles of a wheel of the car that stands like this. */
    HiddenTruth.Angles angles(Corner corner, Situation now, Equilibrium standing) {
        HiddenTruth.Angles angles = truth.asFound().angles().get(corner);
        for (Map.Entry<AdjusterKind, HiddenTruth.Effect> effect : truth.perUnit().entrySet()) {
            angles = angles.plus(now.turned(new AdjusterId(effect.getKey(), corner)), effect.getValue());
        }
        double bump = standing.wheelTravelMm().get(corner) - asFound.wheelTravelMm().get(corner);
        angles = angles.plus(bump, truth.perBumpMm().get(corner.axle()));
        // the uprights pitch with the body: nose down tips their tops forward
        double noseDown = standing.pitchDeg() - asFound.pitchDeg();
        return new HiddenTruth.Angles(angles.camberDeg(), angles.casterDeg() - noseDown, angles.toeDeg());
    }

    double rimChordMm(Corner corner) {
        return car.corners().get(corner).rimChordMm();
    }

    /** Heights of the pad tops in a situation, mm. */
    PerCorner<Double> padsMm(Situation now) {
        if (now.is(Conditions.PADS, Conditions.LEVELLED)) {
            return truth.levelledMm();
        }
        if (now.is(Conditions.PADS, Conditions.MOVED)) {
            long entry = now.condition(Conditions.PADS).map(Entry::number).orElse(0L);
            Corner kicked = Corner.values()[new SplittableRandom(entry).nextInt(4)];
            return truth.levelledMm().with(kicked, truth.levelledMm().get(kicked) + truth.kickMm());
        }
        return truth.floorMm();
    }

    private CarModel loaded(Situation now) {
        List<PointMass> changes = new ArrayList<>();
        for (KnownMass mass : car.car().masses().known()) {
            double missing = switch (mass.role()) {
                case DRIVER -> now.is(Conditions.DRIVER, Conditions.IN) ? 0 : mass.massKg();
                case FUEL -> mass.massKg() - fuelKg(now, mass.massKg());
                default -> 0;
            };
            if (missing != 0) {
                changes.add(new PointMass(-missing, new SpacePoint(mass.xMm(), mass.yMm(), mass.zMm())));
            }
        }
        PerCorner<Double> pads = withTyres(padsMm(now));
        CarModel stood = base.withCorners(PerCorner.of(c -> base.corners().get(c).withPadHeightMm(pads.get(c))));
        return changes.isEmpty() ? stood : stood.with(changes);
    }

    private static double fuelKg(Situation now, double otherwise) {
        try {
            return now.condition(Conditions.FUEL).map(c -> Double.parseDouble(c.value())).filter(kg -> kg >= 0).orElse(otherwise);
        } catch (NumberFormatException e) {
            return otherwise;
        }
    }

    private PerAxle<BarModel> bars(Day day, Situation now) {
        return new PerAxle<>(bar(day, now, Axle.FRONT), bar(day, now, Axle.REAR));
    }

    private BarModel bar(Day day, Situation now, Axle axle) {
        if (!now.isJoined(axle)) {
            return BarModel.DISCONNECTED;
        }
        BarModel found = truth.bars().get(axle);
        return now.joinedAfresh(axle).map(entry -> new BarModel(found.wheelRateInRollNPerMm(),
                freeOffset(day, entry, axle) + linkMm(now, axle) - linkMm(Situation.upTo(day, entry), axle)))
                .orElseGet(() -> new BarModel(found.wheelRateInRollNPerMm(), found.linkPreloadOffsetMm() + linkMm(now, axle)));
    }

    /** What the links of an axle's bar were turned, mm at the wheel, plus = loads the left wheel; a turn moves a wheel by its pitch. */
    private double linkMm(Situation now, Axle axle) {
        double mm = 0;
        for (Corner corner : List.of(axle.left(), axle.right())) {
            AdjusterId link = new AdjusterId(AdjusterKind.BAR_LINK, corner);
            double perTurn = car.car().adjuster(link).map(Adjuster::setting).filter(Setting.Thread.class::isInstance)
                    .map(s -> ((Setting.Thread) s).mmPerTurn()).orElse(LINK_MM_PER_TURN);
            mm += now.turned(link) * perTurn;
        }
        return mm;
    }

    /** The link offset at which the bar was free when it was joined: the bolt slid in with the fingers. */
    private double freeOffset(Day day, long entry, Axle axle) {
        Situation then = Situation.upTo(day, entry);
        Equilibrium free = CornerLoads.solve(loaded(then).withBars(PerAxle.both(BarModel.DISCONNECTED)), turns(then));
        return free.wheelTravelMm().get(axle.right()) - free.wheelTravelMm().get(axle.left());
    }

    /** Perches as they are; everything else that changes a leg counts as rod, whose turn is 1 mm at the wheel here. */
    private Turns turns(Situation now) {
        PerCorner<Double> perch = PerCorner.of(c -> now.turned(new AdjusterId(AdjusterKind.PERCH, c)));
        PerCorner<Double> leg = PerCorner.of(c -> {
            double mm = now.turned(new AdjusterId(AdjusterKind.PUSHROD, c)) * threadMmPerTurn(c, AdjusterKind.PUSHROD)
                    / truth.pushrodRatio().get(c.axle());
            for (Map.Entry<AdjusterKind, HiddenTruth.Effect> effect : truth.perUnit().entrySet()) {
                mm += now.turned(new AdjusterId(effect.getKey(), c)) * effect.getValue().legMm();
            }
            return mm;
        });
        return new Turns(perch, leg);
    }

    private PerCorner<Double> withTyres(PerCorner<Double> padsMm) {
        return padsMm.zip(truth.tyreRadiusMm(), Double::sum);
    }

    private CarModel model(PerCorner<Double> padsMm) {
        PerCorner<PlanPoint> contacts = CentreOfGravity.contactPoints(car.car().wheelbaseMm(), car.car().trackMm(Axle.FRONT),
                car.car().trackMm(Axle.REAR));
        PerCorner<CornerModel> corners = PerCorner.of(c -> corner(c, contacts.get(c), padsMm.get(c)));
        PerCorner<Double> loads = truth.asFound().loadsKg();
        double total = 0;
        double unsprung = 0;
        for (Corner corner : Corner.values()) {
            total += loads.get(corner);
            unsprung += car.corners().get(corner).unsprungMassKg();
        }
        double height = car.cgHeightMm() * (total - WHEEL_CENTRE_SHARE * unsprung) / (total - unsprung);
        PlanPoint cg = CentreOfGravity.inPlan(loads, contacts);
        Map<String, SpacePoint> points = new LinkedHashMap<>();
        for (AssumedCar.PlacedPoint point : car.heightPoints()) {
            double z = truth.asFound().heightsMm().getOrDefault(point.name(), 0.0);
            points.put(point.name(), new SpacePoint(point.xMm(), point.yMm(), z));
        }
        return CarModel.plain(total - unsprung, new SpacePoint(cg.xMm(), cg.yMm(), height), corners, points)
                .withTorsionalStiffnessNmPerDeg(OptionalDouble.of(truth.chassisNmPerDeg()));
    }

    private CornerModel corner(Corner corner, PlanPoint contact, double padMm) {
        AssumedCorner believed = car.corners().get(corner);
        double rate = believed.springRateNPerMm() * truth.springFactor().get(corner);
        double ratio = truth.motionRatio().get(corner.axle());
        double carried = KilogramForce.toNewtons(truth.asFound().loadsKg().get(corner) - believed.unsprungMassKg());
        return new CornerModel(contact.xMm(), contact.yMm(), believed.unsprungMassKg(), rate, ratio, 0, carried / (rate * ratio),
                threadMmPerTurn(corner, AdjusterKind.PERCH), 1, OptionalDouble.of(believed.tyreRateNPerMm()), padMm);
    }

    private double threadMmPerTurn(Corner corner, AdjusterKind kind) {
        for (Adjuster adjuster : car.corners().get(corner).springLeg()) {
            if (adjuster.id().kind() == kind && adjuster.setting() instanceof Setting.Thread thread) {
                return thread.mmPerTurn();
            }
        }
        return 0;
    }
}
