package quoin.logbook;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
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

/** Cars and entries for the tests: one car with everything known, one with nothing known. */
final class Samples {

    static final Instant NOON = Instant.parse("2026-03-07T12:00:00.125Z");
    static final Clock CLOCK = Clock.fixed(NOON, ZoneOffset.UTC);
    static final ReadingId LF_LOAD = ReadingId.of(ReadingKind.LOAD, Corner.LF);
    static final ReadingId SILL = new ReadingId(ReadingKind.HEIGHT, "sill \"A\" / links \u00fcber 3.5");
    static final AdjusterId RR_PERCH = new AdjusterId(AdjusterKind.PERCH, Corner.RR);

    private Samples() {
    }

    static OptionalDouble of(double value) {
        return OptionalDouble.of(value);
    }

    static Car bareCar() {
        AxleSetup axle = new AxleSetup(1400, Optional.empty(), new SuspensionChoice("measured", Map.of()));
        return new Car("bare", "Bare", 2300, PerAxle.both(axle), PerCorner.all(CornerSetup.unknown()),
                new Masses(OptionalDouble.empty(), OptionalDouble.empty(), List.of()), List.of(),
                new Targets(Map.of(), CrossGoal.EQUAL_FRONTS), LoadCase.unknown(), Instruments.usual(), List.of(Corner.values()));
    }

    static Car fullCar() {
        SuspensionChoice installed = new SuspensionChoice("double-wishbone", Map.of("upper.front.x", "120", "rod", "3/16 in"));
        SuspensionChoice notInstalled = new SuspensionChoice("sliding-pillar", Map.of("pillar angle", "6\u00b030'", "b", "", "a", "\n\t\"\\"));
        Map<ReadingId, Target> targets = new LinkedHashMap<>();
        targets.put(SILL, new Target(62, 1));
        targets.put(ReadingId.ofCar(ReadingKind.CROSS), new Target(50, 0.3));
        targets.put(ReadingId.of(ReadingKind.TOE, Corner.RF), new Target(-0.0616, 0.0385));
        return new Car("full-1", "Full \u2013 no. 1", 2380.5,
                new PerAxle<>(new AxleSetup(1440, Optional.of(new AntiRollBar(of(8.25))), installed),
                        new AxleSetup(1420, Optional.of(new AntiRollBar(OptionalDouble.empty())), notInstalled)),
                PerCorner.of(Samples::corner),
                new Masses(of(638), of(430), List.of(new KnownMass("driver", KnownMass.Role.DRIVER, 76, -1100, -300, 400),
                        new KnownMass("tank", KnownMass.Role.FUEL, 20, -1700, 0, 350),
                        new KnownMass("lead", KnownMass.Role.BALLAST, 5, -900, 400, 100),
                        new KnownMass("battery", KnownMass.Role.PART, 6, -300, 190, 300))),
                List.of(new HeightPoint(SILL.place(), Optional.of(Corner.LF), of(-210), of(270)),
                        new HeightPoint("splitter", Optional.empty(), OptionalDouble.empty(), of(-0.1))),
                new Targets(targets, CrossGoal.SAME_FRONT_SHARE),
                new LoadCase("Ann, dressed", of(20), new PerAxle<>(of(1.55), OptionalDouble.empty())),
                new Instruments(0.1, 0.25, 0.05, 0.1), List.of(Corner.LF, Corner.LR, Corner.RR, Corner.RF));
    }

    private static CornerSetup corner(Corner corner) {
        Adjuster perch = new Adjuster(new AdjusterId(AdjusterKind.PERCH, corner), new Setting.Thread(1.5, false, 8, "notch"),
                of(64.1), of(40), of(90), false);
        Adjuster shims = new Adjuster(new AdjusterId(AdjusterKind.CAMBER_SHIM, corner),
                new Setting.Shims(List.of(new Setting.Shim(0.5, 4), new Setting.Shim(1.6, 0)), 3.2), OptionalDouble.empty(),
                OptionalDouble.empty(), OptionalDouble.empty(), true);
        return new CornerSetup(of(61.3), of(0.72), of(0.9), of(190), of(24), of(372), List.of(perch, shims));
    }

    static Header header(long number) {
        return new Header(number, NOON, "corner-weights");
    }

    static Entry.Reading reading(double lfKg) {
        return new Entry.Reading(Header.draft("corner-weights"), Map.of(LF_LOAD, lfKg), Map.of(), Entry.Source.RACER);
    }

    static Entry.Note note(String words) {
        return new Entry.Note(Header.draft(""), words);
    }

    /** At least one entry of every kind, with their optional parts present and absent. */
    static List<Entry> everyKind() {
        Header h = header(7);
        Header noStage = new Header(8, NOON, "");
        Entry reading = new Entry.Reading(h, Map.of(LF_LOAD, 107.9, SILL, 62.5, ReadingId.of(ReadingKind.CAMBER, Corner.RR), -1.0 / 3),
                Map.of(SILL, "2 15/32 in"), Entry.Source.PRACTICE_CAR);
        ReadingId rightToe = ReadingId.of(ReadingKind.TOE, Corner.RF);
        Measurement cords = new Measurement("string-toe", Map.of("RF.front", "140,5", "cords", "independent"),
                "right cord skew 0.075 deg", Map.of(rightToe, 0.031));
        return List.of(reading, new Entry.Reading(h, Map.of(rightToe, 0.125), Map.of(), Entry.Source.RACER, Optional.of(cords)),
                new Entry.BumpSteer(h, Corner.RF, List.of(new Entry.BumpSteer.Point(10, -0.02), new Entry.BumpSteer.Point(-10, 0.015)),
                        new Measurement("bump-steer", Map.of(), "", Map.of())), new Entry.Reading(noStage, Map.of(LF_LOAD, 0.1), Map.of(), Entry.Source.RACER),
                new Entry.Adjustment(h, List.of(new Entry.Turn(RR_PERCH, -0.375, of(60.6)),
                        new Entry.Turn(new AdjusterId(AdjusterKind.CAMBER_SHIM, Corner.LF), 1.6, OptionalDouble.empty())), "half done"),
                new Entry.Condition(h, Conditions.DRIVER, Conditions.IN, "Ann \u2013 belts snug"),
                new Entry.Check(h, "scales", Map.of("factor.LF", 1.0021, "u.LF", 4e-4), new Measurement("known-person",
                        Map.of("LF", "80,2"), "LF shows 0.2 % too much", Map.of())),
                new Entry.TargetSet(h, SILL, new Target(61.5, 0.5)), new Entry.GoalSet(h, CrossGoal.EQUAL_DIAGONALS),
                new Entry.GoalSet(h, CrossGoal.WANTED), new Entry.Note(noStage, "tyre tape:\n1812 \u2028 1810"),
                new Entry.ResponseTakenOver(noStage, "2026-05-12-1", NOON, 96, List.of(
                        new Entry.ResponseTakenOver.Effect("wheel-rate.LF", 31.5, 32.25, 0.4))),
                new Entry.ResponseTakenOver(noStage, "2026-05-12-1", NOON, 0, List.of()),
                new Entry.SignOff(h, Optional.empty()), new Entry.SignOff(h, Optional.of("scrutineer waits")),
                new Entry.Reopened(h, "RR looked odd"), new Entry.Correction(h, 3, Optional.empty(), "undo"),
                new Entry.Correction(h, 3, Optional.of(reading), "43.5, not 34.5"),
                new Entry.DayClosed(h, Optional.empty()), new Entry.DayClosed(h, Optional.of("dark")),
                new Entry.DayClosed(h, Optional.empty(), List.of("Wheel angles: not part of the day", "Ride height: not signed off")),
                new Entry.CarDescribed(h, fullCar()), new Entry.CarDescribed(noStage, bareCar()));
    }
}
