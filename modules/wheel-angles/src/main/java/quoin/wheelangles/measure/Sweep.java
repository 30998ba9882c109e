package quoin.wheelangles.measure;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.openide.util.NbBundle.Messages;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.mechanics.CasterSweep;
import quoin.mechanics.SlopeCamber;
import quoin.quantities.Dimension;

/** Caster and kingpin inclination from cambers while the wheel is steered on turn plates, each angle as it really was. */
@Messages({
    "sweep.title=Caster by sweep",
    "sweep.signs=Gauge on the rim; steer about 20° to each side and read both the plate under the wheel and the gauge. "
            + "Caster plus = top rearward, kingpin inclination plus = top inboard. Each wheel's own plate counts, not the steering wheel.",
    "sweep.caution=Wheels turn on plates: brakes on so that no wheel rolls, car chocked, hands out of the rim.",
    "sweep.axle=Axle", "sweep.table=Plates from straight ahead, cambers with their sign", "sweep.straight=Camber straight ahead",
    "sweep.leftPlate=Steered left: plate", "sweep.leftCamber=Steered left: camber",
    "sweep.rightPlate=Steered right: plate", "sweep.rightCamber=Steered right: camber",
    "sweep.car=Toe, and the pads under this axle", "sweep.toe=Toe of the wheels", "sweep.across=Pads rise to the left", "sweep.along=Pads rise forward",
    "# {0} - wheel", "sweep.caster={0} caster", "# {0} - wheel", "sweep.kpi={0} KPI",
    "# {0} - wheel", "sweep.book={0} caster, textbook",
    "# {0} - wheel", "# {1} - angle", "# {2} - difference", "sweep.off={0}: the textbook would give {1}, off by {2}",
    "# {0} - factor", "# {1} - gauge step", "# {2} - error", "sweep.noise=A camber error comes out {0} times as large in the kingpin inclination: a gauge "
            + "that reads to {1} leaves it uncertain by {2}; take it as an estimate, or measure the upright itself",
    "# {0} - angle", "sweep.short=the sweep is only {0} to one side: below 15° the errors of the gauge grow fast"})
final class Sweep implements Method {

    private static final String AXLE = "axle";
    private static final double SHORT_DEG = 12;

    @Override
    public String id() {
        return "caster-sweep";
    }

    @Override
    public String title() {
        return Bundle.sweep_title();
    }

    @Override
    public String signs() {
        return Bundle.sweep_signs();
    }

    @Override
    public String caution() {
        return Bundle.sweep_caution();
    }

    @Override
    public List<Choice> choices() {
        return List.of(Choice.of(AXLE, Bundle.sweep_axle(), new Choice.Option(Axle.FRONT.name(), Bundle.common_front()),
                new Choice.Option(Axle.REAR.name(), Bundle.common_rear())));
    }

    @Override
    public List<Table> tables(Setting setting, Map<String, String> chosen) {
        Axle axle = Axle.valueOf(chosen.get(AXLE));
        Corner left = axle.left();
        Corner right = axle.right();
        return List.of(new Table(Bundle.sweep_table(), List.of(left.name(), right.name()), List.of(
                line(axle, ".straight", Bundle.sweep_straight(), Instrument.GAUGE),
                line(axle, ".leftPlate", Bundle.sweep_leftPlate(), Instrument.TURN_PLATE),
                line(axle, ".leftCamber", Bundle.sweep_leftCamber(), Instrument.GAUGE),
                line(axle, ".rightPlate", Bundle.sweep_rightPlate(), Instrument.TURN_PLATE),
                line(axle, ".rightCamber", Bundle.sweep_rightCamber(), Instrument.GAUGE))),
                Table.of(Bundle.sweep_car(), List.of(),
                        Table.Line.of(Bundle.sweep_toe(), toe(setting, left), toe(setting, right)),
                        Table.Line.of(Bundle.sweep_across(), Field.known("across", Bundle.sweep_across(), Dimension.ANGLE, 0)),
                        Table.Line.of(Bundle.sweep_along(), Field.known("along", Bundle.sweep_along(), Dimension.ANGLE, 0))));
    }

    private static Table.Line line(Axle axle, String key, String name, Instrument by) {
        return Table.Line.of(name, Field.read(axle.left() + key, Common.name(axle.left(), name), by),
                Field.read(axle.right() + key, Common.name(axle.right(), name), by));
    }

    private static Field toe(Setting setting, Corner corner) {
        return Field.known(corner + ".toe", Bundle.common_toe(corner.words()), Dimension.ANGLE, setting.toeDeg(corner));
    }

    @Override
    public Outcome evaluate(Figures figures) {
        Axle axle = Axle.valueOf(figures.chosen().get(AXLE));
        Outcome.Builder to = new Outcome.Builder();
        List<Corner> read = Stream.of(axle.left(), axle.right()).filter(c -> figures.any(c + ".straight", c + ".leftPlate", c + ".leftCamber",
                c + ".rightPlate", c + ".rightCamber")).toList();
        if (read.isEmpty()) {
            throw new Figures.MissingFigure(axle.left() + ".straight");
        }
        double kpiFactor = 0;
        for (Corner corner : read) {
            kpiFactor = Math.max(kpiFactor, wheel(to, figures, corner));
        }
        double step = figures.maybe(Instrument.GAUGE.key()).orElse(0.1);
        to.warns(Bundle.sweep_noise(figures.wording().number(kpiFactor, 1), figures.wording().deg(step),
                figures.wording().deg(kpiFactor * step / Math.sqrt(12))));
        return to.build();
    }

    /** Adds what one wheel gives; returns how much it multiplies camber noise in kingpin inclination. */
    private static double wheel(Outcome.Builder to, Figures figures, Corner corner) {
        double left = plate(figures, corner + ".leftPlate");
        double right = plate(figures, corner + ".rightPlate");
        double[] steer = {0, left, -right};
        double[] camber = {camber(figures, corner, ".straight", 0), camber(figures, corner, ".leftCamber", left),
            camber(figures, corner, ".rightCamber", -right)};
        double toe = Checked.within(corner + ".toe", figures.get(corner + ".toe"), Checked.TOE_DEG, figures.wording());
        CasterSweep sweep = Figures.compute(() -> new CasterSweep(corner.isLeft(), toe, steer, camber), field -> corner + ".leftPlate");
        CasterSweep.SteeringAxis axis = sweep.exact();
        CasterSweep.SteeringAxis book = sweep.textbook();
        to.add(Outcome.Result.reading(Bundle.sweep_caster(corner.words()), ReadingId.of(ReadingKind.CASTER, corner), axis.casterDeg(), 0));
        to.add(Outcome.Result.angle(Bundle.sweep_book(corner.words()), book.casterDeg(), 0));
        to.add(Outcome.Result.reading(Bundle.sweep_kpi(corner.words()), ReadingId.of(ReadingKind.KPI, corner), axis.kpiDeg(), 0));
        to.says(Bundle.sweep_off(corner.words(), figures.wording().fineDeg(book.casterDeg()), figures.wording().signedFineDeg(book.casterDeg() - axis.casterDeg())));
        if (Math.min(left, right) < SHORT_DEG) {
            to.warns(Bundle.sweep_short(figures.wording().deg(Math.min(left, right))));
        }
        return sweep.noiseFactors().kpiDeg();
    }

    private static double plate(Figures figures, String key) {
        return Checked.steer(key, figures.get(key));
    }

    /** Camber to the pads; a steered wheel looks across the slope at its own heading. */
    private static double camber(Figures figures, Corner corner, String key, double steerDeg) {
        double outward = corner.isLeft() ? steerDeg : -steerDeg;
        double gauge = Checked.within(corner + key, figures.get(corner + key), Checked.CAMBER_DEG, figures.wording());
        double across = Checked.within("across", figures.get("across"), Checked.SLOPE_DEG, figures.wording());
        double along = Checked.within("along", figures.get("along"), Checked.SLOPE_DEG, figures.wording());
        return Figures.compute(() -> new SlopeCamber(corner.isLeft(), gauge, figures.get(corner + ".toe") - outward, across, along)
                .camberToFloorDeg(), field -> corner + key);
    }
}
