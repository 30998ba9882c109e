package quoin.commandline;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** Reads the request file, writes the answer file whole or not at all, and says how it went. */
final class CalculatorRun {
    static final int ALL_ANSWERED = 0;
    static final int SOME_REFUSED = 1;
    static final int NOT_READ = 2;

    /** A number that is not a number is refused by its name, so the reader lets it through; doubles of a field are not. */
    private static final JsonMapper JSON = JsonMapper.builder().enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
            .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS).build();

    private final Calculator calculator;
    private final Path directory;
    private final InputStream standardInput;
    private final OutputStream standardOutput;
    private final PrintStream standardError;

    /** @param directory where relative file names start */
    CalculatorRun(Calculator calculator, Path directory, InputStream standardInput, OutputStream standardOutput,
            PrintStream standardError) {
        this.calculator = calculator;
        this.directory = directory;
        this.standardInput = standardInput;
        this.standardOutput = standardOutput;
        this.standardError = standardError;
    }

    /**
     * @param requests name of the request file, {@code -} = standard input
     * @param answers name of the answer file, {@code -} = standard output
     * @return exit status
     */
    int run(String requests, String answers) {
        Calculator.Answers answered;
        try {
            answered = calculator.answer(read(requests));
        } catch (JsonProcessingException e) {
            return fail(requests, "line " + e.getLocation().getLineNr() + ", column " + e.getLocation().getColumnNr()
                    + ": " + e.getOriginalMessage());
        } catch (NoSuchFileException e) {
            return fail(requests, "no such file");
        } catch (IOException | InvalidPathException | RequestFormException e) {
            return fail(requests, e.getMessage());
        }
        try {
            write(answers, JSON.writerWithDefaultPrettyPrinter().writeValueAsBytes(answered.answers()));
        } catch (IOException | InvalidPathException e) {
            return fail(answers, "cannot be written: " + e.getMessage());
        }
        return answered.refused() == 0 ? ALL_ANSWERED : SOME_REFUSED;
    }

    private int fail(String file, String reason) {
        String oneLine = (file + ": " + reason).replaceAll("\\s*\\R\\s*", " ");
        standardError.println(oneLine);
        standardError.flush();
        return NOT_READ;
    }

    private JsonNode read(String name) throws IOException {
        if (name.equals("-")) {
            return JSON.readTree(standardInput);
        }
        try (InputStream in = Files.newInputStream(directory.resolve(name))) {
            return JSON.readTree(in);
        }
    }

    private void write(String name, byte[] content) throws IOException {
        if (name.equals("-")) {
            standardOutput.write(content);
            standardOutput.write('\n');
            standardOutput.flush();
            return;
        }
        WholeFile.write(directory.resolve(name), content);
    }
}
