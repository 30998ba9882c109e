package quoin.setupsheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.logbook.Journal;
import quoin.logbook.Library;
import quoin.rehearsal.Ouzel23;

/** The page of last time, now and the change, read back by Apache PDFBox. */
class LastTimeTest {

    private static final AdjusterId RF_PERCH = new AdjusterId(AdjusterKind.PERCH, Corner.RF);

    @TempDir
    private Path root;
    private Path first;
    private Path second;

    @BeforeEach
    void twoDays() {
        try (Journal day = library("2026-05-02").createDay(Ouzel23.car(), "Spring hill")) {
            first = day.folder();
            weigh(day, 160.2, 170.4, 150.0, 157.6);
            day.append(new Entry.Adjustment(Header.draft("corner-weights"), List.of(new Entry.Turn(RF_PERCH, 0.5, OptionalDouble.empty())), ""));
            weigh(day, 158.4, 172.2, 151.8, 155.8);
            camber(day, -2.0);
            day.append(new Entry.Adjustment(Header.draft("wheel-angles"), List.of(new Entry.Turn(new AdjusterId(AdjusterKind.CAMBER_ROD, Corner.LF), 1,
                    OptionalDouble.empty())), ""));
            camber(day, -1.7);
        }
        try (Journal day = library("2026-06-06").createDay(Ouzel23.car(), "Summer hill")) {
            second = day.folder();
            day.append(new Entry.Condition(Header.draft(""), Conditions.TYRES, "set 4, new", ""));
            weigh(day, 158.5, 176.2, 151.8, 155.8);
        }
    }

    private Library library(String date) {
        return new Library(root, Clock.fixed(Instant.parse(date + "T08:00:00Z"), ZoneOffset.UTC));
    }

    private static void weigh(Journal day, double lf, double rf, double lr, double rr) {
        day.append(new Entry.Reading(Header.draft("corner-weights"), Map.of(ReadingId.of(ReadingKind.LOAD, Corner.LF), lf,
                ReadingId.of(ReadingKind.LOAD, Corner.RF), rf, ReadingId.of(ReadingKind.LOAD, Corner.LR), lr,
                ReadingId.of(ReadingKind.LOAD, Corner.RR), rr), Map.of(), Entry.Source.RACER));
    }

    private static void camber(Journal day, double deg) {
        day.append(new Entry.Reading(Header.draft("wheel-angles"), Map.of(ReadingId.of(ReadingKind.CAMBER, Corner.LF), deg), Map.of(),
                Entry.Source.RACER));
    }

    private static List<String> lines(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertEquals(1, document.getNumberOfPages());
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            return stripper.getText(document).lines().map(l -> l.replaceAll("\\s+", " ").strip()).toList();
        }
    }

    private static String line(List<String> lines, String start) {
        return lines.stream().filter(l -> l.startsWith(start)).findFirst().orElseThrow(() -> new AssertionError(start + " in " + lines));
    }

    @Test
    void bothDaysStandSideBySideWithWhatTheChangeIsWorth() throws IOException {
        byte[] pdf = SetupSheet.of(second, List.of(new FullStage())).lastTimePdf(Optional.of("a4"));
        Files.createDirectories(Path.of("target", "sheets"));
        Files.write(Path.of("target", "sheets", "last-time.pdf"), pdf);
        List<String> lines = lines(pdf);
        assertTrue(line(lines, "Last time: ").contains("Spring hill"), lines.toString());
        assertTrue(line(lines, "Now: ").contains("Summer hill"), lines.toString());
        assertTrue(line(lines, "RF weight, kg").matches("RF weight, kg 172\\.2 176\\.2 \\+4\\.0 ± \\d+\\.\\d+ .*higher"), lines.toString());
        assertTrue(line(lines, "LF weight, kg").matches("LF weight, kg 158\\.4 158\\.5 \\+0\\.1 ± \\d+\\.\\d+ .*no change"), lines.toString());
        assertTrue(line(lines, "Tyres").contains("set 4, new"), lines.toString());
        // half a turn of 1.5 mm was turned last time and stands in that day only: the car's own file still says where it began
        assertTrue(line(lines, "RF perch").startsWith("RF perch 62.8 mm 62.0 mm 4 notches down"), lines.toString());
        assertTrue(line(lines, "LF camber rod: LF camber").contains("+0.30 ± "), lines.toString());
    }

    @Test
    void aDayWithoutReadingsIsAPageToWriteOn() throws IOException {
        Path third;
        try (Journal day = library("2026-07-04").createDay(Ouzel23.car(), "")) {
            third = day.folder();
        }
        List<String> lines = lines(SetupSheet.of(third, List.of(new FullStage())).lastTimePdf(Optional.of("letter")));
        assertTrue(line(lines, "Last time: ").contains("Summer hill"), lines.toString());
        assertTrue(line(lines, "RF weight, kg").endsWith("176.2 not read today"), lines.toString());
    }

    @Test
    void theFirstDayHasNoLastTime() {
        SetupSheet sheet = SetupSheet.of(first, List.of(new FullStage()));
        assertFalse(sheet.lastTime().isPresent());
        assertTrue(assertThrows(NoLastTimeException.class, () -> sheet.lastTimePdf(Optional.empty())).getMessage().contains("earlier day"));
    }
}
