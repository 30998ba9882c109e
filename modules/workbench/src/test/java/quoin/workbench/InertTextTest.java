package quoin.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Component;
import java.awt.Container;
import java.awt.Font;
import java.awt.event.ContainerEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.JToolTip;
import javax.swing.plaf.basic.BasicHTML;
import org.junit.jupiter.api.Test;

class InertTextTest {

    private static final String MARKUP = "<html><b>Ouzel</b><img src='http://127.0.0.1:9/seen'>";

    private static void assertPlain(Component component) {
        assertNull(((JComponent) component).getClientProperty(BasicHTML.propertyKey), "laid out as a page");
    }

    /** A part of a window of ours, as far as its name says. */
    private static final class Window extends JPanel {
        private static final long serialVersionUID = 1L;
    }

    private static void add(JPanel to, Component child) {
        to.add(child);
        new InertText().eventDispatched(new ContainerEvent(to, ContainerEvent.COMPONENT_ADDED, child));
    }

    @Test
    void markupIsLaidOutBySwingUnlessItIsKeptFromIt() {
        assertNotNull(new JLabel("<html><b>x</b>").getClientProperty(BasicHTML.propertyKey), "else the other tests prove nothing");
    }

    @Test
    void labelsButtonsListsAndTablesShowMarkupAsWritten() {
        assertPlain(Looks.label(MARKUP, 1, Font.PLAIN));
        assertEquals(MARKUP, Looks.heading(MARKUP).getText());
        assertPlain(Looks.figure(MARKUP));
        assertPlain(Looks.button(MARKUP, () -> { }));
        assertPlain(new PlainListRenderer().getListCellRendererComponent(new JList<>(), MARKUP, 0, false, false));
        JTable table = new JTable(new Object[][] {{MARKUP}}, new Object[] {"a"});
        PlainTableRenderer.in(table);
        assertPlain(table.prepareRenderer(table.getCellRenderer(0, 0), 0, 0));
        assertPlain(table.getTableHeader().getDefaultRenderer().getTableCellRendererComponent(table, MARKUP, false, false, -1, 0));
    }

    @Test
    void aHeadWiderThanItsColumnTakesTwoLinesOfTheSameWords() {
        JTable table = new JTable(new Object[][] {{"1", "2"}}, new Object[] {"Ride height signed off", "<b>x</b> " + MARKUP});
        PlainTableRenderer.in(table);
        PlainTableRenderer.fit(table);
        JLabel head = head(table, 0);
        assertEquals("<html><center>Ride height<br>signed off</center></html>", head.getText());
        int oneLine = head.getFontMetrics(head.getFont()).stringWidth("Ride height signed off");
        int column = table.getColumnModel().getColumn(0).getMinWidth();
        assertTrue(column >= head.getFontMetrics(head.getFont()).stringWidth("Ride height") && column < oneLine, column + " of " + oneLine);
        String escaped = head(table, 1).getText();
        assertFalse(escaped.contains("<b>") || escaped.contains("<img"), escaped);
        table.getColumnModel().getColumn(0).setHeaderValue("a");
        assertPlain(head(table, 0));
    }

    private static JLabel head(JTable table, int column) {
        return (JLabel) table.getColumnModel().getColumn(column).getHeaderRenderer().getTableCellRendererComponent(table,
                table.getColumnModel().getColumn(column).getHeaderValue(), false, false, -1, column);
    }

    @Test
    void whateverIsPutIntoAWindowIsMadePlain() {
        Window window = new Window();
        JPanel part = new JPanel();
        JLabel label = new JLabel("<html><b>x</b>");
        JButton button = new JButton("<html><b>x</b>");
        part.add(label);
        part.add(button);
        add(window, part);
        assertPlain(label);
        assertPlain(button);
        assertEquals("<html><b>x</b>", label.getText());
        label.setText("<html><i>later</i>");
        assertPlain(label);
    }

    @Test
    void tipsAreMadePlain() {
        JToolTip tip = new JToolTip();
        tip.setTipText("<html><b>x</b>");
        add(new JPanel(), tip);
        assertPlain(tip);
    }

    /** A message is cut at its line ends, and where it is long at its spaces; each piece is a label by itself. */
    @Test
    void pieceOfAMessageIsPlain() {
        String name = "Ouzel 23 of a friend with a name so long that its line ends right before the words that follow here now: " + MARKUP;
        for (String words : List.of(MARKUP, "It is\n" + MARKUP, "It is\n<HTML><b>x</b>", name)) {
            JOptionPane pane = new JOptionPane(InertText.plain(words)) {
                private static final long serialVersionUID = 1L;

                @Override
                public int getMaxCharactersPerLineCount() {
                    return 100;
                }
            };
            assertEquals(List.of(), laidOut(pane), words);
            assertFalse(laidOut(new JOptionPane(words) {
                private static final long serialVersionUID = 1L;

                @Override
                public int getMaxCharactersPerLineCount() {
                    return 105;
                }
            }).isEmpty(), "else this proves nothing: " + words);
        }
        assertEquals("1 < 2, <b>", InertText.plain("1 < 2, <b>"));
        JToolTip tip = new JToolTip();
        tip.setTipText(InertText.plain(MARKUP));
        assertPlain(tip);
    }

    private static List<String> laidOut(Container in) {
        List<String> found = new ArrayList<>();
        for (Component child : in.getComponents()) {
            if (child instanceof JLabel label && label.getClientProperty(BasicHTML.propertyKey) != null) {
                found.add(label.getText());
            } else if (child instanceof Container container) {
                found.addAll(laidOut(container));
            }
        }
        return found;
    }

    @Test
    void windowsOfThePlatformAreLeftAlone() {
        JLabel label = new JLabel("<html><b>x</b>");
        add(new JPanel(), label);
        assertNotNull(label.getClientProperty(BasicHTML.propertyKey));
    }

    @Test
    void wordsThatWrapAreStillOnlyWords() {
        JLabel label = new JLabel(InertText.wrapping("a <b>b</b> & \"c\""));
        InertText.laidOut(label);
        add(new Window(), label);
        assertNotNull(label.getClientProperty(BasicHTML.propertyKey), "it wraps");
        assertEquals("<html>a &lt;b&gt;b&lt;/b&gt; &amp; \"c\"</html>", label.getText());
    }
}
