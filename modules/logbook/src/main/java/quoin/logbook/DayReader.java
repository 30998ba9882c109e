package quoin.logbook;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import quoin.logbook.file.Fields;
import quoin.logbook.file.StrictJson;
import quoin.quantities.Texts;

/** Turns the lines of a day's file into entries, keeping note of whatever is odd. */
final class DayReader {
    private static final Texts TEXTS = Texts.of(DayReader.class);

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
            reader.find(FileFinding.Kind.NO_CAR, 0, TEXTS.say("noEntryDescribesThe"));
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
            find(FileFinding.Kind.DAMAGED_LINE, line, TEXTS.say("lineCannotBeRead", line, e));
            return;
        }
        checkNumber(line, header.number());
        entries.add(understand(line, fields, text, header, kind));
    }

    private Entry understand(int line, Fields fields, String text, Header header, String kind) {
        try {
            Entry entry = EntryJson.read(fields, text);
            if (entry instanceof Entry.Unknown) {
                find(FileFinding.Kind.UNKNOWN_KIND, line, TEXTS.say("entryIsOfThe", header.number(), kind));
            }
            return entry;
        } catch (IllegalArgumentException e) {
            find(FileFinding.Kind.NOT_UNDERSTOOD, line, TEXTS.say("entryHoldsSomethingThis", header.number(), kind, e));
            return new Entry.Unknown(header, kind, text);
        }
    }

    private void checkNumber(int line, long number) {
        if (!numbers.add(number)) {
            find(FileFinding.Kind.NUMBERING, line, TEXTS.say("thereAreTwoEntries", number));
        } else if (number < last) {
            find(FileFinding.Kind.NUMBERING, line, TEXTS.say("entryStandsAfterEntry", number, last));
        } else if (number > last + 1) {
            find(FileFinding.Kind.NUMBERING, line, number == last + 2 ? TEXTS.say("entryMissing", last + 1)
                    : TEXTS.say("entriesMissing", last + 1, number - 1));
        }
        last = number;
        highest = Math.max(highest, number);
    }

    private void find(FileFinding.Kind kind, int line, String words) {
        findings.add(new FileFinding(kind, line, Brief.of(words)));
    }
}
