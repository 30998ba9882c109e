package quoin.rehearsal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import quoin.car.Adjuster;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.AntiRollBar;
import quoin.car.AxleSetup;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.CornerSetup;
import quoin.car.CrossGoal;
import quoin.car.HeightPoint;
import quoin.car.Instruments;
import quoin.car.KnownMass;
import quoin.car.LoadCase;
import quoin.car.MassZone;
import quoin.car.Masses;
import quoin.car.PerAxle;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Setting;
import quoin.car.SuspensionChoice;
import quoin.car.Target;
import quoin.car.Targets;
import quoin.mechanics.BarModel;
import quoin.mechanics.Shares;
import quoin.mechanics.WheelAngles;
import quoin.quantities.Texts;

/** The demo car: Ouzel 23, an invented front-engined two-seat hill-climb car. */
public final class Ouzel23 {

    /** Where toe is read on its rims, mm. */
    private static final double RIM_CHORD_MM = 372;
    /** 24 threads to the inch, mm. */
    private static final double FINE_THREAD_MM = 25.4 / 24;
    private static final int FLATS = 6;
    private static final double BAR_RATE_N_PER_MM = 24;

    private static final Texts TEXTS = Texts.of(Ouzel23.class);

    /** What the points of the frame and the things in the car are called. */
    private record Names(Function<Corner, String> point, UnaryOperator<String> thing) {
    }

    private Ouzel23() {
    }

    /** The car as its racer believes it to be, with the names the practice car knows. */
    public static Car car() {
        return car(new Names(c -> c + " rail", UnaryOperator.identity()));
    }

    /** The same car with its points and masses named in the language of the user, for a day that he sees. */
    public static Car carInWords() {
        return car(new Names(c -> TEXTS.say("rail", c.words()), thing -> TEXTS.say("thing." + thing.replaceAll("\\W+", "-"))));
    }

    private static Car car(Names names) {
        return new Car("ouzel-23", "Ouzel 23", 2380,
                new PerAxle<>(new AxleSetup(1440, Optional.of(new AntiRollBar(of(BAR_RATE_N_PER_MM))), seen(true)),
                        new AxleSetup(1420, Optional.empty(), seen(false))),
                PerCorner.of(Ouzel23::corner), masses(names), heightPoints(names), targets(names),
                new LoadCase(names.thing().apply("driver, dressed"), of(20), new PerAxle<>(of(1.4), of(1.5))), Instruments.usual(),
                List.of(Corner.LF, Corner.LR, Corner.RR, Corner.RF));
    }

    private static OptionalDouble of(double value) {
        return OptionalDouble.of(value);
    }

    /** What the owner has seen his links do, near the truth and not quite it; caster rods are only in front. */
    private static SuspensionChoice seen(boolean front) {
        Map<String, String> seen = new LinkedHashMap<>(Map.of("camber_deg_per_mm", "-0.03", "camberRod.camber_deg_per_turn", "0.30",
                "camberRod.toe_deg_per_turn", "-0.10", "camberRod.lift_mm_per_turn", "0.3", "toeLink.toe_deg_per_turn", "0.48"));
        if (front) {
            seen.putAll(Map.of("casterRod.caster_deg_per_turn", "0.34", "casterRod.toe_deg_per_turn", "0.05",
                    "casterRod.lift_mm_per_turn", "0.2"));
        }
        return new SuspensionChoice("measured", seen);
    }

    private static CornerSetup corner(Corner corner) {
        List<Adjuster> adjusters = new ArrayList<>();
        if (corner.isFront()) {
            adjusters.add(adjuster(AdjusterKind.PERCH, corner, new Setting.Thread(1.5, false, 8, "notch"), 62, 40, 86));
            adjusters.add(adjuster(AdjusterKind.CAMBER_ROD, corner, new Setting.Thread(FINE_THREAD_MM, false, FLATS, "flat"), 14, 5, 23));
            adjusters.add(adjuster(AdjusterKind.CASTER_ROD, corner, new Setting.Thread(FINE_THREAD_MM, false, FLATS, "flat"), 15, 5, 25));
        } else {
            adjusters.add(adjuster(AdjusterKind.PERCH, corner, new Setting.Thread(2.0, false, 8, "notch"), 58, 36, 82));
            adjusters.add(adjuster(AdjusterKind.PUSHROD, corner, new Setting.Thread(FINE_THREAD_MM, true, FLATS, "flat"), 26, 12, 40));
            adjusters.add(adjuster(AdjusterKind.CAMBER_ROD, corner, new Setting.Thread(FINE_THREAD_MM, false, FLATS, "flat"), 13, 5, 22));
        }
        adjusters.add(adjuster(AdjusterKind.TOE_LINK, corner, new Setting.Thread(FINE_THREAD_MM, false, 2 * FLATS, "half flat"), 16, 6, 26));
        return corner.isFront() ? new CornerSetup(of(61.3), of(0.72), OptionalDouble.empty(), of(190), of(24), of(RIM_CHORD_MM), adjusters)
                : new CornerSetup(of(52.5), of(0.80), of(0.80), of(200), of(28), of(RIM_CHORD_MM), adjusters);
    }

    private static Adjuster adjuster(AdjusterKind kind, Corner corner, Setting setting, double start, double min, double max) {
        return new Adjuster(new AdjusterId(kind, corner), setting, of(start), of(min), of(max), false);
    }

    private static Masses masses(Names names) {
        UnaryOperator<String> name = names.thing();
        return new Masses(of(638), of(430), List.of(
                new KnownMass(name.apply("driver in the seat"), KnownMass.Role.DRIVER, 76, -1420, -330, 330),
                new KnownMass(name.apply("driver's feet"), KnownMass.Role.DRIVER, 10, -560, -300, 250),
                new KnownMass(name.apply("fuel"), KnownMass.Role.FUEL, 20, -2050, 0, 360),
                new KnownMass(name.apply("battery"), KnownMass.Role.PART, 6, -900, -190, 220),
                new KnownMass(name.apply("extinguisher"), KnownMass.Role.PART, 4, -700, -300, 180)), List.of(
                new MassZone(name.apply("left sill"), -1700, -700, 480, 620, 120),
                new MassZone(name.apply("passenger floor"), -1600, -600, 120, 420, 110),
                new MassZone(name.apply("nose tray"), 150, 350, -200, 200, 200),
                new MassZone(name.apply("tail tray"), -2600, -2400, -250, 250, 320)));
    }

    private static List<HeightPoint> heightPoints(Names names) {
        List<HeightPoint> points = new ArrayList<>();
        for (Corner corner : Corner.values()) {
            double side = corner.isLeft() ? 1 : -1;
            points.add(new HeightPoint(names.point().apply(corner), Optional.of(corner), of(corner.isFront() ? -210 : -2110),
                    of(side * (corner.isFront() ? 270 : 320))));
        }
        return points;
    }

    private static Targets targets(Names names) {
        Map<ReadingId, Target> targets = new LinkedHashMap<>();
        for (HeightPoint point : heightPoints(names)) {
            targets.put(point.reading(), new Target(point.corner().orElseThrow().isFront() ? 62 : 70, 1));
        }
        targets.put(ReadingId.ofCar(ReadingKind.CROSS), new Target(50, 0.3));
        double toeTolerance = WheelAngles.toeDeg(0.25, RIM_CHORD_MM);
        for (Corner corner : Corner.values()) {
            targets.put(ReadingId.of(ReadingKind.CAMBER, corner), new Target(corner.isFront() ? -2.2 : -1.6, 0.1));
            if (corner.isFront()) {
                targets.put(ReadingId.of(ReadingKind.CASTER, corner), new Target(5.8, 0.25));
            }
            targets.put(ReadingId.of(ReadingKind.TOE, corner), new Target(toe(corner.isFront() ? -0.4 : 0.8), toeTolerance));
        }
        return new Targets(targets, CrossGoal.EQUAL_DIAGONALS);
    }

    private static double toe(double mm) {
        return WheelAngles.toeDeg(mm, RIM_CHORD_MM);
    }

    /** What the car is really like. */
    public static HiddenTruth truth() {
        PerCorner<Double> none = PerCorner.all(0.0);
        return new HiddenTruth(new PerCorner<>(1.02, 0.98, 1.01, 0.94), new PerAxle<>(0.70, 0.815), new PerAxle<>(0.70, 0.815),
                4200, none.with(Corner.LR, 1.0), new PerCorner<>(0.0, 4.5, 3.0, 0.5), new PerCorner<>(0.3, -0.2, 0.1, -0.3), 2,
                new PerAxle<>(new BarModel(BAR_RATE_N_PER_MM, -7), BarModel.DISCONNECTED),
                new HiddenTruth.Scales(PerCorner.all(1.0).with(Corner.LR, 1.009), new PerCorner<>(0.2, 0.0, -0.2, 0.0)),
                asFound(), angleEffects(),
                new PerAxle<>(new HiddenTruth.Effect(-0.03, 0, -0.004, 0), new HiddenTruth.Effect(-0.025, 0, 0.003, 0)),
                new HiddenTruth.Noise(0.4, 2.5, 0.15, 0.25, 0.04, 0.08));
    }

    private static HiddenTruth.AsFound asFound() {
        PerCorner<Double> loads = new Shares(638, 52, 48.6, 46).loadsKgf();
        Map<String, Double> heights = Map.of("LF rail", 64.5, "RF rail", 63.1, "LR rail", 69.4, "RR rail", 67.8);
        return new HiddenTruth.AsFound(loads, heights, new PerCorner<>(
                new HiddenTruth.Angles(-2.65, 5.35, toe(-1.6)), new HiddenTruth.Angles(-1.95, 6.15, toe(0.5)),
                new HiddenTruth.Angles(-1.25, 0, toe(1.7)), new HiddenTruth.Angles(-1.85, 0, toe(-0.2))));
    }

    /** Per turn: a fine thread over 190 mm turns an upright by 0.32 deg, over a toe arm of 120 mm by 0.5 deg. */
    private static Map<AdjusterKind, HiddenTruth.Effect> angleEffects() {
        double upright = Math.toDegrees(FINE_THREAD_MM / 190);
        double arm = Math.toDegrees(FINE_THREAD_MM / 120);
        return Map.of(AdjusterKind.CAMBER_ROD, new HiddenTruth.Effect(upright, 0.02, -0.12, 0.35),
                AdjusterKind.CASTER_ROD, new HiddenTruth.Effect(0.02, upright, 0.05, 0.25),
                AdjusterKind.TOE_LINK, new HiddenTruth.Effect(0, 0, arm, 0));
    }
}
