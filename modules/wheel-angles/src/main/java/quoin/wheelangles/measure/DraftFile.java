package quoin.wheelangles.measure;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;

/**
 * What is typed in the measuring forms and not recorded yet, in a file beside the day's journal, so that a closed lid or a flat
 * battery costs nothing. It holds no reading: those are in the journal.
 *
 * @param folder the day's folder
 */
public record DraftFile(Path folder) {

    /** Name of the file in a day's folder. */
    public static final String FILE = "measuring-draft.properties";

    /**
     * What was typed, per way of measuring and key.
     *
     * @throws IOException where the file is there and cannot be read
     */
    public Map<String, Map<String, String>> read() throws IOException {
        Map<String, Map<String, String>> found = new TreeMap<>();
        Path file = folder.resolve(FILE);
        if (!Files.exists(file)) {
            return found;
        }
        Properties properties = new Properties();
        try (Reader in = new StringReader(Files.readString(file))) {
            properties.load(in);
        } catch (IllegalArgumentException e) {
            throw new IOException(e.getLocalizedMessage(), e);
        }
        for (String name : properties.stringPropertyNames()) {
            int slash = name.indexOf('/');
            if (slash > 0) {
                found.computeIfAbsent(name.substring(0, slash), m -> new LinkedHashMap<>()).put(name.substring(slash + 1),
                        properties.getProperty(name));
            }
        }
        return found;
    }

    /**
     * Replaces the file; a half-written one never takes its place.
     *
     * @throws IOException where it cannot be written
     */
    public void write(Map<String, Map<String, String>> typed) throws IOException {
        Properties properties = new Properties();
        typed.forEach((method, texts) -> texts.forEach((key, text) -> properties.setProperty(method + "/" + key, text)));
        StringWriter text = new StringWriter();
        properties.store(text, "Typed in the measuring forms, not recorded yet");
        Path fresh = folder.resolve(FILE + ".new");
        Files.writeString(fresh, text.toString());
        Files.move(fresh, folder.resolve(FILE), StandardCopyOption.REPLACE_EXISTING);
    }
}
