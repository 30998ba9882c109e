package quoin.commandline;

import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;
import quoin.exchange.DayExport;
import quoin.logbook.JournalException;
import quoin.setupsheet.NoLastTimeException;
import quoin.setupsheet.SetupSheet;
import quoin.workflow.spi.Stage;

/** Writes the sheet or the figures of one day into a file and says in one line where it could not. */
final class SheetRun {

    static final int WRITTEN = 0;
    static final int NOT_WRITTEN = 2;
    private static final String COMMA = "comma";
    private static final List<String> MARKS = List.of("point", COMMA);

    private final Path directory;
    private final Collection<? extends Stage> stages;
    private final PrintStream standardError;

    /** @param directory where relative file names start */
    SheetRun(Path directory, Collection<? extends Stage> stages, PrintStream standardError) {
        this.directory = directory;
        this.stages = List.copyOf(stages);
        this.standardError = standardError;
    }

    /**
     * What is asked for.
     *
     * @param day     folder of the day, or the file in it
     * @param file    where it goes; the end of the name says in which form
     * @param page    which page
     * @param paper   name of the paper of a PDF; null = the usual one here
     * @param decimal decimal mark of a CSV, point or comma; null = point
     */
    record Wish(String day, String file, Page page, String paper, String decimal) {
    }

    /** What is written of the day. */
    enum Page {
        /** The sheet. */
        SHEET,
        /** The sheet with its figures left out. */
        BLANK,
        /** Last time, now and the change. */
        LAST_TIME
    }

    /** @return exit status */
    int run(Wish wish) {
        String day = wish.day();
        String file = wish.file();
        try {
            Path folder = directory.resolve(day);
            Path dayFolder = Files.isRegularFile(folder) ? folder.toAbsolutePath().getParent() : folder;
            Map<String, Supplier<byte[]>> forms = forms(dayFolder, wish);
            String end = file.substring(file.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
            if (!forms.containsKey(end)) {
                return fail(file, "the name must end in " + (forms.size() > 1 ? "one of " : "") + "." + String.join(", .", forms.keySet()));
            }
            Optional<String> misplaced = misplaced(wish, end);
            if (misplaced.isPresent()) {
                return fail(file, misplaced.get());
            }
            WholeFile.write(directory.resolve(file), forms.get(end).get());
            return WRITTEN;
        } catch (JournalException | NoLastTimeException | UncheckedIOException e) {
            return fail(day, e.getMessage());
        } catch (NoSuchFileException e) {
            return fail(file, "the folder it should go to does not exist; make it first");
        } catch (IOException | InvalidPathException e) {
            return fail(file, "cannot be written: " + e.getMessage());
        }
    }

    /** What is wrong with an option that the form has no use for, or does not know. */
    private static Optional<String> misplaced(Wish wish, String end) {
        if (wish.paper() != null && !end.equals("pdf")) {
            return Optional.of("--paper goes with a .pdf only; leave it out");
        }
        if (wish.paper() != null && !SetupSheet.PAPERS.contains(wish.paper().toLowerCase(Locale.ROOT))) {
            return Optional.of("--paper must be one of " + String.join(", ", SetupSheet.PAPERS) + ", not " + wish.paper());
        }
        if (wish.decimal() != null && !end.equals("csv")) {
            return Optional.of("--decimal goes with a .csv only; leave it out");
        }
        return wish.decimal() == null || MARKS.contains(wish.decimal().toLowerCase(Locale.ROOT)) ? Optional.empty()
                : Optional.of("--decimal must be " + String.join(" or ", MARKS) + ", not " + wish.decimal());
    }

    private Map<String, Supplier<byte[]>> forms(Path dayFolder, Wish wish) {
        Map<String, Supplier<byte[]>> forms = new TreeMap<>();
        Optional<String> paper = Optional.ofNullable(wish.paper()).map(p -> p.toLowerCase(Locale.ROOT));
        forms.put("pdf", () -> {
            SetupSheet sheet = SetupSheet.of(dayFolder, stages);
            return wish.page() == Page.LAST_TIME ? sheet.lastTimePdf(paper) : sheet.pdf(paper, wish.page() == Page.BLANK);
        });
        if (wish.page() == Page.SHEET) {
            forms.put("txt", () -> SetupSheet.of(dayFolder, stages).text());
            forms.put("csv", () -> DayExport.csv(dayFolder, COMMA.equalsIgnoreCase(wish.decimal())));
            forms.put("json", () -> DayExport.json(dayFolder));
        }
        return forms;
    }

    private int fail(String file, String reason) {
        standardError.println((file + ": " + reason).replaceAll("\\s*\\R\\s*", " "));
        standardError.flush();
        return NOT_WRITTEN;
    }
}
