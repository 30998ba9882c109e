package quoin.workbench.order;

import java.awt.BorderLayout;
import java.awt.Dimension;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.awt.UndoRedo;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.TopComponent;
import quoin.workbench.CurrentDay;
import quoin.workbench.Looks;

/** The order of work at the left edge. */
@TopComponent.Description(preferredID = "order-of-work", persistenceType = TopComponent.PERSISTENCE_ALWAYS)
@TopComponent.Registration(mode = "quoin-order", openAtStartup = true, position = 100)
@TopComponent.OpenActionRegistration(displayName = "#CTL_Order", preferredID = "order-of-work")
@ActionID(category = "Window", id = "quoin.workbench.order.OrderTopComponent")
@ActionReferences({
    @ActionReference(path = "Menu/Window", position = 100),
    @ActionReference(path = "Shortcuts", name = "O-0")})
@Messages("CTL_Order=&Order of work")
public final class OrderTopComponent extends TopComponent {

    private static final long serialVersionUID = 1L;
    private static final double NARROWEST_EM = 18;

    private final transient CurrentDay current = CurrentDay.inUse();
    private final OrderPanel panel = new OrderPanel(current);
    private final transient Runnable onChange = panel::dayChanged;

    public OrderTopComponent() {
        setName(Bundle.order_stages());
        putClientProperty(PROP_CLOSING_DISABLED, true);
        putClientProperty(PROP_UNDOCKING_DISABLED, true);
        putClientProperty(PROP_DRAGGING_DISABLED, true);
        setLayout(new BorderLayout());
        add(panel, BorderLayout.CENTER);
        // The split would otherwise be worked out before the window is maximised and leave a few words' width.
        setMinimumSize(new Dimension(Looks.em(NARROWEST_EM), 0));
    }

    @Override
    protected void componentOpened() {
        current.addListener(onChange);
        panel.dayChanged();
    }

    @Override
    protected void componentClosed() {
        current.removeListener(onChange);
    }

    @Override
    protected void componentActivated() {
        panel.focusList();
    }

    @Override
    public UndoRedo getUndoRedo() {
        return current.undoRedo();
    }
}
