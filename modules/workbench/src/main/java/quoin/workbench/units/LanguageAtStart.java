package quoin.workbench.units;

import java.io.File;
import org.openide.modules.ModuleInstall;
import org.openide.modules.Places;
import quoin.workbench.theme.ThemeAtStart;

/**
 * Sets the look before the first window and the language before the first menu is made. A language named on the command line, {@code --locale de}, goes before the
 * one that was chosen.
 */
public final class LanguageAtStart extends ModuleInstall {

    private static final long serialVersionUID = 1L;

    @Override
    public void validate() {
        ThemeAtStart.settle();
        File userFolder = Places.getUserDirectory();
        if (userFolder != null) {
            LanguageChoice choice = LanguageChoice.load(LanguageChoice.file(userFolder.toPath()));
            boolean named = System.getProperty("sun.java.command", "").contains("--locale");
            (named ? new LanguageChoice(LanguageChoice.USUAL.language(), choice.corners()) : choice).apply();
        }
    }
}
