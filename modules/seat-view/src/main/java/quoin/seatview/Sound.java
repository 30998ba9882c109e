package quoin.seatview;

import java.awt.EventQueue;
import java.awt.Toolkit;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.openide.util.RequestProcessor;

/** Says or beeps what was recorded. The voice is the operating system's own; where it has none, a beep stands in for it. */
final class Sound {

    /** What is heard. */
    enum Kind {
        OFF, BEEP, VOICE;

        Kind next() {
            return values()[(ordinal() + 1) % values().length];
        }
    }

    /** A text for a PowerShell string is passed by this variable, never as part of the command. */
    private static final String TEXT = "QUOIN_SAY";

    private final RequestProcessor worker = new RequestProcessor("quoin voice", 1);

    /**
     * Makes the words heard.
     *
     * @param silent told on the event thread where a voice was wanted and this machine has none
     */
    void say(Kind kind, String words, Runnable silent) {
        switch (kind) {
            case BEEP -> Toolkit.getDefaultToolkit().beep();
            case VOICE -> worker.post(() -> {
                if (!speak(words)) {
                    Toolkit.getDefaultToolkit().beep();
                    EventQueue.invokeLater(silent);
                }
            });
            default -> { }
        }
    }

    private static boolean speak(String words) {
        for (List<String> command : commands(System.getProperty("os.name", ""), Locale.getDefault().getLanguage(), words)) {
            Optional<Integer> end = run(command, words);
            if (end.isPresent() && end.get() == 0) {
                return true;
            }
        }
        return false;
    }

    /** The system's ways of speaking, the usual one first. */
    static List<List<String>> commands(String system, String language, String words) {
        String lower = system.toLowerCase(Locale.ROOT);
        // A text that begins with a dash would be taken for an option.
        String text = " " + words;
        if (lower.contains("mac")) {
            return List.of(List.of("say", text));
        }
        if (lower.contains("win")) {
            return List.of(List.of("powershell", "-NoProfile", "-Command",
                    "Add-Type -AssemblyName System.Speech; (New-Object System.Speech.Synthesis.SpeechSynthesizer).Speak($env:" + TEXT + ")"));
        }
        return List.of(List.of("spd-say", "--wait", "-l", language, text), List.of("espeak-ng", "-v", language, text),
                List.of("espeak", "-v", language, text));
    }

    private static Optional<Integer> run(List<String> command, String words) {
        try {
            ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD);
            builder.environment().put(TEXT, words);
            return Optional.of(builder.start().waitFor());
        } catch (IOException e) {
            Logger.getLogger(Sound.class.getName()).log(Level.FINE, "no voice by {0}", command.get(0));
            return Optional.empty();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
    }
}
