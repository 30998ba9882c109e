package quoin.garage.draft;

import java.text.MessageFormat;
import java.util.MissingResourceException;
import java.util.stream.Stream;
import org.openide.util.NbBundle;
import quoin.car.Corner;

/** The form's words. */
final class Texts {

    private Texts() {
    }

    static String of(String key, Object... parts) {
        return parts.length == 0 ? NbBundle.getMessage(Texts.class, key) : NbBundle.getMessage(Texts.class, key, parts);
    }

    /** Empty where there are none; corners in it are {0} to {3}. */
    static String orNothing(String key) {
        try {
            String text = NbBundle.getMessage(Texts.class, key);
            return text.contains("{") ? MessageFormat.format(text, Stream.of(Corner.values()).map(Corner::words).toArray()) : text;
        } catch (MissingResourceException e) {
            return "";
        }
    }
}
