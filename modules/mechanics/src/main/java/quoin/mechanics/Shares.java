package quoin.mechanics;

import quoin.car.Corner;
import quoin.car.PerCorner;

/**
 * What four loads say about the car. All shares in percent of the total.
 *
 * @param totalKgf sum of the four loads
 * @param frontPercent (LF + RF) / total
 * @param leftPercent (LF + LR) / total
 * @param crossPercent (RF + LR) / total
 */
public record Shares(double totalKgf, double frontPercent, double leftPercent, double crossPercent) {

    /**
     * @param loadsKgf the four readings
     * @throws InvalidInputException if a load is not finite or the total is not positive
     */
    public static Shares of(PerCorner<Double> loadsKgf) {
        double total = 0;
        for (Corner corner : Corner.values()) {
            total += Require.finite("cornerLoads_kgf." + corner, loadsKgf.get(corner));
        }
        Require.positive("cornerLoads_kgf", total);
        double percent = 100 / total;
        return new Shares(total, (loadsKgf.lf() + loadsKgf.rf()) * percent, (loadsKgf.lf() + loadsKgf.lr()) * percent,
                (loadsKgf.rf() + loadsKgf.lr()) * percent);
    }

    /** The four loads that have this total and these shares; the inverse of {@link #of}. */
    public PerCorner<Double> loadsKgf() {
        double half = totalKgf / 200;
        return new PerCorner<>((frontPercent + leftPercent - crossPercent) * half,
                (frontPercent + crossPercent - leftPercent) * half, (leftPercent + crossPercent - frontPercent) * half,
                (200 - frontPercent - leftPercent - crossPercent) * half);
    }

    public double rearPercent() {
        return 100 - frontPercent;
    }

    public double rightPercent() {
        return 100 - leftPercent;
    }

    /** The other diagonal: (LF + RR) / total. */
    public double otherDiagonalPercent() {
        return 100 - crossPercent;
    }
}
