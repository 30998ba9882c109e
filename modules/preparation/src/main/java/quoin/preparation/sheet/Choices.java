package quoin.preparation.sheet;

import java.awt.GridBagLayout;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.openide.awt.Mnemonics;
import quoin.workbench.InertText;
import quoin.workbench.Looks;

/** Lists and texts to choose from, one under the other with their names before them; an ampersand stands before the letter of each. */
public final class Choices {

    private Choices() {
    }

    public static JPanel grid(String[] names, JComponent... parts) {
        JPanel grid = new JPanel(new GridBagLayout());
        grid.setOpaque(false);
        for (int i = 0; i < parts.length; i++) {
            JLabel name = InertText.in(new JLabel());
            Mnemonics.setLocalizedText(name, names[i]);
            name.setLabelFor(parts[i]);
            parts[i].getAccessibleContext().setAccessibleName(names[i].replaceAll(" ?\\(&.\\)|&", ""));
            grid.add(name, Looks.cell(0, i, 0));
            grid.add(parts[i], Looks.cell(1, i, 1));
        }
        return grid;
    }
}
