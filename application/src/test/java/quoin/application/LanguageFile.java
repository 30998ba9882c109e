package quoin.application;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import quoin.application.Languages.Bundle;

/**
 * A language as one file: every text of every module, and what the platform says in our windows, under {@code bundle/key}, the
 * English above each as a comment. Without more it writes the file, what is translated already filled in; with {@code back} it puts the texts of the file beside the
 * English ones. Not a test: {@code application/src/bench/language}.
 */
public final class LanguageFile {

    private final String language;
    private final Path file;

    private LanguageFile(String language, Path file) {
        this.language = language;
        this.file = file;
    }

    /** Arguments: code of the language, the file, and {@code back} to take the file apart again. */
    public static void main(String[] arguments) throws IOException {
        LanguageFile one = new LanguageFile(arguments[0], Path.of(arguments[1]).toAbsolutePath());
        if (arguments.length > 2 && arguments[2].equals("back")) {
            one.takeApart();
        } else {
            one.write();
        }
    }

    private static List<Bundle> all() {
        return Stream.concat(Languages.bundles().stream(), Languages.ofThePlatform().stream()).toList();
    }

    private void write() throws IOException {
        List<String> lines = new ArrayList<>();
        int missing = 0;
        for (Bundle bundle : all()) {
            Map<String, String> translated = bundle.in(language).orElse(Map.of());
            for (Map.Entry<String, String> text : bundle.english().entrySet()) {
                lines.add("# " + text.getValue().replace("\n", " "));
                lines.add(key(bundle.name() + "/" + text.getKey()) + "=" + line(translated.getOrDefault(text.getKey(), "")));
                missing += translated.containsKey(text.getKey()) ? 0 : 1;
            }
        }
        Files.write(file, lines);
        System.out.println(file + ": " + lines.size() / 2 + " texts, " + missing + " to be translated");
    }

    private void takeApart() throws IOException {
        Map<String, String> all = Languages.read(file);
        Set<String> unknown = new TreeSet<>(all.keySet());
        for (Bundle bundle : all()) {
            Map<String, String> texts = new TreeMap<>();
            for (String key : bundle.english().keySet()) {
                String name = bundle.name() + "/" + key;
                unknown.remove(name);
                if (!all.getOrDefault(name, "").isBlank()) {
                    texts.put(key, all.get(name));
                }
            }
            if (!texts.isEmpty()) {
                Path target = bundle.source(language);
                Files.createDirectories(target.getParent());
                Files.write(target, texts.entrySet().stream().map(t -> key(t.getKey()) + "=" + line(t.getValue())).toList());
            }
        }
        unknown.forEach(name -> System.out.println(name + " is no text of this program"));
    }

    /** A key as a properties file holds it. */
    private static String key(String key) {
        return key.replace(" ", "\\ ").replace(":", "\\:").replace("=", "\\=");
    }

    /** A text as a properties file holds it. */
    private static String line(String text) {
        String escaped = text.replace("\\", "\\\\").replace("\n", "\\n");
        return escaped.startsWith(" ") ? "\\" + escaped : escaped;
    }
}
