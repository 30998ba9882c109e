package quoin.workbench;

import java.awt.FlowLayout;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.openide.util.NbBundle.Messages;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;

/** One key records that the car was rolled and bounced; beside it stands whether that still holds. */
@Messages({
    "settle.button=Sett&led: rolled and bounced",
    "settle.yes=settled since the last turn",
    "settle.turned=turned since it was settled",
    "settle.no=not settled yet"})
public final class SettleBar extends JPanel {

    private final JLabel state = new JLabel();
    private final JButton button = Looks.button(Bundle.settle_button(), this::settle);
    private final CurrentDay current;
    private final String stageId;
    private Runnable settled = () -> { };

    public SettleBar(CurrentDay current, String stageId) {
        super(new FlowLayout(FlowLayout.LEADING, Looks.em(0.5), 0));
        this.current = current;
        this.stageId = stageId;
        setOpaque(false);
        button.setName("settle." + stageId);
        add(button);
        add(state);
    }

    /** What follows when it has been recorded: the caret goes to the figures. */
    public void onSettled(Runnable next) {
        settled = next;
    }

    /** Puts the keyboard on the button, where Enter records it. */
    public void toButton() {
        button.requestFocusInWindow();
        Looks.reveal(button);
    }

    private void settle() {
        if (current.record(stageId, h -> new Entry.Condition(h, Conditions.SETTLED, Conditions.YES, ""))) {
            settled.run();
        }
    }

    public void show(DaySnapshot day) {
        VerdictWords words = words(day.day());
        state.setIcon(words.mark().icon());
        state.setText(words.word());
    }

    /** Whether the car stands settled: recorded, and nothing turned after it. */
    static VerdictWords words(Day day) {
        if (day.condition(Conditions.SETTLED).filter(Conditions.YES::equals).isEmpty()) {
            return new VerdictWords(Mark.WAITING, Bundle.settle_no());
        }
        long since = day.conditionEntry(Conditions.SETTLED).map(Entry::number).orElse(0L);
        boolean turned = day.after(since).stream().anyMatch(Entry.Adjustment.class::isInstance);
        return turned ? new VerdictWords(Mark.AGAIN, Bundle.settle_turned()) : new VerdictWords(Mark.INSIDE, Bundle.settle_yes());
    }
}
