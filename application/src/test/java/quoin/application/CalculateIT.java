package quoin.application;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * {@code quoin --nogui --calculate requests.json --answers answers.json} on the assembled application, without a display:
 * every example that an independent program worked out, refusals by field, and what a script can rely on.
 */
class CalculateIT {

    private static final Duration LIMIT = Duration.ofSeconds(120);
    private static final Path EXAMPLES = Tree.TOP
            .resolve("modules/command-line/src/test/resources/quoin/commandline/contract-examples.json");
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    Path home;
    private Path requests;
    private Path answers;

    @BeforeEach
    void places() {
        requests = home.resolve("requests.json");
        answers = home.resolve("answers.json");
    }

    private static List<JsonNode> examples() throws IOException {
        List<JsonNode> all = new ArrayList<>();
        JSON.readTree(EXAMPLES.toFile()).get("examples").forEach(all::add);
        return all;
    }

    private static ObjectNode file(List<JsonNode> examples) {
        ObjectNode file = JSON.createObjectNode();
        ArrayNode list = file.putArray("requests");
        examples.forEach(e -> list.add(request(e.get("id").asText(), e.get("calculation").asText(), e.get("input"))));
        return file;
    }

    private static ObjectNode request(String id, String calculation, JsonNode input) {
        ObjectNode request = JSON.createObjectNode().put("id", id).put("calculation", calculation);
        request.set("input", input);
        return request;
    }

    /** Runs with both files, and returns the exit status; the log must be clean and nobody may have complained. */
    private int runFiles() {
        try (AppRunner app = AppRunner.startHeadless(home, "-J-Djava.awt.headless=true", "--calculate",
                requests.toString(), "--answers", answers.toString())) {
            int status = app.waitForExit(LIMIT);
            assertEquals("", app.standardOutput());
            assertEquals("", app.standardError());
            assertEquals(List.of(), app.log().problems());
            return status;
        }
    }

    @Test
    void everyExampleComesBackInOrder() throws IOException {
        List<JsonNode> examples = examples();
        JSON.writeValue(requests.toFile(), file(examples));
        assertEquals(0, runFiles());
        JsonNode given = JSON.readTree(answers.toFile()).get("answers");
        assertEquals(examples.size(), given.size());
        for (int i = 0; i < examples.size(); i++) {
            JsonNode example = examples.get(i);
            assertEquals(example.get("id"), given.get(i).get("id"));
            boolean curves = example.get("calculation").asText().equals("suspension-curves");
            compare(example.get("id").asText(), curves, example.get("expected"), given.get(i).get("result"));
        }
        try (Stream<Path> files = Files.list(home)) {
            assertTrue(files.noneMatch(f -> f.toString().endsWith(".part")), "only the whole file is left");
        }
    }

    private static void compare(String path, boolean curves, JsonNode expected, JsonNode given) {
        assertTrue(given != null && given.getNodeType() == expected.getNodeType(), path + " is " + given);
        if (expected.isNumber()) {
            assertEquals(expected.asDouble(), given.asDouble(), tolerance(path, curves), path);
        } else if (expected.isValueNode()) {
            assertEquals(expected, given, path);
        }
        for (int i = 0; expected.isArray() && i < expected.size(); i++) {
            compare(path + "/" + i, curves, expected.get(i), given.get(i));
        }
        expected.properties().forEach(f -> compare(path + "/" + f.getKey(), curves, f.getValue(), given.get(f.getKey())));
    }

    /** The agreed closeness by what the name of the figure says: angles, lengths, loads, shares, sensitivities. */
    private static double tolerance(String path, boolean curves) {
        if (path.contains("_deg_per_mm")) {
            return 0.001;
        } else if (path.contains("rollCentreHeight")) {
            return 0.5;
        } else if (path.contains("motionRatio")) {
            return 0.0005;
        } else if (path.contains("_kgf")) {
            return 0.02;
        } else if (path.contains("_percent")) {
            return 0.005;
        } else if (path.contains("_deg")) {
            return curves ? 0.002 : 0.0001;
        } else if (path.contains("_mm")) {
            return curves ? 0.02 : 0.01;
        }
        return 1e-6;
    }

    @Test
    void standardOutputCarriesTheJsonAndNothingElse() throws IOException {
        JSON.writeValue(requests.toFile(), file(examples().subList(0, 1)));
        try (AppRunner app = AppRunner.startHeadlessReading(requests, home, "--calculate", "-", "--answers", "-")) {
            assertEquals(0, app.waitForExit(LIMIT));
            assertEquals("", app.standardError());
            String out = app.standardOutput();
            assertTrue(out.startsWith("{") && out.endsWith("}\n"), out);
            assertEquals(examples().get(0).get("id"), JSON.readTree(out).at("/answers/0/id"));
            assertEquals(JSON.readTree(out).toPrettyString(), JSON.readTree(out.strip()).toPrettyString());
        }
    }

    /** Missing, not finite, impossible, unknown, out of reach: each by the name of its field, and the rest is answered. */
    @Test
    void whatCannotBeIsRefusedByName() throws IOException {
        ObjectNode file = JSON.createObjectNode();
        ArrayNode list = file.putArray("requests");
        JsonNode loads = input("corner-loads");
        JsonNode curves = input("suspension-curves");
        list.add(request("good", "cg-height", input("cg-height")));
        list.add(request("missing", "corner-loads", without(loads, "/car/corners/LF", "springRate_N_per_mm")));
        list.add(request("endless", "cg-height", with(input("cg-height"), "", "wheelbase_mm", "1e999")));
        list.add(request("not a number", "cg-height", with(input("cg-height"), "", "rearLift_mm", "NaN")));
        list.add(request("negative", "corner-loads", with(loads, "/car", "sprungMass_kg", "-600")));
        list.add(request("no ratio", "corner-loads", with(loads, "/car/corners/RR", "motionRatio_springPerWheel", "0")));
        list.add(request("coincide", "pad-shims", same(input("pad-shims"))));
        list.add(request("out of reach", "suspension-curves", with(curves, "/positions/0", "wheelCentreTravel_mm", "900")));
        list.add(request("unknown", "corner-loads", with(loads, "/car/corners/LR", "colour", "3")));
        list.add(request("no such sum", "horoscope", JSON.createObjectNode()));
        list.add(request("good too", "share-uncertainty", input("share-uncertainty")));
        Files.writeString(requests, file.toString().replace("\"1e999\"", "1e999").replace("\"NaN\"", "NaN"));
        assertEquals(1, runFiles());
        List<String> fields = new ArrayList<>();
        for (JsonNode answer : JSON.readTree(answers.toFile()).get("answers")) {
            assertEquals(answer.has("problem"), !answer.has("result"), answer.toString());
            assertFalse(answer.has("problem") && answer.at("/problem/message").asText().isBlank());
            fields.add(answer.get("id").asText() + ": " + answer.at("/problem/field").asText());
        }
        assertEquals(List.of("good: ", "missing: corners.LF.springRate_N_per_mm", "endless: wheelbase_mm",
                "not a number: rearLift_mm", "negative: sprungMass_kg", "no ratio: corners.RR.motionRatio_springPerWheel",
                "coincide: padPositions_mm.RF", "out of reach: positions[0].wheelCentreTravel_mm",
                "unknown: corners.LR.colour", "no such sum: calculation", "good too: "), fields);
    }

    private static JsonNode input(String calculation) throws IOException {
        return examples().stream().filter(e -> e.get("calculation").asText().equals(calculation)).findFirst()
                .orElseThrow().get("input");
    }

    private static JsonNode without(JsonNode input, String at, String field) {
        JsonNode copy = input.deepCopy();
        ((ObjectNode) copy.at(at)).remove(field);
        return copy;
    }

    /** NaN and numbers beyond a double go in as text, and lose their quotes in the file. */
    private static JsonNode with(JsonNode input, String at, String field, String value) throws IOException {
        JsonNode copy = input.deepCopy();
        boolean plain = value.matches("-?[0-9]+");
        ((ObjectNode) copy.at(at)).set(field, plain ? JSON.readTree(value) : JSON.getNodeFactory().textNode(value));
        return copy;
    }

    private static JsonNode same(JsonNode pads) {
        JsonNode copy = pads.deepCopy();
        ((ObjectNode) copy.get("padPositions_mm")).set("RF", copy.at("/padPositions_mm/LF"));
        return copy;
    }

    @Test
    void aFileOfAnotherFormLeavesTheOldAnswersAlone() throws IOException {
        Files.writeString(requests, "{\"requests\": [\n  {\"id\": \"a\", oops");
        Files.writeString(answers, "kept");
        try (AppRunner app = AppRunner.startHeadless(home, "--calculate", requests.toString(), "--answers",
                answers.toString())) {
            assertEquals(2, app.waitForExit(LIMIT));
            assertEquals("", app.standardOutput());
            List<String> said = app.standardError().lines().toList();
            assertEquals(1, said.size(), said.toString());
            assertTrue(said.get(0).contains("requests.json: line 2"), said.get(0));
            assertEquals(List.of(), app.log().problems());
        }
        assertEquals("kept", Files.readString(answers));
    }
}
