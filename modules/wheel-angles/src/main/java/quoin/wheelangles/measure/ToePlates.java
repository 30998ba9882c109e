package quoin.wheelangles.measure;

import java.util.List;
import java.util.Map;
import org.openide.util.NbBundle.Messages;
import quoin.car.Axle;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.mechanics.PlateToe;
import quoin.quantities.Dimension;

/** Total toe of an axle from two plates against the wheels and a tape. */
@Messages({
    "plates.title=Toe by plates",
    "plates.signs=A plate against each wheel of the axle, tape between their front and between their rear ends. "
            + "Plus is toe-in: the rear is the wider one, the reverse of cords.",
    "plates.caution=Car settled on slip plates, steering held straight; keep clear of the car while somebody moves it.",
    "plates.axle=Axle", "plates.share=The total is", "plates.total=recorded as the total; plates cannot tell the wheels apart",
    "plates.equal=shared equally: the steering is straight and both links are alike",
    "plates.tape=Tape between the plates", "plates.front=Front ends", "plates.rear=Rear ends",
    "plates.length=Plate length between the tapes", "plates.plate=The plate",
    "plates.noThrust=plates give neither the thrust angle nor the toe of one wheel",
    "plates.wheels=rear axle: measure each wheel by cords before you rely on an equal share"})
final class ToePlates implements Method {

    private static final String AXLE = "axle";
    private static final String SHARE = "share";
    private static final String EQUAL = "equal";

    @Override
    public String id() {
        return "plate-toe";
    }

    @Override
    public String title() {
        return Bundle.plates_title();
    }

    @Override
    public String signs() {
        return Bundle.plates_signs();
    }

    @Override
    public String caution() {
        return Bundle.plates_caution();
    }

    @Override
    public List<Choice> choices() {
        return List.of(Choice.of(AXLE, Bundle.plates_axle(), new Choice.Option(Axle.FRONT.name(), Bundle.common_front()),
                new Choice.Option(Axle.REAR.name(), Bundle.common_rear())),
                Choice.of(SHARE, Bundle.plates_share(), new Choice.Option("total", Bundle.plates_total()),
                        new Choice.Option(EQUAL, Bundle.plates_equal())));
    }

    @Override
    public List<Table> tables(Setting setting, Map<String, String> chosen) {
        Axle axle = Axle.valueOf(chosen.get(AXLE));
        return List.of(Table.of(Bundle.plates_tape(), List.of(Bundle.plates_front(), Bundle.plates_rear()),
                Table.Line.of(Bundle.common_now(), Field.read("front", Bundle.plates_front(), Instrument.TAPE),
                        Field.read("rear", Bundle.plates_rear(), Instrument.TAPE)),
                Table.Line.of(Bundle.common_later(), Field.read("front2", Common.name(Bundle.plates_front(), Bundle.common_half()), Instrument.TAPE),
                        Field.read("rear2", Common.name(Bundle.plates_rear(), Bundle.common_half()), Instrument.TAPE))),
                Table.of(Bundle.plates_plate(), List.of(),
                        Table.Line.of(Bundle.plates_length(), Field.once("plate", Bundle.plates_length(), Dimension.LENGTH)),
                        Table.Line.of(Bundle.common_chord(), Field.known("chord." + axle, Bundle.common_chord(), Dimension.LENGTH,
                                setting.chordMm(axle)))));
    }

    @Override
    public Outcome evaluate(Figures figures) {
        Axle axle = Axle.valueOf(figures.chosen().get(AXLE));
        double total = total(figures, "");
        Outcome.Builder to = new Outcome.Builder();
        if (figures.any("front2", "rear2")) {
            double later = total(figures, "2");
            Common.runOut(to, figures.wording(), Common.axle(axle), total, later);
            total = (total + later) / 2;
        }
        double chord = figures.get("chord." + axle);
        String name = axle == Axle.FRONT ? Bundle.common_frontTotal() : Bundle.common_rearTotal();
        if (figures.is(SHARE, EQUAL)) {
            to.add(Outcome.Result.angle(name, total, chord));
            to.add(Outcome.Result.reading(Bundle.common_toe(axle.left()), Common.toe(axle.left()), total / 2, chord));
            to.add(Outcome.Result.reading(Bundle.common_toe(axle.right()), Common.toe(axle.right()), total / 2, chord));
            if (axle == Axle.REAR) {
                to.warns(Bundle.plates_wheels());
            }
        } else {
            to.add(Outcome.Result.reading(name, new ReadingId(ReadingKind.TOTAL_TOE, axle.name()), total, chord));
        }
        return to.hints(Bundle.plates_noThrust()).build();
    }

    private static double total(Figures figures, String later) {
        return Figures.compute(() -> new PlateToe(figures.get("front" + later), figures.get("rear" + later), figures.get("plate")).totalToeDeg(),
                field -> field.startsWith("plate") ? "plate" : field.replace("_mm", later));
    }
}
