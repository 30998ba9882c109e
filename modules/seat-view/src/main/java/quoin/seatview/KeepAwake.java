package quoin.seatview;

import java.awt.AWTException;
import java.awt.MouseInfo;
import java.awt.Point;
import java.awt.PointerInfo;
import java.awt.Robot;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.swing.Timer;

/** Keeps the screen from going dark while the seat view is open: now and then the pointer is moved to where it is. */
final class KeepAwake {

    private static final int EVERY_MS = 30_000;

    private final Timer timer;

    KeepAwake() {
        Robot robot = robot();
        timer = new Timer(EVERY_MS, e -> nudge(robot));
    }

    private static Robot robot() {
        try {
            return new Robot();
        } catch (AWTException | SecurityException e) {
            Logger.getLogger(KeepAwake.class.getName()).log(Level.INFO, "the screen cannot be kept awake: {0}", e.getMessage());
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

    void start() {
        timer.start();
    }

    void stop() {
        timer.stop();
    }
}
