package quoin.workbench;

import javax.swing.DefaultListCellRenderer;

/** A line of a list or a choice whose text is shown as it is written, see {@link InertText}. */
public class PlainListRenderer extends DefaultListCellRenderer {

    private static final long serialVersionUID = 1L;

    public PlainListRenderer() {
        InertText.in(this);
    }
}
