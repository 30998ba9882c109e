package quoin.preparation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
import quoin.logbook.Figure;
import quoin.quantities.Texts;
import quoin.workflow.spi.Finding;
import quoin.workflow.spi.Requirement;
import quoin.workflow.spi.Requirements;
import quoin.workflow.spi.Stage;

/** Preparation: the car sound, in its load case, freed, on flat pads and zeroed scales. */
@Messages({
    "stage.purpose=Every number of the day belongs to one sound car in one load case on flat pads.",
    "# {0} - corner",
    "# {1} - weight",
    "stage.zero={0} scale shows {1} with nothing on it: look for a shim or spanner on the pad, then zero it again",
    "# {0} - left",
    "# {1} - right",
    "# {2} - pressure",
    "stage.pressures={0} and {1} pressures differ by {2}: a soft tyre on one side passes for a wrong perch; set them equal",
    "# {0} - one corner",
    "# {1} - other corner",
    "# {2} - height",
    "stage.warp=The pads are not one plane: {0} and {1} stand {2} high in all against the other diagonal; shim the low pads"})
@ServiceProvider(service = Stage.class)
public final class PreparationStage implements Stage {

    /** Pressures of an axle further apart than this are not equal, bar (read to 0.02, common practice). */
    private static final double PRESSURE_DIFFERENCE_BAR = 0.03;
    /** Warp of the four pad tops beyond which they are not one plane, mm (common practice). */
    private static final double PAD_WARP_MM = 1.0;
    /** A zero further off than this has drifted, kg. */
    private static final double ZERO_DRIFT_KG = 0.3;

    @Override
    public String id() {
        return "preparation";
    }

    @Override
    public int position() {
        return 100;
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
        return Stream.of(ReadingKind.PRESSURE, ReadingKind.PAD_HEIGHT, ReadingKind.SCALE_ZERO)
                .flatMap(k -> car.cornerReadings(k).stream()).toList();
    }

    @Override
    public List<ReadingId> judged(Car car) {
        return List.of();
    }

    @Override
    public List<Requirement> requirements(Car car) {
        List<Requirement> all = new ArrayList<>(List.of(Requirements.sound(), Requirements.fuelKnown(), Requirements.pressuresSet()));
        all.addAll(Requirements.barsOff(car));
        all.addAll(List.of(Requirements.dampersSoft(), Requirements.brakesFree(), Requirements.steeringLocked(),
                Requirements.padsLevelled(), Requirements.scalesZeroed(), Requirements.driverIn()));
        return List.copyOf(all);
    }

    @Override
    public Set<AdjusterKind> adjusters() {
        return Set.of();
    }

    @Override
    public List<Finding> findings(Day day) {
        List<Finding> findings = new ArrayList<>();
        for (Axle axle : Axle.values()) {
            pressures(day, axle).ifPresent(findings::add);
        }
        padWarp(day).ifPresent(findings::add);
        for (Corner corner : Corner.values()) {
            ReadingId zero = ReadingId.of(ReadingKind.SCALE_ZERO, corner);
            day.latest(zero).filter(f -> Math.abs(f.value()) > ZERO_DRIFT_KG).ifPresent(f -> findings.add(Finding.warning(
                    Bundle.stage_zero(corner.words(), Texts.figure("%+.1f kg", f.value())), zero)));
        }
        return List.copyOf(findings);
    }

    private static Optional<Finding> pressures(Day day, Axle axle) {
        Optional<Double> left = latest(day, ReadingKind.PRESSURE, axle.left());
        Optional<Double> right = latest(day, ReadingKind.PRESSURE, axle.right());
        if (left.isEmpty() || right.isEmpty() || Math.abs(left.get() - right.get()) < PRESSURE_DIFFERENCE_BAR) {
            return Optional.empty();
        }
        return Optional.of(Finding.warning(Bundle.stage_pressures(axle.left().words(), axle.right().words(),
                Texts.figure("%.2f bar", Math.abs(left.get() - right.get())))));
    }

    /** Warp (LF + RR) - (RF + LR) of the pad tops: a tilt is harmless to the cross weight, a warp is not. */
    private static Optional<Finding> padWarp(Day day) {
        double warp = 0;
        for (Corner corner : Corner.values()) {
            Optional<Double> height = latest(day, ReadingKind.PAD_HEIGHT, corner);
            if (height.isEmpty()) {
                return Optional.empty();
            }
            warp += (corner == Corner.LF || corner == Corner.RR ? 1 : -1) * height.get();
        }
        return Math.abs(warp) < PAD_WARP_MM ? Optional.empty() : Optional.of(Finding.warning(Bundle.stage_warp(
                (warp > 0 ? Corner.LF : Corner.RF).words(), (warp > 0 ? Corner.RR : Corner.LR).words(), Texts.figure("%.1f mm", Math.abs(warp)))));
    }

    private static Optional<Double> latest(Day day, ReadingKind kind, Corner corner) {
        return day.latest(ReadingId.of(kind, corner)).map(Figure::value);
    }
}
