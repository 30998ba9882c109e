package quoin.garage.draft;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
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
import quoin.car.Masses;
import quoin.car.PerAxle;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Setting;
import quoin.car.SuspensionChoice;
import quoin.car.Target;
import quoin.car.Targets;
import quoin.quantities.AngleStyle;
import quoin.quantities.DecimalMark;
import quoin.quantities.UnitPreferences;
import quoin.suspension.spi.SuspensionTypes;

/** A car put into the form comes out the same to the last bit, in every set of units. */
class CarRoundTripTest {

    private static final SuspensionTypes NONE = new SuspensionTypes(List.of());

    static Stream<FigureText> units() {
        UnitPreferences metric = UnitPreferences.metric();
        return Stream.of(new FigureText(metric, true), new FigureText(metric.withDecimalMark(DecimalMark.COMMA), false),
                new FigureText(UnitPreferences.inchPound(), true),
                new FigureText(metric.withAngleStyle(AngleStyle.DEGREES_MINUTES), true));
    }

    @ParameterizedTest
    @MethodSource("units")
    void carComesOutAsItWentIn(FigureText figures) {
        for (int seed = 0; seed < 60; seed++) {
            Car car = new RandomCar(seed).car();
            DraftResult result = CarDraft.from(car, figures, NONE).read();
            assertEquals(List.of(), result.problems(), "seed " + seed);
            Car back = result.car().orElseThrow();
            assertEquals(car, back, "seed " + seed);
            assertEquals(List.copyOf(car.targets().readings().keySet()), List.copyOf(back.targets().readings().keySet()), "seed " + seed);
            assertEquals(car, CarDraft.from(back, figures, NONE).read().car().orElseThrow());
        }
    }

    /** Cars with round figures, inch figures and figures of full length, and with much that is unknown. */
    private static final class RandomCar {

        private final Random random;

        RandomCar(int seed) {
            random = new Random(seed);
        }

        double size(double low, double high) {
            double value = low + (high - low) * random.nextDouble();
            return switch (random.nextInt(4)) {
                case 0 -> Math.rint(value * 100) / 100 + 0.01;
                case 1 -> (Math.rint(value * 16 / 25.4) + 1) * 25.4 / 16;
                default -> value;
            };
        }

        OptionalDouble maybe(double low, double high) {
            return random.nextInt(3) == 0 ? OptionalDouble.empty() : OptionalDouble.of(size(low, high));
        }

        Car car() {
            List<HeightPoint> points = new ArrayList<>();
            for (int i = 0; i < 3 + random.nextInt(4); i++) {
                points.add(new HeightPoint("point " + i, random.nextBoolean() ? Optional.of(Corner.values()[random.nextInt(4)])
                        : Optional.empty(), maybe(-3000, 500), maybe(-800, 800)));
            }
            List<Corner> walk = new ArrayList<>(List.of(Corner.values()));
            Collections.shuffle(walk, random);
            return new Car("car-" + random.nextInt(100), "Car " + random.nextInt(), size(1500, 3000),
                    new PerAxle<>(axle(), axle()), PerCorner.of(this::corner), masses(), points, targets(points),
                    new LoadCase(random.nextBoolean() ? "" : "Kim", maybe(0, 40), new PerAxle<>(maybe(1, 2.5), maybe(1, 2.5))),
                    new Instruments(size(0.1, 1), size(0.1, 1), size(0.01, 0.5), size(0.1, 0.5)), walk);
        }

        AxleSetup axle() {
            Optional<AntiRollBar> bar = random.nextBoolean() ? Optional.of(new AntiRollBar(maybe(5, 60))) : Optional.empty();
            Map<String, String> parameters = random.nextBoolean() ? Map.of()
                    : Map.of("upper.inner.x", "12,5 mm", "note", "  as drawn ", "front", "");
            return new AxleSetup(size(1000, 1700), bar, new SuspensionChoice(random.nextBoolean() ? "measured" : "not-installed", parameters));
        }

        CornerSetup corner(Corner corner) {
            List<Adjuster> adjusters = new ArrayList<>();
            List<AdjusterKind> kinds = new ArrayList<>(List.of(AdjusterKind.values()));
            Collections.shuffle(kinds, random);
            for (AdjusterKind kind : kinds.subList(0, random.nextInt(kinds.size()))) {
                OptionalDouble min = maybe(5, 20);
                adjusters.add(new Adjuster(new AdjusterId(kind, corner), setting(), maybe(10, 60), min, maybe(60, 90), random.nextBoolean()));
            }
            return new CornerSetup(maybe(20, 120), maybe(0.4, 1.3), maybe(0.4, 1.3), maybe(100, 300), maybe(10, 40),
                    maybe(300, 420), adjusters);
        }

        Setting setting() {
            if (random.nextBoolean()) {
                return new Setting.Thread(size(0.75, 3), random.nextBoolean(), 1 + random.nextInt(12), "notch");
            }
            List<Setting.Shim> stock = new ArrayList<>();
            for (int i = 0; i < random.nextInt(4); i++) {
                stock.add(new Setting.Shim(size(0.2, 3), random.nextInt(9)));
            }
            return new Setting.Shims(stock, size(0, 10));
        }

        Masses masses() {
            List<KnownMass> known = new ArrayList<>();
            for (int i = 0; i < random.nextInt(4); i++) {
                known.add(new KnownMass(i == 0 ? "" : "mass " + i, KnownMass.Role.values()[random.nextInt(4)], size(0, 90),
                        size(-2500, 200), size(-600, 600), size(50, 900)));
            }
            return new Masses(maybe(250, 1400), maybe(200, 600), known);
        }

        Targets targets(List<HeightPoint> points) {
            Map<ReadingId, Target> targets = new LinkedHashMap<>();
            List<ReadingId> readings = new ArrayList<>(points.stream().map(HeightPoint::reading).toList());
            TargetReadings.all().forEach(readings::add);
            readings.add(new ReadingId(ReadingKind.HEIGHT, "a point that is gone"));
            readings.add(ReadingId.of(ReadingKind.PRESSURE, Corner.LF));
            readings.add(ReadingId.of(ReadingKind.CASTER, Corner.LR));
            Collections.shuffle(readings, random);
            for (ReadingId reading : readings.subList(0, random.nextInt(readings.size()))) {
                targets.put(reading, new Target(size(0.1, 3), size(0.05, 1)));
            }
            boolean wanted = targets.containsKey(ReadingId.ofCar(ReadingKind.CROSS));
            return new Targets(targets, wanted ? CrossGoal.values()[random.nextInt(4)] : CrossGoal.EQUAL_FRONTS);
        }
    }
}
