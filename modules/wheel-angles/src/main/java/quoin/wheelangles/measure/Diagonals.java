package quoin.wheelangles.measure;

import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import org.openide.util.NbBundle.Messages;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.PerAxle;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.mechanics.StringToe;
import quoin.mechanics.WheelPlan;

/** Wheelbase of both sides and setback of both axles from plumb bobs and a tape. */
@Messages({
    "diagonals.title=Setback by diagonals",
    "diagonals.signs=Plumb bobs from the four hubs to marks on the floor; tape between the marks, six lengths. "
            + "Setback plus = the left wheel is ahead of the right one.",
    "diagonals.caution=Wheels straight, car settled and chocked; never under a car that only a jack holds.",
    "diagonals.table=Tape between the marks",
    "# {0} - first corner", "# {1} - second corner", "diagonals.frontTrack=Front track, {0} to {1}",
    "# {0} - first corner", "# {1} - second corner", "diagonals.rearTrack=Rear track, {0} to {1}",
    "# {0} - first corner", "# {1} - second corner", "diagonals.left=Left wheelbase, {0} to {1}",
    "# {0} - first corner", "# {1} - second corner", "diagonals.right=Right wheelbase, {0} to {1}",
    "# {0} - first corner", "# {1} - second corner", "diagonals.one=Diagonal {0} to {1}",
    "# {0} - first corner", "# {1} - second corner", "diagonals.other=Diagonal {0} to {1}",
    "diagonals.wheelbaseLeft=Wheelbase left", "diagonals.wheelbaseRight=Wheelbase right",
    "diagonals.frontSetback=Front setback", "diagonals.rearSetback=Rear setback",
    "diagonals.frontAngle=Front, as an angle", "diagonals.rearAngle=Rear, as an angle",
    "# {0} - length", "diagonals.misfit=the six lengths do not fit one another by up to {0}: one of them was misread; measure again",
    "# {0} - length", "diagonals.leftLonger=the left wheelbase is {0} longer", "# {0} - length", "diagonals.rightLonger=the right wheelbase is {0} longer",
    "diagonals.bent=beyond 3 mm it skews cords and may mean a bent link: look at both sides (3 mm is common practice)"})
final class Diagonals implements Method {

    private static final double MISFIT_MM = 2;
    private static final double LONGER_MM = 0.5;
    private static final double BENT_MM = 3;
    private static final Map<String, String> KEYS = Map.of("trackFront_mm", "track.FRONT", "trackRear_mm", "track.REAR", "wheelbaseLeft_mm",
            "wheelbase.left", "wheelbaseRight_mm", "wheelbase.right", "diagonalLfRr_mm", "diagonal.LF-RR", "diagonalRfLr_mm", "diagonal.RF-LR");

    @Override
    public String id() {
        return "diagonals";
    }

    @Override
    public String title() {
        return Bundle.diagonals_title();
    }

    @Override
    public String signs() {
        return Bundle.diagonals_signs();
    }

    @Override
    public String caution() {
        return Bundle.diagonals_caution();
    }

    @Override
    public List<Choice> choices() {
        return List.of();
    }

    @Override
    public List<Table> tables(Setting setting, Map<String, String> chosen) {
        return List.of(Table.of(Bundle.diagonals_table(), List.of(),
                line("track.FRONT", Bundle::diagonals_frontTrack, Corner.LF, Corner.RF),
                line("track.REAR", Bundle::diagonals_rearTrack, Corner.LR, Corner.RR),
                line("wheelbase.left", Bundle::diagonals_left, Corner.LF, Corner.LR),
                line("wheelbase.right", Bundle::diagonals_right, Corner.RF, Corner.RR),
                line("diagonal.LF-RR", Bundle::diagonals_one, Corner.LF, Corner.RR),
                line("diagonal.RF-LR", Bundle::diagonals_other, Corner.RF, Corner.LR)));
    }

    private static Table.Line line(String key, BiFunction<Object, Object, String> between, Corner one, Corner other) {
        String name = between.apply(one.words(), other.words());
        return Table.Line.of(name, Field.read(key, name, Instrument.TAPE));
    }

    @Override
    public Outcome evaluate(Figures figures) {
        PerAxle<Double> track = new PerAxle<>(figures.get("track.FRONT"), figures.get("track.REAR"));
        StringToe.Sides wheelbase = new StringToe.Sides(figures.get("wheelbase.left"), figures.get("wheelbase.right"));
        double one = figures.get("diagonal.LF-RR");
        double other = figures.get("diagonal.RF-LR");
        WheelPlan.Standing standing = Figures.compute(() -> new WheelPlan(track, wheelbase, one, other).standing(),
                field -> KEYS.getOrDefault(field, "track.FRONT"));
        Outcome.Builder to = new Outcome.Builder();
        double left = standing.wheelbaseMm().left();
        double right = standing.wheelbaseMm().right();
        to.add(Outcome.Result.reading(Bundle.diagonals_wheelbaseLeft(), new ReadingId(ReadingKind.WHEELBASE, ReadingId.LEFT), left, 0));
        to.add(Outcome.Result.reading(Bundle.diagonals_wheelbaseRight(), new ReadingId(ReadingKind.WHEELBASE, ReadingId.RIGHT), right, 0));
        to.add(Outcome.Result.reading(Bundle.diagonals_frontSetback(), setback(Axle.FRONT), standing.setbackMm().front(), 0));
        to.add(Outcome.Result.angle(Bundle.diagonals_frontAngle(), standing.setbackDeg(Axle.FRONT), standing.trackMm().front()));
        to.add(Outcome.Result.reading(Bundle.diagonals_rearSetback(), setback(Axle.REAR), standing.setbackMm().rear(), 0));
        to.add(Outcome.Result.angle(Bundle.diagonals_rearAngle(), standing.setbackDeg(Axle.REAR), standing.trackMm().rear()));
        if (standing.misfitMm() > MISFIT_MM) {
            to.warns(Bundle.diagonals_misfit(figures.wording().length(standing.misfitMm())));
        }
        if (Math.abs(left - right) >= LONGER_MM) {
            String by = figures.wording().length(Math.abs(left - right));
            to.says(left > right ? Bundle.diagonals_leftLonger(by) : Bundle.diagonals_rightLonger(by));
        }
        if (Math.abs(left - right) > BENT_MM) {
            to.warns(Bundle.diagonals_bent());
        }
        return to.build();
    }

    private static ReadingId setback(Axle axle) {
        return new ReadingId(ReadingKind.SETBACK, axle.name());
    }
}
