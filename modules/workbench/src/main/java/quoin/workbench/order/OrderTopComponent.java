package quoin.workbench.order;

import java.awt.Dimension;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.TopComponent;
import quoin.workbench.CurrentDay;
import quoin.workbench.DayWindow;
import quoin.workbench.Looks;

/** The order of work at the left edge. */
@TopComponent.Description(preferredID = "order-of-work", iconBase = "quoin/workbench/icons/list-ol.svg",
        persistenceType = TopComponent.PERSISTENCE_ALWAYS)
@TopComponent.Registration(mode = "quoin-order", openAtStartup = true, position = 100)
@TopComponent.OpenActionRegistration(displayName = "#CTL_Order", preferredID = "order-of-work")
@ActionID(category = "Window", id = "quoin.workbench.order.OrderTopComponent")
@ActionReferences({
    @ActionReference(path = "Menu/Window", position = 100),
    @ActionReference(path = "Shortcuts", name = "O-0")})
@Messages("CTL_Order=&Order of work")
public final class OrderTopComponent extends DayWindow {

    private static final long serialVersionUID = 1L;
    private static final double NARROWEST_EM = 18;

    private final OrderPanel panel;

    public OrderTopComponent() {
        super(Bundle.order_stages(), CurrentDay.inUse(), Stay.ALWAYS);
        panel = new OrderPanel(CurrentDay.inUse());
        fill(panel);
        // The split would otherwise be worked out before the window is maximised and leave a few words' width.
        setMinimumSize(new Dimension(Looks.em(NARROWEST_EM), 0));
    }

    @Override
    protected void dayChanged() {
        panel.dayChanged();
    }

    @Override
    protected void plansChanged() {
        panel.plansChanged();
    }

    @Override
    protected void componentActivated() {
        panel.focusList();
    }
}
