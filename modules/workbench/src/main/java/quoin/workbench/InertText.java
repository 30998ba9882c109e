package quoin.workbench;

import java.awt.AWTEvent;
import java.awt.Component;
import java.awt.Container;
import java.awt.Toolkit;
import java.awt.event.AWTEventListener;
import java.awt.event.ContainerEvent;
import java.util.Arrays;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JOptionPane;
import javax.swing.JToolTip;
import javax.swing.plaf.basic.BasicHTML;
import org.openide.windows.OnShowing;

/**
 * Texts from people and files are shown as they are written. Swing takes a text that begins with a certain tag for a page to be
 * laid out, and fetches what that page names; a car or a note could call itself so. {@link #in} keeps one component from it
 * and must be called before it gets its text; every cell renderer calls it. Where the component is made by somebody else, a
 * message, a tip or the status line, {@link #plain} changes the text. As a net below that, whatever is put into a window of
 * Quoin, into a message or a tip is kept from it too.
 */
@OnShowing
public final class InertText implements Runnable, AWTEventListener {

    private static final String OFF = "html.disable";
    private static final String OURS = "quoin.";
    private static final Pattern TAG = Pattern.compile("<(html)", Pattern.CASE_INSENSITIVE);

    /** Keeps a component's texts plain and returns it. */
    public static <C extends JComponent> C in(C component) {
        component.putClientProperty(OFF, Boolean.TRUE);
        return component;
    }

    /**
     * The same words, which look the same, for a component that is made elsewhere: the tag that makes a text a page gets a sign
     * without width after its first, wherever it stands, as a message is cut into lines that are laid out by themselves.
     */
    public static String plain(String words) {
        return TAG.matcher(words).replaceAll("<\u200c$1");
    }

    /** A page that lays out exactly these words, so that they wrap; for a component marked by {@link #laidOut}. */
    public static String wrapping(String words) {
        return "<html>" + escaped(words) + "</html>";
    }

    /** A page of exactly these lines in the middle of their component, marked by {@link #laidOut}. */
    static String inLines(String... lines) {
        return "<html><center>" + Arrays.stream(lines).map(InertText::escaped).collect(Collectors.joining("<br>")) + "</center></html>";
    }

    private static String escaped(String words) {
        return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    /** Leaves a component alone whose text was made by {@link #wrapping}. */
    public static void laidOut(JComponent component) {
        component.putClientProperty(OFF, Boolean.FALSE);
    }

    @Override
    public void run() {
        Toolkit.getDefaultToolkit().addAWTEventListener(this, AWTEvent.CONTAINER_EVENT_MASK);
    }

    @Override
    public void eventDispatched(AWTEvent event) {
        if (event instanceof ContainerEvent added && added.getID() == ContainerEvent.COMPONENT_ADDED) {
            boolean inside = isOurs(added.getContainer());
            guard(added.getChild(), inside);
        }
    }

    private static boolean isOurs(Component start) {
        for (Component c = start; c != null; c = c.getParent()) {
            if (c instanceof JOptionPane || c.getClass().getName().startsWith(OURS)) {
                return true;
            }
        }
        return false;
    }

    private static void guard(Component component, boolean inside) {
        boolean ours = inside || component instanceof JOptionPane || component instanceof JToolTip
                || component.getClass().getName().startsWith(OURS);
        if (ours && component instanceof JComponent shown && shown.getClientProperty(OFF) == null) {
            in(shown);
            if (shown.getClientProperty(BasicHTML.propertyKey) != null) {
                BasicHTML.updateRenderer(shown, text(shown));
            }
        }
        if (component instanceof Container container) {
            for (Component child : container.getComponents()) {
                guard(child, ours);
            }
        }
    }

    private static String text(JComponent shown) {
        if (shown instanceof JLabel label) {
            return label.getText();
        }
        if (shown instanceof AbstractButton button) {
            return button.getText();
        }
        return shown instanceof JToolTip tip ? tip.getTipText() : "";
    }
}
