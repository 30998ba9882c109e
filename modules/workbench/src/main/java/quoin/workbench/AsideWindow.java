package quoin.workbench;

import java.awt.BorderLayout;
import java.awt.event.KeyEvent;
import java.util.Optional;
import javax.swing.KeyStroke;
import org.openide.awt.UndoRedo;
import org.openide.windows.TopComponent;

/** A window looked into for a moment. Escape closes it and goes back to where the racer was. */
public abstract class AsideWindow extends TopComponent {

    private static final long serialVersionUID = 1L;

    private transient TopComponent before;

    /** @param name its title */
    protected AsideWindow(String name) {
        setName(name);
        setDisplayName(name);
        putClientProperty(PROP_UNDOCKING_DISABLED, true);
        setLayout(new BorderLayout());
        Looks.onKey(this, KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0), "back", this::back);
    }

    /**
     * Opens it in front.
     *
     * @return the window the racer comes from; empty where it was this one or none
     */
    protected final Optional<TopComponent> openFromHere() {
        TopComponent now = TopComponent.getRegistry().getActivated();
        if (now != this) {
            before = now;
        }
        open();
        requestActive();
        return Optional.ofNullable(now).filter(w -> w != this);
    }

    /** Undo is the day's, also from here. */
    @Override
    public UndoRedo getUndoRedo() {
        return CurrentDay.inUse().undoRedo();
    }

    private void back() {
        close();
        if (before != null) {
            before.requestActive();
        }
    }
}
