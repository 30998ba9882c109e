package quoin.mechanics;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import quoin.car.PerAxle;
import quoin.car.PerCorner;

/** Contract examples, worked out by an independent program, read from the test resources. */
record ContractExample(JsonNode input, JsonNode expected) {

    static ContractExample read(String calculation) {
        try (InputStream in = ContractExample.class.getResourceAsStream(calculation + ".json")) {
            JsonNode example = new ObjectMapper().readTree(in);
            return new ContractExample(example.get("input"), example.get("expected"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    CarModel car() {
        JsonNode car = input.get("car");
        Map<String, SpacePoint> points = new LinkedHashMap<>();
        car.get("rideHeightPoints").properties().forEach(p -> points.put(p.getKey(), space(p.getValue())));
        return new CarModel(car.get("sprungMass_kg").asDouble(), space(car.get("sprungCg")),
                PerCorner.of(c -> corner(car.get("corners").get(c.name()))),
                new PerAxle<>(bar(car.get("antiRollBars").get("front")), bar(car.get("antiRollBars").get("rear"))),
                new PerAxle<>(optional(car.get("rollCentreHeight_mm").get("front")),
                        optional(car.get("rollCentreHeight_mm").get("rear"))),
                optional(car.get("chassisTorsionalStiffness_Nm_per_deg")), car.get("torsionAxisHeight_mm").asDouble(),
                points);
    }

    Turns turns() {
        return new Turns(perCorner(input.get("turns").get("perch")), perCorner(input.get("turns").get("rod")));
    }

    static PerCorner<Double> perCorner(JsonNode node) {
        return PerCorner.of(c -> node.get(c.name()).asDouble());
    }

    private static CornerModel corner(JsonNode n) {
        return new CornerModel(n.get("x_mm").asDouble(), n.get("y_mm").asDouble(), n.get("unsprungMass_kg").asDouble(),
                n.get("springRate_N_per_mm").asDouble(), n.get("motionRatio_springPerWheel").asDouble(),
                n.get("motionRatioSlope_per_mm").asDouble(), n.get("springCompressionAtDesign_mm").asDouble(),
                n.get("perchPitchAtSpring_mm_per_turn").asDouble(), n.get("rodLiftAtWheel_mm_per_turn").asDouble(),
                optional(n.get("tyreVerticalRate_N_per_mm")), n.get("padHeight_mm").asDouble());
    }

    private static BarModel bar(JsonNode n) {
        return new BarModel(n.get("wheelRateInRoll_N_per_mm").asDouble(), n.get("linkPreloadOffset_mm").asDouble());
    }

    private static SpacePoint space(JsonNode n) {
        return new SpacePoint(n.get("x_mm").asDouble(), n.get("y_mm").asDouble(), n.get("z_mm").asDouble());
    }

    private static OptionalDouble optional(JsonNode n) {
        return n.isNull() ? OptionalDouble.empty() : OptionalDouble.of(n.asDouble());
    }
}
