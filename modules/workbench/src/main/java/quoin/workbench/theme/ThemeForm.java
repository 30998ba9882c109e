package quoin.workbench.theme;

import java.awt.BorderLayout;
import java.util.EnumMap;
import java.util.Map;
import javax.swing.ButtonGroup;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import org.openide.awt.Mnemonics;
import org.openide.util.NbBundle.Messages;
import quoin.workbench.Looks;

/** Three looks to choose from. */
@Messages({
    "theme.light=&Light: dark letters on a light ground",
    "theme.dark=&Dark: light letters on a dark ground",
    "theme.system=As the &system is set when Quoin starts"})
final class ThemeForm extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Map<Theme, JRadioButton> buttons = new EnumMap<>(Theme.class);

    ThemeForm(Theme now) {
        super(new BorderLayout());
        ButtonGroup group = new ButtonGroup();
        for (Theme theme : Theme.values()) {
            JRadioButton button = new JRadioButton();
            Mnemonics.setLocalizedText(button, words(theme));
            button.setSelected(theme == now);
            group.add(button);
            buttons.put(theme, button);
        }
        add(Looks.column(buttons.values().toArray(JRadioButton[]::new)), BorderLayout.CENTER);
        setBorder(Looks.padding(1, 1));
    }

    private static String words(Theme theme) {
        return switch (theme) {
            case LIGHT -> Bundle.theme_light();
            case DARK -> Bundle.theme_dark();
            case SYSTEM -> Bundle.theme_system();
        };
    }

    Theme chosen() {
        return buttons.entrySet().stream().filter(e -> e.getValue().isSelected()).findFirst().orElseThrow().getKey();
    }
}
