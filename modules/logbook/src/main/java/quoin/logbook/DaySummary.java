package quoin.logbook;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import quoin.logbook.file.Fields;
import quoin.logbook.file.LineContents;
import quoin.logbook.file.StrictJson;
import quoin.quantities.Texts;

/**
 * What a list of days and a search need of one day. Made from the day's file with its readings and turns passed over.
 *
 * @param title     what the racer calls it; may be empty
 * @param created   when it was begun
 * @param driver    driver of the load case; may be empty
 * @param words     notes, remarks, tyres and other things said that day, one after the other; may be empty
 * @param closed    true where the day is closed
 * @param rehearsal true where the practice car gave the readings
 * @param problem   why it cannot be opened, in words; empty = it can
 */
record DaySummary(String title, Instant created, String driver, String words, boolean closed, boolean rehearsal, String problem) {

    private static final Texts TEXTS = Texts.of(DaySummary.class);
    /** Enough to find a day by; a day's file may hold very much more. */
    private static final int MOST_WORDS = 4000;
    private static final String CAR = "car";
    /** Values that say how the car stood and not what somebody called something. */
    private static final Set<String> STATES = Set.of(Conditions.IN, Conditions.OUT, Conditions.SOFT, Conditions.RUNNING, Conditions.LOCKED,
            Conditions.FREE, Conditions.ON, Conditions.LEVELLED, Conditions.MOVED, Conditions.ZEROED, Conditions.SET, Conditions.YES,
            Conditions.NO, Conditions.CONNECTED, Conditions.DISCONNECTED);

    DaySummary {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(created, "created");
    }

    /**
     * Reads a day's file; one that cannot be read has a problem and no words.
     *
     * @param otherwise time of the file, for a first line that cannot be read
     */
    static DaySummary read(Path file, Instant otherwise) {
        try {
            LineContents contents = LineContents.read(file);
            DayHeader header = JournalOpening.header(file, contents.lines().isEmpty() ? contents.torn() : contents.lines().get(0));
            return of(header, contents.lines().subList(Math.min(1, contents.lines().size()), contents.lines().size()));
        } catch (JournalException e) {
            return new DaySummary("", otherwise, "", "", false, false, e.getLocalizedMessage());
        } catch (IOException e) {
            return new DaySummary("", otherwise, "", "", false, false, TEXTS.say("dayCannotBeSummed", DiskTrouble.of(e)));
        }
    }

    private static DaySummary of(DayHeader header, List<byte[]> lines) {
        List<Entry> told = new ArrayList<>();
        for (byte[] line : lines) {
            entry(line, told);
        }
        String driver = "";
        boolean hasCar = false;
        boolean closed = false;
        boolean rehearsal = false;
        Set<String> words = new LinkedHashSet<>();
        for (Entry entry : Corrections.apply(told)) {
            if (entry instanceof Entry.Unknown unknown && unknown.kind().equals(CAR)) {
                hasCar = true;
                driver = unknown.raw();
            } else if (entry instanceof Entry.DayClosed end) {
                closed = true;
                words.addAll(end.notProved());
            } else if (entry instanceof Entry.Condition condition) {
                rehearsal |= condition.key().equals(Conditions.REHEARSAL);
                if (!STATES.contains(condition.value()) && !condition.key().equals(Conditions.REHEARSAL)) {
                    words.add(condition.value());
                }
                words.add(condition.words());
            } else if (entry instanceof Entry.Note note) {
                words.add(note.words());
            }
        }
        words.removeIf(String::isBlank);
        String all = String.join(" · ", words);
        return new DaySummary(header.title(), header.created(), driver, all.substring(0, Math.min(MOST_WORDS, all.length())), closed,
                rehearsal, hasCar ? "" : TEXTS.say("noCarYet"));
    }

    /** Readings and turns are most of a day and say nothing here; a line that cannot be read does not count, as when it is opened. */
    private static void entry(byte[] line, List<Entry> into) {
        if (startsWith(line, "{\"kind\":\"reading\"") || startsWith(line, "{\"kind\":\"adjustment\"") || startsWith(line, "{\"kind\":\"bump-steer\"")) {
            return;
        }
        try {
            ObjectNode node = StrictJson.read(line);
            Fields fields = new Fields(node);
            if (node.path("kind").asText().equals(CAR)) {
                JsonNode driver = node.path("car").path("loadCase").path("driver");
                into.add(new Entry.Unknown(EntryJson.readHeader(fields), CAR, driver.asText("")));
            } else {
                into.add(EntryJson.read(fields, ""));
            }
        } catch (IllegalArgumentException e) {
            return;
        }
    }

    private static boolean startsWith(byte[] line, String start) {
        byte[] bytes = start.getBytes(StandardCharsets.US_ASCII);
        if (line.length < bytes.length) {
            return false;
        }
        for (int i = 0; i < bytes.length; i++) {
            if (line[i] != bytes[i]) {
                return false;
            }
        }
        return true;
    }
}
