package quoin.application;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** The bundles of texts of every built module: English ones and those of the other languages beside them. */
final class Languages {

    private static final String ENDING = ".properties";
    private static final String BRANDING = "branding";
    private static final Pattern OTHER = Pattern.compile("([A-Z][A-Za-z]*)_([a-z]{2,3}(?:_[A-Z]{2})?)\\.properties");
    /** The colours of a look are no texts. */
    private static final Pattern ENGLISH = Pattern.compile("(?!Flat[A-Za-z]*Laf\\.)[A-Z][A-Za-z]*\\.properties");

    /**
     * One bundle of English texts.
     *
     * @param module folder of the module
     * @param file   the built file
     * @param name   as code names it, such as {@code quoin.workbench.order.Bundle}
     */
    record Bundle(String module, Path file, String name, Map<String, String> english) {

        /** Texts in another language; empty where there is no file. */
        Optional<Map<String, String>> in(String language) {
            String base = file.getFileName().toString().replace(ENDING, "");
            Path other = file.resolveSibling(base + "_" + language + ENDING);
            return Files.exists(other) ? Optional.of(read(other)) : Optional.empty();
        }

        /** Where its source in another language stands. */
        Path source(String language) {
            String last = "_" + language + ENDING;
            return module.equals(BRANDING) ? file.resolveSibling(file.getFileName().toString().replace(ENDING, last))
                    : Tree.TOP.resolve("modules").resolve(module).resolve("src/main/resources").resolve(name.replace('.', '/') + last);
        }
    }

    private Languages() {
    }

    /** Languages besides English, as their files name them: found, not listed, so that a new one is tested from its first file. */
    static Set<String> others() {
        return Tree.moduleFolders().stream().flatMap(module -> files(classes(module)).stream())
                .map(file -> OTHER.matcher(file.getFileName().toString())).filter(Matcher::matches)
                .map(found -> found.group(2)).collect(Collectors.toCollection(TreeSet::new));
    }

    static List<Bundle> bundles() {
        return Tree.moduleFolders().stream().flatMap(module -> files(classes(module)).stream()
                .filter(file -> ENGLISH.matcher(file.getFileName().toString()).matches())
                .map(file -> new Bundle(module, file, name(classes(module).relativize(file)), read(file)))).toList();
    }

    /**
     * The platform's own words that this program shows: the keys are those that German has, the English is the branding's, or the
     * platform's own where that changes nothing.
     */
    static List<Bundle> ofThePlatform() {
        Path root = Tree.TOP.resolve(BRANDING).resolve("src/main/nbm-branding");
        List<Bundle> bundles = new ArrayList<>();
        for (Path german : files(root)) {
            Matcher other = OTHER.matcher(german.getFileName().toString());
            if (other.matches() && other.group(2).equals("de")) {
                Path english = german.resolveSibling(other.group(1) + ENDING);
                Map<String, String> texts = new TreeMap<>(platform(root.relativize(english).toString().replace('\\', '/')));
                if (Files.exists(english)) {
                    texts.putAll(read(english));
                }
                texts.keySet().retainAll(read(german).keySet());
                bundles.add(new Bundle(BRANDING, english, name(root.relativize(english)), texts));
            }
        }
        return bundles;
    }

    private static Map<String, String> platform(String path) {
        int inside = path.indexOf(".jar/") + ".jar/".length();
        try (ZipFile jar = new ZipFile(AppRunner.ASSEMBLED.resolve("platform").resolve(path.substring(0, inside - 1)).toFile())) {
            ZipEntry entry = jar.getEntry(path.substring(inside));
            return entry == null ? Map.of() : read(new InputStreamReader(jar.getInputStream(entry), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(path, e);
        }
    }

    private static String name(Path file) {
        String path = file.toString();
        return path.substring(0, path.length() - ENDING.length()).replace('/', '.').replace('\\', '.');
    }

    /** Bundles of other languages without an English one beside them. */
    static List<Path> strays() {
        List<Path> strays = new ArrayList<>();
        for (String module : Tree.moduleFolders()) {
            for (Path file : files(classes(module))) {
                Matcher other = OTHER.matcher(file.getFileName().toString());
                if (other.matches() && !Files.exists(file.resolveSibling(other.group(1) + ENDING))) {
                    strays.add(file);
                }
            }
        }
        return strays;
    }

    private static Path classes(String module) {
        return Tree.TOP.resolve("modules").resolve(module).resolve("target/classes");
    }

    private static List<Path> files(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).filter(f -> f.toString().endsWith(ENDING)).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Map<String, String> read(Path file) {
        try (Reader in = Files.newBufferedReader(file)) {
            return read(in);
        } catch (IOException e) {
            throw new UncheckedIOException(file.toString(), e);
        }
    }

    private static Map<String, String> read(Reader in) throws IOException {
        Properties texts = new Properties();
        texts.load(in);
        Map<String, String> sorted = new TreeMap<>();
        texts.forEach((key, text) -> sorted.put((String) key, (String) text));
        return sorted;
    }
}
