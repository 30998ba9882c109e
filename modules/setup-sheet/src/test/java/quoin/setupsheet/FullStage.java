package quoin.setupsheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import quoin.car.AdjusterKind;
import quoin.car.Car;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Day;
import quoin.workflow.spi.Finding;
import quoin.workflow.spi.Requirement;
import quoin.workflow.spi.Requirements;
import quoin.workflow.spi.Stage;

/** A stage that reads everything a sheet shows. */
final class FullStage implements Stage {

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
        return "Corner weights";
    }

    @Override
    public String purpose() {
        return "Loads on the four wheels.";
    }

    @Override
    public List<ReadingId> readings(Car car) {
        List<ReadingId> all = new ArrayList<>(car.heightReadings());
        for (ReadingKind kind : List.of(ReadingKind.SCALE_ZERO, ReadingKind.LOAD, ReadingKind.CAMBER, ReadingKind.CASTER, ReadingKind.TOE)) {
            all.addAll(car.cornerReadings(kind));
        }
        return all;
    }

    @Override
    public List<ReadingId> judged(Car car) {
        return List.of(ReadingId.ofCar(ReadingKind.CROSS));
    }

    @Override
    public List<Requirement> requirements(Car car) {
        return Requirements.forReading(car);
    }

    @Override
    public Set<AdjusterKind> adjusters() {
        return Set.of(AdjusterKind.values());
    }

    @Override
    public List<Finding> findings(Day day) {
        return List.of();
    }
}
