package quoin.workbench;

import java.awt.Component;
import java.awt.EventQueue;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.List;
import java.util.function.BooleanSupplier;
import javax.swing.JComponent;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import javax.swing.Timer;

/** Scrolls what the caret is in into sight, and again while the window is still taking its shape around it. */
final class InSight {

    /** Wrapped texts are measured a few layouts after a window is first shown, and what stands below them moves. */
    private static final int SETTLES_MS = 2000;

    private final JComponent field;
    private final JViewport view;

    private InSight(JComponent field, JViewport view) {
        this.field = field;
        this.view = view;
    }

    static void bring(JComponent field) {
        bring(field, () -> {
            Component caret = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
            return caret != null && SwingUtilities.isDescendingFrom(caret, field);
        });
    }

    /** @param wanted whether the caret is still there; otherwise it is not scrolled again */
    static void bring(JComponent field, BooleanSupplier wanted) {
        EventQueue.invokeLater(() -> {
            JViewport view = (JViewport) SwingUtilities.getAncestorOfClass(JViewport.class, field);
            if (view != null && view.getView() != null) {
                InSight sight = new InSight(field, view);
                sight.scroll();
                sight.follow(wanted);
            }
        });
    }

    private void follow(BooleanSupplier wanted) {
        List<Component> moving = List.of(view, view.getView());
        ComponentAdapter again = new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent e) {
                if (wanted.getAsBoolean() && SwingUtilities.isDescendingFrom(field, view)) {
                    scroll();
                }
            }
        };
        moving.forEach(m -> m.addComponentListener(again));
        Timer settled = new Timer(SETTLES_MS, e -> moving.forEach(m -> m.removeComponentListener(again)));
        settled.setRepeats(false);
        settled.start();
    }

    /** The part of the window it stands in, or at least the field where the part is too high for that. */
    private void scroll() {
        JComponent shown = field;
        for (Component c = field; c != view.getView() && c != null; c = c.getParent()) {
            if (c instanceof JComponent part && Looks.isSection(part) && part.getHeight() <= view.getHeight()) {
                shown = part;
            }
        }
        // Asked of the parent: a text field would only scroll its own text.
        Rectangle bounds = shown.getBounds();
        bounds.grow(0, shown == field ? Looks.em(4) : 0);
        ((JComponent) shown.getParent()).scrollRectToVisible(bounds);
    }
}
