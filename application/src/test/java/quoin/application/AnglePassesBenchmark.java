package quoin.application;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import quoin.adjustment.PlanCancellation;
import quoin.car.AxleSetup;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.PerAxle;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.SuspensionChoice;
import quoin.car.Target;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.rehearsal.Ouzel23;
import quoin.suspension.AngleChange;
import quoin.suspension.AngleResponse;
import quoin.suspension.spi.SuspensionTypes;
import quoin.workflow.AnglePlanner;
import quoin.workflow.CornerMove;
import quoin.workflow.RoundPlan;

/**
 * Passes until camber and toe of a front corner that is 0.6 deg and 3 mm out are truly inside. The true car answers with hard
 * points that are each up to 2 mm from those the plan is made with, in every direction; readings carry the noise given.
 */
final class AnglePassesBenchmark {

    private static final double KNOWN_WITHIN_MM = 2;
    private static final double CAMBER_OFF_DEG = 0.6;
    private static final double TOE_OFF_MM = 3;
    private static final double CHORD_MM = 372;
    private static final int MOST_PASSES = 6;
    private static final ReadingId CAMBER = ReadingId.of(ReadingKind.CAMBER, Corner.LF);
    private static final ReadingId CASTER = ReadingId.of(ReadingKind.CASTER, Corner.LF);
    private static final ReadingId TOE = ReadingId.of(ReadingKind.TOE, Corner.LF);
    /** A made-up small single-seater. */
    private static final Map<String, String> WISHBONES = Map.ofEntries(
            Map.entry("wheelCentre", "0 720 280"), Map.entry("loadedRadius_mm", "278"),
            Map.entry("staticCamber_deg", "-1.5"), Map.entry("staticToe_deg", "0.1"),
            Map.entry("links.upper_front.inboard", "130 330 372"), Map.entry("links.upper_front.outboard", "-14 640 405"),
            Map.entry("links.upper_rear.inboard", "-150 330 364"), Map.entry("links.upper_rear.outboard", "-14 640 405"),
            Map.entry("links.lower_front.inboard", "160 250 168"), Map.entry("links.lower_front.outboard", "8 686 158"),
            Map.entry("links.lower_rear.inboard", "-160 250 164"), Map.entry("links.lower_rear.outboard", "8 686 158"),
            Map.entry("links.tie.inboard", "92 262 204"), Map.entry("links.tie.outboard", "98 674 196"),
            Map.entry("coilOver.body", "10 372 520"), Map.entry("coilOver.uprightOrArm", "6 560 176"),
            Map.entry("coilOverOn", "lowerArm"));

    private final SuspensionTypes installed = SuspensionTypes.installed();
    private final SuspensionTypes planning;
    private final double camberSdDeg;
    private final double toeSdMm;

    private AnglePassesBenchmark(boolean geometryKnown, double camberSdDeg, double toeSdMm) {
        this.planning = geometryKnown ? installed : new SuspensionTypes(List.of());
        this.camberSdDeg = camberSdDeg;
        this.toeSdMm = toeSdMm;
    }

    /** @param args number of cars */
    public static void main(String[] args) {
        int cars = args.length > 0 ? Integer.parseInt(args[0]) : 1000;
        System.out.printf("%-34s %-26s %s%n", "geometry", "one reading's noise", "truly inside after pass 1, 2, 3, at the end; passes");
        for (boolean known : new boolean[] {true, false}) {
            for (double[] noise : new double[][] {{0.01, 0.02}, {0.03, 0.08}, {0.05, 0.15}}) {
                String said = String.format("%.2f deg, %.2f mm", noise[0], noise[1]);
                System.out.printf("%-34s %-26s %s%n", known ? "known within 2 mm" : "nothing known", said,
                        new AnglePassesBenchmark(known, noise[0], noise[1]).run(cars));
            }
        }
    }

    private String run(int cars) {
        int[] inside = new int[MOST_PASSES + 1];
        int end = 0;
        double passes = 0;
        for (int i = 0; i < cars; i++) {
            boolean[] after = walk(new SplittableRandom(7_000 + i));
            for (int pass = 1; pass <= MOST_PASSES; pass++) {
                inside[pass] += after[Math.min(pass, after.length - 1)] ? 1 : 0;
            }
            end += after[after.length - 1] ? 1 : 0;
            passes += after.length - 1;
        }
        return String.format("%.1f %%, %.1f %%, %.1f %%, %.1f %%; %.2f", 100.0 * inside[1] / cars, 100.0 * inside[2] / cars,
                100.0 * inside[3] / cars, 100.0 * end / cars, passes / cars);
    }

    /** Whether the corner is truly inside at the start and after each pass. */
    private boolean[] walk(SplittableRandom random) {
        Car believed = car(WISHBONES);
        AngleResponse truth = installed.response(car(moved(random)), Corner.LF);
        Target camber = believed.targets().of(CAMBER).orElseThrow();
        Target toe = believed.targets().of(TOE).orElseThrow();
        double c = camber.value() + (random.nextBoolean() ? 1 : -1) * CAMBER_OFF_DEG;
        double caster = believed.targets().of(CASTER).orElseThrow().value();
        double t = toe.value() + (random.nextBoolean() ? 1 : -1) * degrees(TOE_OFF_MM);
        List<Entry> entries = new ArrayList<>();
        entries.add(new Entry.CarDescribed(header(entries), believed));
        List<Boolean> inside = new ArrayList<>(List.of(false));
        while (inside.size() <= MOST_PASSES) {
            entries.add(new Entry.Reading(header(entries), Map.of(CAMBER, c + camberSdDeg * gauss(random),
                    CASTER, caster, TOE, t + degrees(toeSdMm) * gauss(random)), Map.of(), Entry.Source.RACER));
            Optional<RoundPlan> plan = AnglePlanner.plan(Day.of(entries), planning, PlanCancellation.NEVER);
            if (plan.isEmpty() || plan.get().moves().isEmpty()) {
                break;
            }
            List<Entry.Turn> turns = new ArrayList<>();
            for (CornerMove move : plan.get().moves()) {
                AngleChange change = truth.of(move.adjuster().kind()).angles().times(move.turns());
                c += change.camberDeg();
                t += change.toeDeg();
                caster += change.casterDeg();
                turns.add(new Entry.Turn(move.adjuster(), move.turns(), OptionalDouble.empty()));
            }
            entries.add(new Entry.Adjustment(header(entries), turns, ""));
            inside.add(camber.contains(c) && toe.contains(t));
        }
        boolean[] after = new boolean[inside.size()];
        for (int i = 0; i < after.length; i++) {
            after[i] = inside.get(i);
        }
        return after;
    }

    private static Header header(List<Entry> entries) {
        return new Header(entries.size() + 1, Instant.EPOCH.plusSeconds(entries.size()), "wheel-angles");
    }

    private static double degrees(double mm) {
        return Math.toDegrees(Math.asin(mm / CHORD_MM));
    }

    private static double gauss(SplittableRandom random) {
        return Math.sqrt(-2 * Math.log(1 - random.nextDouble())) * Math.cos(2 * Math.PI * random.nextDouble());
    }

    /** Links that share a ball joint keep sharing it. */
    private static Map<String, String> moved(SplittableRandom random) {
        Map<String, String> points = new HashMap<>(WISHBONES);
        Map<String, String> already = new HashMap<>();
        points.replaceAll((key, text) -> text.split(" ").length != 3 ? text : already.computeIfAbsent(text, at -> {
            StringBuilder moved = new StringBuilder();
            for (String coordinate : at.split(" ")) {
                double figure = Double.parseDouble(coordinate) + random.nextDouble(-KNOWN_WITHIN_MM, KNOWN_WITHIN_MM);
                moved.append(Math.rint(figure * 1000) / 1000).append(' ');
            }
            return moved.toString().strip();
        }));
        return points;
    }

    private static Car car(Map<String, String> points) {
        Car car = Ouzel23.car();
        AxleSetup own = car.axles().front();
        AxleSetup front = new AxleSetup(own.trackMm(), own.bar(), new SuspensionChoice("double-wishbone", points));
        return new Car(car.id(), car.name(), car.wheelbaseMm(), new PerAxle<>(front, car.axles().rear()), car.corners(), car.masses(),
                car.heightPoints(), car.targets(), car.loadCase(), car.instruments(), car.walkingOrder());
    }
}
