package quoin.workbench;

import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.openide.util.NbBundle.Messages;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.workflow.RepeatSpread;

/** One key records that the car was rolled and bounced; beside it stands whether that still holds. */
@Messages({
    "settle.button=Sett&led: rolled and bounced",
    "settle.yes=settled since the last turn",
    "settle.turned=turned since it was settled",
    "settle.no=not settled yet",
    "settle.steps=Off and on the slip plates, or roll it 2 m back and forth; bounce the front three times, the rear three times, with the same push; driver in the seat and still. Never trust the first reading after a jack.",
    "settle.twice=Read, bounce again, read a second time: the difference is your uncertainty.",
    "# {0} - what repeats", "settle.repeats=Repeats today: {0}; the verdicts count with it.",
    "# {0} - kind", "# {1} - difference", "# {2} - how many", "settle.spread={0} within {1} ({2} read again)"})
public final class SettleBar extends JPanel {

    private final JLabel state = new JLabel();
    private final WrapText steps = new WrapText("");
    private final JButton button = Looks.button(Bundle.settle_button(), this::settle);
    private final CurrentDay current;
    private final String stageId;
    private Runnable settled = () -> { };

    public SettleBar(CurrentDay current, String stageId) {
        super(new BorderLayout(0, Looks.em(0.3)));
        this.current = current;
        this.stageId = stageId;
        setOpaque(false);
        button.setName("settle." + stageId);
        JPanel line = new JPanel(new FlowLayout(FlowLayout.LEADING, Looks.em(0.5), 0));
        line.setOpaque(false);
        line.add(button);
        line.add(state);
        add(line, BorderLayout.NORTH);
        add(steps, BorderLayout.CENTER);
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
        steps.setText(words.mark() == Mark.INSIDE ? repeats(day) : Bundle.settle_steps());
    }

    /** How weights and heights repeated today; where nothing was read twice, why it should be. */
    private static String repeats(DaySnapshot day) {
        List<String> parts = new ArrayList<>();
        for (ReadingKind kind : List.of(ReadingKind.HEIGHT, ReadingKind.LOAD)) {
            RepeatSpread spread = RepeatSpread.of(day.day(), kind);
            if (spread.freedom() > 0) {
                parts.add(Bundle.settle_spread(kind.words(), day.format().text(new ReadingId(kind, Corner.LF.name()), spread.greatest()),
                        Integer.toString(spread.freedom())));
            }
        }
        return parts.isEmpty() ? Bundle.settle_twice() : Bundle.settle_repeats(String.join(", ", parts));
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
