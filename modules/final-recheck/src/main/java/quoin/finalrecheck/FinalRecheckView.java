package quoin.finalrecheck;

import java.awt.FlowLayout;
import java.util.EnumSet;
import java.util.List;
import javax.swing.Action;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.openide.awt.Actions;
import org.openide.util.NbBundle.Messages;
import quoin.car.AdjusterKind;
import quoin.car.Car;
import quoin.car.ReadingId;
import quoin.logbook.Conditions;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.FindingsList;
import quoin.workbench.Looks;
import quoin.workbench.ReadingGrid;
import quoin.workbench.RequirementsList;
import quoin.workbench.RoundSection;
import quoin.workbench.SettleBar;
import quoin.workbench.StageView;
import quoin.workbench.TurnsForm;
import quoin.workflow.Closing;
import quoin.workflow.NextStep;
import quoin.workflow.Recheck;

/**
 * Everything read again beside what was signed and why it moved; the way back or the last trim; bars joined and weighed, nuts
 * ticked, the closing list; the end of the day.
 */
@Messages({
    "view.read=Read everything again", "view.compared=Beside what was signed", "view.closing=Before the car goes",
    "view.conditions=Conditions while reading", "view.findings=Checks", "view.end=End of the day",
    "view.bars=Bars joined without preload", "view.nuts=Nuts and parts loosened today",
    "view.beforeAfter=Angles before and after the re-weigh (&J)"})
final class FinalRecheckView implements StageView {

    private static final String STAGE = FinalRecheckWindow.STAGE;
    /** Where another module may have put the comparison of the angles; its button is there when the action is. */
    private static final String CATEGORY = "Day";
    private static final String BEFORE_AND_AFTER = "quoin.comparison.AnglesBeforeAndAfter";

    private final CurrentDay current;
    private final ReadingGrid grid;
    private final SettleBar settle;
    private final RoundSection round;
    private final RequirementsList conditions;
    private final RequirementsList closing;
    private final NutsPanel nuts;
    private final BarsPanel bars;
    private final EndPanel end;
    private final ComparisonTable comparisons = new ComparisonTable();
    private final FindingsList findings = new FindingsList();
    private final Background background = new Background(this::found);
    private final JComponent component;

    FinalRecheckView(CurrentDay current) {
        this.current = current;
        grid = new ReadingGrid(current, STAGE, car -> readings(current, car));
        settle = new SettleBar(current, STAGE);
        round = new RoundSection(current, STAGE, car -> TurnsForm.adjusters(car, EnumSet.complementOf(EnumSet.of(AdjusterKind.BAR_LINK))));
        conditions = new RequirementsList(current, STAGE);
        closing = new RequirementsList(current, STAGE);
        nuts = new NutsPanel(current);
        bars = new BarsPanel(current);
        end = new EndPanel(current);
        settle.onSettled(grid::toFirst);
        round.onTurned(settle::toButton);
        conditions.onAllHold(grid::toFirst);
        closing.onTick(r -> r.key().equals(Conditions.LOCKNUTS) && toNuts());
        JComponent left = Looks.column(Looks.section(Bundle.view_read(), Looks.column(grid, settle)), round.planPart(), round.turnPart());
        JComponent right = Looks.column(Looks.section(Bundle.view_end(), end), Looks.section(Bundle.view_compared(), compared()),
                Looks.section(Bundle.view_closing(), closing), Looks.section(Bundle.view_bars(), bars),
                Looks.section(Bundle.view_nuts(), nuts), Looks.section(Bundle.view_findings(), findings),
                Looks.section(Bundle.view_conditions(), conditions));
        component = Looks.twoColumns(left, right, 0.545);
    }

    private JComponent compared() {
        Action beforeAndAfter = Actions.forID(CATEGORY, BEFORE_AND_AFTER);
        if (beforeAndAfter == null) {
            return comparisons;
        }
        JButton button = Looks.button(Bundle.view_beforeAfter(), () -> beforeAndAfter.actionPerformed(null));
        JPanel line = new JPanel(new FlowLayout(FlowLayout.LEADING, 0, 0));
        line.add(button);
        return Looks.column(line, comparisons);
    }

    private static List<ReadingId> readings(CurrentDay current, Car car) {
        return current.stages().stream().filter(s -> s.id().equals(STAGE)).findFirst().map(s -> s.readings(car)).orElse(List.of());
    }

    @Override
    public JComponent component() {
        return component;
    }

    @Override
    public void show(DaySnapshot day) {
        grid.show(day);
        settle.show(day);
        round.show(day);
        day.stage(STAGE).ifPresent(s -> {
            conditions.show(s.requirements());
            findings.show(s.findings(), day.format());
        });
        closing.show(Closing.states(day.day()));
        nuts.show(day);
        current.recheck().ifPresent(r -> showRecheck(r, day));
    }

    private void showRecheck(Recheck recheck, DaySnapshot day) {
        end.show(day, recheck);
        Background.Found found = background.of(day, recheck);
        comparisons.show(recheck.comparisons(), found.why(), day.format());
        bars.show(day, found.preload());
    }

    private void found(Background.Found found) {
        current.snapshot().filter(s -> s.day().revision() == found.revision()).ifPresent(day -> {
            current.recheck().ifPresent(r -> comparisons.show(r.comparisons(), found.why(), day.format()));
            bars.show(day, found.preload());
        });
    }

    @Override
    public void showPlans(DaySnapshot day) {
        round.show(day);
        current.recheck().ifPresent(r -> end.show(day, r));
    }

    @Override
    public void toEntry() {
        boolean readingsLeft = current.snapshot().map(s -> s.status().next().kind() != NextStep.Kind.CONDITION).orElse(true);
        if (readingsLeft) {
            grid.toFirst();
        } else if (!isNext(Conditions.LOCKNUTS) || !toNuts()) {
            closing.toFirst();
        }
    }

    /** Takes the keyboard to the first nut that is open; false where none is. */
    private boolean toNuts() {
        boolean open = nuts.isOpen();
        if (open) {
            nuts.toFirst();
        }
        return open;
    }

    /** True where this is the first closing condition that does not hold. */
    private boolean isNext(String key) {
        return current.snapshot().flatMap(s -> Closing.states(s.day()).stream().filter(c -> !c.holds()).findFirst())
                .filter(c -> c.requirement().key().equals(key)).isPresent();
    }

    @Override
    public void toTurns() {
        round.toTurns();
    }
}
