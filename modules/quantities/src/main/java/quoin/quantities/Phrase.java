package quoin.quantities;

import java.util.List;
import java.util.Locale;

/**
 * A text with its arguments, not yet said: in the language of the program where a person reads it, in English where it goes
 * into a file or an answer that must not depend on the language. Arguments may be phrases themselves, or exceptions.
 */
public final class Phrase {
    private final Texts texts;
    private final String key;
    private final List<Object> arguments;

    Phrase(Texts texts, String key, List<Object> arguments) {
        this.texts = texts;
        this.key = key;
        this.arguments = arguments;
    }

    public String english() {
        return in(Locale.ROOT);
    }

    String in(Locale language) {
        return texts.in(language, key, arguments);
    }

    /** Said in the language of the program. */
    @Override
    public String toString() {
        return in(Locale.getDefault());
    }
}
