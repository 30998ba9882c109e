package quoin.workbench.units;

import java.io.File;
import org.openide.modules.Places;

/**
 * Speaks the chosen language and names the corners as chosen. A language named on the command line, {@code --locale de}, goes
 * before the one that was chosen.
 */
public final class LanguageAtStart {

    private LanguageAtStart() {
    }

    /** Called while the modules are looked at, before the first menu is made. */
    public static void settle() {
        File userFolder = Places.getUserDirectory();
        if (userFolder != null) {
            LanguageChoice choice = LanguageChoice.load(LanguageChoice.file(userFolder.toPath()));
            boolean named = System.getProperty("sun.java.command", "").contains("--locale");
            (named ? new LanguageChoice(LanguageChoice.USUAL.language(), choice.corners()) : choice).apply();
        }
    }
}
