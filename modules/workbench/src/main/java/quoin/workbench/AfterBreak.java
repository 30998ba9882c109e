package quoin.workbench;

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
import quoin.workflow.spi.Stage;

/**
 * Asks once, in whatever stage the day goes on after a break, whether a pad has moved meanwhile. A strip above the work, no
 * dialog: nothing waits for the answer, and once it was given there is no question before the next break.
 */
@Messages({
    "# {0} - when", "afterBreak.ask=The day goes on after a break (last entry {0}). Has a pad moved since? Look at the marks round each. "
            + "Read the pressures and the zeros of the scales again, too.",
    "afterBreak.no=No, all on their &marks", "afterBreak.yes=Yes, or not sure: survey again (&B)",
    "afterBreak.onMarks=all on their marks after a break", "afterBreak.notSure=asked after a break"})
final class AfterBreak extends JPanel {

    private static final long serialVersionUID = 1L;
    /** A break after which the question is worth asking (common practice, no source). */
    private static final Duration BREAK = Duration.ofHours(3);

    private final transient CurrentDay current;
    private final transient Clock clock;
    private final WrapText question = new WrapText("", 1.05, Font.BOLD);

    AfterBreak(CurrentDay current, Clock clock) {
        super(new BorderLayout(Looks.em(0.5), Looks.em(0.2)));
        this.current = current;
        this.clock = clock;
        setBorder(Looks.frame(0.5));
        JPanel answers = new JPanel(new FlowLayout(FlowLayout.LEADING, Looks.em(0.5), 0));
        answers.add(Looks.button(Bundle.afterBreak_no(), () -> answer(Conditions.LEVELLED, Bundle.afterBreak_onMarks())));
        answers.add(Looks.button(Bundle.afterBreak_yes(), () -> answer(Conditions.MOVED, Bundle.afterBreak_notSure())));
        add(question, BorderLayout.CENTER);
        add(answers, BorderLayout.SOUTH);
        setVisible(false);
    }

    void show(DaySnapshot day) {
        Optional<Instant> before = since(day.day(), clock.instant());
        setVisible(before.isPresent());
        before.ifPresent(b -> question.setText(Bundle.afterBreak_ask(DateTimeFormatter
                .ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT).format(b.atZone(ZoneId.systemDefault())))));
    }

    private void answer(String value, String words) {
        current.record(stageOfPads(), h -> new Entry.Condition(h, Conditions.PADS, value, words));
    }

    /** The stage in which the pads are levelled. */
    private String stageOfPads() {
        return current.snapshot().flatMap(day -> day.stages().stream().filter(s -> s.requirements(day.car()).stream()
                .anyMatch(r -> r.key().equals(Conditions.PADS))).map(Stage::id).findFirst()).orElse("");
    }

    /**
     * The last entry before a break after which nothing was said of the pads; empty where they are not levelled, the day is closed,
     * or it went on without a break since they were looked at.
     */
    static Optional<Instant> since(Day day, Instant now) {
        Optional<Entry.Condition> pads = day.conditionEntry(Conditions.PADS).filter(c -> c.value().equals(Conditions.LEVELLED));
        if (pads.isEmpty() || day.closed().isPresent()) {
            return Optional.empty();
        }
        Instant before = pads.get().header().time();
        Optional<Instant> found = Optional.empty();
        for (Entry entry : day.after(pads.get().number())) {
            found = isBreak(before, entry.header().time()) ? Optional.of(before) : found;
            before = entry.header().time();
        }
        return isBreak(before, now) ? Optional.of(before) : found;
    }

    private static boolean isBreak(Instant from, Instant to) {
        return Duration.between(from, to).compareTo(BREAK) > 0;
    }
}
