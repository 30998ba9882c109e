package quoin.application;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The assembled application works without a window and without a display, with every module switched on. */
class HeadlessStartIT {

    private static final Duration LIMIT = Duration.ofSeconds(120);

    @TempDir
    Path home;

    @Test
    void switchesOnEveryModuleAndEndsWithCleanLog() {
        try (AppRunner app = AppRunner.startHeadless(home, "--modules", "--list")) {
            assertEquals(0, app.waitForExit(LIMIT));
            Set<String> enabled = app.standardOutput().lines().map(line -> line.strip().split("\\s+"))
                    .filter(cells -> cells.length == 3 && cells[2].equals("Enabled"))
                    .map(cells -> cells[0]).collect(Collectors.toSet());
            Set<String> missing = House.modules().stream().map(House::rootPackage)
                    .filter(name -> !enabled.contains(name)).collect(Collectors.toCollection(TreeSet::new));
            assertEquals(Set.of(), missing);
            assertEquals(List.of(), app.log().problems());
            assertEquals("", app.standardError());
        }
    }
}
