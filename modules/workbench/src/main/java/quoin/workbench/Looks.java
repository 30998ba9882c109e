package quoin.workbench;

import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.GridBagConstraints;
import java.awt.Insets;
import java.awt.event.ActionEvent;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.KeyEvent;
import javax.swing.AbstractAction;
import javax.swing.BorderFactory;
import javax.swing.BoxLayout;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.SwingConstants;
import javax.swing.UIManager;
import javax.swing.border.Border;
import org.openide.awt.Mnemonics;

/**
 * Sizes, fonts and colours of the windows. Everything is a multiple of the theme's own font and taken from its own colours, so
 * that it holds at any scaling and on black as on white.
 */
public final class Looks {

    /** Size of a figure that is read from a distance, as a multiple of the normal font. */
    public static final double FIGURE = 2.2;
    /** Size of a typed figure. */
    public static final double FIELD = 1.45;
    /** Size of a heading. */
    public static final double HEADING = 1.25;

    private static final int VEIL = 36;
    private static final String SECTION = "quoin.section";

    private Looks() {
    }

    public static Font font(double factor, int style) {
        Font base = UIManager.getFont("Label.font");
        Font known = base == null ? new JLabel().getFont() : base;
        return known.deriveFont(style, (float) (known.getSize2D() * factor));
    }

    /** A length in pixels, as a multiple of the height of the normal font. */
    public static int em(double factor) {
        return (int) Math.round(font(1, Font.PLAIN).getSize2D() * factor);
    }

    public static Border padding(double vertical, double horizontal) {
        return BorderFactory.createEmptyBorder(em(vertical), em(horizontal), em(vertical), em(horizontal));
    }

    /** A thin frame in the theme's own line colour with room inside. */
    public static Border frame(double room) {
        return BorderFactory.createCompoundBorder(BorderFactory.createLineBorder(line()), padding(room, room));
    }

    /** Frames and grids: the colour of the edges of the theme's own fields. */
    public static Color line() {
        Color line = UIManager.getColor("Component.borderColor");
        return line == null ? Color.GRAY : line;
    }

    /** Lines that stand behind others: between ink and paper, and still told from the paper. */
    public static Color pale() {
        return mixed(0.6);
    }

    /** A shade of the paper for what is filled in; nothing is told by it alone. */
    public static Color shade() {
        return mixed(0.2);
    }

    private static Color mixed(double ink) {
        Color text = text();
        Color ground = ground();
        return new Color(mixed(text.getRed(), ground.getRed(), ink), mixed(text.getGreen(), ground.getGreen(), ink),
                mixed(text.getBlue(), ground.getBlue(), ink));
    }

    private static int mixed(int ink, int paper, double share) {
        return (int) Math.round(share * ink + (1 - share) * paper);
    }

    /** A veil over what stands behind, on black as on white; what it covers has an outline besides. */
    public static Color veil() {
        return veil(text());
    }

    /** The same of another ink, as of a picture to be printed. */
    public static Color veil(Color ink) {
        return new Color(ink.getRed(), ink.getGreen(), ink.getBlue(), VEIL);
    }

    public static Color text() {
        return UIManager.getColor("Label.foreground");
    }

    public static Color ground() {
        return UIManager.getColor("Panel.background");
    }

    public static JLabel label(String text, double factor, int style) {
        JLabel label = InertText.in(new JLabel());
        label.setText(text);
        label.setFont(font(factor, style));
        return label;
    }

    public static JLabel heading(String text) {
        return label(text, HEADING, Font.BOLD);
    }

    /** A figure in large type, right-aligned. */
    public static JLabel figure(String text) {
        JLabel label = label(text, FIGURE, Font.BOLD);
        label.setHorizontalAlignment(SwingConstants.RIGHT);
        return label;
    }

    /**
     * A button with the mnemonic marked by an ampersand in its text.
     */
    public static JButton button(String textWithMnemonic, Runnable action) {
        JButton button = InertText.in(new JButton());
        Mnemonics.setLocalizedText(button, textWithMnemonic);
        button.addActionListener(e -> action.run());
        enterPresses(button);
        return button;
    }

    private static void enterPresses(JButton button) {
        button.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0, false), "pressed");
        button.getInputMap(JComponent.WHEN_FOCUSED).put(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0, true), "released");
    }

    /** Runs something on a key while the focus is inside the component. */
    public static void onKey(JComponent where, KeyStroke key, String name, Runnable action) {
        where.getInputMap(JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(key, name);
        where.getActionMap().put(name, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                action.run();
            }
        });
    }

    /** Components one under the other, each as wide as the panel. */
    public static JPanel column(Component... parts) {
        JPanel panel = new JPanel();
        panel.setLayout(new BoxLayout(panel, BoxLayout.PAGE_AXIS));
        for (Component part : parts) {
            if (part instanceof JComponent component) {
                component.setAlignmentX(Component.LEFT_ALIGNMENT);
            }
            panel.add(part);
        }
        return panel;
    }

    /** Two columns of a stage window, the left one wide enough for fields with their targets and verdicts. */
    public static JPanel twoColumns(JComponent left, JComponent right) {
        return twoColumns(left, right, 0.55);
    }

    /**
     * Two columns.
     *
     * @param leftShare share of the width the left one takes, 0 to 1
     */
    public static JPanel twoColumns(JComponent left, JComponent right, double leftShare) {
        JPanel panel = new JPanel(new TwoColumns(leftShare));
        panel.add(left);
        panel.add(right);
        return panel;
    }

    /** A field for a figure; it never gets narrower than its columns, however long the words beside it. */
    public static JTextField field(int columns, double factor, int style) {
        JTextField field = new JTextField(columns) {
            private static final long serialVersionUID = 1L;

            @Override
            public Dimension getMinimumSize() {
                return getPreferredSize();
            }
        };
        field.setFont(font(factor, style));
        return field;
    }

    /** A list keeps the heights of its lines; where their words wrap, they depend on its width. */
    public static void measureLinesWithWidth(JList<?> list) {
        list.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent e) {
                list.setFixedCellHeight(1);
                list.setFixedCellHeight(-1);
            }
        });
    }

    /** Scrolls the part of the window a field stands in into sight, or at least the field where the part is too high for that. */
    public static void reveal(JComponent field) {
        InSight.bring(field);
    }

    static boolean isSection(JComponent part) {
        return part.getClientProperty(SECTION) != null;
    }

    /** A heading over a part of a window. */
    public static JPanel section(String heading, JComponent content) {
        JPanel panel = new JPanel(new BorderLayout(0, em(0.4)));
        panel.add(heading(heading), BorderLayout.NORTH);
        panel.add(content, BorderLayout.CENTER);
        panel.setBorder(padding(0.6, 0.9));
        panel.getAccessibleContext().setAccessibleName(heading);
        panel.putClientProperty(SECTION, true);
        return panel;
    }

    /** A cell of a grid: column, row, and what share of spare width it takes. */
    public static GridBagConstraints cell(int column, int row, double weight) {
        return new GridBagConstraints(column, row, 1, 1, weight, 0, GridBagConstraints.BASELINE_LEADING,
                weight > 0 ? GridBagConstraints.HORIZONTAL : GridBagConstraints.NONE,
                new Insets(em(0.15), em(0.2), em(0.15), em(0.6)), 0, 0);
    }

    /** A cell of a table with many columns. */
    public static GridBagConstraints closeCell(int column, int row, double weight) {
        GridBagConstraints cell = cell(column, row, weight);
        cell.insets = new Insets(em(0.1), em(0.1), em(0.1), em(0.35));
        return cell;
    }

    /** Adds a page to tabs. @param text its title; the letter behind an ampersand brings it to the front */
    public static void tab(JTabbedPane tabs, String text, Component page) {
        int mark = Mnemonics.findMnemonicAmpersand(text);
        tabs.addTab(mark < 0 ? text : text.substring(0, mark) + text.substring(mark + 1), page);
        if (mark >= 0) {
            tabs.setMnemonicAt(tabs.getTabCount() - 1, KeyEvent.getExtendedKeyCodeForChar(text.charAt(mark + 1)));
        }
    }
}
