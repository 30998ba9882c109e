package quoin.wheelangles.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.openide.util.NbBundle.Messages;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;

/** Camber with a gauge on a straight edge against the rim, also on a floor that slopes. */
@Messages({
    "gauge.title=Camber by gauge",
    "gauge.signs=Gauge on a straight edge against the rim lips, upright through the hub. Plus is top outboard; most race cars are minus.",
    "gauge.caution=Car settled, wheels straight. To turn a wheel half round roll the car; keep feet clear and chock it again.",
    "gauge.table=What the gauge shows"})
final class GaugeCamber implements Method {

    @Override
    public String id() {
        return "gauge-camber";
    }

    @Override
    public String title() {
        return Bundle.gauge_title();
    }

    @Override
    public String signs() {
        return Bundle.gauge_signs();
    }

    @Override
    public String caution() {
        return Bundle.gauge_caution();
    }

    @Override
    public List<Choice> choices() {
        return List.of(Floor.choice());
    }

    @Override
    public List<Table> tables(Setting setting, Map<String, String> chosen) {
        List<Table.Line> lines = new ArrayList<>();
        for (Corner corner : setting.car().walkingOrder()) {
            lines.add(Table.Line.of(corner.words(), Field.read(corner + ".camber", Bundle.common_camber(corner.words()), Instrument.GAUGE),
                    Field.read(corner + ".camber2", Common.name(Bundle.common_camber(corner.words()), Bundle.common_half()), Instrument.GAUGE)));
        }
        List<Table> tables = new ArrayList<>(List.of(new Table(Bundle.gauge_table(), List.of(Bundle.common_now(), Bundle.common_later()), lines)));
        tables.addAll(Floor.tables(setting, chosen.get(Floor.key())));
        return tables;
    }

    @Override
    public Outcome evaluate(Figures figures) {
        return CamberOutcome.of(figures, List.of(".camber", ".camber2"), (to, corner) -> wheel(to, figures, corner));
    }

    private static void wheel(Outcome.Builder to, Figures figures, Corner corner) {
        double now = figures.get(corner + ".camber");
        double mean = Common.mean(now, figures.maybe(corner + ".camber2"));
        figures.maybe(corner + ".camber2").ifPresent(v -> Common.runOut(to, figures.wording(), corner, now, v));
        to.add(Outcome.Result.reading(Bundle.common_camber(corner.words()), ReadingId.of(ReadingKind.CAMBER, corner),
                Floor.camberDeg(figures, corner, corner + ".camber", mean), figures.setting().chordMm(corner)));
    }
}
