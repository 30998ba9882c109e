package quoin.installer;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
        List<String> rest = new ArrayList<>(List.of("--branding", BRAND));
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
        Path settings = user;
        Runtime.getRuntime().addShutdownHook(new Thread(() -> startAnew(settings, args)));
        rest.addAll(0, List.of("--userdir", user.toString(), "--cachedir", cache.toString()));
        Main.main(rest.toArray(String[]::new));
    }

    /** The platform leaves a file where it was asked to start anew; the day that was open comes back by itself. */
    private static void startAnew(Path user, String... args) {
        try {
            Optional<String> program = ProcessHandle.current().info().command();
            if (Files.deleteIfExists(user.resolve("var").resolve("restart")) && program.isPresent()) {
                List<String> command = new ArrayList<>(List.of(program.get()));
                command.addAll(folders(args));
                ProcessBuilder builder = new ProcessBuilder(command).inheritIO();
                // What the packaged launcher tells itself; a launcher that finds it takes its options for those of Java.
                builder.environment().keySet().removeIf(name -> name.startsWith("_JPACKAGE"));
                builder.start();
            }
        } catch (IOException e) {
            System.err.println("Quoin could not start anew: " + e.getMessage());
        }
    }

    /** Which folders to use is the same again; what to open is not. */
    private static List<String> folders(String... args) {
        List<String> kept = new ArrayList<>();
        for (int i = 0; i + 1 < args.length; i++) {
            if (List.of("--userdir", "--cachedir", "--library").contains(args[i])) {
                kept.add(args[i]);
                kept.add(args[i + 1]);
            }
        }
        return kept;
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
