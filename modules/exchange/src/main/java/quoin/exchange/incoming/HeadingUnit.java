package quoin.exchange.incoming;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.quantities.QuantityFormatException;
import quoin.workbench.ReadingFormat;

/** The unit a heading brings for the bare figures below it: "LF weight (lb)", "LF weight, lb", "LF weight lb". */
final class HeadingUnit {

    private static final Pattern BRACKETS = Pattern.compile("[(\\[]([^()\\[\\]]{1,20})[)\\]]");
    private static final Pattern COMMA = Pattern.compile("[,/]([^,/]{1,20})$");
    private static final Pattern LAST_WORD = Pattern.compile("^(.*\\S)\\s+(\\S{1,8})$");
    private static final Pattern BARE_FIGURE = Pattern.compile("[-+\u2212]?[0-9][0-9.,/ ]*");
    /** Behind "toe" these say which way, not how long. */
    private static final Set<String> WAYS = Set.of("in", "out");

    private HeadingUnit() {
    }

    /** The reading a heading names, with or without a unit behind it. */
    static Optional<ReadingId> reading(String heading, ReadingNames names, ReadingFormat format) {
        Matcher word = LAST_WORD.matcher(heading);
        return names.heading(heading).or(() -> word.matches()
                ? names.heading(word.group(1)).filter(id -> isUnit(word.group(2), id, format)) : Optional.empty());
    }

    /** The unit a heading brings for a reading, with a blank before it; nothing where it brings none. */
    static String of(String heading, ReadingId reading, ReadingFormat format) {
        Stream<String> marked = Stream.of(BRACKETS.matcher(heading), COMMA.matcher(heading)).filter(Matcher::find).map(m -> m.group(1).strip());
        Stream<String> last = Stream.of(LAST_WORD.matcher(heading)).filter(Matcher::matches).map(m -> m.group(2));
        return Stream.concat(marked, last).filter(unit -> isUnit(unit, reading, format)).findFirst().map(unit -> " " + unit).orElse("");
    }

    /** A cell with a unit behind it where it is a bare figure. */
    static String behind(String cell, String unit) {
        return BARE_FIGURE.matcher(cell.strip()).matches() ? cell.strip() + unit : cell;
    }

    private static boolean isUnit(String text, ReadingId reading, ReadingFormat format) {
        if (text.isBlank() || text.chars().anyMatch(Character::isDigit)
                || reading.kind() == ReadingKind.TOE && WAYS.contains(text.toLowerCase(Locale.ROOT))) {
            return false;
        }
        try {
            format.parse(reading, "1 " + text);
            return true;
        } catch (QuantityFormatException e) {
            return false;
        }
    }
}
