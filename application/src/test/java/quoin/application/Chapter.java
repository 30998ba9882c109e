package quoin.application;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The files that a chapter of DEVELOPERS.md shows: a paragraph that begins with a file's name, and the fenced text under it. */
final class Chapter {

    private static final Pattern SHOWN = Pattern.compile("^`([\\w./-]+)`:[^\\n]*(?:\\n[^\\n]+)*\\n\\n```\\w+\\n(.*?)^```$",
            Pattern.DOTALL | Pattern.MULTILINE);

    private final Map<String, String> files = new LinkedHashMap<>();

    /** @param title of the chapter, as in its heading */
    Chapter(String title) {
        String text = Tree.text(Tree.TOP.resolve("DEVELOPERS.md"));
        String start = "\n## " + title + "\n";
        if (!text.contains(start)) {
            throw new AssertionError("DEVELOPERS.md has no chapter '" + title + "'");
        }
        String chapter = text.substring(text.indexOf(start) + start.length()).split("\n## ", 2)[0];
        Matcher shown = SHOWN.matcher(chapter);
        while (shown.find()) {
            files.put(shown.group(1), shown.group(2));
        }
    }

    /** File name to text, in the order of the chapter. */
    Map<String, String> files() {
        return files;
    }

    /** Writes the files into a folder. */
    void write(Path folder) {
        files.forEach((name, text) -> {
            try {
                Path file = folder.resolve(name);
                Files.createDirectories(file.getParent());
                Files.writeString(file, text, StandardCharsets.UTF_8);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }
}
