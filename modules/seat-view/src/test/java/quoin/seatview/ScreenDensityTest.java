package quoin.seatview;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sizes as VESA E-EDID 1.4, table 3.21, lays them out: low eight bits each, then the high four of both in one byte. */
class ScreenDensityTest {

    @TempDir
    private Path folder;

    /** A description of a screen: nothing but the first detailed timing. */
    private static byte[] edid(int px, int lines, int widthMm, int heightMm) {
        byte[] bytes = new byte[128];
        bytes[54] = 1;
        bytes[56] = (byte) px;
        bytes[58] = (byte) (px >> 8 << 4);
        bytes[59] = (byte) lines;
        bytes[61] = (byte) (lines >> 8 << 4);
        bytes[66] = (byte) widthMm;
        bytes[67] = (byte) heightMm;
        bytes[68] = (byte) (widthMm >> 8 << 4 | heightMm >> 8);
        return bytes;
    }

    private void screen(String name, byte[] edid) throws IOException {
        Files.write(Files.createDirectories(folder.resolve(name)).resolve("edid"), edid);
    }

    /** 14 inches of 1366 by 768 are 309 mm wide: 112 pixels an inch, not the 96 the desktop says. */
    @Test
    void aLaptopSaysItsWidth() throws IOException {
        Files.createDirectories(folder.resolve("version"));
        screen("card0-HDMI-1", new byte[0]);
        screen("card0-eDP-1", edid(1366, 768, 309, 174));
        assertEquals(1366 / 309.0, ScreenDensity.ofScreens(folder, 1366, 768).orElseThrow(), 1e-12);
        assertEquals(OptionalDouble.empty(), ScreenDensity.ofScreens(folder, 1920, 1080), "another picture than its own");
    }

    @Test
    void twoScreensOfOnePictureAreToldApartByNobody() throws IOException {
        screen("card0-HDMI-1", edid(1920, 1080, 527, 296));
        screen("card0-eDP-1", edid(1920, 1080, 344, 193));
        assertEquals(OptionalDouble.empty(), ScreenDensity.ofScreens(folder, 1920, 1080));
    }

    @Test
    void aShapeIsNoSizeAndNoFolderIsNoError() throws IOException {
        screen("card0-HDMI-1", edid(1920, 1080, 16, 9));
        assertEquals(OptionalDouble.empty(), ScreenDensity.ofScreens(folder, 1920, 1080));
        assertEquals(OptionalDouble.empty(), ScreenDensity.ofScreens(folder.resolve("none"), 1920, 1080));
    }
}
