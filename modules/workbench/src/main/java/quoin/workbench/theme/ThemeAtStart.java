package quoin.workbench.theme;

import java.awt.GraphicsEnvironment;
import java.util.prefs.Preferences;
import org.openide.util.NbPreferences;

/** Tells the platform the look before it makes the first window: the chosen one, the system's where that is the choice, else light. */
public final class ThemeAtStart {

    private ThemeAtStart() {
    }

    /** Called while the modules are looked at, before the platform takes its look. */
    public static void settle() {
        if (!GraphicsEnvironment.isHeadless()) {
            Preferences node = NbPreferences.root().node(Theme.LAF);
            Theme chosen = Theme.chosen(node);
            chosen.keep(node, chosen == Theme.SYSTEM && SystemTheme.isDark());
        }
    }
}
