package quoin.workings;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.openide.util.NbBundle.Messages;
import quoin.adjustment.Verdict;
import quoin.car.AssumedCar;
import quoin.car.AssumedCorner;
import quoin.car.Assumptions;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Target;
import quoin.mechanics.CentreOfGravity;
import quoin.mechanics.PlanPoint;
import quoin.quantities.Dimension;
import quoin.quantities.QuantityFormat;
import quoin.workbench.DaySnapshot;
import quoin.workbench.ReadingFormat;
import quoin.workflow.Derived;
import quoin.workflow.ReadingState;
import quoin.workflow.StageStatus;

/**
 * The arithmetic behind the figures of a stage. Every number is the one that is shown elsewhere; the results come from the same
 * functions, so that a line never says anything else than the window.
 */
@Messages({
    "# {0} - sum", "work.sum=sum of the four loads: {0}",
    "# {0} - pair", "# {1} - sum of the pair", "# {2} - total", "# {3} - percent", "work.share={0} over the total: 100 × ({1}) / {2} = {3}",
    "# {0} - rear", "# {1} - front", "# {2} - result", "work.rake=mean of the rear heights less mean of the front ones: {0} − {1} = {2}",
    "# {0} - left", "# {1} - right", "# {2} - result", "work.totalToe=left and right together: {0} + {1} = {2}",
    "# {0} - right", "# {1} - left", "# {2} - result", "work.thrust=half of right rear less left rear: ({0} − ({1})) / 2 = {2}",
    "# {0} - count", "work.mean=mean of {0} readings in one and the same state of the car", "work.read=as read",
    "# {0} - chord", "# {1} - angle", "# {2} - length", "work.toe=gap over the chord: {0} × sin {1} = {2}",
    "# {0} - value", "# {1} - target", "# {2} - off", "work.off=off target: {0} − {1} = {2}",
    "# {0} - uncertainty", "work.noise=standard uncertainty of the reading, from the step of the instrument and the repeatability: u = {0}",
    "# {0} - guard", "work.guard=guard band: 1.645 u = {0} (each answer right with 95 %: ISO 14253-1, JCGM 106)",
    "# {0} - tolerance", "# {1} - inside limit", "# {2} - outside limit", "# {3} - answer",
    "work.verdict=tolerance {0}: inside up to {1} off, outside from {2} on; so: {3}",
    "# {0} - tolerance", "# {1} - outside limit", "# {2} - answer",
    "work.verdictCoarse=tolerance {0}, less than the guard band: one reading can never prove inside; outside from {1} on; so: {2}",
    "# {0} - percent", "work.chance=chance that the true value is inside: {0} %",
    "work.inside=inside", "work.outside=outside", "work.tooClose=too close to call",
    "# {0} - corner", "work.wheelRate={0} wheel rate",
    "# {0} - spring rate", "# {1} - motion ratio", "# {2} - wheel rate", "work.rate=spring rate × motion ratio²: {0} × {1}² = {2}",
    "# {0} - wheel rate", "# {1} - tyre rate", "# {2} - both", "work.series=with the tyre in series: 1 / (1 / {0} + 1 / {1}) = {2}",
    "work.assumed=some of these are assumed, as the car does not say them",
    "work.cgBehind=CG behind the front axle",
    "# {0} - wheelbase", "# {1} - rear loads", "# {2} - total", "# {3} - result", "work.cg=wheelbase × rear loads / total: {0} × {1} / {2} = {3}"})
final class Workings {

    private final DaySnapshot day;
    private final ReadingFormat format;

    private Workings(DaySnapshot day) {
        this.day = day;
        this.format = day.format();
    }

    /** Every figure of the stage that was read or follows from what was read, in the stage's order. */
    static List<Working> of(DaySnapshot day, String stageId) {
        Optional<StageStatus> stage = day.stage(stageId);
        if (stage.isEmpty()) {
            return List.of();
        }
        Workings workings = new Workings(day);
        List<Working> all = new ArrayList<>();
        stage.get().readings().stream().filter(r -> r.value().isPresent()).map(workings::reading).forEach(all::add);
        boolean legs = stage.get().stage().adjusters().stream().anyMatch(k -> k.isSpringLeg());
        if (legs) {
            workings.centreOfGravity().ifPresent(all::add);
            Stream.of(Corner.values()).map(workings::wheelRate).forEach(all::add);
        }
        return all;
    }

    private Working reading(ReadingState state) {
        ReadingId id = state.reading();
        List<String> lines = new ArrayList<>();
        lines.add(formula(id, state));
        if (id.kind() == ReadingKind.TOE) {
            lines.add(toe(id, state.value().getAsDouble()));
        }
        state.target().ifPresent(target -> judge(state, target, lines));
        return new Working("reading." + id, id.words(), format.text(id, state.value().getAsDouble()), lines);
    }

    private double part(ReadingId id) {
        return day.last(id).orElse(0);
    }

    private String number(ReadingId id) {
        return format.number(id, part(id));
    }

    private String formula(ReadingId id, ReadingState state) {
        List<ReadingId> parts = Derived.parts(day.car(), id);
        double value = state.value().getAsDouble();
        return switch (id.kind()) {
            case TOTAL -> Bundle.work_sum(joined(parts) + " = " + format.text(id, value));
            case CROSS -> share(pair(Corner.RF, Corner.LR), parts.get(1), parts.get(2), id, value);
            case FRONT_SHARE -> share(pair(Corner.LF, Corner.RF), parts.get(0), parts.get(1), id, value);
            case LEFT_SHARE -> share(pair(Corner.LF, Corner.LR), parts.get(0), parts.get(2), id, value);
            case RAKE -> Bundle.work_rake(mean(parts.get(2), parts.get(3)), mean(parts.get(0), parts.get(1)), format.text(id, value));
            case TOTAL_TOE -> Bundle.work_totalToe(number(parts.get(0)), number(parts.get(1)), format.text(id, value));
            case THRUST_ANGLE -> Bundle.work_thrust(degrees(part(parts.get(1))), degrees(part(parts.get(0))), format.text(id, value));
            default -> state.count() > 1 ? Bundle.work_mean(state.count()) : Bundle.work_read();
        };
    }

    private String joined(List<ReadingId> parts) {
        return String.join(" + ", parts.stream().map(this::number).toList());
    }

    private static String pair(Corner one, Corner other) {
        return one.words() + " + " + other.words();
    }

    private String share(String pair, ReadingId one, ReadingId two, ReadingId id, double value) {
        double total = Stream.of(Corner.values()).mapToDouble(c -> part(ReadingId.of(ReadingKind.LOAD, c))).sum();
        return Bundle.work_share(pair, number(one) + " + " + number(two), format.number(one, total), format.text(id, value));
    }

    private String mean(ReadingId left, ReadingId right) {
        return format.number(left, (part(left) + part(right)) / 2);
    }

    private String toe(ReadingId id, double degrees) {
        double chord = Assumptions.complete(day.car()).corners().get(Corner.valueOf(id.place())).rimChordMm();
        return Bundle.work_toe(length(chord), degrees(degrees), length(chord * Math.sin(Math.toRadians(degrees))));
    }

    private String degrees(double value) {
        return QuantityFormat.of(day.units().preferences().withDecimals(Dimension.ANGLE, 3)).text(value, Dimension.ANGLE);
    }

    private String length(double valueMm) {
        return QuantityFormat.of(day.units().preferences().withDecimals(Dimension.LENGTH, 2)).text(valueMm, Dimension.LENGTH);
    }

    private String rate(double newtonsPerMm) {
        return QuantityFormat.of(day.units().preferences()).text(newtonsPerMm, Dimension.STIFFNESS);
    }

    /** Guard band and verdict, the limits rounded as the figures are. */
    private void judge(ReadingState state, Target target, List<String> lines) {
        if (state.verdict().isEmpty()) {
            return;
        }
        ReadingId id = state.reading();
        double value = state.value().getAsDouble();
        double guard = Verdict.GUARD_BAND * state.uncertainty();
        lines.add(Bundle.work_off(format.number(id, value), format.number(id, target.value()), format.change(id, value - target.value())));
        lines.add(Bundle.work_noise(format.text(id, state.uncertainty())));
        lines.add(Bundle.work_guard(format.text(id, guard)));
        String answer = switch (state.verdict().get().answer()) {
            case INSIDE -> Bundle.work_inside();
            case OUTSIDE -> Bundle.work_outside();
            case TOO_CLOSE -> Bundle.work_tooClose();
        };
        String outside = format.text(id, target.tolerance() + guard);
        lines.add(guard < target.tolerance()
                ? Bundle.work_verdict(format.text(id, target.tolerance()), format.text(id, target.tolerance() - guard), outside, answer)
                : Bundle.work_verdictCoarse(format.text(id, target.tolerance()), outside, answer));
        lines.add(Bundle.work_chance(Math.round(100 * state.verdict().get().probabilityInside())));
    }

    private Optional<Working> centreOfGravity() {
        Car car = day.car();
        PerCorner<OptionalDouble> read = PerCorner.of(c -> day.last(ReadingId.of(ReadingKind.LOAD, c)));
        if (Stream.of(Corner.values()).anyMatch(c -> read.get(c).isEmpty())) {
            return Optional.empty();
        }
        PerCorner<Double> loads = read.map(OptionalDouble::getAsDouble);
        PlanPoint cg = CentreOfGravity.inPlan(loads, CentreOfGravity.contactPoints(car.wheelbaseMm(), car.trackMm(Axle.FRONT),
                car.trackMm(Axle.REAR)));
        ReadingId load = ReadingId.of(ReadingKind.LOAD, Corner.LF);
        String behind = QuantityFormat.of(day.units().preferences().withDecimals(Dimension.LENGTH, 0)).text(-cg.xMm(), Dimension.LENGTH);
        double rear = loads.lr() + loads.rr();
        return Optional.of(new Working("", Bundle.work_cgBehind(), behind, List.of(Bundle.work_cg(length(car.wheelbaseMm()),
                format.number(load, rear), format.number(load, rear + loads.lf() + loads.rf()), behind))));
    }

    private Working wheelRate(Corner corner) {
        AssumedCar assumed = Assumptions.complete(day.car());
        AssumedCorner at = assumed.corners().get(corner);
        double series = 1 / (1 / at.wheelRateNPerMm() + 1 / at.tyreRateNPerMm());
        List<String> lines = new ArrayList<>();
        QuantityFormat ratio = QuantityFormat.of(day.units().preferences().withDecimals(Dimension.NUMBER, 3));
        lines.add(Bundle.work_rate(rate(at.springRateNPerMm()), ratio.number(at.motionRatio(), Dimension.NUMBER), rate(at.wheelRateNPerMm())));
        lines.add(Bundle.work_series(rate(at.wheelRateNPerMm()), rate(at.tyreRateNPerMm()), rate(series)));
        if (assumed.assumptions().stream().anyMatch(a -> a.place().equals(corner.name()))) {
            lines.add(Bundle.work_assumed());
        }
        return new Working("", Bundle.work_wheelRate(corner.words()), rate(at.wheelRateNPerMm()), lines);
    }
}
