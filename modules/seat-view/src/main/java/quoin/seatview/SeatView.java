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
    "seat.choices=1\u00a0larger  2\u00a0smaller  3\u00a0measure the screen  4\u00a0sound  5\u00a0black or white  0\u00a0leave  Enter\u00a0goes\u00a0on",
    "seat.sound.OFF=Sound off.", "seat.sound.BEEP=A beep when it is recorded.", "seat.sound.VOICE=The figures are spoken when they are recorded.",
    "seat.noVoice=This machine has no program that speaks (spd-say, espeak-ng or espeak): a beep stands in for it.",
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
    /** What stood in the doubted field; an answer is typed over it. */
    private String doubted = "";
    private Optional<String> message = Optional.empty();
    private boolean warned;
    private boolean fromPracticeCar;
    /** True while digits choose what the keypad has no key for. */
    private boolean choosing;

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
            case KeyEvent.VK_ESCAPE -> escape();
            case KeyEvent.VK_F6 -> panel.ruling(!panel.isRuling());
            case KeyEvent.VK_PAGE_UP -> resize(true);
            case KeyEvent.VK_PAGE_DOWN -> resize(false);
            case KeyEvent.VK_BACK_SPACE -> change(entry.back());
            case KeyEvent.VK_ENTER -> enter();
            default -> { }
        }
    }

    private void resize(boolean larger) {
        SeatScale now = panel.scale();
        if (panel.isRuling()) {
            panel.scale(larger ? now.longerRule() : now.shorterRule());
        } else {
            panel.scale(larger ? now.larger() : now.smaller());
        }
    }

    @Override
    public void keyTyped(KeyEvent e) {
        char typed = e.getKeyChar();
        if (choosing || panel.isRuling()) {
            choose(typed);
            return;
        }
        switch (typed) {
            case '-' -> change(entry.back());
            case '*', '=' -> change(entry.repeat());
            case '/' -> panel.whiteOnBlack(!panel.isWhiteOnBlack());
            case '+' -> nextSound();
            case '.', ',' -> mark();
            default -> {
                if (Character.isDigit(typed)) {
                    change(isDoubted() ? entry.with(String.valueOf(typed)) : entry.type(typed));
                }
            }
        }
    }

    /** No load begins with the decimal mark: in an empty field the key leads to what the keypad has no keys for. */
    private void mark() {
        if (entry.text().isEmpty()) {
            choosing(true);
        } else {
            // keypads have one key for the mark, whichever they print on it
            char character = current.units().preferences().decimalMark() == DecimalMark.COMMA ? ',' : '.';
            change(isDoubted() ? entry.with(String.valueOf(character)) : entry.type(character));
        }
    }

    private void choosing(boolean now) {
        choosing = now;
        warned = false;
        message = now ? Optional.of(Bundle.seat_choices()) : Optional.empty();
        current.snapshot().ifPresent(this::show);
    }

    private void choose(char typed) {
        switch (typed) {
            case '1' -> resize(true);
            case '2' -> resize(false);
            case '3' -> {
                choosing(false);
                panel.ruling(true);
            }
            case '4', '+' -> {
                choosing(false);
                nextSound();
            }
            case '5', '/' -> panel.whiteOnBlack(!panel.isWhiteOnBlack());
            case '0' -> leave.run();
            case '-' -> choosing(false);
            default -> { }
        }
    }

    private void nextSound() {
        heard = heard.next();
        warned = false;
        message = Optional.of(switch (heard) {
            case OFF -> Bundle.seat_sound_OFF();
            case BEEP -> Bundle.seat_sound_BEEP();
            case VOICE -> Bundle.seat_sound_VOICE();
        });
        sound.say(heard, message.get(), this::noVoice);
        current.snapshot().ifPresent(this::show);
    }

    private void noVoice() {
        if (entry.isBlank() && heard == Sound.Kind.VOICE) {
            message = Optional.of(Bundle.seat_noVoice());
            current.snapshot().ifPresent(this::show);
        }
    }

    private void escape() {
        if (panel.isRuling()) {
            panel.ruling(false);
        } else if (choosing) {
            choosing(false);
        } else {
            leave.run();
        }
    }

    /** True while the field still holds the figure that is in doubt: the next digit begins another. */
    private boolean isDoubted() {
        return doubt.isPresent() && message.isPresent();
    }

    private void change(SeatEntry changed) {
        entry = changed;
        message = Optional.empty();
        fromPracticeCar = false;
        current.snapshot().ifPresent(this::show);
    }

    private void enter() {
        Optional<DaySnapshot> day = current.snapshot();
        if (day.isEmpty() || panel.isRuling() || choosing) {
            panel.ruling(false);
            choosing(false);
            return;
        }
        takeLikely(day.get());
        if (entry.isBlank()) {
            doNext(day.get());
        } else if (isSound(day.get())) {
            if (entry.isLast()) {
                record(day.get());
            } else {
                entry = entry.next();
                message = Optional.empty();
            }
        }
        current.snapshot().ifPresent(this::show);
    }

    /** "0" in a doubted field takes the likely figure, and Enter goes on from it as from a typed one. */
    private void takeLikely(DaySnapshot day) {
        if (doubt.isPresent() && entry.text().equals("0")) {
            entry = entry.mended(day.format().exact(entry.reading(), doubt.get().suggested().getAsDouble()), doubt.get().exchanged(), doubted);
            doubt = Optional.empty();
            message = Optional.empty();
        }
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
            doubted = entry.text();
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
                .map(p -> Corner.crossWords() + " " + p.cross() + " " + p.verdict().word()).orElse("");
        sound.say(heard, Bundle.seat_recorded(figures) + " " + cross, this::noVoice);
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
