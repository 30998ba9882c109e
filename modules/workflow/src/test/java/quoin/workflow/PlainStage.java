package quoin.workflow;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import quoin.car.AdjusterKind;
import quoin.car.Car;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Day;
import quoin.workflow.spi.Finding;
import quoin.workflow.spi.Requirement;
import quoin.workflow.spi.Requirements;
import quoin.workflow.spi.Stage;

/** A stage for the tests: what it reads, asks for and turns is given; it judges what has a target. */
record PlainStage(String id, int position, String title, Function<Car, List<ReadingId>> reads, List<ReadingId> alsoJudged,
        Function<Car, List<Requirement>> asks, Set<AdjusterKind> adjusters) implements Stage {

    /** The five stages of a set-up day. */
    static List<Stage> day() {
        Set<AdjusterKind> legs = Set.of(AdjusterKind.PERCH, AdjusterKind.PUSHROD);
        Function<Car, List<ReadingId>> heights = Car::heightReadings;
        Function<Car, List<ReadingId>> loads = c -> c.cornerReadings(ReadingKind.LOAD);
        Function<Car, List<ReadingId>> angles = c -> Stream.of(ReadingKind.CASTER, ReadingKind.CAMBER, ReadingKind.TOE)
                .flatMap(k -> c.cornerReadings(k).stream()).filter(id -> c.targets().of(id).isPresent()).toList();
        return List.of(
                new PlainStage("final-recheck", 500, "Final re-check", c -> joined(loads.apply(c), heights.apply(c), angles.apply(c)),
                        List.of(DayBook.CROSS), PlainStage::forWeighing, legs),
                new PlainStage("preparation", 100, "Preparation", c -> c.cornerReadings(ReadingKind.PRESSURE), List.of(),
                        PlainStage::preparation, Set.of()),
                new PlainStage("ride-height", 200, "Ride height", heights, List.of(), Requirements::forReading, legs),
                new PlainStage("corner-weights", 300, "Corner weights", c -> joined(loads.apply(c), heights.apply(c)),
                        List.of(DayBook.CROSS), PlainStage::forWeighing, legs),
                new PlainStage("wheel-angles", 400, "Wheel angles", angles, List.of(), PlainStage::forAngles, Set.of(
                        AdjusterKind.CAMBER_ROD, AdjusterKind.CAMBER_SHIM, AdjusterKind.CASTER_ROD, AdjusterKind.TOE_LINK)));
    }

    @SafeVarargs
    @SuppressWarnings("varargs")
    private static List<ReadingId> joined(List<ReadingId>... lists) {
        return Stream.of(lists).flatMap(List::stream).toList();
    }

    private static List<Requirement> preparation(Car car) {
        List<Requirement> all = new ArrayList<>(List.of(Requirements.sound(), Requirements.fuelKnown(), Requirements.pressuresSet()));
        all.addAll(Requirements.barsOff(car));
        all.addAll(List.of(Requirements.dampersSoft(), Requirements.brakesFree(), Requirements.steeringLocked(),
                Requirements.padsLevelled(), Requirements.scalesZeroed(), Requirements.driverIn()));
        return all;
    }

    private static List<Requirement> forWeighing(Car car) {
        return Stream.concat(Stream.of(Requirements.scalesZeroed()), Requirements.forReading(car).stream()).toList();
    }

    private static List<Requirement> forAngles(Car car) {
        return Stream.concat(Requirements.forReading(car).stream(),
                Stream.of(Requirements.steeringLocked().onlyFor(Set.of(ReadingKind.CAMBER, ReadingKind.TOE)))).toList();
    }

    @Override
    public String purpose() {
        return "For the tests.";
    }

    @Override
    public List<ReadingId> readings(Car car) {
        return reads.apply(car);
    }

    @Override
    public List<ReadingId> judged(Car car) {
        Stream<ReadingId> own = id.equals("corner-weights") ? car.cornerReadings(ReadingKind.LOAD).stream() : readings(car).stream();
        return Stream.concat(alsoJudged.stream(), own.filter(r -> car.targets().of(r).isPresent())).toList();
    }

    @Override
    public List<Requirement> requirements(Car car) {
        return asks.apply(car);
    }

    @Override
    public List<Finding> findings(Day day) {
        return List.of();
    }
}
