package quoin.application;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.Attributes;
import java.util.jar.JarFile;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.Test;

/** The page of licences in the help names every library that the assembled application carries, in its version, and no other. */
class LicencesIT {

    private static final Path PAGE = Tree.TOP.resolve("modules/help/src/main/resources/quoin/help/pages/licences.html");
    private static final Pattern ROW = Pattern.compile("<tr><td><b>(.+?)</b></td><td>(.+?)</td><td>(.+?)</td></tr>");
    private static final Pattern VERSION_IN_NAME = Pattern.compile("-(\\d[\\w.]*)$");
    /** Licences under which a library may be handed out with a program under Apache-2.0, each as a file of its own. */
    private static final Set<String> COMPATIBLE = Set.of("Apache-2.0", "MIT", "BSD-3-Clause", "LGPL-2.1-or-later",
            "LGPL-2.1-or-later or Apache-2.0");
    /** Of the platform itself. */
    private static final Set<String> PLATFORM = Set.of("updater");

    @Test
    void everyLibraryIsOnThePageOfLicences() {
        List<MatchResult> rows = ROW.matcher(Tree.text(PAGE)).results().toList();
        Set<String> listed = rows.stream().map(row -> row.group(1) + " " + row.group(2)).collect(Collectors.toCollection(TreeSet::new));
        Set<String> carried = jars().stream().map(LicencesIT::named).flatMap(Optional::stream).collect(Collectors.toCollection(TreeSet::new));
        assertTrue(carried.size() > 15, "too few libraries seen: " + carried);
        assertEquals(String.join("\n", carried), String.join("\n", listed));
    }

    @Test
    void everyLicenceIsCompatible() {
        assertEquals(List.of(), ROW.matcher(Tree.text(PAGE)).results().filter(row -> !COMPATIBLE.contains(row.group(3)))
                .map(row -> row.group(1) + ": " + row.group(3)).toList());
    }

    @Test
    void iconsAreNamedInTheVersionThatIsTakenOut() {
        String pom = Tree.text(Tree.TOP.resolve("pom.xml"));
        String version = Pattern.compile("<bootstrap-icons.version>(.+?)</").matcher(pom).results().findFirst().orElseThrow().group(1);
        assertTrue(Tree.text(PAGE).contains("Bootstrap Icons " + version + " (MIT)"), "another version than " + version + " is on the page");
    }

    private static List<Path> jars() {
        try (Stream<Path> files = Files.walk(AppRunner.ASSEMBLED)) {
            return files.filter(f -> f.toString().endsWith(".jar"))
                    .filter(f -> f.toString().contains("/modules/ext/") || f.getFileName().toString().startsWith("asm")).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Optional<String> named(Path jar) {
        String file = jar.getFileName().toString().replaceAll("\\.jar$", "");
        String name = VERSION_IN_NAME.matcher(file).replaceAll("");
        return PLATFORM.contains(name) ? Optional.empty() : Optional.of(name + " " + version(jar, file, name));
    }

    /** As Maven wrote it into the jar, else as the file is called, else as its manifest says. */
    private static String version(Path jar, String file, String name) {
        try (JarFile open = new JarFile(jar.toFile())) {
            Optional<? extends ZipEntry> maven = open.stream()
                    .filter(e -> e.getName().startsWith("META-INF/maven/") && e.getName().endsWith("/" + name + "/pom.properties")).findFirst();
            if (maven.isPresent()) {
                Properties properties = new Properties();
                try (InputStream in = open.getInputStream(maven.get())) {
                    properties.load(in);
                }
                return properties.getProperty("version");
            }
            Optional<MatchResult> inName = VERSION_IN_NAME.matcher(file).results().findFirst();
            if (inName.isPresent()) {
                return inName.get().group(1);
            }
            Attributes attributes = open.getManifest().getMainAttributes();
            return Optional.ofNullable(attributes.getValue("Implementation-Version")).orElse(attributes.getValue("Bundle-Version"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
