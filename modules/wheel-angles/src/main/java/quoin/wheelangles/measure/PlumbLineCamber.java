package quoin.wheelangles.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.openide.util.NbBundle.Messages;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.mechanics.PlumbCamber;
import quoin.quantities.Dimension;

/** Camber with a plumb line beside the wheel and a rule. */
@Messages({
    "plumb.title=Camber by plumb line",
    "plumb.signs=Plumb line outboard of the wheel through the hub; rule from the line to the top and to the bottom edge of the rim. "
            + "Plus is top outboard: the gap at the bottom is the larger one.",
    "plumb.caution=Car settled, wheels straight. To turn a wheel half round roll the car; keep feet clear and chock it again.",
    "plumb.table=Gaps from the line to the rim", "plumb.top=Top", "plumb.bottom=Bottom",
    "plumb.topLater=Top, ½ turn later", "plumb.bottomLater=Bottom, ½ turn later", "plumb.rim=The rim"})
final class PlumbLineCamber implements Method {

    @Override
    public String id() {
        return "plumb-camber";
    }

    @Override
    public String title() {
        return Bundle.plumb_title();
    }

    @Override
    public String signs() {
        return Bundle.plumb_signs();
    }

    @Override
    public String caution() {
        return Bundle.plumb_caution();
    }

    @Override
    public List<Choice> choices() {
        return List.of(Floor.choice());
    }

    @Override
    public List<Table> tables(Setting setting, Map<String, String> chosen) {
        List<Table.Line> lines = new ArrayList<>();
        for (Corner corner : setting.car().walkingOrder()) {
            lines.add(Table.Line.of(corner.words(), gap(corner, ".top", Bundle.plumb_top()), gap(corner, ".bottom", Bundle.plumb_bottom()),
                    gap(corner, ".top2", Bundle.plumb_topLater()), gap(corner, ".bottom2", Bundle.plumb_bottomLater())));
        }
        List<Table> tables = new ArrayList<>(List.of(
                new Table(Bundle.plumb_table(), List.of(Bundle.plumb_top(), Bundle.plumb_bottom(), Bundle.plumb_topLater(),
                        Bundle.plumb_bottomLater()), lines),
                Table.of(Bundle.plumb_rim(), List.of(Bundle.common_front(), Bundle.common_rear()), Table.Line.of(Bundle.common_chord(), chord(setting, Axle.FRONT), chord(setting, Axle.REAR)))));
        tables.addAll(Floor.tables(setting, chosen.get(Floor.key())));
        return tables;
    }

    private static Field gap(Corner corner, String edge, String words) {
        return Field.read(corner + edge, Common.name(corner, words), Instrument.RULE);
    }

    private static Field chord(Setting setting, Axle axle) {
        return Field.known("chord." + axle, Common.name(Bundle.common_chord(), Common.axle(axle)), Dimension.LENGTH, setting.chordMm(axle));
    }

    @Override
    public Outcome evaluate(Figures figures) {
        return CamberOutcome.of(figures, List.of(".top", ".bottom", ".top2", ".bottom2"), (to, corner) -> wheel(to, figures, corner));
    }

    private static void wheel(Outcome.Builder to, Figures figures, Corner corner) {
        double toGravity = camber(figures, corner, "");
        if (figures.any(corner + ".top2", corner + ".bottom2")) {
            double later = camber(figures, corner, "2");
            Common.runOut(to, figures.wording(), corner, toGravity, later);
            toGravity = (toGravity + later) / 2;
        }
        to.add(Outcome.Result.reading(Bundle.common_camber(corner.words()), ReadingId.of(ReadingKind.CAMBER, corner),
                Floor.camberDeg(figures, corner, corner + ".top", toGravity), figures.get("chord." + corner.axle())));
    }

    private static double camber(Figures figures, Corner corner, String later) {
        return Figures.compute(() -> new PlumbCamber(figures.get(corner + ".top" + later), figures.get(corner + ".bottom" + later),
                figures.get("chord." + corner.axle())).camberDeg(),
                field -> field.startsWith("chord") ? "chord." + corner.axle() : corner + "." + field.replace("_mm", later));
    }
}
