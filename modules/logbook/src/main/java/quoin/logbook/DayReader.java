package quoin.logbook;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import quoin.logbook.file.Fields;
import quoin.logbook.file.StrictJson;

/** Turns the lines of a day's file into entries, keeping note of whatever is odd. */
final class DayReader {

    private final List<Entry> entries = new ArrayList<>();
    private final List<FileFinding> findings = new ArrayList<>();
    private final Set<Long> numbers = new HashSet<>();
    private long last;
    private long highest;

    private DayReader() {
    }

    /** Reads every line after the first. */
    static DayReader read(List<byte[]> lines) {
        DayReader reader = new DayReader();
        for (int i = 1; i < lines.size(); i++) {
            reader.take(i + 1, lines.get(i));
        }
        if (reader.entries.stream().noneMatch(Entry.CarDescribed.class::isInstance)) {
            reader.find(FileFinding.Kind.NO_CAR, 0, "no entry describes the car; add the car to the day to go on");
        }
        return reader;
    }

    List<Entry> entries() {
        return entries;
    }

    List<FileFinding> findings() {
        return findings;
    }

    /** Highest number found on any line, damaged entries included. */
    long highestNumber() {
        return highest;
    }

    private void take(int line, byte[] bytes) {
        Fields fields;
        String text;
        Header header;
        String kind;
        try {
            text = EntryJson.text(bytes);
            fields = new Fields(StrictJson.read(bytes));
            header = EntryJson.readHeader(fields);
            kind = fields.text("kind");
        } catch (IllegalArgumentException e) {
            find(FileFinding.Kind.DAMAGED_LINE, line, "line " + line + " cannot be read (" + e.getMessage()
                    + "); it stays in the file but does not count");
            return;
        }
        checkNumber(line, header.number());
        entries.add(understand(line, fields, text, header, kind));
    }

    private Entry understand(int line, Fields fields, String text, Header header, String kind) {
        try {
            Entry entry = EntryJson.read(fields, text);
            if (entry instanceof Entry.Unknown) {
                find(FileFinding.Kind.UNKNOWN_KIND, line, "entry " + header.number() + " is of the kind '" + kind
                        + "', which this program does not know; it is kept but does not count");
            }
            return entry;
        } catch (IllegalArgumentException e) {
            find(FileFinding.Kind.NOT_UNDERSTOOD, line, "entry " + header.number() + " (" + kind + ") holds something this "
                    + "program cannot read: " + e.getMessage() + "; it is kept but does not count");
            return new Entry.Unknown(header, kind, text);
        }
    }

    private void checkNumber(int line, long number) {
        if (!numbers.add(number)) {
            find(FileFinding.Kind.NUMBERING, line, "there are two entries with the number " + number);
        } else if (number < last) {
            find(FileFinding.Kind.NUMBERING, line, "entry " + number + " stands after entry " + last);
        } else if (number > last + 1) {
            find(FileFinding.Kind.NUMBERING, line, number == last + 2 ? "entry " + (last + 1) + " is missing"
                    : "entries " + (last + 1) + " to " + (number - 1) + " are missing");
        }
        last = number;
        highest = Math.max(highest, number);
    }

    private void find(FileFinding.Kind kind, int line, String words) {
        findings.add(new FileFinding(kind, line, Brief.of(words)));
    }
}
