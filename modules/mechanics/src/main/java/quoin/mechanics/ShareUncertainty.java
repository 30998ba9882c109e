package quoin.mechanics;

import java.util.function.Predicate;
import quoin.car.Corner;
import quoin.car.PerCorner;

/**
 * Front, left and cross share with their uncertainty, by the law of propagation of uncertainty (JCGM 100:2008, 5.1.2)
 * with four independent scales: for a share s of total W, ds/dF is (1 - s)/W for a load inside it and -s/W for one
 * outside. A gain error common to all scales cancels and is not counted.
 *
 * @param front (LF + RF) / total
 * @param left (LF + LR) / total
 * @param cross (RF + LR) / total
 */
public record ShareUncertainty(Share front, Share left, Share cross) {
    private static final double COVERAGE_FACTOR = 2;

    /**
     * @param sharePercent the share
     * @param standardPercent its standard uncertainty, percent of the total
     */
    public record Share(double sharePercent, double standardPercent) {
        /** Expanded uncertainty with k = 2, about 95 % coverage. */
        public double expandedPercent() {
            return COVERAGE_FACTOR * standardPercent;
        }
    }

    /**
     * @param loadsKgf the four readings, each positive
     * @param errors of the scales, alike for all four
     */
    public static ShareUncertainty of(PerCorner<Double> loadsKgf, ScaleErrors errors) {
        for (Corner corner : Corner.values()) {
            Require.positive("cornerLoads_kgf." + corner, loadsKgf.get(corner));
        }
        return of(loadsKgf, loadsKgf.map(errors::standardUncertaintyKgf));
    }

    /** The same with a standard uncertainty of its own for each load, in kgf. */
    public static ShareUncertainty of(PerCorner<Double> loadsKgf, PerCorner<Double> standardUncertaintyKgf) {
        return new ShareUncertainty(share(loadsKgf, standardUncertaintyKgf, Corner::isFront),
                share(loadsKgf, standardUncertaintyKgf, Corner::isLeft),
                share(loadsKgf, standardUncertaintyKgf, corner -> corner == Corner.RF || corner == Corner.LR));
    }

    private static Share share(PerCorner<Double> loads, PerCorner<Double> uncertainty, Predicate<Corner> inside) {
        double total = Shares.of(loads).totalKgf();
        double part = 0;
        for (Corner corner : Corner.values()) {
            part += inside.test(corner) ? loads.get(corner) : 0;
        }
        double share = part / total;
        double variance = 0;
        for (Corner corner : Corner.values()) {
            double slope = ((inside.test(corner) ? 1 : 0) - share) / total;
            variance += Math.pow(slope * uncertainty.get(corner), 2);
        }
        return new Share(100 * share, 100 * Math.sqrt(variance));
    }
}
