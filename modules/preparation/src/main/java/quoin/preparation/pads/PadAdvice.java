package quoin.preparation.pads;

import java.util.List;
import java.util.OptionalDouble;
import quoin.car.Corner;
import quoin.car.PerCorner;
import quoin.car.Setting;
import quoin.mechanics.PadShims;
import quoin.mechanics.PadSurvey;
import quoin.preparation.standing.CarOnPads;

/**
 * What a survey says and what to put under the pads.
 *
 * @param survey          heights above the lowest pad
 * @param warpMm          (LF + RR) less (RF + LR), as the transfer vector counts it
 * @param warpStandardMm  its standard uncertainty
 * @param closingMm       what a survey once round fails to close by; empty = nothing was read twice
 * @param crossPercent    what the pads as they stand do to the cross weight of this car
 * @param plan            shims to lay
 * @param crossAfterPercent what the pads do to it with these shims
 */
record PadAdvice(PadSurvey survey, double warpMm, double warpStandardMm, OptionalDouble closingMm, double crossPercent, PadShims plan,
        double crossAfterPercent) {

    /**
     * What is wanted of the pads.
     *
     * @param level            true for level, false for any plane
     * @param warpToleranceMm  warp that may be left
     * @param levelToleranceMm how far a top may be from the middle height, where level is wanted
     * @param stock            shims that are not lying under a pad
     */
    record Wanted(boolean level, double warpToleranceMm, double levelToleranceMm, List<Setting.Shim> stock) {
    }

    static PadAdvice of(PadSurvey survey, double warpStandardMm, OptionalDouble closingMm, Wanted wanted, CarOnPads car) {
        PadShims plan = wanted.level()
                ? PadShims.toLevel(survey, wanted.stock(), wanted.warpToleranceMm(), wanted.levelToleranceMm())
                : PadShims.toPlane(survey, wanted.stock(), wanted.warpToleranceMm());
        return new PadAdvice(survey, survey.warpMm(), warpStandardMm, closingMm, car.crossChangePercent(survey.heightsMm()), plan,
                car.crossChangePercent(plan.after().heightsMm()));
    }

    /** True where no shim is needed. */
    boolean isGood() {
        return plan.reached() && plan.count() == 0;
    }

    /**
     * A pad that moved against an earlier survey: the one whose move warps the plane most, where that is more than the surveys can
     * tell. Only the warp is compared, as water stands at another height each time.
     *
     * @param before heights of the earlier survey
     * @return warp now less warp then, mm; empty where it is no more than reading
     */
    static OptionalDouble warpMoved(PadSurvey now, PerCorner<Double> before, double warpStandardMm) {
        double moved = now.warpMm() - new PadSurvey(now.positionsMm(), before).warpMm();
        return Math.abs(moved) > 2 * Math.sqrt(2) * warpStandardMm ? OptionalDouble.of(moved) : OptionalDouble.empty();
    }

    /** The pad that changed most against the mean of all four. */
    static Corner mostMoved(PerCorner<Double> now, PerCorner<Double> before) {
        PerCorner<Double> change = now.zip(before, (a, b) -> a - b);
        double mean = (change.lf() + change.rf() + change.lr() + change.rr()) / 4;
        Corner most = Corner.LF;
        for (Corner corner : Corner.values()) {
            most = Math.abs(change.get(corner) - mean) > Math.abs(change.get(most) - mean) ? corner : most;
        }
        return most;
    }
}
