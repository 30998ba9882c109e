package quoin.workbench.start;

import org.openide.modules.ModuleInstall;
import quoin.workbench.theme.ThemeAtStart;
import quoin.workbench.units.LanguageAtStart;

/** Settles the look before the platform makes its first window, and the language before it makes its first menu. */
public final class BeforeTheWindow extends ModuleInstall {

    private static final long serialVersionUID = 1L;

    @Override
    public void validate() {
        ThemeAtStart.settle();
        LanguageAtStart.settle();
    }
}
