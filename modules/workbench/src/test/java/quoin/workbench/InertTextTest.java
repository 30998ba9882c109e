package quoin.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.awt.Component;
import java.awt.Font;
import java.awt.event.ContainerEvent;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
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
