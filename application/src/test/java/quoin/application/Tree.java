package quoin.application;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.jar.Manifest;
import java.util.stream.Stream;

/** The source tree these tests stand in. */
final class Tree {

    /** Top folder of the project; tests run in the application's folder. */
    static final Path TOP = Path.of("..").toAbsolutePath().normalize();

    private static final Set<String> NOT_SOURCE = Set.of("target", ".git", ".idea", ".vscode");

    private Tree() {
    }

    /** Names of the module folders, without the wrappers of shared libraries. */
    static List<String> moduleFolders() {
        try (Stream<Path> folders = Files.list(TOP.resolve("modules"))) {
            return folders.filter(folder -> Files.exists(folder.resolve("pom.xml")))
                    .map(folder -> folder.getFileName().toString())
                    .filter(name -> !name.startsWith("lib-")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** All files of the tree, without what the build makes. */
    static List<Path> files() {
        try (Stream<Path> all = Files.walk(TOP)) {
            return all.filter(Files::isRegularFile).filter(Tree::isSource).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean isSource(Path file) {
        for (Path step : TOP.relativize(file)) {
            if (NOT_SOURCE.contains(step.toString())) {
                return false;
            }
        }
        return true;
    }

    static String text(Path file) {
        try {
            return Files.readString(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Packages a built module shows to others, from the manifest the build has written for it. */
    static Set<String> exportedPackages(String module) {
        Path manifest = TOP.resolve("modules").resolve(module).resolve("target/classes/META-INF/MANIFEST.MF");
        try (InputStream stream = Files.newInputStream(manifest)) {
            String value = new Manifest(stream).getMainAttributes().getValue("OpenIDE-Module-Public-Packages");
            Set<String> packages = new TreeSet<>();
            for (String entry : value.split(",")) {
                String name = entry.strip();
                if (!name.equals("-")) {
                    packages.add(name.replaceAll("\\.\\*$", ""));
                }
            }
            return packages;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
