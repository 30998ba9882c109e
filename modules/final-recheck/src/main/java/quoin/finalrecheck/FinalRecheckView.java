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
import quoin.logbook.Conditions;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.Looks;
import quoin.workbench.RequirementsList;
import quoin.workbench.RoundView;
import quoin.workflow.Closing;
import quoin.workflow.NextStep;
import quoin.workflow.Recheck;

/**
 * Everything read again beside what was signed and why it moved; the way back or the last trim; bars joined and weighed, nuts
 * ticked, the closing list; the end of the day.
 */
@Messages({
    "view.read=Read everything again", "view.compared=Beside what was signed", "view.closing=Before the car goes",
    "view.end=End of the day",
    "view.bars=Bars joined without preload", "view.nuts=Nuts and parts loosened today",
    "view.beforeAfter=Angles before and after the re-weigh (&J)"})
final class FinalRecheckView extends RoundView {

    private static final String STAGE = FinalRecheckWindow.STAGE;
    /** Where another module may have put the comparison of the angles; its button is there when the action is. */
    private static final String CATEGORY = "Day";
    private static final String BEFORE_AND_AFTER = "quoin.comparison.AnglesBeforeAndAfter";

    private final CurrentDay current;
    private final RequirementsList closing;
    private final NutsPanel nuts;
    private final BarsPanel bars;
    private final EndPanel end;
    private final ComparisonTable comparisons = new ComparisonTable();
    private final Background background = new Background(this::found);
    private final JComponent component;

    FinalRecheckView(CurrentDay current) {
        super(current, STAGE, EnumSet.complementOf(EnumSet.of(AdjusterKind.BAR_LINK)));
        this.current = current;
        closing = new RequirementsList(current, STAGE);
        nuts = new NutsPanel(current);
        bars = new BarsPanel(current);
        end = new EndPanel(current);
        closing.onTick(r -> r.key().equals(Conditions.LOCKNUTS) && toNuts());
        JComponent right = Looks.column(Looks.section(Bundle.view_end(), end), Looks.section(Bundle.view_compared(), compared()),
                Looks.section(Bundle.view_closing(), closing), Looks.section(Bundle.view_bars(), bars),
                Looks.section(Bundle.view_nuts(), nuts), findingsPart(), conditionsPart());
        component = Looks.twoColumns(workPart(Bundle.view_read()), right, 0.545);
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

    @Override
    public JComponent component() {
        return component;
    }

    @Override
    public void show(DaySnapshot day) {
        super.show(day);
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
        super.showPlans(day);
        current.recheck().ifPresent(r -> end.show(day, r));
    }

    @Override
    public void toEntry() {
        boolean readingsLeft = current.snapshot().map(s -> s.status().next().kind() != NextStep.Kind.CONDITION).orElse(true);
        if (readingsLeft) {
            super.toEntry();
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
}
