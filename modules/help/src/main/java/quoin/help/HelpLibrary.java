package quoin.help;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The pages in their order, in the language of the application where it has them, otherwise in English. */
record HelpLibrary(List<HelpPage> pages) {

    private static final String FOLDER = "pages/";

    HelpLibrary {
        pages = List.copyOf(pages);
    }

    static HelpLibrary installed(Locale locale) {
        List<String> ids = read(FOLDER + "index.txt").orElseThrow().lines().filter(line -> !line.isBlank()).toList();
        return new HelpLibrary(ids.stream().map(id -> HelpPage.of(id, source(id, locale))).toList());
    }

    private static String source(String id, Locale locale) {
        return read(FOLDER + locale.getLanguage() + "/" + id + ".html").or(() -> read(FOLDER + id + ".html")).orElseThrow();
    }

    private static Optional<String> read(String name) {
        try (InputStream stream = HelpLibrary.class.getResourceAsStream(name)) {
            return stream == null ? Optional.empty() : Optional.of(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Optional<HelpPage> page(String id) {
        return pages.stream().filter(p -> p.id().equals(id)).findFirst();
    }

    /** Pages that hold every word, the one with most of them first; all in their own order where nothing is looked for. */
    List<HelpPage> find(String query) {
        if (query.isBlank()) {
            return pages;
        }
        return pages.stream().filter(p -> p.hits(query) > 0).sorted(Comparator.comparingInt((HelpPage p) -> -p.hits(query))).toList();
    }
}
