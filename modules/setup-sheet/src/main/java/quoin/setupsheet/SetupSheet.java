package quoin.setupsheet;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.openide.util.NbBundle.Messages;
import quoin.logbook.Day;
import quoin.logbook.Journal;
import quoin.setupsheet.content.ContentOfChange;
import quoin.setupsheet.content.ContentOfDay;
import quoin.setupsheet.content.LastTime;
import quoin.setupsheet.content.SheetContent;
import quoin.setupsheet.layout.ChangeLayout;
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
@Messages({"# {0} - car", "# {1} - day", "pdf.title=Set-up sheet, {0}, {1}",
    "pdf.noLastTime=this car was not read on an earlier day of the same library"})
public final class SetupSheet {

    /** Names of the papers a PDF can be made for. */
    public static final List<String> PAPERS = List.of("a4", "letter");

    private final DaySnapshot snapshot;
    private final String title;
    private final ZoneId zone;
    private final Path folder;

    /** @param folder folder of the day, beside which the earlier days lie */
    SetupSheet(DaySnapshot snapshot, String title, ZoneId zone, Path folder) {
        this.snapshot = snapshot;
        this.title = title;
        this.zone = zone;
        this.folder = folder;
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
                    journal.info().title(), ZoneId.systemDefault(), dayFolder);
        }
    }

    List<Page> pages(Face face, Paper paper, boolean blank) {
        SheetContent content = blank ? ContentOfDay.blank(snapshot, zone) : ContentOfDay.filled(snapshot, title, zone);
        return SheetLayout.pages(face, content, paper);
    }

    /** The day before this one on which the car was read; empty where there is none. Reads files: not on the event thread. */
    Optional<LastTime> lastTime() {
        return LastTime.before(folder);
    }

    List<Page> changePages(Face face, Paper paper, LastTime last) {
        return ChangeLayout.pages(face, ContentOfChange.of(snapshot, title, last, zone), paper);
    }

    /**
     * The sheet as a PDF with embedded letters.
     *
     * @param paper one of {@link #PAPERS}; empty = the one usual here
     * @param blank true for a sheet to fill in by hand
     */
    public byte[] pdf(Optional<String> paper, boolean blank) {
        return pdf(paper(paper), blank);
    }

    byte[] pdf(Paper paper, boolean blank) {
        return pdf(pages(new Face(), paper, blank));
    }

    /**
     * The page of last time, now and the change as a PDF.
     *
     * @param paper one of {@link #PAPERS}; empty = the one usual here
     * @throws NoLastTimeException where the car was not read on an earlier day
     */
    public byte[] lastTimePdf(Optional<String> paper) {
        LastTime last = lastTime().orElseThrow(() -> new NoLastTimeException(Bundle.pdf_noLastTime()));
        return pdf(changePages(new Face(), paper(paper), last));
    }

    byte[] pdf(List<Page> pages) {
        Day day = snapshot.day();
        Instant last = day.written().get(day.written().size() - 1).header().time();
        String named = title.isBlank() ? last.atZone(zone).toLocalDate().toString() : title;
        return PdfFile.of(pages, Bundle.pdf_title(snapshot.car().name(), named), last);
    }

    private static Paper paper(Optional<String> name) {
        return name.map(n -> Paper.valueOf(n.toUpperCase(Locale.ROOT))).orElseGet(() -> Paper.usual(Locale.getDefault()));
    }

    /** The sheet as plain text, UTF-8. */
    public byte[] text() {
        return SheetText.of(snapshot, zone).getBytes(StandardCharsets.UTF_8);
    }
}
