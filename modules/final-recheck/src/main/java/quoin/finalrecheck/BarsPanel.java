package quoin.finalrecheck;

import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.JPanel;
import org.openide.util.NbBundle.Messages;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Setting;
import quoin.logbook.Conditions;
import quoin.quantities.Dimension;
import quoin.quantities.QuantityFormat;
import quoin.workbench.AdjusterWords;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.Looks;
import quoin.workbench.Mark;
import quoin.workbench.ReadingFormat;
import quoin.workbench.TurnsForm;
import quoin.workbench.VerdictLabel;
import quoin.workbench.VerdictWords;
import quoin.workbench.WrapText;
import quoin.workflow.BarPreload;
import quoin.workflow.Closing;

/** Bars joined without preload, proved by a weighing: what it showed in cross weight, kg and mm of link, and the turn of the link. */
@Messages({
    "bars.how=Driver in. Join one bar at a time: set its link so that the bolt slides in with the fingers. Weigh again; a free bar moves nothing.",
    "bars.off=The bars are off. Join a bar in the list below, then weigh.",
    "bars.weigh=Joined. Now weigh again, with the driver in: the difference in cross weight is the preload.",
    "bars.noneFitted=This car has no bars.",
    "# {0} - change", "# {1} - noise", "# {2} - limit", "bars.result=Joining moved the cross weight by {0} ± {1}; up to {2} is free.",
    "# {0} - mass", "# {1} - first corner", "# {2} - second corner", "# {3} - third corner", "# {4} - fourth corner", "bars.kg=That is {0} on each wheel of {1} and {2}, and the opposite on {3} and {4}.",
    "# {0} - axle", "# {1} - length", "# {2} - side",
    "bars.link={0} bar: the link is {1} off, measured at the wheel, and loads the {2} wheel.",
    "# {0} - axle", "# {1} - turns", "bars.turn={0} link: about {1} takes it out.",
    "bars.both=Both bars were joined before the weighing: each figure holds if that bar alone is the cause. Join them one by one to be sure.",
    "bars.rate=The rate of the bar is not known; with it in the car form the link is told in mm.",
    "bars.free=free", "bars.forced=preloaded", "# {0} - probability", "bars.close=within the limit as read, {0} % likely free; weigh twice more to be surer",
    "bars.front=Front", "bars.rear=Rear", "bars.left=left", "bars.right=right",
    "bars.poorMans=A link used on purpose to trim the cross weight belongs in the log: write a note."})
final class BarsPanel extends JPanel {

    private static final long serialVersionUID = 1L;
    /** From here on a probability is no longer worth a remark. */
    private static final double SURE = 0.95;

    private final WrapText steps = new WrapText("");
    private final VerdictLabel verdict = new VerdictLabel();
    private final WrapText result = new WrapText("");
    private final TurnsForm links;

    BarsPanel(CurrentDay current) {
        super(new BorderLayout(0, Looks.em(0.4)));
        links = new TurnsForm(current, FinalRecheckWindow.STAGE, BarsPanel::links);
        add(Looks.column(steps, verdict, result), BorderLayout.NORTH);
        add(links, BorderLayout.CENTER);
    }

    /** The link of every bar: as described, otherwise one at the left wheel of its axle. */
    static List<AdjusterId> links(Car car) {
        return Stream.of(Axle.values()).filter(a -> car.axles().get(a).bar().isPresent()).flatMap(a -> {
            List<AdjusterId> fitted = Stream.of(a.left(), a.right()).map(c -> new AdjusterId(AdjusterKind.BAR_LINK, c))
                    .filter(id -> car.adjuster(id).isPresent()).toList();
            return fitted.isEmpty() ? Stream.of(new AdjusterId(AdjusterKind.BAR_LINK, a.left())) : fitted.stream();
        }).toList();
    }

    /**
     * @param preload what the weighings show; empty = not weighed on both sides yet
     */
    void show(DaySnapshot day, Optional<BarPreload> preload) {
        boolean fitted = !links(day.car()).isEmpty();
        boolean joined = Stream.of(Axle.values()).anyMatch(a -> day.day().condition(Conditions.bar(a)).filter(Conditions.CONNECTED::equals).isPresent());
        links.setVisible(fitted);
        links.show(day, Optional.empty());
        verdict.setVisible(preload.isPresent());
        preload.ifPresent(p -> verdict.show(verdict(p)));
        steps.setText(!fitted ? Bundle.bars_noneFitted() : Bundle.bars_how()
                + (preload.isPresent() ? "" : "\n" + (joined ? Bundle.bars_weigh() : Bundle.bars_off())));
        result.setText(preload.map(p -> words(p, day)).orElse(""));
        result.setVisible(preload.isPresent());
    }

    static VerdictWords verdict(BarPreload preload) {
        if (!preload.isFree()) {
            return new VerdictWords(preload.difference().amount() > 0 ? Mark.ABOVE : Mark.BELOW, Bundle.bars_forced());
        }
        double inside = preload.verdict().probabilityInside();
        return inside >= SURE ? new VerdictWords(Mark.INSIDE, Bundle.bars_free())
                : new VerdictWords(Mark.CLOSE, Bundle.bars_close(String.format(Locale.ROOT, "%.0f", 100 * inside)));
    }

    private static String words(BarPreload preload, DaySnapshot day) {
        ReadingFormat format = day.format();
        ReadingId cross = ReadingId.ofCar(ReadingKind.CROSS);
        List<String> lines = new ArrayList<>();
        lines.add(Bundle.bars_result(format.change(cross, preload.difference().amount()), format.text(cross, preload.difference().band()),
                format.text(cross, Closing.CROSS_LIMIT)));
        lines.add(Bundle.bars_kg(format.change(ReadingId.of(ReadingKind.LOAD, Corner.LF), preload.kgPerWheel()), Corner.RF.words(),
                Corner.LR.words(), Corner.LF.words(), Corner.RR.words()));
        for (Axle axle : preload.joined()) {
            Double mm = preload.linkMm().get(axle);
            if (mm != null) {
                lines.add(link(axle, mm, preload.isFree(), day));
            }
        }
        if (preload.linkMm().isEmpty()) {
            lines.add(Bundle.bars_rate());
        } else if (preload.joined().size() > 1) {
            lines.add(Bundle.bars_both());
        }
        lines.add(Bundle.bars_poorMans());
        return String.join("\n", lines);
    }

    private static String link(Axle axle, double mm, boolean free, DaySnapshot day) {
        String name = axle == Axle.FRONT ? Bundle.bars_front() : Bundle.bars_rear();
        String length = QuantityFormat.of(day.units().preferences().withDecimals(Dimension.LENGTH, 1)).text(Math.abs(mm), Dimension.LENGTH);
        String said = Bundle.bars_link(name, length, mm > 0 ? Bundle.bars_left() : Bundle.bars_right());
        AdjusterWords words = day.adjusterWords();
        return links(day.car()).stream().filter(id -> id.corner().axle() == axle && day.car().adjuster(id).isPresent()).findFirst()
                .filter(id -> !free).map(id -> turns(id, -mm, words, said, name)).orElse(said);
    }

    private static String turns(AdjusterId id, double mm, AdjusterWords words, String said, String name) {
        if (words.adjuster(id).setting() instanceof Setting.Thread thread) {
            double steps = Math.rint(mm / thread.mmPerTurn() * thread.stepsPerTurn());
            return steps == 0 ? said : said + " " + Bundle.bars_turn(name, words.amount(id, steps / thread.stepsPerTurn()));
        }
        return said;
    }
}
