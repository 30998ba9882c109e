package quoin.application;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One run of the assembled application in a home of its own: settings, cache, and the user's home folder are under one
 * folder that the test owns, so nothing of the person at the machine is read or written.
 */
final class AppRunner implements AutoCloseable {

    /** Where the build puts the assembled application. */
    static final Path ASSEMBLED = Path.of("target", "quoin");

    private static final Pattern TABS = Pattern.compile("name=\"editor\">\\s*<attr name=\"WinSys-TCRef-Order\" stringvalue=\"([^\"]*)\"");

    private final Path home;
    private final Process process;
    private final Path output;
    private final Path error;

    private AppRunner(Path home, Process process, Path output, Path error) {
        this.home = home;
        this.process = process;
        this.output = output;
        this.error = error;
    }

    /** Starts the application with its window on a screen. */
    static AppRunner start(Screen screen, Path home, String... options) {
        return start(ASSEMBLED, Optional.of(screen.display()), home, List.of(options));
    }

    /** Starts the application without a window and without a display. */
    static AppRunner startHeadless(Path home, String... options) {
        List<String> all = new ArrayList<>(List.of("--nogui"));
        all.addAll(List.of(options));
        return start(ASSEMBLED, Optional.empty(), home, all);
    }

    /** The same with a file on its standard input. */
    static AppRunner startHeadlessReading(Path standardInput, Path home, String... options) {
        List<String> all = new ArrayList<>(List.of("--nogui"));
        all.addAll(List.of(options));
        return start(List.of(), ASSEMBLED, Optional.empty(), Optional.of(standardInput), home, all);
    }

    /** Starts what is assembled in a folder. */
    static AppRunner start(Path assembled, Optional<String> display, Path home, List<String> options) {
        return start(List.of(), assembled, display, Optional.empty(), home, options);
    }

    /** Starts what is assembled in a folder as the child of a command that watches it. */
    static AppRunner startUnder(List<String> watcher, Path assembled, Optional<String> display, Path home, List<String> options) {
        return start(watcher, assembled, display, Optional.empty(), home, options);
    }

    private static AppRunner start(List<String> watcher, Path assembled, Optional<String> display, Optional<Path> standardInput,
            Path home, List<String> options) {
        try {
            Path userFolder = Files.createDirectories(home.resolve("settings"));
            Path cache = home.resolve("cache");
            List<String> command = new ArrayList<>(watcher);
            command.addAll(List.of(
                    assembled.resolve("bin/quoin").toAbsolutePath().toString(),
                    "--userdir", userFolder.toString(), "--cachedir", cache.toString(),
                    "-J-Duser.home=" + home, "-J-Djava.util.prefs.userRoot=" + home));
            command.addAll(options);
            Path output = home.resolve("standard-output.txt");
            Path error = home.resolve("standard-error.txt");
            ProcessBuilder builder = new ProcessBuilder(command)
                    .redirectOutput(output.toFile()).redirectError(error.toFile());
            builder.environment().put("HOME", home.toString());
            builder.environment().remove("DISPLAY");
            display.ifPresent(name -> builder.environment().put("DISPLAY", name));
            standardInput.ifPresent(file -> builder.redirectInput(file.toFile()));
            Process process = builder.start();
            process.getOutputStream().close();
            return new AppRunner(home, process, output, error);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Home folder of this run, as the application sees it. */
    Path home() {
        return home;
    }

    /** The Java process under the launcher script; the launcher itself while Java has not started yet. */
    ProcessHandle java() {
        return process.descendants()
                .filter(handle -> handle.info().command().orElse("").endsWith("java"))
                .findFirst().orElse(process.toHandle());
    }

    boolean alive() {
        return process.isAlive();
    }

    /** Pulls the plug: no shutdown code of the application runs. */
    void kill() {
        Tool.end(process);
    }

    /** Exit code, once the application has ended by itself. */
    int waitForExit(Duration limit) {
        try {
            return process.onExit().get(limit.toMillis(), TimeUnit.MILLISECONDS).exitValue();
        } catch (TimeoutException e) {
            throw new AssertionError("Still running after " + limit.toSeconds() + " s", e);
        } catch (InterruptedException | ExecutionException e) {
            throw new CompletionException(e);
        }
    }

    String standardOutput() {
        return text(output);
    }

    String standardError() {
        return text(error);
    }

    /** The log of this run; empty while there is none. */
    ApplicationLog log() {
        Path file = home.resolve("settings/var/log/messages.log");
        return new ApplicationLog(Files.exists(file) ? text(file) : "");
    }

    /** Ids of the windows in the middle, open or closed, in the order of their tabs, as written down when the application ended. */
    List<String> tabs() {
        Matcher order = TABS.matcher(text(home.resolve("settings/config/Windows2Local/Modes/.nbattrs")));
        return order.find() ? List.of(order.group(1).split("/")) : List.of();
    }

    private static String text(Path file) {
        try {
            return Files.readString(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        kill();
    }
}
