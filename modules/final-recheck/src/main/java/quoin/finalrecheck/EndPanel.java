package quoin.finalrecheck;

import java.awt.BorderLayout;
import java.awt.Font;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JPanel;
import org.openide.awt.Mnemonics;
import org.openide.util.NbBundle.Messages;
import quoin.car.AdjusterKind;
import quoin.car.ReadingId;
import quoin.quantities.Dimension;
import quoin.quantities.QuantityFormat;
import quoin.workbench.AdjusterWords;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.Looks;
import quoin.workbench.SignOffBar;
import quoin.workbench.StageWindow;
import quoin.workbench.WrapLayout;
import quoin.workbench.WrapText;
import quoin.workflow.LoopBack;
import quoin.workflow.Recheck;
import quoin.workflow.RoundPlan;
import quoin.workflow.spi.Stage;

/** The end of the day: which stage opens again and the plan that disturbs least, or the day closed. */
@Messages({
    "end.noRedo=No stage has to be done again.",
    "# {0} - stage", "end.redo=Has to be done again: {0}",
    "# {0} - stage", "end.goRedo=Go to {0} (&V)",
    "end.close=Close the day (&I)", "end.closeWithReason=Close out of order... (&U)",
    "end.closed=The day is closed. The verdicts are the last ones that counted.",
    "end.reason=Why is the day closed out of order? The set-up sheet prints it.", "end.reasonTitle=Close the day out of order",
    "end.planning=Working out the way back that disturbs least...",
    "end.noPlan=No plan: go to the stage and read what is asked for there.",
    "# {0} - moves", "end.plan=The way back that disturbs least: {0}.",
    "# {0} - length", "end.legs=No leg has moved more than {0} at the wheel since the angles were signed.",
    "# {0} - length", "end.legsFar=A leg has then moved {0} at the wheel since the angles were signed.",
    "end.anglesAgain=The angles must be read again afterwards.", "end.anglesStay=The angles need not be read again.",
    "# {0} - readings", "end.leaving=It takes with it: {0}."})
final class EndPanel extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient CurrentDay current;
    private final WrapText redo = new WrapText("", Looks.HEADING, Font.BOLD);
    private final WrapText reasons = new WrapText("");
    private final WrapText plan = new WrapText("");
    private final JButton goRedo = Looks.button(Bundle.end_goRedo(""), this::goRedo);
    private final JButton close = Looks.button(Bundle.end_close(), this::close);
    private final JButton closeWithReason = Looks.button(Bundle.end_closeWithReason(), this::closeWithReason);
    private transient Optional<String> stageToRedo = Optional.empty();

    EndPanel(CurrentDay current) {
        super(new BorderLayout(0, Looks.em(0.3)));
        this.current = current;
        JPanel buttons = new JPanel(new WrapLayout());
        buttons.add(goRedo);
        buttons.add(close);
        buttons.add(closeWithReason);
        add(Looks.column(redo, reasons, plan), BorderLayout.CENTER);
        add(buttons, BorderLayout.SOUTH);
    }

    void show(DaySnapshot day, Recheck recheck) {
        boolean closed = day.day().closed().isPresent();
        stageToRedo = recheck.redo().filter(r -> !closed);
        String title = stageToRedo.map(day::stageTitle).orElse("");
        redo.setText(closed ? Bundle.end_closed() : stageToRedo.isPresent() ? Bundle.end_redo(title) : Bundle.end_noRedo());
        reasons.setText(closed ? "" : String.join("\n", recheck.reasons()));
        reasons.setVisible(!reasons.getText().isEmpty());
        goRedo.setVisible(stageToRedo.isPresent());
        Mnemonics.setLocalizedText(goRedo, Bundle.end_goRedo(title));
        close.setEnabled(!closed);
        closeWithReason.setEnabled(!closed);
        plan.setText(stageToRedo.map(s -> planWords(s, day)).orElse(""));
        plan.setVisible(!plan.getText().isEmpty());
    }

    private String planWords(String stage, DaySnapshot day) {
        List<RoundPlan> plans = current.plans(stage);
        String angles = day.stages().stream().filter(s -> s.adjusters().contains(AdjusterKind.TOE_LINK)).map(Stage::id).findFirst().orElse("");
        Optional<LoopBack> back = LoopBack.of(day.day(), plans, angles);
        if (back.isEmpty()) {
            return current.isPlanning(stage) ? Bundle.end_planning() : Bundle.end_noPlan();
        }
        return words(back.get(), day);
    }

    /** What to turn, how far that moves the legs, whether the angles follow, what else leaves its band. */
    static String words(LoopBack back, DaySnapshot day) {
        AdjusterWords adjusters = day.adjusterWords();
        List<String> lines = new ArrayList<>();
        lines.add(Bundle.end_plan(back.plan().moves().stream().map(m -> adjusters.sentence(m.adjuster(), m.turns()))
                .collect(Collectors.joining("; "))));
        if (back.largestLegMm() > 0) {
            String far = QuantityFormat.of(day.units().preferences().withDecimals(Dimension.LENGTH, 1)).text(back.largestLegMm(), Dimension.LENGTH);
            lines.add(back.anglesAgain() ? Bundle.end_legsFar(far) : Bundle.end_legs(far));
        }
        lines.add(back.anglesAgain() ? Bundle.end_anglesAgain() : Bundle.end_anglesStay());
        if (!back.leaving().isEmpty()) {
            lines.add(Bundle.end_leaving(back.leaving().stream().map(ReadingId::words).collect(Collectors.joining(", "))));
        }
        return String.join("\n", lines);
    }

    private void goRedo() {
        stageToRedo.ifPresent(StageWindow::bringToFront);
    }

    private void close() {
        current.closeDay(Optional.empty());
    }

    private void closeWithReason() {
        SignOffBar.askReason(Bundle.end_reason(), Bundle.end_reasonTitle()).ifPresent(r -> current.closeDay(Optional.of(r)));
    }
}
