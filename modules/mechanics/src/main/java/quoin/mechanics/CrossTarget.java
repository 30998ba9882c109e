package quoin.mechanics;

import java.util.List;
import quoin.car.PerCorner;

/**
 * A cross weight to aim at and the loads it means on this car. Perches reach it without moving the total or the balance
 * of the loads.
 *
 * @param kind the rule
 * @param shares total and shares at the target; with unlike tracks the left share moves a little
 * @param loadsKgf the four loads at the target
 */
public record CrossTarget(Kind kind, Shares shares, PerCorner<Double> loadsKgf) {
    /** The rules in use. */
    public enum Kind {
        /** RF + LR is half of the total. */
        EQUAL_DIAGONALS,
        /** LF equals RF: for braking; cross then equals the left share if the tracks are alike. */
        EQUAL_FRONTS,
        /** The front share of the left side equals that of the right: cross = f + l - 2 f l. */
        SAME_FRONT_SHARE
    }

    /**
     * The three rules side by side.
     *
     * @param loadsKgf present loads
     * @param contactPoints where the wheels stand
     */
    public static List<CrossTarget> all(PerCorner<Double> loadsKgf, PerCorner<PlanPoint> contactPoints) {
        Shares now = Shares.of(loadsKgf);
        PerCorner<Double> n = TransferVector.of(contactPoints, "contactPoints_mm");
        double diagonals = (now.totalKgf() / 2 - loadsKgf.rf() - loadsKgf.lr()) / (n.rf() + n.lr());
        double fronts = (loadsKgf.rf() - loadsKgf.lf()) / (n.lf() - n.rf());
        return List.of(moved(Kind.EQUAL_DIAGONALS, loadsKgf, n, diagonals),
                moved(Kind.EQUAL_FRONTS, loadsKgf, n, fronts),
                moved(Kind.SAME_FRONT_SHARE, loadsKgf, n, sameShare(loadsKgf, n)));
    }

    /** Loads after a transfer that brings the car to a wanted cross weight in percent. */
    public static PerCorner<Double> loadsAtCrossKgf(PerCorner<Double> loadsKgf, PerCorner<PlanPoint> contactPoints,
            double crossPercent) {
        Require.finite("cross_percent", crossPercent);
        PerCorner<Double> n = TransferVector.of(contactPoints, "contactPoints_mm");
        double wanted = Shares.of(loadsKgf).totalKgf() * crossPercent / 100;
        double transfer = (wanted - loadsKgf.rf() - loadsKgf.lr()) / (n.rf() + n.lr());
        return loadsKgf.zip(n, (load, step) -> load + step * transfer);
    }

    private static CrossTarget moved(Kind kind, PerCorner<Double> loads, PerCorner<Double> n, double transfer) {
        PerCorner<Double> moved = loads.zip(n, (load, step) -> load + step * transfer);
        return new CrossTarget(kind, Shares.of(moved), moved);
    }

    /** Solves (LF + n t)(RR + n t) = (RF + n t)(LR + n t): linear for straight axles, else the root nearer to now. */
    private static double sameShare(PerCorner<Double> f, PerCorner<Double> n) {
        double square = n.lf() * n.rr() - n.rf() * n.lr();
        double linear = f.lf() * n.rr() + f.rr() * n.lf() - f.rf() * n.lr() - f.lr() * n.rf();
        double constant = f.lf() * f.rr() - f.rf() * f.lr();
        double root = Math.sqrt(Math.max(0, linear * linear - 4 * square * constant));
        return -2 * constant / (linear + Math.copySign(root, linear));
    }
}
