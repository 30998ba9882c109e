package quoin.commandline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.InputStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import quoin.commandline.calculation.Calculations;

/** A spoilt request is refused by the name of the field that was spoilt, and no other request suffers. */
class RefusalTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    /** The first example of a calculation, or the example of an id. */
    private static ObjectNode input(String calculation) throws Exception {
        try (InputStream in = RefusalTest.class.getResourceAsStream("contract-examples.json")) {
            for (JsonNode example : JSON.readTree(in).get("examples")) {
                if (example.get("calculation").asText().equals(calculation) || example.get("id").asText().equals(calculation)) {
                    return (ObjectNode) example.get("input");
                }
            }
        }
        throw new IllegalArgumentException(calculation);
    }

    private static ObjectNode file(String calculation, JsonNode input) {
        ObjectNode file = JSON.createObjectNode();
        ObjectNode request = file.putArray("requests").addObject().put("id", "a").put("calculation", calculation);
        request.set("input", input);
        return file;
    }

    private static JsonNode answer(JsonNode file) throws Exception {
        return new Calculator(Calculations.all()).answer(file).answers().get("answers").get(0);
    }

    /** Every number of every example: missing, a text, not finite. Pointer and the field name it must be refused by. */
    static Stream<Arguments> everyNumber() throws Exception {
        Stream.Builder<Arguments> all = Stream.builder();
        try (InputStream in = RefusalTest.class.getResourceAsStream("contract-examples.json")) {
            for (JsonNode example : JSON.readTree(in).get("examples")) {
                collect(all, example, example.get("input"), "");
            }
        }
        return all.build();
    }

    private static void collect(Stream.Builder<Arguments> all, JsonNode example, JsonNode node, String pointer) {
        if (node.isNumber()) {
            all.add(Arguments.of(example.get("calculation").asText(), example.get("id").asText(), pointer));
        }
        node.properties().forEach(f -> collect(all, example, f.getValue(), pointer + "/" + f.getKey()));
    }

    @ParameterizedTest
    @MethodSource("everyNumber")
    void everyNumberIsNeededAndMustBeFinite(String calculation, String id, String pointer) throws Exception {
        String name = pointer.substring(pointer.lastIndexOf('/') + 1);
        String parent = pointer.substring(0, pointer.lastIndexOf('/'));
        String field = pointer.substring(1).replaceFirst("^(car|corner)/", "").replace('/', '.');
        for (JsonNode bad : new JsonNode[] {null, JSON.getNodeFactory().textNode("12"),
                JSON.getNodeFactory().numberNode(Double.NaN), JSON.getNodeFactory().numberNode(Double.NEGATIVE_INFINITY)}) {
            ObjectNode input = input(id);
            ObjectNode holder = (ObjectNode) input.at(parent);
            if (bad == null) {
                holder.remove(name);
            } else {
                holder.set(name, bad);
            }
            JsonNode answer = answer(file(calculation, input));
            assertFalse(answer.has("result"), pointer);
            assertEquals(field, answer.at("/problem/field").asText());
            assertFalse(answer.at("/problem/message").asText().isBlank());
        }
    }

    @ParameterizedTest
    @CsvSource({
        "corner-loads, /car/corners/LF/springRate_N_per_mm, -1, corners.LF.springRate_N_per_mm",
        "corner-loads, /car/corners/RR/motionRatio_springPerWheel, 0, corners.RR.motionRatio_springPerWheel",
        "corner-loads, /car/corners/RF/tyreVerticalRate_N_per_mm, 0, corners.RF.tyreVerticalRate_N_per_mm",
        "corner-loads, /car/corners/LR/unsprungMass_kg, -3, corners.LR.unsprungMass_kg",
        "corner-loads, /car/sprungMass_kg, -100, sprungMass_kg",
        "corner-loads, /car/corners/LF/y_mm, -700, corners.LF.y_mm",
        "corner-loads, /car/antiRollBars/rear/wheelRateInRoll_N_per_mm, -5, antiRollBars.rear.wheelRateInRoll_N_per_mm",
        "corner-loads, /car/sprungCg/z_mm, 1000000, car",
        "cg-height, /rearLift_mm, 5000, rearLift_mm",
        "cg-height, /total_kgf, -1, total_kgf",
        "cg-height, /frontAxleLevel_kgf, 9999, frontAxleLevel_kgf",
        "share-uncertainty, /cornerLoads_kgf/LF, -3, cornerLoads_kgf.LF",
        "share-uncertainty, /readingsAveraged, 1.5, readingsAveraged",
        "share-uncertainty, /readingsAveraged, 0, readingsAveraged",
        "share-uncertainty, /repeatabilitySd_kg, -1, repeatabilitySd_kg",
        "adjustment-plan, /quantum_turns, 0, quantum_turns",
        "adjustment-plan, /tolerances/cross_percent, 0, tolerances.cross_percent",
        "adjustment-plan, /cornerPenalty, -1, cornerPenalty",
        "adjustment-plan, /turnPenalty_per_turn, -0.1, turnPenalty_per_turn",
        "adjustment-plan, /minTurns/LF, 7, minTurns.LF",
        "adjustment-plan, /quantum_turns, 1e-9, quantum_turns",
        "suspension-curves, /corner/loadedRadius_mm, 0, loadedRadius_mm",
        "suspension-curves, /corner/spinAxisOutboardUnitVector/y, 0, spinAxisOutboardUnitVector",
        "suspension-curves, /corner/links/upper_rear/outboard/x_mm, 50, links.upper_rear.outboard",
        "suspension-curves, /positions/4/wheelCentreTravel_mm, 400, positions[4].wheelCentreTravel_mm",
        "suspension-curves, /positions/9/rackTravelLeft_mm, -300, positions[9].rackTravelLeft_mm",
        "example-suspension-curves-five_link, /corner/wheelCentre/y_mm, 762, wheelCentre",
        "example-suspension-curves-semi_trailing, /positions/1/rackTravelLeft_mm, 3, positions[1].rackTravelLeft_mm"
    })
    void theImpossibleIsRefused(String calculation, String pointer, double value, String field) throws Exception {
        ObjectNode input = input(calculation);
        ((ObjectNode) input.at(pointer.substring(0, pointer.lastIndexOf('/'))))
                .put(pointer.substring(pointer.lastIndexOf('/') + 1), value);
        String name = calculation.replaceFirst("^example-(suspension-curves)-.*", "$1");
        assertEquals(field, answer(file(name, input)).at("/problem/field").asText());
    }

    @ParameterizedTest
    @CsvSource({
        "corner-loads, '', colour", "corner-loads, /car, car.colour", "corner-loads, /car/corners/LF, corners.LF.colour",
        "cg-height, '', colour", "pad-shims, /padPositions_mm/LF, padPositions_mm.LF.colour",
        "adjustment-plan, /targets, targets.colour", "share-uncertainty, /cornerLoads_kgf, cornerLoads_kgf.colour",
        "suspension-curves, /corner, corner.colour", "suspension-curves, /corner/links, links.colour",
        "suspension-curves, /corner/links/tie/inboard, links.tie.inboard.colour",
        "suspension-curves, /positions/3, positions[3].colour"
    })
    void unknownFieldsAreRefused(String calculation, String pointer, String field) throws Exception {
        ObjectNode input = input(calculation);
        ((ObjectNode) input.at(pointer)).put("colour", 1);
        String expected = field.replaceFirst("^(car|corner)\\.", "");
        assertEquals(expected, answer(file(calculation, input)).at("/problem/field").asText());
    }

    @Test
    void linksWithoutLengthAreRefused() throws Exception {
        for (String link : new String[] {"upper_rear", "tie"}) {
            ObjectNode input = input("suspension-curves");
            ObjectNode ends = (ObjectNode) input.at("/corner/links/" + link);
            ends.set("inboard", ends.get("outboard"));
            assertEquals("links." + link + ".outboard", answer(file("suspension-curves", input)).at("/problem/field").asText());
        }
    }

    @Test
    void aTypeThatIsNotInstalledIsRefused() throws Exception {
        ObjectNode input = input("suspension-curves");
        ((ObjectNode) input.get("corner")).put("type", "swing_axle");
        assertEquals("type", answer(file("suspension-curves", input)).at("/problem/field").asText());
    }

    @Test
    void coincidentPadsAreRefused() throws Exception {
        ObjectNode input = input("pad-shims");
        ObjectNode pads = (ObjectNode) input.get("padPositions_mm");
        pads.set("RR", pads.get("LF"));
        assertEquals("padPositions_mm.RR", answer(file("pad-shims", input)).at("/problem/field").asText());
    }

    @Test
    void listsOfTheWrongLengthAreRefused() throws Exception {
        ObjectNode input = input("adjustment-plan");
        ((ArrayNode) input.get("errorBefore")).remove(0);
        assertEquals("errorBefore", answer(file("adjustment-plan", input)).at("/problem/field").asText());
        input = input("adjustment-plan");
        ((ArrayNode) input.get("sensitivityMatrix_per_turn").get(2)).add(1);
        assertEquals("sensitivityMatrix_per_turn[2]", answer(file("adjustment-plan", input)).at("/problem/field").asText());
        input = input("adjustment-plan");
        ((ArrayNode) input.get("adjusters")).set(1, "perch");
        assertEquals("adjusters[1]", answer(file("adjustment-plan", input)).at("/problem/field").asText());
    }

    @Test
    void oneRefusalLeavesTheOthers() throws Exception {
        ObjectNode file = file("cg-height", input("cg-height"));
        ((ArrayNode) file.get("requests")).addObject().put("id", "b").put("calculation", "horoscope");
        ((ArrayNode) file.get("requests")).addObject().put("id", "c").put("calculation", "cg-height");
        Calculator.Answers answers = new Calculator(Calculations.all()).answer(file);
        assertEquals(2, answers.refused());
        assertTrue(answers.answers().at("/answers/0").has("result"));
        assertEquals("calculation", answers.answers().at("/answers/1/problem/field").asText());
        assertEquals("input", answers.answers().at("/answers/2/problem/field").asText());
        assertEquals("c", answers.answers().at("/answers/2/id").asText());
    }

    @Test
    void aSpringThatUnloadsIsFound() throws Exception {
        ObjectNode input = input("corner-loads");
        ((ObjectNode) input.at("/turns/perch")).put("RF", -120);
        JsonNode findings = answer(file("corner-loads", input)).at("/result/afterTurns/findings");
        assertEquals("RF", findings.at("/0/corner").asText());
    }
}
