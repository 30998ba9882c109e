package quoin.wheelangles.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.openide.util.NbBundle.Messages;
import quoin.car.Corner;
import quoin.logbook.Entry;
import quoin.mechanics.BumpSteerFit;
import quoin.quantities.Dimension;

/** Bump steer from two dials on a plate on the hub while the wheel is moved up and down. */
@Messages({
    "dials.title=Bump steer by two dials",
    "dials.signs=Flat plate on the hub, two dials at hub height a known distance apart; both read more when the plate moves outboard. "
            + "Travel plus = bump (wheel up). Toe plus = in.",
    "dials.caution=Spring out, a rod or jack in place of the damper, bar off: stands under the frame, fingers out of the links.",
    "dials.wheel=Wheel", "dials.table=Dials at each travel; one line at 0, the ride height",
    "dials.travel=Travel", "dials.front=Front dial", "dials.rear=Rear dial", "dials.line=line",
    "dials.plate=The plate and the rim", "dials.spacing=Distance between the dials",
    "# {0} - length", "dials.perTen=Per {0} bump", "# {0} - length", "dials.curvature=Change over {0}",
    "dials.most=Farthest read",
    "# {0} - angle", "# {1} - length", "dials.in=bump turns the wheel in by {0} for {1}",
    "# {0} - angle", "# {1} - length", "dials.out=bump turns the wheel out by {0} for {1}",
    "dials.few=two positions give a slope only; take five or more, down and up again",
    "dials.practice=0.1 to 0.3 mm at the rim over 25 mm each way is what most settle for (common practice)"})
final class TwoDials implements Method {

    private static final String WHEEL = "wheel";
    private static final double[] TRAVELS_MM = {30, 20, 10, 0, -10, -20, -30};
    private static final int LINES = 9;
    private static final double TEN_MM = 10;

    @Override
    public String id() {
        return "bump-steer";
    }

    @Override
    public String title() {
        return Bundle.dials_title();
    }

    @Override
    public String signs() {
        return Bundle.dials_signs();
    }

    @Override
    public String caution() {
        return Bundle.dials_caution();
    }

    @Override
    public List<Choice> choices() {
        return List.of(new Choice(WHEEL, Bundle.dials_wheel(), Stream.of(Corner.values()).map(c -> new Choice.Option(c.name(), c.words())).toList()));
    }

    @Override
    public List<Table> tables(Setting setting, Map<String, String> chosen) {
        List<Table.Line> lines = new ArrayList<>();
        for (int i = 0; i < LINES; i++) {
            String line = Integer.toString(i + 1);
            String named = Bundle.dials_line() + " " + line;
            OptionalDouble travel = i < TRAVELS_MM.length ? OptionalDouble.of(TRAVELS_MM[i]) : OptionalDouble.empty();
            lines.add(Table.Line.of(line,
                    new Field("travel." + line, Common.name(Bundle.dials_travel(), named), Dimension.LENGTH, Optional.empty(), travel, false),
                    Field.read("front." + line, Common.name(Bundle.dials_front(), named), Instrument.DIAL),
                    Field.read("rear." + line, Common.name(Bundle.dials_rear(), named), Instrument.DIAL)));
        }
        Corner wheel = Corner.valueOf(chosen.get(WHEEL));
        return List.of(new Table(Bundle.dials_table(), List.of(Bundle.dials_travel(), Bundle.dials_front(), Bundle.dials_rear()), lines),
                Table.of(Bundle.dials_plate(), List.of(),
                        Table.Line.of(Bundle.dials_spacing(), Field.once("spacing", Bundle.dials_spacing(), Dimension.LENGTH)),
                        Table.Line.of(Bundle.common_chord(), Field.known("chord." + wheel, Bundle.common_chord(), Dimension.LENGTH,
                                setting.chordMm(wheel)))));
    }

    @Override
    public Outcome evaluate(Figures figures) {
        Corner wheel = Corner.valueOf(figures.chosen().get(WHEEL));
        BumpSteerFit fit = fit(figures);
        double chord = figures.get("chord." + wheel);
        List<BumpSteerFit.Point> points = fit.points();
        BumpSteerFit.Curve curve = fit.curve();
        Wording say = figures.wording();
        String ten = say.length(TEN_MM);
        Outcome.Builder to = new Outcome.Builder();
        to.add(Outcome.Result.angle(Bundle.dials_perTen(ten), curve.slopeDegPerMm() * TEN_MM, chord));
        if (points.size() > 2) {
            to.add(Outcome.Result.angle(Bundle.dials_curvature(ten), curve.curvatureDegPerMm2() * TEN_MM * TEN_MM, chord));
        } else {
            to.hints(Bundle.dials_few());
        }
        int farthest = 0;
        for (int i = 1; i < points.size(); i++) {
            farthest = Math.abs(points.get(i).toeInDeg()) > Math.abs(points.get(farthest).toeInDeg()) ? i : farthest;
        }
        to.add(Outcome.Result.angle(Bundle.dials_most(),
                points.get(farthest).toeInDeg(), chord));
        String size = say.fineDeg(Math.abs(curve.slopeDegPerMm() * TEN_MM));
        to.says(curve.slopeDegPerMm() >= 0 ? Bundle.dials_in(size, ten) : Bundle.dials_out(size, ten));
        to.hints(Bundle.dials_practice());
        return to.build(new Outcome.Curve(wheel, points.stream().map(p -> new Entry.BumpSteer.Point(p.travelMm(), p.toeInDeg())).toList()));
    }

    private static BumpSteerFit fit(Figures figures) {
        List<BumpSteerFit.Position> positions = new ArrayList<>();
        String first = "";
        for (int i = 1; i <= LINES; i++) {
            if (figures.any("front." + i, "rear." + i)) {
                first = first.isEmpty() ? Integer.toString(i) : first;
                positions.add(new BumpSteerFit.Position(figures.get("travel." + i), figures.get("front." + i), figures.get("rear." + i)));
            }
        }
        if (positions.isEmpty()) {
            throw new Figures.MissingFigure("front.1");
        }
        String line = first;
        double spacing = figures.get("spacing");
        return Figures.compute(() -> new BumpSteerFit(spacing, positions),
                field -> field.startsWith("spacing") ? "spacing" : field.replace("_mm", ".") + line);
    }
}
