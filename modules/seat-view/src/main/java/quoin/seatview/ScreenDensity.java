package quoin.seatview;

import java.awt.GraphicsConfiguration;
import java.awt.Toolkit;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalDouble;
import java.util.logging.Level;
import java.util.logging.Logger;

/**
 * How many pixels a screen really has to the millimetre. What the desktop calls its resolution is mostly a round 96 per inch,
 * whatever the screen; the screen itself says its width in its description (VESA E-EDID 1.4, 3.10.2: the first detailed timing
 * holds the picture's size in pixels and in mm), which Linux shows as a file.
 */
final class ScreenDensity {

    private static final Path DRM = Path.of("/sys/class/drm");
    private static final double MM_PER_INCH = 25.4;
    private static final int EDID_BYTES = 128;
    private static final int TIMING = 54;
    /** A beamer and some old screens give the shape of the picture, such as 16 by 9, in place of its size. */
    private static final int LEAST_MM = 100;

    private ScreenDensity() {
    }

    /** Pixels of a window's drawing per mm of the screen: as the screen says, else as the desktop does. */
    static double perMm(GraphicsConfiguration screen) {
        double scale = screen.getDefaultTransform().getScaleX();
        int width = (int) Math.round(screen.getBounds().width * scale);
        OptionalDouble said = ofScreens(DRM, width, (int) Math.round(screen.getBounds().height * scale));
        return said.isPresent() ? said.getAsDouble() / scale : Toolkit.getDefaultToolkit().getScreenResolution() / MM_PER_INCH;
    }

    /** Pixels per mm of the screen whose picture is so large; empty where none says it, or two say different things. */
    static OptionalDouble ofScreens(Path folder, int widthPx, int heightPx) {
        OptionalDouble found = OptionalDouble.empty();
        try (DirectoryStream<Path> screens = Files.newDirectoryStream(folder)) {
            for (Path screen : screens) {
                Path file = screen.resolve("edid");
                OptionalDouble said = Files.isReadable(file) ? of(Files.readAllBytes(file), widthPx, heightPx) : OptionalDouble.empty();
                if (said.isPresent() && found.isPresent() && !said.equals(found)) {
                    return OptionalDouble.empty();
                }
                found = said.isPresent() ? said : found;
            }
            return found;
        } catch (IOException e) {
            Logger.getLogger(ScreenDensity.class.getName()).log(Level.FINE, "no screen describes itself", e);
            return OptionalDouble.empty();
        }
    }

    /** Pixels per mm as a screen describes itself; empty where its picture is another one. */
    static OptionalDouble of(byte[] edid, int widthPx, int heightPx) {
        if (edid.length < EDID_BYTES || at(edid, TIMING) == 0 && at(edid, TIMING + 1) == 0) {
            return OptionalDouble.empty();
        }
        int px = at(edid, TIMING + 2) + ((at(edid, TIMING + 4) & 0xF0) << 4);
        int lines = at(edid, TIMING + 5) + ((at(edid, TIMING + 7) & 0xF0) << 4);
        int mm = at(edid, TIMING + 12) + ((at(edid, TIMING + 14) & 0xF0) << 4);
        return px == widthPx && lines == heightPx && mm >= LEAST_MM ? OptionalDouble.of((double) px / mm) : OptionalDouble.empty();
    }

    private static int at(byte[] bytes, int index) {
        return bytes[index] & 0xFF;
    }
}
