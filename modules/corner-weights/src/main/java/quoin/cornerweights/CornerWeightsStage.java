package quoin.cornerweights;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.openide.util.NbBundle.Messages;
import org.openide.util.lookup.ServiceProvider;
import quoin.car.AdjusterKind;
import quoin.car.Car;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Day;
import quoin.workflow.spi.Finding;
import quoin.workflow.spi.Requirement;
import quoin.workflow.spi.Requirements;
import quoin.workflow.spi.Stage;

/**
 * Corner weights: the four loads and the cross weight that follows. Heights are read with them, as every perch turned for
 * the cross weight moves them too; they still belong to the ride height stage.
 */
@Messages({
    "stage.purpose=Perches move weight between the diagonals: the car then turns alike both ways and no front wheel locks first."})
@ServiceProvider(service = Stage.class)
public final class CornerWeightsStage implements Stage {

    @Override
    public String id() {
        return "corner-weights";
    }

    @Override
    public int position() {
        return 300;
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
        return Stream.concat(car.cornerReadings(ReadingKind.LOAD).stream(), car.heightReadings().stream()).toList();
    }

    /** The cross weight always; loads, total and shares where they have a target. */
    @Override
    public List<ReadingId> judged(Car car) {
        Stream<ReadingId> wanted = Stream.concat(car.cornerReadings(ReadingKind.LOAD).stream(),
                Stream.of(ReadingKind.TOTAL, ReadingKind.FRONT_SHARE, ReadingKind.LEFT_SHARE).map(ReadingId::ofCar))
                .filter(id -> car.targets().of(id).isPresent());
        return Stream.concat(Stream.of(ReadingId.ofCar(ReadingKind.CROSS)), wanted).toList();
    }

    @Override
    public List<Requirement> requirements(Car car) {
        List<Requirement> all = new ArrayList<>();
        all.add(Requirements.scalesZeroed());
        all.addAll(Requirements.forReading(car));
        return List.copyOf(all);
    }

    @Override
    public Set<AdjusterKind> adjusters() {
        return Set.of(AdjusterKind.PERCH, AdjusterKind.PUSHROD);
    }

    @Override
    public List<Finding> findings(Day day) {
        return WeighingChecks.of(day);
    }
}
