package quoin.preparation.pads;

import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.awt.Font;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Optional;
import javax.swing.JPanel;
import org.openide.util.NbBundle.Messages;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.Looks;
import quoin.workbench.WrapText;

/** Asks, where a day goes on after a break, whether a pad has moved meanwhile. */
@Messages({
    "# {0} - when", "moved.ask=The pads were last looked at {0}. Has a pad moved since? Look at the marks round each.",
    "moved.no=No, all on their &marks", "moved.yes=&Yes, or not sure: survey again",
    "moved.onMarks=all on their marks", "moved.notSure=asked after a break"})
public final class MovedQuestion extends JPanel {

    private static final long serialVersionUID = 1L;
    /** A break after which the question is worth asking (common practice, no source). */
    private static final Duration BREAK = Duration.ofHours(3);

    private final transient CurrentDay current;
    private final String stage;
    private final transient Clock clock;
    private final WrapText question = new WrapText("", 1.05, Font.BOLD);

    /** @param stage stage the answer is recorded in */
    public MovedQuestion(CurrentDay current, String stage, Clock clock) {
        super(new BorderLayout(Looks.em(0.5), Looks.em(0.2)));
        this.current = current;
        this.stage = stage;
        this.clock = clock;
        setBorder(Looks.frame(0.5));
        JPanel answers = new JPanel(new FlowLayout(FlowLayout.LEADING, Looks.em(0.5), 0));
        answers.add(Looks.button(Bundle.moved_no(), () -> answer(Conditions.LEVELLED, Bundle.moved_onMarks())));
        answers.add(Looks.button(Bundle.moved_yes(), () -> answer(Conditions.MOVED, Bundle.moved_notSure())));
        add(question, BorderLayout.CENTER);
        add(answers, BorderLayout.SOUTH);
        setVisible(false);
    }

    public void show(DaySnapshot day) {
        Optional<Instant> last = askedSince(day.day(), clock.instant());
        setVisible(last.isPresent());
        last.ifPresent(l -> question.setText(Bundle.moved_ask(DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
                .format(l.atZone(ZoneId.systemDefault())))));
    }

    private void answer(String value, String words) {
        current.record(stage, h -> new Entry.Condition(h, Conditions.PADS, value, words));
    }

    /** When the pads were last looked at, where that is long ago and the day is not closed; empty where there is nothing to ask. */
    static Optional<Instant> askedSince(Day day, Instant now) {
        return day.closed().isPresent() ? Optional.empty()
                : day.conditionEntry(Conditions.PADS).filter(c -> c.value().equals(Conditions.LEVELLED)).map(c -> c.header().time())
                        .filter(t -> Duration.between(t, now).compareTo(BREAK) > 0);
    }
}
