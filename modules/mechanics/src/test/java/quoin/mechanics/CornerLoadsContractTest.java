package quoin.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quoin.car.Corner;
import quoin.car.PerCorner;

/** Contract example, worked out by an independent program with exact finite rotation. */
class CornerLoadsContractTest {
    private static final double CLOSE = 1e-6;
    private final ContractExample example = ContractExample.read("corner-loads");

    @Test
    void standsAsTheExampleBeforeTheTurns() {
        check(example.expected().get("baseline"), CornerLoads.solve(example.car(), Turns.NONE));
    }

    @Test
    void standsAsTheExampleAfterTheTurns() {
        check(example.expected().get("afterTurns"), CornerLoads.solve(example.car(), example.turns()));
    }

    @Test
    void answersTheTurnsAsTheExample() {
        List<Sensitivity> all = CornerLoads.sensitivities(example.car(), Turns.NONE);
        assertEquals(8, all.size());
        for (Sensitivity s : all) {
            String name = s.input().name().toLowerCase(java.util.Locale.ROOT) + s.corner();
            JsonNode expected = example.expected().get("sensitivities");
            check(name, expected.get("cornerLoads_kgf_per_turn").get(name), s.loadsKgf());
            check(name, expected.get("rideHeights_mm_per_turn").get(name), s.rideHeightsMm());
        }
    }

    private static void check(JsonNode expected, Equilibrium actual) {
        check("loads", expected.get("cornerLoads_kgf"), actual.loadsKgf());
        assertEquals(expected.get("total_kgf").asDouble(), actual.shares().totalKgf(), CLOSE);
        assertEquals(expected.get("front_percent").asDouble(), actual.shares().frontPercent(), CLOSE);
        assertEquals(expected.get("left_percent").asDouble(), actual.shares().leftPercent(), CLOSE);
        assertEquals(expected.get("cross_percent").asDouble(), actual.shares().crossPercent(), CLOSE);
        assertEquals(expected.get("cg_mm").get("x").asDouble(), actual.centreOfGravity().xMm(), CLOSE);
        assertEquals(expected.get("cg_mm").get("y").asDouble(), actual.centreOfGravity().yMm(), CLOSE);
        check("heights", expected.get("rideHeights_mm"), actual.rideHeightsMm());
        assertEquals(expected.get("bodyHeave_mm").asDouble(), actual.heaveMm(), CLOSE);
        assertEquals(expected.get("bodyRoll_deg").asDouble(), actual.rollDeg(), CLOSE);
        assertEquals(expected.get("bodyPitch_deg").asDouble(), actual.pitchDeg(), CLOSE);
        assertEquals(0, actual.twistDeg(), 0);
        check("travel", expected.get("wheelTravel_mm"), actual.wheelTravelMm());
        check("springs", expected.get("springForce_N"), actual.springForceN());
        assertTrue(actual.findings().isEmpty());
    }

    private static void check(String what, JsonNode expected, PerCorner<Double> actual) {
        for (Corner corner : Corner.values()) {
            assertEquals(expected.get(corner.name()).asDouble(), actual.get(corner), CLOSE, what + " " + corner);
        }
    }

    private static void check(String what, JsonNode expected, Map<String, Double> actual) {
        assertEquals(expected.size(), actual.size(), what);
        actual.forEach((name, value) -> assertEquals(expected.get(name).asDouble(), value, CLOSE, what + " " + name));
    }
}
