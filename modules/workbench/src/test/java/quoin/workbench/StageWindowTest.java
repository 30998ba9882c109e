package quoin.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.Rectangle;
import java.util.Optional;
import javax.swing.Box;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JScrollPane;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

/** What the window of a stage keeps in sight. */
class StageWindowTest {

    private static final int WIDTH = 900;
    private static final int HEIGHT = 300;

    private final JLabel head = new JLabel("Pages");
    private final JComponent content = Box.createVerticalBox();

    /** However far the content is scrolled, and with it a field that is brought into sight, the head stays where it is. */
    @Test
    void headStaysInSightWhileTheContentIsScrolled() throws Exception {
        EventQueue.invokeAndWait(() -> {
            JLabel last = new JLabel("last");
            content.add(Box.createVerticalStrut(4 * HEIGHT));
            content.add(last);
            Tried window = new Tried();
            window.componentShowing();
            window.setSize(WIDTH, HEIGHT);
            layOut(window);
            Rectangle before = SwingUtilities.convertRectangle(head.getParent(), head.getBounds(), window);
            JScrollPane scroll = (JScrollPane) SwingUtilities.getAncestorOfClass(JScrollPane.class, content);
            last.scrollRectToVisible(new Rectangle(0, 0, 1, last.getHeight()));
            assertTrue(scroll.getViewport().getViewPosition().y > HEIGHT, "the content was scrolled");
            assertTrue(head.getHeight() > 0 && new Rectangle(0, 0, WIDTH, HEIGHT).contains(before), "the head is in sight: " + before);
            assertEquals(before, SwingUtilities.convertRectangle(head.getParent(), head.getBounds(), window));
        });
    }

    /** Without a screen nothing is laid out by itself. */
    private static void layOut(Container container) {
        container.doLayout();
        for (Component part : container.getComponents()) {
            if (part instanceof Container inside) {
                layOut(inside);
            }
        }
    }

    /** A window of a stage with nothing but a head and a content. */
    private final class Tried extends StageWindow {

        private static final long serialVersionUID = 1L;

        Tried() {
            super("tried", "Tried");
        }

        @Override
        protected StageView createView(CurrentDay currentDay) {
            return new StageView() {

                @Override
                public Optional<JComponent> head() {
                    return Optional.of(head);
                }

                @Override
                public JComponent component() {
                    return content;
                }

                @Override
                public void show(DaySnapshot day) {
                    // there is none
                }

                @Override
                public void toEntry() {
                    // nothing to type
                }
            };
        }
    }
}
