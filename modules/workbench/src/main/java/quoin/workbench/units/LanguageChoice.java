package quoin.workbench.units;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.Properties;
import javax.swing.JComponent;
import quoin.car.CornerNames;
import quoin.quantities.Texts;

/**
 * The language of the program and the names of the corners, as chosen for the next start. Kept in a file of its own in the
 * user folder, because it is read before the platform's settings can be.
 *
 * @param language code such as {@code de}; empty = as the computer
 * @param corners  empty = as the language has them
 */
record LanguageChoice(Optional<String> language, Optional<CornerNames> corners) {

    /** As the computer has it. */
    static final LanguageChoice USUAL = new LanguageChoice(Optional.empty(), Optional.empty());
    private static final String LANGUAGE = "language";
    private static final String CORNERS = "corners";

    /** The file in a user folder. */
    static Path file(Path userFolder) {
        return userFolder.resolve("etc").resolve("language.properties");
    }

    /** What is kept there; {@link #USUAL} where there is none or it cannot be read, a language that is not installed left out. */
    static LanguageChoice load(Path file) {
        Properties kept = new Properties();
        if (Files.exists(file)) {
            try (Reader in = Files.newBufferedReader(file)) {
                kept.load(in);
            } catch (IOException | IllegalArgumentException e) {
                return USUAL;
            }
        }
        Optional<CornerNames> names = Optional.empty();
        for (CornerNames each : CornerNames.values()) {
            if (each.name().equals(kept.getProperty(CORNERS))) {
                names = Optional.of(each);
            }
        }
        return new LanguageChoice(Optional.ofNullable(kept.getProperty(LANGUAGE)).filter(Texts::speaks), names);
    }

    /** @throws IOException where the folder cannot be written to */
    void save(Path file) throws IOException {
        Properties kept = new Properties();
        language.ifPresent(code -> kept.setProperty(LANGUAGE, code));
        corners.ifPresent(names -> kept.setProperty(CORNERS, names.name()));
        Files.createDirectories(file.getParent());
        try (Writer out = Files.newBufferedWriter(file)) {
            kept.store(out, null);
        }
    }

    /** Takes effect for everything that is said from now on. */
    void apply() {
        language.ifPresent(code -> {
            Locale locale = locale(code);
            Locale.setDefault(locale);
            JComponent.setDefaultLocale(locale);
        });
        corners.ifPresent(names -> System.setProperty(CornerNames.PROPERTY, names.name()));
    }

    /** The computer's own country where it speaks the language, so that a British computer keeps its ways. */
    private static Locale locale(String code) {
        Locale own = Locale.getDefault();
        return own.getLanguage().equals(code) ? own : Locale.forLanguageTag(code);
    }
}
