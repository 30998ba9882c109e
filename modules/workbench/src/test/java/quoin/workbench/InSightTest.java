package quoin.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.Rectangle;
import java.awt.event.ComponentEvent;
import java.util.concurrent.atomic.AtomicBoolean;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

/** A field comes into sight, and stays there when the texts above it turn out higher than they were. */
class InSightTest {

    private static final int WIDTH = 600;
    private static final int HEIGHT = 300;

    private final JPanel texts = new JPanel();
    private final JTextField field = new JTextField(5);
    private final JPanel content = new JPanel(new BorderLayout());
    private final JScrollPane pane = new JScrollPane(content);

    @Test
    void staysInSightWhileTheTextsAboveGrow() throws Exception {
        AtomicBoolean caretIsThere = new AtomicBoolean(true);
        EventQueue.invokeAndWait(() -> {
            JPanel part = new JPanel(new BorderLayout());
            part.add(field, BorderLayout.NORTH);
            JPanel below = new JPanel();
            below.setPreferredSize(new Dimension(WIDTH / 2, 5 * HEIGHT));
            content.add(texts, BorderLayout.NORTH);
            content.add(part, BorderLayout.CENTER);
            content.add(below, BorderLayout.SOUTH);
            pane.setSize(WIDTH, HEIGHT);
            texts(2 * HEIGHT);
            InSight.bring(field, caretIsThere::get);
        });
        EventQueue.invokeAndWait(() -> assertTrue(inSight(), "at first"));
        EventQueue.invokeAndWait(() -> texts(4 * HEIGHT));
        EventQueue.invokeAndWait(() -> assertTrue(inSight(), "after the texts above grew"));
        caretIsThere.set(false);
        int before = pane.getViewport().getViewPosition().y;
        EventQueue.invokeAndWait(() -> texts(6 * HEIGHT));
        EventQueue.invokeAndWait(() -> assertEquals(before, pane.getViewport().getViewPosition().y, "the caret is elsewhere"));
    }

    /** Without a screen nothing is laid out, and no change of size is told, by itself. */
    private void texts(int height) {
        texts.setPreferredSize(new Dimension(WIDTH / 2, height));
        for (JComponent part : new JComponent[] {pane, pane.getViewport(), content, (JComponent) field.getParent()}) {
            part.doLayout();
        }
        content.dispatchEvent(new ComponentEvent(content, ComponentEvent.COMPONENT_RESIZED));
    }

    private boolean inSight() {
        Rectangle place = SwingUtilities.convertRectangle(field.getParent(), field.getBounds(), pane.getViewport());
        return new Rectangle(pane.getViewport().getSize()).contains(place);
    }
}
