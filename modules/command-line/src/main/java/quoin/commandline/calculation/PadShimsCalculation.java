package quoin.commandline.calculation;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.function.Supplier;
import quoin.car.PerCorner;
import quoin.mechanics.PadSurvey;
import quoin.mechanics.PlanPoint;

/** Shims under four pads: to level, and the fewest to one plane. */
final class PadShimsCalculation implements Calculation {
    private static final double SHIM_STEP_MM = 0.5;

    @Override
    public String name() {
        return "pad-shims";
    }

    @Override
    public Supplier<ObjectNode> read(Fields in) {
        Fields positions = in.object("padPositions_mm");
        PerCorner<PlanPoint> points = PerCorner.of(corner -> {
            Fields at = positions.object(corner.name());
            return new PlanPoint(at.number("x"), at.number("y"));
        });
        PadSurvey survey = new PadSurvey(points, in.perCorner("surveyHeights_mm"));
        return () -> result(survey);
    }

    private static ObjectNode result(PadSurvey survey) {
        PadSurvey.Plane plane = survey.leastSquaresPlane();
        ObjectNode node = Results.object();
        node.set("shimsToLevelOfHighest_mm", Results.perCorner(survey.shimsToLevelMm()));
        node.set("shimsToLevelRounded0_5mm", Results.perCorner(survey.shimsToLevelMm(SHIM_STEP_MM)));
        node.set("leastTotalShimsToCoplanar_mm", Results.perCorner(survey.leastShimsToPlaneMm()));
        ObjectNode fit = Results.object().put("riseForward_mm_per_m", plane.riseForwardMmPerM())
                .put("riseLeft_mm_per_m", plane.riseLeftMmPerM());
        fit.set("residuals_mm", Results.perCorner(plane.residualsMm()));
        node.set("leastSquaresPlane", fit);
        node.put("warp_mm_LFweight1", survey.warpMm());
        node.set("crossTransferVector_LF_is_1", Results.perCorner(survey.transferVector()));
        return node;
    }
}
