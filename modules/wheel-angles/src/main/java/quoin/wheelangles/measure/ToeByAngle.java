package quoin.wheelangles.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.openide.util.NbBundle.Messages;
import quoin.car.Corner;
import quoin.car.PerCorner;

/** Toe read as an angle, wheel by wheel. */
@Messages({
    "byAngle.title=Toe by angle",
    "byAngle.signs=The angle between the wheel and the centre line of the car, as the gauge shows it. Plus is toe-in; 0.1 or 6 min or 0°06'.",
    "byAngle.caution=Wheels on slip plates, steering held straight; keep clear of the car while somebody moves it.",
    "byAngle.table=Toe of each wheel"})
final class ToeByAngle implements Method {

    @Override
    public String id() {
        return "angle-toe";
    }

    @Override
    public String title() {
        return Bundle.byAngle_title();
    }

    @Override
    public String signs() {
        return Bundle.byAngle_signs();
    }

    @Override
    public String caution() {
        return Bundle.byAngle_caution();
    }

    @Override
    public List<Choice> choices() {
        return List.of();
    }

    @Override
    public List<Table> tables(Setting setting, Map<String, String> chosen) {
        List<Table.Line> lines = new ArrayList<>();
        for (Corner corner : setting.car().walkingOrder()) {
            lines.add(Table.Line.of(corner.words(), Field.read(corner + ".toe", Bundle.common_toe(corner.words()), Instrument.TOE_GAUGE),
                    Field.read(corner + ".toe2", Common.name(Bundle.common_toe(corner.words()), Bundle.common_half()), Instrument.TOE_GAUGE)));
        }
        return List.of(new Table(Bundle.byAngle_table(), List.of(Bundle.common_now(), Bundle.common_later()), lines));
    }

    @Override
    public Outcome evaluate(Figures figures) {
        Outcome.Builder to = new Outcome.Builder();
        boolean all = true;
        boolean none = true;
        for (Corner corner : figures.setting().car().walkingOrder()) {
            if (!figures.any(corner + ".toe", corner + ".toe2")) {
                all = false;
                continue;
            }
            none = false;
            to.add(Outcome.Result.reading(Bundle.common_toe(corner.words()), Common.toe(corner), toe(figures, corner), figures.setting().chordMm(corner)));
            OptionalDouble later = figures.maybe(corner + ".toe2");
            later.ifPresent(v -> Common.runOut(to, figures.wording(), corner, figures.get(corner + ".toe"), v));
        }
        if (none) {
            throw new Figures.MissingFigure(figures.setting().car().walkingOrder().get(0) + ".toe");
        }
        if (all) {
            Common.totals(to, figures.wording(), figures.setting(), PerCorner.of(c -> toe(figures, c)));
        }
        return to.build();
    }

    private static double toe(Figures figures, Corner corner) {
        Checked.within(corner + ".toe", figures.get(corner + ".toe"), Checked.TOE_DEG, figures.wording());
        return Common.mean(figures.get(corner + ".toe"), figures.maybe(corner + ".toe2"));
    }
}
