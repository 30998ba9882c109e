package quoin.seatview;

import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.openide.util.NbBundle.Messages;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.logbook.Entry;
import quoin.quantities.DecimalMark;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.EntryDoubts;
import quoin.workbench.NextAction;
import quoin.workflow.NextStep;
import quoin.workflow.spi.Finding;

/**
 * The seat view at work: takes the keys of a keypad, records four loads once the last is typed, and shows what follows. Enter on
 * empty fields does the next thing where it needs no window; on a rehearsal it reads the practice car.
 */
@Messages({
    "# {0} - figures", "seat.recorded=Recorded: {0}.",
    "# {0} - reading", "# {1} - problem", "seat.problem={0}: {1}.",
    "# {0} - doubt", "# {1} - likely figure", "seat.doubt={0} Enter keeps it; 0 Enter takes {1}.",
    "seat.practice=The practice car was read. Enter records it.",
    "seat.elsewhere=That is done outside the seat; the screen goes on as soon as it is recorded.",
    "seat.blank=Type the four loads with the keypad, Enter after each.",
    "seat.noDay=No day is open. Press Esc and open one."})
final class SeatView extends KeyAdapter {

    private static final String STAGE = "corner-weights";

    private final CurrentDay current;
    private final SeatPanel panel;
    private final Runnable leave;
    private final Sound sound = new Sound();
    private final EntryDoubts doubts = new EntryDoubts();
    private Sound.Kind heard;
    private SeatEntry entry;
    private Optional<Finding> doubt = Optional.empty();
    private Optional<String> message = Optional.empty();
    private boolean warned;
    private boolean fromPracticeCar;

    /**
     * @param leave closes the view
     */
    SeatView(CurrentDay current, SeatPanel panel, Sound.Kind heard, Runnable leave) {
        this.current = current;
        this.panel = panel;
        this.heard = heard;
        this.leave = leave;
    }

    Sound.Kind heard() {
        return heard;
    }

    /** Shows the day as it stands; what is being typed stays. */
    void dayChanged() {
        Optional<DaySnapshot> day = current.snapshot();
        if (day.isEmpty()) {
            leave.run();
            return;
        }
        List<ReadingId> loads = SeatPage.loads(day.get());
        if (entry == null || !entry.typed().readings().equals(loads)) {
            entry = SeatEntry.empty(loads);
        }
        show(day.get());
    }

    private void show(DaySnapshot day) {
        NextStep step = current.nextStep().orElse(day.status().next());
        panel.show(SeatPage.of(day, entry, step, message, message.isPresent() && warned));
    }

    @Override
    public void keyPressed(KeyEvent e) {
        switch (e.getKeyCode()) {
            case KeyEvent.VK_ESCAPE -> leaveOrEndRule();
            case KeyEvent.VK_F6 -> panel.ruling(!panel.isRuling());
            case KeyEvent.VK_PAGE_UP -> panel.scale(panel.isRuling() ? panel.scale().longerRule() : panel.scale().larger());
            case KeyEvent.VK_PAGE_DOWN -> panel.scale(panel.isRuling() ? panel.scale().shorterRule() : panel.scale().smaller());
            case KeyEvent.VK_BACK_SPACE -> change(entry.back());
            case KeyEvent.VK_ENTER -> enter();
            default -> { }
        }
    }

    @Override
    public void keyTyped(KeyEvent e) {
        char typed = e.getKeyChar();
        switch (typed) {
            case '-' -> change(entry.back());
            case '*', '=' -> change(entry.repeat());
            case '/' -> panel.whiteOnBlack(!panel.isWhiteOnBlack());
            case '+' -> {
                heard = heard.next();
                sound.say(heard, heard.name());
            }
            default -> {
                if (Character.isDigit(typed) || typed == '.' || typed == ',') {
                    char character = typed == '.' || typed == ',' ? mark() : typed;
                    change(isDoubted() ? entry.with(String.valueOf(character)) : entry.type(character));
                }
            }
        }
    }

    private void leaveOrEndRule() {
        if (panel.isRuling()) {
            panel.ruling(false);
        } else {
            leave.run();
        }
    }

    /** True while the field still holds the figure that is in doubt: the next digit begins another. */
    private boolean isDoubted() {
        return doubt.isPresent() && message.isPresent();
    }

    /** Keypads have one key for the decimal mark, whichever they print on it. */
    private char mark() {
        return current.units().preferences().decimalMark() == DecimalMark.COMMA ? ',' : '.';
    }

    private void change(SeatEntry changed) {
        entry = changed;
        message = Optional.empty();
        fromPracticeCar = false;
        current.snapshot().ifPresent(this::show);
    }

    private void enter() {
        Optional<DaySnapshot> day = current.snapshot();
        if (day.isEmpty() || panel.isRuling()) {
            panel.ruling(false);
            return;
        }
        if (entry.isBlank()) {
            doNext(day.get());
        } else if (!takesLikely(day.get()) && isSound(day.get())) {
            if (entry.isLast()) {
                record(day.get());
            } else {
                entry = entry.next();
                message = Optional.empty();
            }
        }
        current.snapshot().ifPresent(this::show);
    }

    /** "0" in a doubted field takes the likely figure. */
    private boolean takesLikely(DaySnapshot day) {
        if (doubt.isEmpty() || !entry.text().equals("0")) {
            return false;
        }
        entry = entry.with(day.format().exact(entry.reading(), doubt.get().suggested().getAsDouble()));
        doubt = Optional.empty();
        message = Optional.empty();
        return true;
    }

    /** Says what is wrong or doubtful with what is typed, and goes there; a doubt is raised once. */
    private boolean isSound(DaySnapshot day) {
        warned = true;
        var understood = entry.read(day.format(), day::last);
        var problem = understood.problems().entrySet().stream().findFirst();
        if (problem.isPresent()) {
            entry = entry.to(problem.get().getKey());
            message = Optional.of(Bundle.seat_problem(problem.get().getKey().words(), problem.get().getValue()));
            return false;
        }
        doubt = fromPracticeCar ? Optional.empty() : doubts.next(day.day(), understood.values());
        doubt.ifPresent(d -> {
            ReadingId about = d.about().orElseThrow();
            entry = entry.to(about);
            message = Optional.of(Bundle.seat_doubt(d.words(), day.format().text(about, d.suggested().getAsDouble())));
        });
        return doubt.isEmpty();
    }

    private void record(DaySnapshot day) {
        var understood = entry.read(day.format(), day::last);
        Entry.Source source = fromPracticeCar ? Entry.Source.PRACTICE_CAR : Entry.Source.RACER;
        if (!current.record(STAGE, h -> new Entry.Reading(h, understood.values(), understood.typed(), source))) {
            return;
        }
        doubts.forget();
        fromPracticeCar = false;
        entry = SeatEntry.empty(entry.typed().readings());
        message = Optional.empty();
        String figures = understood.values().entrySet().stream()
                .map(e -> e.getKey().placeWords() + " " + day.format().number(e.getKey(), e.getValue())).collect(Collectors.joining(", "));
        String cross = current.snapshot().map(s -> SeatPage.of(s, entry, s.status().next(), Optional.empty(), false))
                .map(p -> Corner.RF.words() + "+" + Corner.LR.words() + " " + p.cross() + " " + p.verdict().word()).orElse("");
        sound.say(heard, Bundle.seat_recorded(figures) + " " + cross);
    }

    private void doNext(DaySnapshot day) {
        NextStep step = current.nextStep().orElse(day.status().next());
        message = Optional.empty();
        warned = false;
        if (step.kind() == NextStep.Kind.READ && current.isRehearsal()) {
            readPracticeCar(day);
        } else if (step.kind() == NextStep.Kind.READ) {
            message = Optional.of(Bundle.seat_blank());
        } else if (step.kind() == NextStep.Kind.SIGN_OFF || step.kind() == NextStep.Kind.CLOSE
                || NextAction.of(day, step).record().isEmpty()) {
            message = Optional.of(Bundle.seat_elsewhere());
        } else {
            NextAction.of(day, step).perform(current, step);
        }
    }

    private void readPracticeCar(DaySnapshot day) {
        List<ReadingId> loads = entry.typed().readings();
        Map<ReadingId, Double> read = current.practiceReadings(loads).orElse(Map.of());
        entry = SeatEntry.of(loads, id -> read.containsKey(id) ? day.format().number(id, read.get(id)) : "");
        fromPracticeCar = true;
        message = Optional.of(Bundle.seat_practice());
    }
}
