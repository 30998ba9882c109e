package quoin.rideheight;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;
import quoin.car.AdjusterKind;
import quoin.car.Car;
import quoin.car.HeightPoint;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Day;
import quoin.workflow.spi.Finding;
import quoin.workflow.spi.Requirement;
import quoin.workflow.spi.Requirements;
import quoin.workflow.spi.Stage;

/** Ride height and rake at the marked points. */
@Messages({
    "stage.purpose=Heights come first: they set the angle of every link, so weights and wheel angles depend on them."})
@ServiceProvider(service = Stage.class)
public final class RideHeightStage implements Stage {

    @Override
    public String id() {
        return "ride-height";
    }

    @Override
    public int position() {
        return 200;
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
        return car.heightReadings();
    }

    @Override
    public List<ReadingId> judged(Car car) {
        ReadingId rake = ReadingId.ofCar(ReadingKind.RAKE);
        boolean fourCorners = car.heightPoints().stream().map(HeightPoint::corner).flatMap(Optional::stream).distinct().count() == 4;
        return Stream.concat(readings(car).stream(), fourCorners ? Stream.of(rake) : Stream.of())
                .filter(id -> car.targets().of(id).isPresent()).toList();
    }

    @Override
    public List<Requirement> requirements(Car car) {
        return Requirements.forReading(car);
    }

    @Override
    public Set<AdjusterKind> adjusters() {
        return Set.of(AdjusterKind.PERCH, AdjusterKind.PUSHROD);
    }

    @Override
    public List<Finding> findings(Day day) {
        return FrameFlatness.of(day);
    }
}
