package quoin.commandline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import quoin.commandline.calculation.Calculations;

/** Contract examples, worked out by an independent program: every expected figure must come back, to 1e-6. */
class ContractExamplesTest {
    private static final double CLOSE = 1e-6;

    @TestFactory
    Stream<DynamicTest> everyExample() throws Exception {
        List<DynamicTest> tests = new ArrayList<>();
        try (InputStream in = getClass().getResourceAsStream("contract-examples.json")) {
            for (JsonNode example : new ObjectMapper().readTree(in).get("examples")) {
                tests.add(DynamicTest.dynamicTest(example.get("id").asText(), () -> check(example)));
            }
        }
        assertTrue(tests.size() >= Calculations.all().size(), "an example for every calculation");
        return tests.stream();
    }

    private static void check(JsonNode example) throws Exception {
        ObjectNode file = new ObjectMapper().createObjectNode();
        ObjectNode request = file.putArray("requests").addObject();
        request.set("id", example.get("id"));
        request.set("calculation", example.get("calculation"));
        request.set("input", example.get("input"));
        Calculator.Answers answers = new Calculator(Calculations.all()).answer(file);
        JsonNode answer = answers.answers().get("answers").get(0);
        assertEquals(0, answers.refused(), answer.toString());
        assertEquals(example.get("id"), answer.get("id"));
        compare("", example.get("expected"), answer.get("result"));
    }

    private static void compare(String path, JsonNode expected, JsonNode actual) {
        assertNotNull(actual, path);
        if (expected.isNumber()) {
            assertEquals(expected.asDouble(), actual.asDouble(), CLOSE, path);
        }
        for (int i = 0; expected.isArray() && i < expected.size(); i++) {
            compare(path + "/" + i, expected.get(i), actual.get(i));
        }
        expected.properties().forEach(
                field -> compare(path + "/" + field.getKey(), field.getValue(), actual.get(field.getKey())));
    }
}
