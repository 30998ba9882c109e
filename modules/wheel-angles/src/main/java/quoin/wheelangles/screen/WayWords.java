package quoin.wheelangles.screen;

import java.awt.Component;
import javax.swing.JComponent;
import javax.swing.JList;
import quoin.wheelangles.measure.Method;
import quoin.workbench.Looks;
import quoin.workbench.PlainListRenderer;

/** A way of measuring in the list, tall enough for a gloved finger. */
final class WayWords extends PlainListRenderer {

    private static final long serialVersionUID = 1L;

    @Override
    public Component getListCellRendererComponent(JList<?> list, Object value, int index, boolean isSelected, boolean hasFocus) {
        Component shown = super.getListCellRendererComponent(list, value instanceof Method way ? way.title() : "", index, isSelected, hasFocus);
        ((JComponent) shown).setBorder(Looks.padding(0.5, 0.6));
        return shown;
    }
}
