package quoin.logbook;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.Locale;
import quoin.car.ReadingKind;
import quoin.logbook.file.Fields;
import quoin.logbook.file.FormatException;
import quoin.logbook.file.StrictJson;
import quoin.quantities.Texts;

/**
 * First line of a day's file.
 *
 * @param format  number of the format the file was written in
 * @param day     id of the day
 * @param title   what the racer calls it; may be empty
 * @param created when it was begun
 */
record DayHeader(int format, String day, String title, Instant created) {
    private static final Texts TEXTS = Texts.of(DayHeader.class);

    /** The format this program writes. */
    static final int FORMAT = 1;
    private static final int MOST_FORMATS = 1_000_000;

    boolean isNewer() {
        return format > FORMAT;
    }

    byte[] line() {
        ObjectNode node = StrictJson.object();
        node.put("quoin", "day").put("format", format).put("day", day).put("title", title).put("created", created.toString());
        ObjectNode units = node.putObject("units");
        for (ReadingKind kind : ReadingKind.values()) {
            units.put(kind.key(), kind.unit().name().toLowerCase(Locale.ROOT));
        }
        units.put("amount", "turns of a thread, or mm of shim");
        return StrictJson.line(node);
    }

    static DayHeader read(byte[] line) {
        Fields in = new Fields(StrictJson.read(line));
        if (!in.text("quoin").equals("day")) {
            throw new FormatException(TEXTS.phrase("quoinMustBeDay"));
        }
        return new DayHeader((int) in.whole("format", 1, MOST_FORMATS), in.text("day"), in.optionalText("title").orElse(""),
                in.parsed("created", Instant::parse));
    }
}
