package quoin.mechanics;

import quoin.car.PerCorner;

/**
 * Pads surveyed with a level between neighbours, once round the car. Four differences for three unknowns: what they fail to
 * close by is shared out evenly, which is the least-squares solution for readings that are all alike.
 *
 * @param frontMm RF pad above LF, mm
 * @param rightMm RR pad above RF, mm
 * @param rearMm  RR pad above LR, mm
 * @param leftMm  LR pad above LF, mm
 */
public record LevelLoop(double frontMm, double rightMm, double rearMm, double leftMm) {

    public LevelLoop {
        Require.finite("front_mm", frontMm);
        Require.finite("right_mm", rightMm);
        Require.finite("rear_mm", rearMm);
        Require.finite("left_mm", leftMm);
    }

    /** What going round by the right differs from going round by the left, mm; 0 = the survey closes. */
    public double closingErrorMm() {
        return frontMm + rightMm - leftMm - rearMm;
    }

    /** Heights of the pads above LF, mm. */
    public PerCorner<Double> heightsMm() {
        double share = closingErrorMm() / 4;
        double lr = leftMm + share;
        return new PerCorner<>(0.0, frontMm - share, lr, lr + rearMm + share);
    }

    /** Standard uncertainty of one difference as the closing error tells it, mm; one degree of freedom. */
    public double standardUncertaintyMm() {
        return Math.abs(closingErrorMm()) / 2;
    }
}
