package quoin.application;

import java.util.List;
import java.util.regex.Pattern;

/** What the application logged, and what of it nobody should have to see. */
record ApplicationLog(String text) {

    private static final Pattern PROBLEM = Pattern.compile(
            "^(WARNING|SEVERE)\\b.*"
            + "|^(Caused by: )?([a-z]\\w*\\.)+[A-Z]\\w*(Exception|Error)\\b.*"
            + "|^\\s+at [\\w.$/@]+\\(.*");

    /** Lines that are a warning, a failure, an exception or part of its trace. None is tolerated. */
    List<String> problems() {
        return text.lines().filter(line -> PROBLEM.matcher(line).matches()).toList();
    }
}
