package quoin.application;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** No text of any window or dialog is clipped on a small screen, in no language and on no ground. */
@WindowTest
class ClippingIT {

    /** Fonts and margins are the same in both, so each language is looked at in one. */
    private static final List<String> LOOKS = List.of("com.formdev.flatlaf.FlatLightLaf", "com.formdev.flatlaf.FlatDarkLaf");
    private static final int WINDOWS_AND_DIALOGS = 22;
    private static final int LONGEST_MINUTES = 8;

    @Test
    void everyTextFits(Screen screen) throws IOException, InterruptedException {
        List<String> languages = new ArrayList<>(Languages.others());
        languages.add(0, "en");
        List<String> clipped = new ArrayList<>();
        for (String language : languages) {
            String look = LOOKS.get(languages.indexOf(language) % LOOKS.size());
            List<String> lines = told(screen, language, look);
            String last = lines.isEmpty() ? "nothing" : lines.get(lines.size() - 1);
            assertTrue(last.matches("looked at \\d+") && Integer.parseInt(last.replaceAll("\\D", "")) >= WINDOWS_AND_DIALOGS,
                    language + " " + look + ": " + lines);
            lines.subList(0, lines.size() - 1).forEach(line -> clipped.add(language + ", " + line));
        }
        assertEquals(List.of(), clipped.stream().distinct().toList());
    }

    private static List<String> told(Screen screen, String language, String look) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Duser.language=" + language, "--add-opens=java.desktop/javax.swing=ALL-UNNAMED", "--add-opens=java.base/java.net=ALL-UNNAMED",
                "-cp",
                System.getProperty("java.class.path"), EveryWindow.class.getName(), look);
        builder.environment().put("DISPLAY", screen.display());
        Path told = Path.of("target", "every-window-" + language + look.replaceAll(".*\\.", "-") + ".txt");
        Process process = builder.redirectOutput(told.toFile())
                .redirectError(Path.of(told.toString().replace(".txt", ".log")).toFile()).start();
        boolean ended = process.waitFor(LONGEST_MINUTES, TimeUnit.MINUTES);
        process.destroyForcibly().waitFor();
        assertTrue(ended, language + " " + look + " did not come to an end; see " + told);
        return Files.readAllLines(told);
    }
}
