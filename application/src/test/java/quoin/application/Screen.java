package quoin.application;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The screen the application is shown on: a virtual one with its own window manager where Xvfb is installed, so that a
 * test never takes the keyboard of the person at the machine; otherwise the display that is there.
 */
final class Screen implements AutoCloseable {

    /** Where pictures go. */
    static final Path PICTURES = Path.of("target", "screenshots");

    private static final String SIZE = "1600x1000x24";

    private final String display;
    private final List<Process> own;

    private Screen(String display, List<Process> own) {
        this.display = display;
        this.own = own;
    }

    /** Why no window can be tested on this machine, in words; empty when one can. */
    static Optional<String> missing() {
        if (!Tool.installed("Xvfb") && System.getenv("DISPLAY") == null) {
            return Optional.of("no display and no Xvfb found");
        }
        return Stream.of("xdotool", "import").filter(tool -> !Tool.installed(tool)).findFirst()
                .map(tool -> "no " + tool + " found");
    }

    /** Opens the screen; see {@link #missing()} for when this cannot work. */
    static Screen open() {
        if (!Tool.installed("Xvfb")) {
            return new Screen(System.getenv("DISPLAY"), List.of());
        }
        try {
            Process server = new ProcessBuilder("Xvfb", "-displayfd", "1", "-screen", "0", SIZE, "-nolisten", "tcp")
                    .redirectError(ProcessBuilder.Redirect.DISCARD).start();
            BufferedReader answer = new BufferedReader(
                    new InputStreamReader(server.getInputStream(), StandardCharsets.UTF_8));
            String number = answer.readLine();
            if (number == null) {
                throw new IOException("Xvfb gave no display number; it may lack the right to open a socket in /tmp");
            }
            String display = ":" + number.strip();
            return new Screen(display, Tool.installed("openbox") ? List.of(manager(display), server) : List.of(server));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Process manager(String display) throws IOException {
        ProcessBuilder builder = new ProcessBuilder("openbox", "--sm-disable")
                .redirectOutput(ProcessBuilder.Redirect.DISCARD).redirectError(ProcessBuilder.Redirect.DISCARD);
        builder.environment().put("DISPLAY", display);
        return builder.start();
    }

    String display() {
        return display;
    }

    Keys keys() {
        return new Keys(display);
    }

    /** Whether a window whose title matches this regular expression can be seen. */
    boolean shows(String title) {
        return Tool.run(display, List.of("xdotool", "search", "--onlyvisible", "--name", title)).exitCode() == 0;
    }

    /** Waits for a window whose title matches this regular expression. */
    void waitForWindow(String title, Duration limit) {
        Await.until("a window titled " + title, limit, () -> shows(title));
    }

    /** Waits until no window whose title matches this regular expression can be seen. */
    void waitUntilGone(String title, Duration limit) {
        Await.until("the window titled " + title + " to go", limit, () -> !shows(title));
    }

    /** Title of the window that has the keyboard, empty when none has. */
    String activeTitle() {
        Tool.Answer answer = Tool.run(display, List.of("xdotool", "getactivewindow", "getwindowname"));
        return answer.exitCode() == 0 ? answer.text().strip() : "";
    }

    /** Takes a picture of the whole screen into {@link #PICTURES} and returns its file. */
    Path shot(String name) {
        try {
            Files.createDirectories(PICTURES);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        Path file = PICTURES.resolve(name + ".png");
        Tool.Answer answer = Tool.run(display, List.of("import", "-window", "root", file.toString()));
        if (answer.exitCode() != 0) {
            throw new AssertionError("No picture " + file + ": " + answer.text());
        }
        return file;
    }

    @Override
    public void close() {
        own.forEach(Tool::end);
    }
}
