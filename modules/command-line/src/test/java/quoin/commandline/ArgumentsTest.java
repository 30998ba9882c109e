package quoin.commandline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.netbeans.api.sendopts.CommandException;
import org.netbeans.api.sendopts.CommandLine;
import org.openide.LifecycleManager;
import org.openide.util.lookup.Lookups;

/** Options as they are typed, through the platform's own reader of options. */
class ArgumentsTest {

    @TempDir
    private Path directory;
    private final ByteArrayOutputStream error = new ByteArrayOutputStream();
    private final List<Integer> exits = new ArrayList<>();
    private final Locale before = Locale.getDefault();

    @BeforeEach
    void english() {
        Locale.setDefault(Locale.UK);
    }

    @AfterEach
    void languageBack() {
        Locale.setDefault(before);
    }

    /** Notes the status it is asked to end with, and goes on. */
    private final class Stays extends LifecycleManager {
        @Override
        public void saveAll() {
            // nothing is open
        }

        @Override
        public void exit() {
            exit(0);
        }

        @Override
        public void exit(int status) {
            exits.add(status);
        }
    }

    /** @return the status told to whoever started Quoin, 0 where nothing was wrong */
    private int run(String... options) {
        int[] told = {0};
        Lookups.executeWith(Lookups.fixed(new Stays()), () -> {
            try {
                CommandLine.create(Arguments.class).process(options, new ByteArrayInputStream(new byte[0]),
                        new ByteArrayOutputStream(), new PrintStream(error, true, StandardCharsets.UTF_8), directory.toFile());
            } catch (CommandException e) {
                told[0] = e.getExitCode();
            }
        });
        return told[0];
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "--calculate in.json                            | --calculate and --answers must be given together",
        "--answers out.json                             | --calculate and --answers must be given together",
        "--sheet day                                    | --sheet and --to must be given together",
        "--to day.pdf                                   | --sheet and --to must be given together",
        "--blank                                        | --sheet and --to must be given together",
        "--last-time                                    | --sheet and --to must be given together",
        "--paper a4                                     | --sheet and --to must be given together",
        "--decimal comma                                | --sheet and --to must be given together",
        "--sheet day --to day.pdf --blank --last-time   | --blank and --last-time are two different pages",
        "--calculate in.json --answers o.json --to a.pdf | --calculate and --sheet are two different things",
        "--calculate in.json --answers o.json --blank   | --calculate and --sheet are two different things"})
    void whatIsMissingOrTooMuchIsSaidWithItsRemedy(String options, String start) throws IOException {
        assertEquals(2, run(options.split(" ")));
        assertEquals(List.of(2), exits);
        String said = error.toString(StandardCharsets.UTF_8);
        assertTrue(said.startsWith(start), said);
        try (var files = Files.list(directory)) {
            assertEquals(0, files.count(), "nothing was written");
        }
    }

    @Test
    void calculationsAreAnsweredInTheFolderTheyWereAskedIn() throws IOException {
        Files.writeString(directory.resolve("in.json"), "{\"requests\": []}");
        assertEquals(0, run("--calculate", "in.json", "--answers", "out.json"));
        assertEquals(List.of(0), exits);
        assertEquals("{\"answers\":[]}", Files.readString(directory.resolve("out.json")).replaceAll("\\s", ""));
    }

    @Test
    void dayThatIsNotThereIsNamed() {
        assertEquals(2, run("--sheet", "nowhere", "--to", "sheet.pdf"));
        assertTrue(error.toString(StandardCharsets.UTF_8).contains("nowhere"), error.toString(StandardCharsets.UTF_8));
    }
}
