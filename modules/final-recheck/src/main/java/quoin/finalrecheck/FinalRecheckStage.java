package quoin.finalrecheck;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;
import quoin.car.AdjusterKind;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Day;
import quoin.workflow.spi.Finding;
import quoin.workflow.spi.Requirement;
import quoin.workflow.spi.Requirements;
import quoin.workflow.spi.Stage;

/**
 * The final re-check: weights and heights again after the angles, everything in one and the same state of the car. Its
 * readings belong to the stages before it.
 */
@Messages({
    "stage.purpose=Camber and caster work moves heights and weights: the day ends when everything is inside in one and the same car."})
@ServiceProvider(service = Stage.class)
public final class FinalRecheckStage implements Stage {

    @Override
    public String id() {
        return "final-recheck";
    }

    @Override
    public int position() {
        return 500;
    }

    @Override
    public String title() {
        return Bundle.stage_title();
    }

    @Override
    public String purpose() {
        return Bundle.stage_purpose();
    }

    @Override
    public List<ReadingId> readings(Car car) {
        Stream<ReadingId> caster = car.cornerReadings(ReadingKind.CASTER).stream()
                .filter(id -> Corner.valueOf(id.place()).isFront() || car.targets().of(id).isPresent());
        return Stream.of(car.cornerReadings(ReadingKind.LOAD).stream(), car.heightReadings().stream(), caster,
                car.cornerReadings(ReadingKind.CAMBER).stream(), car.cornerReadings(ReadingKind.TOE).stream()).flatMap(s -> s).toList();
    }

    /** Everything with a target, and the cross weight always. */
    @Override
    public List<ReadingId> judged(Car car) {
        ReadingId cross = ReadingId.ofCar(ReadingKind.CROSS);
        Stream<ReadingId> shares = Stream.of(ReadingKind.TOTAL, ReadingKind.FRONT_SHARE, ReadingKind.LEFT_SHARE, ReadingKind.THRUST_ANGLE)
                .map(ReadingId::ofCar);
        boolean fourCorners = Stream.of(Corner.values()).allMatch(c -> car.heightPoint(c).isPresent());
        Stream<ReadingId> rake = fourCorners ? Stream.of(ReadingId.ofCar(ReadingKind.RAKE)) : Stream.of();
        Stream<ReadingId> toes = Stream.of(Axle.values()).map(a -> new ReadingId(ReadingKind.TOTAL_TOE, a.name()));
        Stream<ReadingId> wanted = Stream.of(readings(car).stream(), shares, rake, toes).flatMap(s -> s)
                .filter(id -> car.targets().of(id).isPresent());
        return Stream.concat(Stream.of(cross), wanted).toList();
    }

    @Override
    public List<Requirement> requirements(Car car) {
        return Stream.concat(Stream.of(Requirements.scalesZeroed()), Requirements.forReading(car).stream()).toList();
    }

    /** What a last trim turns. */
    @Override
    public Set<AdjusterKind> adjusters() {
        return Set.of(AdjusterKind.PERCH, AdjusterKind.PUSHROD);
    }

    /** The stages the readings belong to check them. */
    @Override
    public List<Finding> findings(Day day) {
        return List.of();
    }
}
