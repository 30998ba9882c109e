package quoin.logbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quoin.logbook.file.Fields;
import quoin.logbook.file.StrictJson;

/** The lines of a day and the file of a car under a fuzzer. */
class LogbookFuzzTest {

    @TempDir
    Path folder;

    /** Lines of a day's file after the first: read, folded at once and entry by entry, and written again as they were. */
    public static final class DayLines {
        private DayLines() {
        }

        /** One input. */
        public static void fuzzerTestOneInput(byte[] data) {
            List<byte[]> lines = new ArrayList<>(List.of(new byte[0]));
            int begin = 0;
            for (int i = 0; i <= data.length; i++) {
                if (i == data.length || data[i] == '\n') {
                    lines.add(Arrays.copyOfRange(data, begin, i));
                    begin = i + 1;
                }
            }
            List<Entry> entries = DayReader.read(lines).entries();
            for (Entry entry : entries) {
                byte[] written = StrictJson.line(EntryJson.write(entry));
                if (!(entry instanceof Entry.Unknown) && !EntryJson.read(new Fields(StrictJson.read(written)), EntryJson.text(written)).equals(entry)) {
                    throw new AssertionError("not the same again: " + entry);
                }
            }
            int car = 0;
            while (car < entries.size() && !(entries.get(car) instanceof Entry.CarDescribed)) {
                car++;
            }
            if (car < entries.size()) {
                fold(entries, car);
            }
        }

        private static void fold(List<Entry> entries, int car) {
            Day whole;
            try {
                whole = Day.of(entries);
            } catch (IllegalArgumentException e) {
                return;
            }
            try {
                Day onward = Day.of(entries.subList(0, car + 1)).goingOn(entries);
                if (!onward.effective().equals(whole.effective()) || !onward.turned().equals(whole.turned())) {
                    throw new AssertionError("carried on it is another day");
                }
            } catch (IllegalArgumentException e) {
                // on the way no car may have been described
            }
        }
    }

    /** The file of a car: read, or refused. */
    public static final class CarText {
        private CarText() {
        }

        /** One input. */
        public static void fuzzerTestOneInput(byte[] data) {
            try {
                CarFile.fromText(new String(data, StandardCharsets.UTF_8));
            } catch (IllegalArgumentException e) {
                if (e.getMessage().isBlank()) {
                    throw new AssertionError("refused without a word", e);
                }
            }
        }
    }

    @Test
    void linesOfADay() throws IOException, InterruptedException {
        ByteArrayOutputStream day = new ByteArrayOutputStream();
        List<byte[]> seeds = new ArrayList<>();
        for (Entry entry : Samples.everyKind()) {
            byte[] line = StrictJson.line(EntryJson.write(entry));
            seeds.add(line);
            day.writeBytes(line);
            day.write('\n');
        }
        seeds.add(day.toByteArray());
        Fuzzer.run(DayLines.class, folder, seeds.toArray(byte[][]::new));
    }

    @Test
    void fileOfACar() throws IOException, InterruptedException {
        Fuzzer.run(CarText.class, folder, CarFile.toText(Samples.bareCar()).getBytes(StandardCharsets.UTF_8),
                CarFile.toText(Samples.fullCar()).getBytes(StandardCharsets.UTF_8));
    }
}
