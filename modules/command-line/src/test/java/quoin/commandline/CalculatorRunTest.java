package quoin.commandline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quoin.commandline.calculation.Calculations;

class CalculatorRunTest {
    private static final String GOOD = """
            {"requests": [{"id": "one", "calculation": "cg-height", "input": {"total_kgf": 1320.9,
            "frontAxleLevel_kgf": 649.8, "frontAxleRearLifted_kgf": 668.5, "wheelbase_mm": 2430,
            "frontWheelCentreHeight_mm": 293, "rearWheelCentreHeight_mm": 298, "rearLift_mm": 632}}]}
            """;

    @TempDir
    Path directory;
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream error = new ByteArrayOutputStream();

    private int run(String requests, String answers, String standardInput) {
        return new CalculatorRun(new Calculator(Calculations.all()), directory,
                new ByteArrayInputStream(standardInput.getBytes(StandardCharsets.UTF_8)), out, new PrintStream(error))
                        .run(requests, answers);
    }

    private int runFile(String content) throws Exception {
        Files.writeString(directory.resolve("requests.json"), content);
        return run("requests.json", "answers.json", "");
    }

    private List<String> errorLines() {
        return error.toString(StandardCharsets.UTF_8).lines().toList();
    }

    @Test
    void answersIntoAFile() throws Exception {
        assertEquals(0, runFile(GOOD));
        assertEquals(423.152042017, new ObjectMapper().readTree(directory.resolve("answers.json").toFile())
                .at("/answers/0/result/cgHeight_mm").asDouble(), 1e-6);
        assertTrue(errorLines().isEmpty());
        try (var files = Files.list(directory)) {
            assertEquals(2, files.count(), "nothing but the two files is left");
        }
    }

    @Test
    void standardInputAndOutputCarryJsonOnly() throws Exception {
        assertEquals(0, run("-", "-", GOOD));
        assertEquals("one", new ObjectMapper().readTree(out.toByteArray()).at("/answers/0/id").asText());
    }

    @Test
    void refusalIsOne() throws Exception {
        assertEquals(1, runFile(GOOD.replace("2430", "NaN")));
        assertEquals("wheelbase_mm", new ObjectMapper().readTree(directory.resolve("answers.json").toFile())
                .at("/answers/0/problem/field").asText());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{", "[]", "{\"requests\": 3}", "{\"requests\": [{\"calculation\": \"cg-height\"}]}",
        "{\"requests\": [], \"extra\": 1}", "{\"requests\": []} tail", "{\"requests\": [], \"requests\": []}", "\"text\""})
    void anotherFormIsTwoWithOneLineAndNoFile(String content) throws Exception {
        Files.writeString(directory.resolve("answers.json"), "kept");
        assertEquals(2, runFile(content));
        assertEquals(1, errorLines().size());
        assertTrue(errorLines().get(0).startsWith("requests.json: "), errorLines().get(0));
        assertEquals("kept", Files.readString(directory.resolve("answers.json")));
    }

    @Test
    void missingFilesAreSaid() throws Exception {
        assertEquals(2, run("nowhere.json", "answers.json", ""));
        assertEquals("nowhere.json: no such file", errorLines().get(0));
        Files.writeString(directory.resolve("requests.json"), GOOD);
        assertEquals(2, run("requests.json", "no-such-folder/answers.json", ""));
        assertEquals(2, errorLines().size());
        assertFalse(Files.exists(directory.resolve("no-such-folder")));
    }
}
