package quoin.seatview;

import java.awt.AWTException;
import java.awt.MouseInfo;
import java.awt.Point;
import java.awt.PointerInfo;
import java.awt.Robot;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import javax.swing.Timer;
import org.openide.util.RequestProcessor;

/**
 * Keeps the screen from going dark while the seat view is open: now and then the pointer is moved to where it is, and the
 * system is asked not to sleep by its own program for that, where it has one. That program ends with Quoin, however Quoin ends.
 */
final class KeepAwake {

    private static final int EVERY_MS = 30_000;

    /** Making a robot and starting and ending a program take some tenths of a second: one after the other beside the event thread. */
    private final RequestProcessor worker = new RequestProcessor("quoin keep awake", 1);
    private final AtomicReference<Robot> robot = new AtomicReference<>();
    private final AtomicReference<Process> helper = new AtomicReference<>();
    private final Timer timer = new Timer(EVERY_MS, e -> nudge(robot.get()));

    private static Robot robot() {
        try {
            return new Robot();
        } catch (AWTException | SecurityException e) {
            Logger.getLogger(KeepAwake.class.getName()).log(Level.INFO, "the pointer cannot be moved: {0}", e.getMessage());
            return null;
        }
    }

    private static void nudge(Robot robot) {
        PointerInfo info = MouseInfo.getPointerInfo();
        if (robot != null && info != null) {
            Point at = info.getLocation();
            robot.mouseMove(at.x + 1, at.y);
            robot.mouseMove(at.x, at.y);
        }
    }

    /** The system's ways of staying awake for as long as a process lives, the best first. */
    static List<List<String>> commands(String system, long pid) {
        String lower = system.toLowerCase(Locale.ROOT);
        if (lower.contains("mac")) {
            return List.of(List.of("caffeinate", "-d", "-w", Long.toString(pid)));
        }
        if (lower.contains("win")) {
            // the moved pointer is enough there
            return List.of();
        }
        List<String> wait = List.of("tail", "--pid=" + pid, "-f", "/dev/null");
        return Stream.of(List.of("gnome-session-inhibit", "--inhibit", "idle", "--reason", "Quoin"),
                List.of("systemd-inhibit", "--what=idle", "--who=Quoin", "--why=Quoin"))
                .map(inhibit -> Stream.concat(inhibit.stream(), wait.stream()).toList()).toList();
    }

    /** The first of some commands that can be started; empty where none can. */
    static Optional<Process> first(List<List<String>> commands) {
        for (List<String> command : commands) {
            try {
                return Optional.of(new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD).start());
            } catch (IOException e) {
                Logger.getLogger(KeepAwake.class.getName()).log(Level.FINE, "there is no {0}", command.get(0));
            }
        }
        return Optional.empty();
    }

    void start() {
        timer.start();
        worker.post(() -> {
            robot.set(robot());
            first(commands(System.getProperty("os.name", ""), ProcessHandle.current().pid())).ifPresent(helper::set);
        });
    }

    void stop() {
        timer.stop();
        worker.post(() -> {
            Process process = helper.getAndSet(null);
            if (process != null) {
                process.descendants().forEach(ProcessHandle::destroy);
                process.destroy();
            }
        });
    }
}
