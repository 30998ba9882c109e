package quoin.commandline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.InputStream;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import quoin.commandline.calculation.Calculations;

/** Whatever figure stands where: an answer in finite figures or a refusal by a name, soon, and never a failure. */
class AnyFigureTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final double[] FIGURES = {0, -1, 1e-300, 1e9, -1e300};
    private static final Duration SOON = Duration.ofSeconds(60);

    static Stream<Arguments> examples() throws Exception {
        List<Arguments> all = new ArrayList<>();
        try (InputStream in = AnyFigureTest.class.getResourceAsStream("contract-examples.json")) {
            for (JsonNode example : JSON.readTree(in).get("examples")) {
                all.add(Arguments.of(example.get("id").asText(), example));
            }
        }
        return all.stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("examples")
    void isAnsweredOrRefused(String id, JsonNode example) {
        List<Spot> spots = new ArrayList<>();
        collect(example.get("input"), spots);
        assertFalse(spots.isEmpty());
        for (Spot spot : spots) {
            JsonNode kept = spot.value();
            for (double figure : FIGURES) {
                spot.put(JSON.getNodeFactory().numberNode(figure));
                String what = spot.name() + " = " + figure;
                JsonNode answer = assertTimeoutPreemptively(SOON, () -> answer(example), what);
                assertEquals(answer.has("result"), !answer.has("problem"), what);
                if (answer.has("problem")) {
                    assertFalse(answer.at("/problem/field").asText().isBlank(), what);
                    String message = answer.at("/problem/message").asText();
                    assertFalse(message.isBlank() || message.contains("Exception"), what + ": " + message);
                }
            }
            spot.put(kept);
        }
    }

    /** A number in an object or a list. */
    private record Spot(JsonNode holder, String name, int index) {
        JsonNode value() {
            return holder.isObject() ? holder.get(name) : holder.get(index);
        }

        void put(JsonNode value) {
            if (holder instanceof ObjectNode object) {
                object.set(name, value);
            } else {
                ((ArrayNode) holder).set(index, value);
            }
        }
    }

    private static void collect(JsonNode node, List<Spot> spots) {
        node.properties().forEach(f -> add(node, f.getKey(), 0, f.getValue(), spots));
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            add(node, "entry " + i, i, node.get(i), spots);
        }
    }

    private static void add(JsonNode holder, String name, int index, JsonNode value, List<Spot> spots) {
        if (value.isNumber()) {
            spots.add(new Spot(holder, name, index));
        } else {
            collect(value, spots);
        }
    }

    private static JsonNode answer(JsonNode example) throws RequestFormException {
        ObjectNode file = JSON.createObjectNode();
        ObjectNode request = file.putArray("requests").addObject().put("id", "a");
        request.set("calculation", example.get("calculation"));
        request.set("input", example.get("input"));
        return new Calculator(Calculations.all()).answer(file).answers().at("/answers/0");
    }
}
