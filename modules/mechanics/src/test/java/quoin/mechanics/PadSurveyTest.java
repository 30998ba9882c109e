package quoin.mechanics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import quoin.car.Corner;
import quoin.car.PerCorner;

/** Contract example, worked out by an independent program, and what must hold for any survey. */
class PadSurveyTest {
    private final ContractExample example = ContractExample.read("pad-shims");
    private final PadSurvey survey = new PadSurvey(
            PerCorner.of(c -> new PlanPoint(at(c).get("x").asDouble(), at(c).get("y").asDouble())),
            ContractExample.perCorner(example.input().get("surveyHeights_mm")));

    private JsonNode at(Corner corner) {
        return example.input().get("padPositions_mm").get(corner.name());
    }

    private void check(String field, PerCorner<Double> actual) {
        for (Corner corner : Corner.values()) {
            assertEquals(example.expected().at(field + "/" + corner).asDouble(), actual.get(corner), 1e-8, field + corner);
        }
    }

    @Test
    void contractExample() {
        check("/shimsToLevelOfHighest_mm", survey.shimsToLevelMm());
        check("/shimsToLevelRounded0_5mm", survey.shimsToLevelMm(0.5));
        check("/leastTotalShimsToCoplanar_mm", survey.leastShimsToPlaneMm());
        check("/crossTransferVector_LF_is_1", survey.transferVector());
        PadSurvey.Plane plane = survey.leastSquaresPlane();
        check("/leastSquaresPlane/residuals_mm", plane.residualsMm());
        JsonNode expected = example.expected().get("leastSquaresPlane");
        assertEquals(expected.get("riseForward_mm_per_m").asDouble(), plane.riseForwardMmPerM(), 1e-8);
        assertEquals(expected.get("riseLeft_mm_per_m").asDouble(), plane.riseLeftMmPerM(), 1e-8);
        assertEquals(example.expected().get("warp_mm_LFweight1").asDouble(), survey.warpMm(), 1e-8);
    }

    @Test
    void leastShimsLeaveNoWarp() {
        PerCorner<Double> shimmed = survey.heightsMm().zip(survey.leastShimsToPlaneMm(), Double::sum);
        PadSurvey after = new PadSurvey(survey.positionsMm(), shimmed);
        assertEquals(0, after.warpMm(), 1e-12);
        assertEquals(PerCorner.all(0.0), new PadSurvey(survey.positionsMm(), PerCorner.all(2.0)).leastShimsToPlaneMm());
    }

    @Test
    void refusesByName() {
        PerCorner<PlanPoint> points = survey.positionsMm();
        assertEquals("padPositions_mm.RR", assertThrows(InvalidInputException.class,
                () -> new PadSurvey(points.with(Corner.RR, points.lf()), survey.heightsMm())).field());
        assertEquals("padPositions_mm", assertThrows(InvalidInputException.class,
                () -> new PadSurvey(new PerCorner<>(new PlanPoint(0, 0), new PlanPoint(1, 1), new PlanPoint(2, 2),
                        new PlanPoint(3, 3)), survey.heightsMm())).field());
        assertEquals("surveyHeights_mm.RF", assertThrows(InvalidInputException.class,
                () -> new PadSurvey(points, survey.heightsMm().with(Corner.RF, Double.NaN))).field());
    }
}
