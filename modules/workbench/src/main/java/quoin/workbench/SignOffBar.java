package quoin.workbench;

import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.awt.Font;
import java.util.List;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.event.AncestorEvent;
import javax.swing.event.AncestorListener;
import org.openide.DialogDescriptor;
import org.openide.DialogDisplayer;
import org.openide.NotifyDescriptor;
import org.openide.util.NbBundle.Messages;
import quoin.logbook.Entry;
import quoin.workflow.StageState;
import quoin.workflow.StageStatus;

/** Signs a stage off: by the rules where they allow it, with a written reason at any time, opened again when wanted. */
@Messages({
    "sign.off=Si&gn off",
    "sign.withReason=Sign off with a re&ason...",
    "sign.again=Open a&gain",
    "sign.reason=Why is this stage signed off out of order? The set-up sheet prints it.",
    "sign.reasonTitle=Sign off with a reason",
    "sign.reopened=opened by hand",
    "sign.ready=Everything this stage asks for is read, fresh and inside.",
    "sign.signed=Signed off, and what was signed still holds.",
    "# {0} - reasons", "sign.because=Not yet: {0}",
    "# {0} - reasons", "sign.check=Check again: {0}",
    "sign.separator=; ",
    "# {0} - first reasons", "# {1} - number", "sign.andMore={0}; and {1} more"})
public final class SignOffBar extends JPanel {

    private static final int MOST_REASONS = 3;
    private static final int REASON_COLUMNS = 40;

    private final CurrentDay current;
    private final String stageId;
    private final WrapText reasons = new WrapText("");
    private final JButton sign = Looks.button(Bundle.sign_off(), this::signOff);
    private final JButton withReason = Looks.button(Bundle.sign_withReason(), this::signWithReason);
    private final JButton again = Looks.button(Bundle.sign_again(), this::openAgain);

    public SignOffBar(CurrentDay current, String stageId) {
        super(new BorderLayout(Looks.em(0.8), 0));
        this.current = current;
        this.stageId = stageId;
        setBorder(BorderFactory.createCompoundBorder(BorderFactory.createMatteBorder(1, 0, 0, 0, Looks.line()), Looks.padding(0.4, 0.9)));
        JPanel buttons = new JPanel(new FlowLayout(FlowLayout.TRAILING, Looks.em(0.5), 0));
        sign.setFont(Looks.font(1.1, Font.BOLD));
        sign.setName("sign." + stageId);
        buttons.add(again);
        buttons.add(withReason);
        buttons.add(sign);
        add(reasons, BorderLayout.CENTER);
        add(buttons, BorderLayout.LINE_END);
    }

    public void show(StageStatus stage) {
        boolean signed = stage.state() == StageState.SIGNED;
        sign.setVisible(!signed);
        withReason.setVisible(!signed);
        sign.setEnabled(stage.state() == StageState.READY);
        withReason.setEnabled(stage.state() != StageState.READY);
        again.setVisible(signed);
        reasons.setText(words(stage));
    }

    /** One line: why the stage stands where it does. */
    static String words(StageStatus stage) {
        List<String> first = stage.reasons().stream().limit(MOST_REASONS).toList();
        String joined = String.join(Bundle.sign_separator(), first);
        int more = stage.reasons().size() - first.size();
        String because = more == 0 ? joined : Bundle.sign_andMore(joined, more);
        return switch (stage.state()) {
            case READY -> Bundle.sign_ready();
            case SIGNED -> because.isEmpty() ? Bundle.sign_signed() : because;
            case CHECK_AGAIN -> Bundle.sign_check(because);
            default -> Bundle.sign_because(because);
        };
    }

    private void signOff() {
        current.signOff(stageId, Optional.empty());
    }

    private void signWithReason() {
        askReason(Bundle.sign_reason(), Bundle.sign_reasonTitle())
                .ifPresent(reason -> current.signOff(stageId, Optional.of(reason)));
    }

    /** Asks for a written reason; empty where none was given. */
    public static Optional<String> askReason(String question, String title) {
        JTextField reason = new JTextField(REASON_COLUMNS);
        reason.getAccessibleContext().setAccessibleName(question);
        JPanel form = Looks.column(Looks.label(question, 1, Font.PLAIN), reason);
        form.setBorder(Looks.padding(1, 1));
        DialogDescriptor ask = new DialogDescriptor(form, title);
        reason.addAncestorListener(new FocusWhenShown());
        boolean given = DialogDisplayer.getDefault().notify(ask) == NotifyDescriptor.OK_OPTION && !reason.getText().isBlank();
        return given ? Optional.of(reason.getText().strip()) : Optional.empty();
    }

    private static final class FocusWhenShown implements AncestorListener {
        @Override
        public void ancestorAdded(AncestorEvent event) {
            event.getComponent().requestFocusInWindow();
        }

        @Override
        public void ancestorRemoved(AncestorEvent event) {
            // the dialog is gone
        }

        @Override
        public void ancestorMoved(AncestorEvent event) {
            // the focus stays
        }
    }

    private void openAgain() {
        current.record(stageId, h -> new Entry.Reopened(h, Bundle.sign_reopened()));
    }
}
