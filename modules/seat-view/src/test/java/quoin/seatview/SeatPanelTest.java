package quoin.seatview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import org.junit.jupiter.api.Test;
import quoin.car.PerCorner;
import quoin.workbench.Mark;
import quoin.workbench.VerdictWords;

/** Sizes are measured in the picture, not asked of the code that draws it. */
class SeatPanelTest {

    private static final SeatPage PAGE = new SeatPage(PerCorner.of(c -> new SeatPage.Cell("188.8", false, false)), "49.87",
            new VerdictWords(Mark.INSIDE, "inside"), "Sit still", false);

    private static BufferedImage draw(int width, int height, double pixelsPerMm, boolean white) {
        SeatPanel panel = new SeatPanel(new SeatScale(pixelsPerMm, 1));
        panel.setSize(width, height);
        panel.whiteOnBlack(white);
        panel.show(PAGE);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        panel.paint(g);
        g.dispose();
        return image;
    }

    /** The part of the rectangle that is not paper. */
    private static Rectangle ink(BufferedImage image, Rectangle within, boolean white) {
        Rectangle ink = null;
        for (int y = within.y; y < within.y + within.height; y++) {
            for (int x = within.x; x < within.x + within.width; x++) {
                boolean dark = (image.getRGB(x, y) & 0xFF) < 128;
                if (dark != white) {
                    Rectangle dot = new Rectangle(x, y, 1, 1);
                    ink = ink == null ? dot : ink.union(dot);
                }
            }
        }
        return ink == null ? new Rectangle() : ink;
    }

    /** A 27 inch screen of 3840 by 2160 has 6.43 pixels a millimetre: there is room for figures of 40 mm. */
    @Test
    void figuresAre40MillimetresHighWhereThereIsRoom() {
        BufferedImage image = draw(3840, 2160, 6.43, false);
        // Round figures stand a little over the line. Right half of the left front cell: figures only, the name stands left of it.
        Rectangle figures = ink(image, new Rectangle(1000, 0, 900, 500), false);
        assertEquals(40 * 6.43, figures.height, 0.04 * 40 * 6.43);
    }

    /** A 14 inch laptop of 1366 by 768 has 4.4 pixels a millimetre: everything is shrunk alike and stays on the screen. */
    @Test
    void onALaptopTheFiguresAreStillReadableFromTheSeat() {
        BufferedImage image = draw(1366, 768, 4.4, false);
        Rectangle figures = ink(image, new Rectangle(300, 0, 380, 190), false);
        assertTrue(figures.height >= 20 * 4.4, "figures of " + figures.height / 4.4 + " mm; 20 mm are read at 3 m");
        Rectangle all = ink(image, new Rectangle(0, 0, 1366, 768), false);
        Rectangle left = ink(image, new Rectangle(0, 0, 4, 180), false);
        assertTrue(all.height > 700 && left.isEmpty(), "nothing runs over the edge");
    }

    @Test
    void whiteOnBlackIsTheSamePictureTurnedRound() {
        BufferedImage black = draw(800, 600, 3, false);
        BufferedImage white = draw(800, 600, 3, true);
        assertEquals(Color.WHITE.getRGB(), black.getRGB(1, 1));
        assertEquals(Color.BLACK.getRGB(), white.getRGB(1, 1));
        assertEquals(ink(black, new Rectangle(0, 0, 800, 190), false), ink(white, new Rectangle(0, 0, 800, 190), true));
    }
}
