package quoin.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Classes are read beforehand without running anything of them. */
class WarmUpTest {

    @TempDir
    private Path folder;

    private void jar(String name, String... entries) throws IOException {
        try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(folder.resolve(name)))) {
            for (String entry : entries) {
                out.putNextEntry(new JarEntry(entry));
            }
        }
    }

    @Test
    void onlyOurOwnClassesAreNamed() throws IOException {
        jar("quoin-a.jar", "quoin/a/Window.class", "quoin/a/Bundle.properties", "org/other/Thing.class");
        jar("other.jar", "quoin/b/Window.class");
        assertEquals(List.of("quoin.a.Window"), WarmUp.names(folder));
    }

    @Test
    void theFolderIsFoundHoweverThePlatformNamesAJar() {
        String jar = folder.resolve("quoin-a.jar").toUri().toString();
        assertEquals(Optional.of(folder), WarmUp.folder(jar));
        assertEquals(Optional.of(folder), WarmUp.folder("jar:" + jar + "!/"));
        assertEquals(Optional.empty(), WarmUp.folder("https://example.org/quoin-a.jar"));
    }

    @Test
    void nothingOfAClassIsRunAndAMissingOneIsNoError() {
        assertTrue(WarmUp.read("quoin.workbench.WarmUpTest$NotToBeRun", getClass().getClassLoader()));
        assertFalse(WarmUp.read("quoin.workbench.NotThere", getClass().getClassLoader()));
    }

    /** Would end the test if it were initialized. */
    static final class NotToBeRun {
        static {
            if (Boolean.parseBoolean("true")) {
                throw new AssertionError("was run");
            }
        }
    }
}
