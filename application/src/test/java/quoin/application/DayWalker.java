package quoin.application;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.openide.util.Lookup;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Journal;
import quoin.workflow.NextStep;
import quoin.workflow.OrderOfWork;
import quoin.workflow.spi.Stage;

/**
 * Walks a rehearsal day in the window as a racer would: looks what the next thing is, does it by the keyboard alone, and
 * waits until it is in the day's file. What the next thing is, it learns from that file by the same order of work.
 */
final class DayWalker {

    /** Alt+N is the one next thing; in a field it is where the next figure goes. */
    private static final String NEXT = "alt+n";
    private static final Duration RECORDED = Duration.ofSeconds(20);
    private static final Duration FOCUS = Duration.ofMillis(700);
    private static final Duration LEFT_ALONE = Duration.ofSeconds(4);
    private static final Duration PLAN = Duration.ofMillis(2500);
    private static final Duration AGAIN = Duration.ofMillis(100);
    private static final int LOOKS = 20;

    private final Screen screen;
    private final Path library;
    private final String pictures;
    private final OrderOfWork order = new OrderOfWork(List.copyOf(Lookup.getDefault().lookupAll(Stage.class)));
    private final List<String> walked = new ArrayList<>();
    private final Set<String> pictured = new HashSet<>();

    DayWalker(Screen screen, Path library) {
        this(screen, library, "day-");
    }

    /** @param pictures how the names of its pictures begin */
    DayWalker(Screen screen, Path library, String pictures) {
        this.screen = screen;
        this.library = library;
        this.pictures = pictures;
    }

    void shot(String name) {
        screen.shot(pictures + name);
    }

    /** The folder of the only day in the library, once it is there. */
    Path dayFolder() {
        Await.until("a day in the library", RECORDED, () -> day().isPresent());
        return folder().orElseThrow();
    }

    private Optional<Path> folder() {
        if (!Files.isDirectory(library)) {
            return Optional.empty();
        }
        for (int i = 0; i < LOOKS; i++) {
            try (Stream<Path> files = Files.walk(library)) {
                return files.filter(f -> f.endsWith(Journal.FILE)).map(Path::getParent).findFirst();
            } catch (UncheckedIOException e) {
                // the application put a fresh file in the place of an old one while the folders were walked
                Await.pause(AGAIN);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return Optional.empty();
    }

    /** The day as it is on the disk now. */
    Optional<Day> day() {
        return folder().flatMap(f -> {
            try (Journal journal = Journal.openReadOnly(f)) {
                return journal.entries().isEmpty() ? Optional.empty() : Optional.of(journal.day());
            }
        });
    }

    NextStep next() {
        return order.status(day().orElseThrow()).next();
    }

    /** What was done, step by step, for the message of a failed test. */
    List<String> walked() {
        return List.copyOf(walked);
    }

    /**
     * Does the next things until one of this kind is due in this stage, or the day is done.
     *
     * @param most steps after which a dead end is reported
     */
    void walkUntil(String stage, NextStep.Kind kind, int most) {
        for (int i = 0; i < most; i++) {
            NextStep next = next();
            if (next.kind() == NextStep.Kind.DONE || next.kind() == kind && next.stageId().equals(stage)) {
                return;
            }
            step(next);
        }
        throw new AssertionError("No end after " + most + " steps:\n" + String.join("\n", walked));
    }

    /** Does one thing and waits until it is recorded. */
    void step(NextStep next) {
        long before = day().orElseThrow().revision();
        walked.add(before + " " + next.stageId() + " " + next.kind() + ": " + next.words());
        if (next.kind() == NextStep.Kind.READ && pictured.add(next.stageId())) {
            screen.keys().press(NEXT);
            Await.pause(FOCUS);
            shot(next.stageId() + "-first");
        }
        act(next);
        if (!Await.holdsWithin(RECORDED, () -> day().orElseThrow().revision() > before)) {
            shot("dead-end");
            throw new AssertionError("Nothing was recorded. Walked:\n" + String.join("\n", walked));
        }
        Await.pause(FOCUS);
        if (next.kind() == NextStep.Kind.SIGN_OFF || next.kind() == NextStep.Kind.READ && pictured.add(next.stageId() + " read")) {
            Await.pause(PLAN);
            shot(next.stageId() + (next.kind() == NextStep.Kind.READ ? "-read" : "-signed"));
        }
    }

    private void act(NextStep next) {
        Keys keys = screen.keys();
        switch (next.kind()) {
            case READ -> {
                keys.press(NEXT);
                Await.pause(FOCUS);
                read(keys);
            }
            case TURN -> turn(keys);
            case CONDITION -> {
                keys.press(NEXT);
                Await.pause(FOCUS);
                if (next.words().contains("kg")) {
                    keys.type("20").press("Return");
                } else if (next.words().contains("every nut")) {
                    keys.type("45").press("Return");
                }
            }
            default -> keys.press(NEXT);
        }
    }

    private static void read(Keys keys) {
        keys.press("alt+p");
        Await.pause(FOCUS);
        keys.press("ctrl+Return");
    }

    /** Records the turns of the plan; where the plan leaves the car alone, reads again as it says. */
    private void turn(Keys keys) {
        long before = day().orElseThrow().revision();
        Await.pause(PLAN);
        keys.press(NEXT);
        Await.pause(FOCUS);
        keys.press("ctrl+Return");
        if (!Await.holdsWithin(LEFT_ALONE, () -> day().orElseThrow().revision() > before)) {
            walked.add("   the plan leaves it; read again");
            keys.press("F3");
            Await.pause(FOCUS);
            read(keys);
        }
    }

    /** Entries of one kind, in order. */
    <E extends Entry> List<E> entries(Class<E> kind) {
        return day().orElseThrow().written().stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    void assertNothingMissing(List<Entry> before) {
        List<Entry> now = day().orElseThrow().written();
        assertTrue(now.size() >= before.size() && now.subList(0, before.size()).equals(before),
                "entries were lost: " + before.size() + " before, " + now.size() + " now");
    }
}
