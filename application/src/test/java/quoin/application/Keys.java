package quoin.application;

import java.util.ArrayList;
import java.util.List;

/** The keyboard: real key events to the window that has the focus. */
final class Keys {

    private static final String KEY_PAUSE_MS = "40";

    private final String display;

    Keys(String display) {
        this.display = display;
    }

    /** Presses keys one after the other, named as X does: "Return", "Tab", "ctrl+z", "alt+f", "Down". */
    Keys press(String... names) {
        List<String> command = new ArrayList<>(List.of("xdotool", "key", "--delay", KEY_PAUSE_MS));
        command.addAll(List.of(names));
        send(command);
        return this;
    }

    /** Presses one key so many times. */
    Keys repeat(String name, int times) {
        for (int i = 0; i < times; i++) {
            press(name);
        }
        return this;
    }

    /** Types a text as it stands, without Return. */
    Keys type(String text) {
        send(List.of("xdotool", "type", "--delay", KEY_PAUSE_MS, "--", text));
        return this;
    }

    private void send(List<String> command) {
        Tool.Answer answer = Tool.run(display, command);
        if (answer.exitCode() != 0 || !answer.text().isBlank()) {
            throw new AssertionError(String.join(" ", command) + ": " + answer.text());
        }
    }
}
