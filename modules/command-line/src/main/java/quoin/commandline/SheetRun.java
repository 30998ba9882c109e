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
import java.util.TreeMap;
import java.util.function.Supplier;
import quoin.exchange.DayExport;
import quoin.logbook.JournalException;
import quoin.setupsheet.SetupSheet;
import quoin.workflow.spi.Stage;

/** Writes the sheet or the figures of one day into a file and says in one line where it could not. */
final class SheetRun {

    static final int WRITTEN = 0;
    static final int NOT_WRITTEN = 2;

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
     * @param day   folder of the day, or the file in it
     * @param file  where it goes; the end of the name says in which form
     * @param blank true to leave the figures out
     * @return exit status
     */
    int run(String day, String file, boolean blank) {
        try {
            Path folder = directory.resolve(day);
            Path dayFolder = Files.isRegularFile(folder) ? folder.toAbsolutePath().getParent() : folder;
            Map<String, Supplier<byte[]>> forms = forms(dayFolder, blank);
            String end = file.substring(file.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
            if (!forms.containsKey(end)) {
                return fail(file, "the name must end in one of ." + String.join(", .", forms.keySet()));
            }
            WholeFile.write(directory.resolve(file), forms.get(end).get());
            return WRITTEN;
        } catch (JournalException | UncheckedIOException e) {
            return fail(day, e.getMessage());
        } catch (NoSuchFileException e) {
            return fail(file, "the folder it should go to does not exist; make it first");
        } catch (IOException | InvalidPathException e) {
            return fail(file, "cannot be written: " + e.getMessage());
        }
    }

    private Map<String, Supplier<byte[]>> forms(Path dayFolder, boolean blank) {
        Map<String, Supplier<byte[]>> forms = new TreeMap<>();
        forms.put("pdf", () -> SetupSheet.of(dayFolder, stages).pdf(blank));
        if (!blank) {
            forms.put("txt", () -> SetupSheet.of(dayFolder, stages).text());
            forms.put("csv", () -> DayExport.csv(dayFolder, false));
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
