package quoin.finalrecheck;

import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.awt.Font;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.openide.awt.Mnemonics;
import org.openide.util.NbBundle.Messages;
import quoin.car.AdjusterKind;
import quoin.car.Car;
import quoin.car.ReadingId;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.FindingsList;
import quoin.workbench.Looks;
import quoin.workbench.ReadingGrid;
import quoin.workbench.RequirementsList;
import quoin.workbench.RoundSection;
import quoin.workbench.SettleBar;
import quoin.workbench.SignOffBar;
import quoin.workbench.StageView;
import quoin.workbench.StageWindow;
import quoin.workbench.TurnsForm;
import quoin.workbench.WrapText;
import quoin.workflow.Closing;
import quoin.workflow.NextStep;
import quoin.workflow.Recheck;

/** Everything read again beside what was signed; the last trim; the closing list; the end of the day. */
@Messages({
    "view.read=Read everything again", "view.compared=Beside what was signed", "view.closing=Before the car goes",
    "view.conditions=Conditions while reading", "view.findings=Checks", "view.end=End of the day",
    "view.noRedo=No stage has to be done again.",
    "# {0} - stage", "view.redo=Has to be done again: {0}",
    "# {0} - stage", "view.goRedo=Go to {0} (&V)",
    "view.close=Close the day (&I)", "view.closeWithReason=Close out of order... (&U)",
    "view.closed=The day is closed.",
    "view.reason=Why is the day closed out of order? The set-up sheet prints it.", "view.reasonTitle=Close the day out of order"})
final class FinalRecheckView implements StageView {

    private static final String STAGE = FinalRecheckWindow.STAGE;

    private final CurrentDay current;
    private final ReadingGrid grid;
    private final SettleBar settle;
    private final RoundSection round;
    private final RequirementsList conditions;
    private final RequirementsList closing;
    private final ComparisonTable comparisons = new ComparisonTable();
    private final FindingsList findings = new FindingsList();
    private final WrapText redo = new WrapText("", Looks.HEADING, Font.BOLD);
    private final WrapText reasons = new WrapText("");
    private final JButton goRedo = new JButton();
    private final JButton close = Looks.button(Bundle.view_close(), this::close);
    private final JButton closeWithReason = Looks.button(Bundle.view_closeWithReason(), this::closeWithReason);
    private final JPanel component;
    private Optional<String> stageToRedo = Optional.empty();

    FinalRecheckView(CurrentDay current) {
        this.current = current;
        grid = new ReadingGrid(current, STAGE, car -> readings(current, car));
        settle = new SettleBar(current, STAGE);
        round = new RoundSection(current, STAGE, car -> TurnsForm.adjusters(car, EnumSet.allOf(AdjusterKind.class)));
        conditions = new RequirementsList(current, STAGE);
        closing = new RequirementsList(current, STAGE);
        goRedo.addActionListener(e -> stageToRedo.ifPresent(StageWindow::bringToFront));
        settle.onSettled(grid::toFirst);
        round.onTurned(settle::toButton);
        conditions.onAllHold(grid::toFirst);
        JPanel left = Looks.column(Looks.section(Bundle.view_read(), Looks.column(grid, settle)), round.planPart(), round.turnPart());
        JPanel right = Looks.column(Looks.section(Bundle.view_end(), end()), Looks.section(Bundle.view_compared(), comparisons),
                Looks.section(Bundle.view_closing(), closing), Looks.section(Bundle.view_findings(), findings),
                Looks.section(Bundle.view_conditions(), conditions));
        component = Looks.twoColumns(left, right, 0.52);
    }

    private JPanel end() {
        JPanel buttons = new JPanel(new FlowLayout(FlowLayout.LEADING, Looks.em(0.5), Looks.em(0.3)));
        buttons.add(goRedo);
        buttons.add(close);
        buttons.add(closeWithReason);
        JPanel end = new JPanel(new BorderLayout(0, Looks.em(0.3)));
        end.add(Looks.column(redo, reasons), BorderLayout.CENTER);
        end.add(buttons, BorderLayout.SOUTH);
        return end;
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
        current.recheck().ifPresent(r -> showRecheck(r, day));
        boolean closed = day.day().closed().isPresent();
        close.setEnabled(!closed);
        closeWithReason.setEnabled(!closed);
        if (closed) {
            redo.setText(Bundle.view_closed());
        }
    }

    private void showRecheck(Recheck recheck, DaySnapshot day) {
        comparisons.show(recheck.comparisons(), day.format());
        stageToRedo = recheck.redo();
        String title = stageToRedo.map(day::stageTitle).orElse("");
        redo.setText(stageToRedo.isPresent() ? Bundle.view_redo(title) : Bundle.view_noRedo());
        reasons.setText(String.join("\n", recheck.reasons()));
        goRedo.setVisible(stageToRedo.isPresent());
        Mnemonics.setLocalizedText(goRedo, Bundle.view_goRedo(title));
    }

    private void close() {
        current.closeDay(Optional.empty());
    }

    private void closeWithReason() {
        SignOffBar.askReason(Bundle.view_reason(), Bundle.view_reasonTitle()).ifPresent(r -> current.closeDay(Optional.of(r)));
    }

    @Override
    public void showPlans(DaySnapshot day) {
        round.show(day);
    }

    @Override
    public void toEntry() {
        boolean readingsLeft = current.snapshot().map(s -> s.status().next().kind() != NextStep.Kind.CONDITION).orElse(true);
        if (readingsLeft) {
            grid.toFirst();
        } else {
            closing.toFirst();
        }
    }

    @Override
    public void toTurns() {
        round.toTurns();
    }
}
