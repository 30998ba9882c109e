package quoin.setupsheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.rehearsal.Ouzel23;
import quoin.setupsheet.page.Face;
import quoin.setupsheet.page.Ink;
import quoin.setupsheet.page.Page;
import quoin.setupsheet.page.Painter;
import quoin.setupsheet.page.Paper;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.DisplayUnits;
import quoin.workflow.OrderOfWork;

/** The sheet is read back as any PDF reader would: by Apache PDFBox from the bytes written. */
class SetupSheetTest {

    private final List<Entry> entries = new ArrayList<>();
    private Car car = Ouzel23.car();

    @ParameterizedTest
    @EnumSource(Paper.class)
    void aWholeDayStandsOnOnePage(Paper paper) throws IOException {
        weighed();
        byte[] pdf = sheet().pdf(paper, false);
        Files.createDirectories(Path.of("target", "sheets"));
        Files.write(Path.of("target", "sheets", paper + ".pdf"), pdf);
        String text = text(pdf, 1);
        for (String said : List.of("Ouzel 23", "160.2 kg", "170.4 kg", "150.0 kg", "157.6 kg", "RF perch", "3 notches up",
                "RF ring was dry", "NOT SIGNED OFF", "check again", "Driver driver, dressed", "Not proved", "k = 2",
                "Local rules and a qualified person come first", "page 1 of 1", "RF 0.2 kg")) {
            assertTrue(text.contains(said), said + " in:\n" + text);
        }
        assertFalse(text.contains(String.valueOf('\uFFFD')), text);
    }

    @Test
    void everyFontIsEmbedded() throws IOException {
        weighed();
        try (PDDocument document = Loader.loadPDF(sheet().pdf(Paper.A4, false))) {
            int fonts = 0;
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertTrue(font.isEmbedded(), font.getName());
                    assertTrue(font.getName().contains("DejaVuSansCondensed"), font.getName());
                    fonts++;
                }
            }
            assertEquals(2, fonts);
        }
    }

    @Test
    void longNotesGoOnOnTheNextPageAndNoneIsLost() throws IOException {
        weighed();
        for (int i = 1; i <= 60; i++) {
            entries.add(new Entry.Note(next(), "note" + i + " " + "the left rear link was stiff, looked at again after the run; ".repeat(4)));
        }
        entries.add(new Entry.Note(next(), "x".repeat(3000)));
        entries.add(new Entry.Note(next(), "the last word"));
        SetupSheet sheet = sheet();
        String text = text(sheet.pdf(Paper.A4, false), -1);
        for (int i = 1; i <= 60; i++) {
            assertTrue(text.contains("note" + i + " "), "note" + i);
        }
        assertEquals(3000, text.chars().filter(c -> c == 'x').count() - text.replaceAll("x{5,}", "").chars().filter(c -> c == 'x').count());
        assertTrue(text.contains("the last word") && text.contains("goes on on the next page") && text.contains("continued"), text);
        assertInside(sheet.pages(new Face(), Paper.A4, false));
    }

    @Test
    void aWaiverIsPrintedWithItsReasonHoweverLong() throws IOException {
        weighed();
        String why = "the trailer leaves at six and the rain has come over the hill, " + "so the angles wait. ".repeat(20) + "END";
        entries.add(new Entry.SignOff(new Header(entries.size() + 1, Instant.EPOCH, "corner-weights"), Optional.of(why)));
        entries.add(new Entry.DayClosed(next(), Optional.of("rain")));
        String text = text(sheet().pdf(Paper.A4, false), -1).replaceAll("\\s+", " ");
        assertTrue(text.contains("WAIVED: the trailer leaves at six"), text);
        assertTrue(text.contains("so the angles wait. END"), text);
        assertTrue(text.contains("DAY CLOSED OUT OF ORDER: rain"), text);
    }

    @Test
    void aRehearsalIsCalledOne() throws IOException {
        weighed();
        entries.add(new Entry.Condition(next(), CurrentDay.REHEARSAL, "23", ""));
        assertTrue(text(sheet().pdf(Paper.A4, false), 1).contains("REHEARSAL"));
    }

    @Test
    void hostileNamesAreWordsLikeOthers() throws IOException {
        car = car.withId("x", "<html><b>=cmd|'/c calc'!A1 ../../etc \u202Egnp.exe \u4E2D\uD83C\uDFC1 Müller–Ωß " + "W".repeat(400));
        weighed();
        entries.add(new Entry.Note(next(), "tab\there\u0000 line\nbreak %PDF (paren) \\ end"));
        String text = text(sheet().pdf(Paper.A4, false), -1);
        assertTrue(text.contains("<html><b>=cmd|'/c calc'!A1 ../../etc gnp.exe"), text);
        assertTrue(text.contains("Müller–Ωß"), text);
        assertTrue(text.contains("line break %PDF (paren) \\ end"), text);
        assertInside(sheet().pages(new Face(), Paper.LETTER, false));
    }

    @Test
    void theBlankSheetHasTheSameOrderAndNoFigures() throws IOException {
        weighed();
        byte[] pdf = sheet().pdf(Paper.A4, true);
        Files.createDirectories(Path.of("target", "sheets"));
        Files.write(Path.of("target", "sheets", "blank.pdf"), pdf);
        String text = text(pdf, 1);
        assertTrue(text.contains("Set-up sheet to fill in"), text);
        assertFalse(text.contains("160.2"), text);
        assertTrue(text.contains("RF perch") && text.contains("weight") && text.contains("camber"), text);
    }

    @Test
    void theScreenShowsWhatThePdfShows() {
        weighed();
        Page page = sheet().pages(new Face(), Paper.A4, false).get(0);
        BufferedImage image = new BufferedImage(840, 1188, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, 840, 1188);
        new Painter().draw(g, page, 4);
        int dark = 0;
        for (int y = 0; y < 1188; y++) {
            for (int x = 0; x < 840; x++) {
                dark += image.getRaster().getSample(x, y, 0) < 128 ? 1 : 0;
            }
        }
        assertTrue(dark > 10_000, "ink on the picture: " + dark);
    }

    /** The aim is one second for the sheet: work of its own thread, as the machine may be busy with something else. */
    @Test
    void theSheetIsThereAtOnce() {
        weighed();
        long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        sheet().pdf(Paper.A4, false);
        double ms = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) / 1e6;
        System.out.printf("sheet as PDF: %.0f ms%n", ms);
        assertTrue(ms < 1000, ms + " ms");
    }

    private static void assertInside(List<Page> pages) {
        Face face = new Face();
        for (Page page : pages) {
            for (Ink ink : page.ink()) {
                if (ink instanceof Ink.Text text) {
                    double right = text.xMm() + face.widthMm(text.words(), text.bold(), text.sizePt());
                    assertTrue(text.xMm() >= 5 && right <= page.paper().widthMm() - 5 && text.baselineMm() <= page.paper().heightMm() - 5, text.toString());
                }
            }
        }
    }

    private void weighed() {
        entries.clear();
        entries.add(new Entry.CarDescribed(next(), car));
        entries.add(new Entry.Condition(next(), Conditions.DRIVER, Conditions.IN, ""));
        entries.add(new Entry.Condition(next(), Conditions.TYRES, "set 3, scrubbed", ""));
        entries.add(new Entry.Reading(next(), Map.of(ReadingId.of(ReadingKind.SCALE_ZERO, Corner.RF), 0.2), Map.of(), Entry.Source.RACER));
        entries.add(new Entry.Reading(next(), Map.of(load(Corner.LF), 160.2, load(Corner.RF), 170.4, load(Corner.LR), 150.0,
                load(Corner.RR), 157.6), Map.of(), Entry.Source.RACER));
        AdjusterId perch = new AdjusterId(AdjusterKind.PERCH, Corner.RF);
        entries.add(new Entry.Adjustment(next(), List.of(new Entry.Turn(perch, 0.375, OptionalDouble.empty())), ""));
        entries.add(new Entry.Note(next(), "RF ring was dry"));
    }

    private SetupSheet sheet() {
        Day day = Day.of(entries);
        DaySnapshot snapshot = new DaySnapshot(day, new OrderOfWork(List.of(new FullStage())).status(day), DisplayUnits.usual());
        return new SetupSheet(snapshot, "Spring set-up", ZoneOffset.UTC, Path.of("elsewhere"));
    }

    private static String text(byte[] pdf, int pages) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            if (pages > 0) {
                assertEquals(pages, document.getNumberOfPages());
            }
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            return stripper.getText(document);
        }
    }

    private Header next() {
        return new Header(entries.size() + 1, Instant.parse("2026-05-02T08:00:00Z").plusSeconds(entries.size()), "corner-weights");
    }

    private static ReadingId load(Corner corner) {
        return ReadingId.of(ReadingKind.LOAD, corner);
    }
}
