package quoin.workbench.theme;

import java.awt.GraphicsEnvironment;
import java.util.prefs.Preferences;
import org.openide.modules.ModuleInstall;
import org.openide.util.NbPreferences;

/** Tells the platform the look before it makes the first window: the chosen one, the system's where that is the choice, else light. */
public final class ThemeInstall extends ModuleInstall {

    private static final long serialVersionUID = 1L;

    @Override
    public void validate() {
        if (!GraphicsEnvironment.isHeadless()) {
            Preferences node = NbPreferences.root().node(Theme.LAF);
            Theme chosen = Theme.chosen(node);
            chosen.keep(node, chosen == Theme.SYSTEM && SystemTheme.isDark());
        }
    }
}
