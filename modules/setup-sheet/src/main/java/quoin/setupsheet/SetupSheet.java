package quoin.setupsheet;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import org.openide.util.NbBundle.Messages;
import quoin.logbook.Day;
import quoin.logbook.Journal;
import quoin.setupsheet.content.ContentOfDay;
import quoin.setupsheet.content.SheetContent;
import quoin.setupsheet.layout.SheetLayout;
import quoin.setupsheet.page.Face;
import quoin.setupsheet.page.Page;
import quoin.setupsheet.page.Paper;
import quoin.setupsheet.page.PdfFile;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workflow.OrderOfWork;
import quoin.workflow.spi.Stage;

/** The sheet of a day: pages, PDF and plain text. Needs no window. */
@Messages({"# {0} - car", "# {1} - day", "pdf.title=Set-up sheet, {0}, {1}"})
public final class SetupSheet {

    private final DaySnapshot snapshot;
    private final String title;
    private final ZoneId zone;

    SetupSheet(DaySnapshot snapshot, String title, ZoneId zone) {
        this.snapshot = snapshot;
        this.title = title;
        this.zone = zone;
    }

    /**
     * The sheet of a day on the disk, which is only looked at.
     *
     * @param dayFolder folder of the day
     * @param stages    the installed stages
     * @throws quoin.logbook.JournalException where the day cannot be read; the message says what to do
     */
    public static SetupSheet of(Path dayFolder, Collection<? extends Stage> stages) {
        try (Journal journal = Journal.openReadOnly(dayFolder)) {
            Day day = journal.day();
            CurrentDay shown = new CurrentDay(stages);
            return new SetupSheet(new DaySnapshot(day, new OrderOfWork(shown.stages()).status(day), shown.units()),
                    journal.info().title(), ZoneId.systemDefault());
        }
    }

    List<Page> pages(Face face, Paper paper, boolean blank) {
        SheetContent content = blank ? ContentOfDay.blank(snapshot, zone) : ContentOfDay.filled(snapshot, title, zone);
        return SheetLayout.pages(face, content, paper);
    }

    /**
     * The sheet as a PDF with embedded letters, on the paper usual here.
     *
     * @param blank true for a sheet to fill in by hand
     */
    public byte[] pdf(boolean blank) {
        return pdf(Paper.usual(Locale.getDefault()), blank);
    }

    byte[] pdf(Paper paper, boolean blank) {
        Day day = snapshot.day();
        Instant last = day.written().get(day.written().size() - 1).header().time();
        String named = title.isBlank() ? last.atZone(zone).toLocalDate().toString() : title;
        return PdfFile.of(pages(new Face(), paper, blank), Bundle.pdf_title(snapshot.car().name(), named), last);
    }

    /** The sheet as plain text, UTF-8. */
    public byte[] text() {
        return SheetText.of(snapshot, zone).getBytes(StandardCharsets.UTF_8);
    }
}
