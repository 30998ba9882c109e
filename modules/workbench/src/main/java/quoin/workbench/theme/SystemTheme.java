package quoin.workbench.theme;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import java.util.logging.Level;
import java.util.logging.Logger;

/** Whether the desktop is set to dark, asked of the system's own tools; a system that does not tell counts as light. */
final class SystemTheme {

    private static final long LONGEST_MS = 1500;

    private SystemTheme() {
    }

    static boolean isDark() {
        return isDark(System.getProperty("os.name", ""), SystemTheme::answer);
    }

    /**
     * @param system as in the property {@code os.name}
     * @param ask    runs a command and gives what it printed, empty where it cannot be run
     */
    static boolean isDark(String system, Function<List<String>, String> ask) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.contains("mac")) {
            return ask.apply(List.of("defaults", "read", "-g", "AppleInterfaceStyle")).strip().equalsIgnoreCase("dark");
        }
        if (name.contains("win")) {
            return ask.apply(List.of("reg", "query", "HKCU\\Software\\Microsoft\\Windows\\CurrentVersion\\Themes\\Personalize",
                    "/v", "AppsUseLightTheme")).strip().endsWith("0x0");
        }
        String scheme = ask.apply(List.of("gsettings", "get", "org.gnome.desktop.interface", "color-scheme"));
        return scheme.contains("dark") || !scheme.contains("light")
                && ask.apply(List.of("gsettings", "get", "org.gnome.desktop.interface", "gtk-theme")).toLowerCase(Locale.ROOT).contains("dark");
    }

    private static String answer(List<String> command) {
        try {
            Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
            process.getOutputStream().close();
            if (!process.waitFor(LONGEST_MS, TimeUnit.MILLISECONDS)) {
                process.destroyForcibly();
                return "";
            }
            return process.exitValue() == 0 ? new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8) : "";
        } catch (IOException e) {
            Logger.getLogger(SystemTheme.class.getName()).log(Level.FINE, "{0} is not here", command.get(0));
            return "";
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return "";
        }
    }
}
