package quoin.application;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** A program of the machine: xdotool, import, Xvfb, openbox. */
final class Tool {

    private Tool() {
    }

    /** Whether a program of this name is on the search path. */
    static boolean installed(String name) {
        String path = System.getenv().getOrDefault("PATH", "");
        return Stream.of(path.split(File.pathSeparator))
                .anyMatch(folder -> Files.isExecutable(Path.of(folder, name)));
    }

    /** What a program said and how it ended. */
    record Answer(int exitCode, String text) {
    }

    /** Runs a program on a display to its end; standard error is part of the text. */
    static Answer run(String display, List<String> command) {
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().put("DISPLAY", display);
        try {
            Process process = builder.start();
            process.getOutputStream().close();
            String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            return new Answer(process.waitFor(), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError("Interrupted while running " + command, e);
        }
    }

    /** Ends a process and everything it started, and waits until it is gone. */
    static void end(Process process) {
        List<ProcessHandle> started = process.descendants().toList();
        started.forEach(ProcessHandle::destroyForcibly);
        process.destroyForcibly();
        process.onExit().join();
        started.forEach(handle -> handle.onExit().join());
    }
}
