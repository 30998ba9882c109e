package quoin.application;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.awt.Color;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import javax.swing.LookAndFeel;
import javax.swing.UIDefaults;
import javax.swing.UIManager;
import javax.swing.UnsupportedLookAndFeelException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quoin.workbench.Looks;

/**
 * Contrast by WCAG 2.2: text 4.5:1 or better (success criterion 1.4.3), edges of fields, marks and lines 3:1 or better (1.4.11),
 * in the light and in the dark look, with the platform's colours and ours on top.
 */
class ContrastTest {

    private static final double TEXT = 4.5;
    private static final double MARK = 3;
    private static final String PLATFORM = "org.netbeans.swing.laf.flatlaf";
    private static final String OURS = "quoin.workbench.theme";

    /** Letters on their ground, as they occur in the windows. */
    private static final List<String> LETTERS = List.of(
            "Label.foreground on Panel.background", "Label.foreground on OptionPane.background",
            "Label.disabledForeground on Panel.background", "Button.foreground on Button.background",
            "Button.default.foreground on Button.default.background", "Button.disabledText on Button.disabledBackground",
            "ToggleButton.foreground on ToggleButton.background", "ToggleButton.selectedForeground on ToggleButton.selectedBackground",
            "TextField.foreground on TextField.background", "TextField.inactiveForeground on TextField.disabledBackground",
            "TextField.placeholderForeground on TextField.background",
            "TextField.selectionForeground on TextField.selectionBackground",
            "TextArea.foreground on TextArea.background", "TextArea.inactiveForeground on TextArea.background",
            "EditorPane.foreground on Panel.background", "FormattedTextField.foreground on FormattedTextField.background",
            "Spinner.foreground on Spinner.background", "ComboBox.foreground on ComboBox.background",
            "ComboBox.selectionForeground on ComboBox.selectionBackground", "CheckBox.foreground on Panel.background",
            "RadioButton.foreground on Panel.background", "List.foreground on List.background",
            "List.selectionForeground on List.selectionBackground",
            "List.selectionInactiveForeground on List.selectionInactiveBackground", "Table.foreground on Table.background",
            "Table.selectionForeground on Table.selectionBackground",
            "Table.selectionInactiveForeground on Table.selectionInactiveBackground",
            "TableHeader.foreground on TableHeader.background", "Tree.foreground on Tree.background",
            "Menu.foreground on MenuBar.background", "MenuItem.foreground on MenuItem.background",
            "MenuItem.selectionForeground on MenuItem.selectionBackground", "MenuItem.disabledForeground on MenuItem.background",
            "MenuItem.acceleratorForeground on MenuItem.background",
            "MenuItem.acceleratorSelectionForeground on MenuItem.selectionBackground", "ToolTip.foreground on ToolTip.background",
            "TabbedPane.foreground on TabbedPane.background", "TitledBorder.titleColor on Panel.background",
            "EditorTab.foreground on EditorTab.background", "EditorTab.activeForeground on EditorTab.activeBackground",
            "EditorTab.selectedForeground on EditorTab.selectedBackground", "EditorTab.hoverForeground on EditorTab.hoverBackground",
            "EditorTab.attentionForeground on EditorTab.attentionBackground", "ViewTab.foreground on ViewTab.background",
            "ViewTab.activeForeground on ViewTab.activeBackground", "ViewTab.selectedForeground on ViewTab.selectedBackground",
            "Component.linkColor on Panel.background", "nb.errorForeground on Panel.background",
            "nb.warningForeground on Panel.background");

    private static final List<String> MARKS = List.of(
            "Component.borderColor on Panel.background", "Component.borderColor on TextField.background",
            "Component.focusedBorderColor on Panel.background", "Component.focusedBorderColor on TextField.background",
            "Component.focusColor on Panel.background", "Component.error.borderColor on Panel.background",
            "Component.error.focusedBorderColor on Panel.background", "Component.error.focusedBorderColor on TextField.background",
            "Component.warning.borderColor on Panel.background", "Component.warning.focusedBorderColor on Panel.background",
            "Button.borderColor on Panel.background", "CheckBox.icon.borderColor on Panel.background",
            "CheckBox.icon.checkmarkColor on CheckBox.icon.background", "ComboBox.buttonArrowColor on ComboBox.background",
            "ScrollBar.thumb on ScrollBar.track", "ProgressBar.foreground on ProgressBar.background",
            "TabbedPane.underlineColor on TabbedPane.background");

    /** Where a colour is made: of the theme's own, or black and white for paper and for the seat. */
    private static final Set<String> MAKERS = Set.of("Looks.java", "Charts.java", "Ink.java", "GeometryPainter.java", "TrendChart.java",
            "SeatPanel.java", "Painter.java", "PagePanel.java");
    private static final Pattern MADE = Pattern.compile("new Color\\(|\\bColor\\.[A-Z][A-Za-z]+\\b|setBackground\\(0x");

    @ParameterizedTest
    @ValueSource(strings = {"light", "dark"})
    void everyTextAndMarkHasContrast(String look) throws UnsupportedLookAndFeelException {
        List<String> poor = new ArrayList<>();
        UIDefaults colours = withOurs(() -> laf(look).getDefaults());
        LETTERS.forEach(pair -> check(colours, pair, TEXT, poor));
        MARKS.forEach(pair -> check(colours, pair, MARK, poor));
        assertEquals(List.of(), poor);
    }

    /** Our own colours are mixed from the theme's: what they draw is a mark, and letters stand on shade and veil. */
    @ParameterizedTest
    @ValueSource(strings = {"light", "dark"})
    void ourOwnColoursHaveContrast(String look) throws UnsupportedLookAndFeelException {
        LookAndFeel before = UIManager.getLookAndFeel();
        List<String> poor = new ArrayList<>();
        try {
            withOurs(() -> {
                UIManager.setLookAndFeel(laf(look));
                return check(poor);
            });
        } finally {
            UIManager.setLookAndFeel(before);
        }
        assertEquals(List.of(), poor);
    }

    private static boolean check(List<String> poor) {
        check("line on ground", Looks.line(), Looks.ground(), MARK, poor);
        check("pale on ground", Looks.pale(), Looks.ground(), MARK, poor);
        check("text on ground", Looks.text(), Looks.ground(), TEXT, poor);
        check("text on shade", Looks.text(), Looks.shade(), TEXT, poor);
        check("text on veil", Looks.text(), over(Looks.veil(), Looks.ground()), TEXT, poor);
        return poor.isEmpty();
    }

    @Test
    void noColourIsMadeElsewhere() {
        Set<String> makers = new TreeSet<>();
        Tree.files().stream().filter(f -> f.toString().endsWith(".java") && f.toString().contains("/src/main/java/"))
                .filter(f -> MADE.matcher(Tree.text(f)).find()).map(Path::getFileName).forEach(f -> makers.add(f.toString()));
        assertEquals(new TreeSet<>(MAKERS), makers);
    }

    /** Black and white is 21:1, and a grey of 119 on white 4.48:1 (examples of the formula in WCAG 2.2). */
    @Test
    void theFormulaIsTheOneOfTheStandard() {
        assertEquals(21, ratio(Color.BLACK, Color.WHITE), 1e-9);
        assertEquals(4.48, ratio(new Color(0x777777), Color.WHITE), 0.005);
        assertEquals(4.54, ratio(new Color(0x767676), Color.WHITE), 0.005);
    }

    private interface Work<T> {
        T run() throws UnsupportedLookAndFeelException;
    }

    private static FlatLaf laf(String look) {
        return look.equals("dark") ? new FlatDarkLaf() : new FlatLightLaf();
    }

    /** With the platform's colours and ours on top, as in the application. */
    private static <T> T withOurs(Work<T> work) throws UnsupportedLookAndFeelException {
        FlatLaf.registerCustomDefaultsSource(PLATFORM);
        FlatLaf.registerCustomDefaultsSource(OURS);
        try {
            return work.run();
        } finally {
            FlatLaf.unregisterCustomDefaultsSource(OURS);
            FlatLaf.unregisterCustomDefaultsSource(PLATFORM);
        }
    }

    private static void check(UIDefaults colours, String pair, double least, List<String> poor) {
        String[] names = pair.split(" on ");
        check(pair, colours.getColor(names[0]), colours.getColor(names[1]), least, poor);
    }

    private static void check(String words, Color ink, Color ground, double least, List<String> poor) {
        assertTrue(ground != null, words + ": no ground");
        if (ink == null) {
            poor.add(words + ": no colour");
        } else if (ratio(over(ink, ground), ground) < least) {
            poor.add(String.format(Locale.ROOT, "%s: %.2f, least %.1f", words, ratio(over(ink, ground), ground), least));
        }
    }

    private static Color over(Color ink, Color ground) {
        double share = ink.getAlpha() / 255.0;
        return new Color((int) Math.round(share * ink.getRed() + (1 - share) * ground.getRed()),
                (int) Math.round(share * ink.getGreen() + (1 - share) * ground.getGreen()),
                (int) Math.round(share * ink.getBlue() + (1 - share) * ground.getBlue()));
    }

    /** Contrast ratio of WCAG 2.2. */
    private static double ratio(Color one, Color other) {
        double a = luminance(one) + 0.05;
        double b = luminance(other) + 0.05;
        return Math.max(a, b) / Math.min(a, b);
    }

    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed()) + 0.7152 * linear(colour.getGreen()) + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(int part) {
        double share = part / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
