package quoin.wheelangles;

import java.util.ArrayList;
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

/** Camber, caster and toe, wheel by wheel, with total toe and thrust angle. */
@Messages({
    "stage.purpose=Camber, caster and toe are set at the final heights, for they move with them."})
@ServiceProvider(service = Stage.class)
public final class WheelAnglesStage implements Stage {

    @Override
    public String id() {
        return "wheel-angles";
    }

    @Override
    public int position() {
        return 400;
    }

    @Override
    public String title() {
        return Bundle.stage_title();
    }

    @Override
    public String purpose() {
        return Bundle.stage_purpose();
    }

    /** Caster at the front, and at the rear only where it has a target; it is read first, as it needs the lock out. */
    @Override
    public List<ReadingId> readings(Car car) {
        Stream<ReadingId> caster = car.cornerReadings(ReadingKind.CASTER).stream()
                .filter(id -> Corner.valueOf(id.place()).isFront() || car.targets().of(id).isPresent());
        return Stream.of(caster, car.cornerReadings(ReadingKind.CAMBER).stream(), car.cornerReadings(ReadingKind.TOE).stream())
                .flatMap(s -> s).toList();
    }

    @Override
    public List<ReadingId> judged(Car car) {
        Stream<ReadingId> derived = Stream.concat(
                Stream.of(Axle.values()).map(a -> new ReadingId(ReadingKind.TOTAL_TOE, a.name())),
                Stream.of(ReadingId.ofCar(ReadingKind.THRUST_ANGLE)));
        return Stream.concat(readings(car).stream(), derived).filter(id -> car.targets().of(id).isPresent()).toList();
    }

    /** The lock matters for camber and toe; caster is read by steering the wheels. */
    @Override
    public List<Requirement> requirements(Car car) {
        List<Requirement> all = new ArrayList<>(Requirements.forReading(car));
        all.add(Requirements.steeringLocked().onlyFor(Set.of(ReadingKind.CAMBER, ReadingKind.TOE)));
        return List.copyOf(all);
    }

    @Override
    public Set<AdjusterKind> adjusters() {
        return Set.of(AdjusterKind.CAMBER_ROD, AdjusterKind.CAMBER_SHIM, AdjusterKind.CASTER_ROD, AdjusterKind.TOE_LINK);
    }

    @Override
    public List<Finding> findings(Day day) {
        return AngleChecks.of(day);
    }
}
