package quoin.garage.draft;

import java.util.MissingResourceException;
import org.openide.util.NbBundle;

/** The form's words. */
final class Texts {

    private Texts() {
    }

    static String of(String key, Object... parts) {
        return parts.length == 0 ? NbBundle.getMessage(Texts.class, key) : NbBundle.getMessage(Texts.class, key, parts);
    }

    /** Empty where there are none. */
    static String orNothing(String key) {
        try {
            return NbBundle.getMessage(Texts.class, key);
        } catch (MissingResourceException e) {
            return "";
        }
    }
}
