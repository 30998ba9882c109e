package quoin.logbook;

import java.util.regex.Pattern;

/** Words about a file that may quote it: a file from anywhere can hold texts that are long or that no line can show. */
public final class Brief {

    private static final int START = 500;
    private static final int END = 300;
    /** Control characters, which would begin lines of their own, and those that turn the direction of writing. */
    private static final Pattern UNSEEN = Pattern.compile("[\\p{Cc}\u202a-\u202e\u2066-\u2069]");

    private Brief() {
    }

    /** The words with the middle left out where they are too long to be read. */
    public static String of(String words) {
        String seen = UNSEEN.matcher(words).replaceAll("?");
        return seen.length() <= START + END ? seen : seen.substring(0, START) + " \u2026 " + seen.substring(seen.length() - END);
    }
}
