package quoin.setupsheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.util.List;
import javax.accessibility.AccessibleRole;
import org.junit.jupiter.api.Test;
import quoin.setupsheet.page.Ink;
import quoin.setupsheet.page.Page;
import quoin.setupsheet.page.Painter;
import quoin.setupsheet.page.Paper;

/** The preview, without a window. */
class PagePanelTest {

    @Test
    void aScreenReaderIsToldWhatItIs() {
        PagePanel panel = new PagePanel(new Painter());
        panel.getAccessibleContext().setAccessibleName("Set-up sheet");
        assertEquals("Set-up sheet", panel.getAccessibleContext().getAccessibleName());
        assertEquals(AccessibleRole.PANEL, panel.getAccessibleContext().getAccessibleRole());
    }

    @Test
    void pagesStandOneUnderTheOtherAsWideAsTheWindow() {
        PagePanel panel = new PagePanel(new Painter());
        Page page = new Page(Paper.A4, List.of(new Ink.Box(20, 20, 100, 100, 2)));
        panel.show(List.of(page, page));
        panel.setSize(800, 600);
        assertTrue(panel.getPreferredSize().height > 2 * 1.3 * 780, panel.getPreferredSize().toString());
        BufferedImage image = new BufferedImage(800, 600, BufferedImage.TYPE_INT_RGB);
        panel.paint(image.createGraphics());
        int dark = 0;
        for (int x = 0; x < 800; x++) {
            dark += (image.getRGB(x, 300) & 0xff) < 64 ? 1 : 0;
        }
        assertTrue(dark >= 8, "two sides of the box in row 300, dark: " + dark);
    }
}
