package quoin.quantities;

import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.stream.Stream;

/**
 * The texts of one package of a module without windows: {@code Bundle.properties} beside its classes holds the English,
 * {@code Bundle_de.properties} the German, and so on. Said in the language of the program, {@link Locale#getDefault()}; a text
 * that is not there in that language is said in English. A text with arguments is a {@link MessageFormat}, so its apostrophes
 * are doubled; one without is taken as it stands.
 */
public final class Texts {

    /** English is what the language asked for falls back to, never the language of the computer. */
    private static final ResourceBundle.Control NO_FALLBACK =
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

    private final Class<?> home;

    private Texts(Class<?> home) {
        this.home = home;
    }

    /** The texts of the package of a class. */
    public static Texts of(Class<?> home) {
        return new Texts(home);
    }

    /**
     * A text in the language of the program.
     *
     * @param arguments a phrase is said in the language, an exception tells its message, a {@code Double} gets the decimal mark;
     *                  anything else is shown as it is
     * @throws java.util.MissingResourceException where the English has no such text
     */
    public String say(String key, Object... arguments) {
        return in(Locale.getDefault(), key, List.of(arguments));
    }

    /** A text that can be said in the language of the program and in English. */
    public Phrase phrase(String key, Object... arguments) {
        return new Phrase(this, key, List.of(arguments));
    }

    String in(Locale language, String key, List<Object> arguments) {
        String text = ResourceBundle.getBundle(home.getPackageName() + ".Bundle", language, home.getClassLoader(), NO_FALLBACK)
                .getString(key);
        if (arguments.isEmpty()) {
            return text;
        }
        return new MessageFormat(text, language).format(arguments.stream().map(argument -> said(language, argument)).toArray());
    }

    private static String said(Locale language, Object argument) {
        if (argument instanceof Phrase phrase) {
            return phrase.in(language);
        }
        if (argument instanceof Throwable problem) {
            return language.equals(Locale.ROOT) ? problem.getMessage() : problem.getLocalizedMessage();
        }
        String text = String.valueOf(argument);
        return argument instanceof Double ? text.replace(".", of(Texts.class).in(language, "decimal.mark", List.of())) : text;
    }

    /** Codes of the languages that there are texts in, English first. */
    public static List<String> languages() {
        List<String> languages = new ArrayList<>(List.of(Locale.ENGLISH.getLanguage()));
        Stream.of(Locale.getISOLanguages()).filter(code -> !languages.contains(code) && speaks(code)).forEach(languages::add);
        return List.copyOf(languages);
    }

    /** True where there are texts in a language: it has a file beside the texts of this package, or is English. */
    public static boolean speaks(String code) {
        return code.equals(Locale.ENGLISH.getLanguage()) || Texts.class.getResource("Bundle_" + code + ".properties") != null;
    }

    /** Words as they begin a sentence or a line. */
    public static String sentence(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /** A figure as {@link String#format} writes it, with the decimal mark of the language. */
    public static String figure(String format, Object... figures) {
        String mark = of(Texts.class).say("decimal.mark");
        return String.format(Locale.ROOT, format, figures).replace(".", mark);
    }
}
