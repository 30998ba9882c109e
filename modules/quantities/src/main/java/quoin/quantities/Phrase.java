package quoin.quantities;

import java.util.List;
import java.util.Locale;
import java.util.function.Function;

/**
 * A text with its arguments, not yet said: in the language of the program where a person reads it, in English where it goes
 * into a file or an answer that must not depend on the language. Arguments may be phrases themselves, or exceptions.
 */
public final class Phrase {
    private final Function<Locale, String> words;

    private Phrase(Function<Locale, String> words) {
        this.words = words;
    }

    Phrase(Texts texts, String key, List<Object> arguments) {
        this(language -> texts.in(language, key, arguments));
    }

    /** Words that are the same in every language: those of a module from outside that speaks only one. */
    public static Phrase same(String words) {
        return new Phrase(language -> words);
    }

    public String english() {
        return in(Locale.ROOT);
    }

    String in(Locale language) {
        return words.apply(language);
    }

    /** Said in the language of the program. */
    @Override
    public String toString() {
        return in(Locale.getDefault());
    }
}
