package quoin.installer;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.netbeans.Main;

/**
 * Starts the platform where the application was installed with a Java runtime of its own: what the platform's launcher script
 * does elsewhere. The packaging passes {@code quoin.home}, the folder that holds the clusters, and the options of
 * {@code etc/quoin.conf}.
 */
public final class Launch {

    private static final String BRAND = "quoin";

    private Launch() {
    }

    /**
     * Sets the platform's folders and starts it.
     *
     * @param args as typed behind the name of the program; {@code --userdir} and {@code --cachedir} choose other folders
     */
    public static void main(String[] args) throws Exception {
        Path home = Path.of(System.getProperty("quoin.home"));
        List<String> rest = new ArrayList<>(List.of("--branding", BRAND, "--laf", "com.formdev.flatlaf.FlatLightLaf"));
        Path user = userFolder();
        Path cache = cacheFolder();
        for (int i = 0; i < args.length; i++) {
            if (args[i].equals("--userdir") && i + 1 < args.length) {
                user = Path.of(args[++i]).toAbsolutePath();
            } else if (args[i].equals("--cachedir") && i + 1 < args.length) {
                cache = Path.of(args[++i]).toAbsolutePath();
            } else {
                rest.add(args[i]);
            }
        }
        System.setProperty("netbeans.home", home.resolve("platform").toString());
        System.setProperty("netbeans.dirs", clusters(home));
        System.setProperty("netbeans.user", user.toString());
        System.setProperty("netbeans.default_userdir_root", user.getParent().toString());
        System.setProperty("netbeans.running.environment", "default");
        rest.addAll(0, List.of("--userdir", user.toString(), "--cachedir", cache.toString()));
        Main.main(rest.toArray(String[]::new));
    }

    /** Every cluster but the platform's own, which is the home. */
    private static String clusters(Path home) throws IOException {
        try (Stream<String> lines = Files.lines(home.resolve("etc").resolve(BRAND + ".clusters"))) {
            return lines.map(String::strip).filter(line -> !line.isEmpty() && !line.startsWith("#") && !line.equals("platform"))
                    .map(line -> home.resolve(line).toString()).collect(Collectors.joining(java.io.File.pathSeparator));
        }
    }

    private static Path userFolder() {
        Path person = Path.of(System.getProperty("user.home"));
        String system = System.getProperty("os.name", "");
        if (system.startsWith("Mac")) {
            return person.resolve("Library/Application Support").resolve(BRAND);
        }
        String roaming = System.getenv("APPDATA");
        return system.startsWith("Windows") && roaming != null ? Path.of(roaming, BRAND) : person.resolve("." + BRAND);
    }

    private static Path cacheFolder() {
        Path person = Path.of(System.getProperty("user.home"));
        String local = System.getenv("LOCALAPPDATA");
        return local != null ? Path.of(local, BRAND, "cache") : person.resolve(".cache").resolve(BRAND);
    }
}
