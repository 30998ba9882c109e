package quoin.mechanics;

import java.util.function.Predicate;
import java.util.function.ToDoubleBiFunction;
import quoin.car.Corner;
import quoin.car.PerCorner;

/**
 * Front, left and cross share with their uncertainty, by the law of propagation of uncertainty (JCGM 100:2008, 5.1.2 and
 * 5.2.2): for a share s of total W, ds/dF is (1 - s)/W for a load inside it and -s/W for one outside. Errors are independent from
 * scale to scale unless their covariance is given; a gain error common to all scales cancels.
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
        return of(loadsKgf, (one, other) -> one == other ? Math.pow(standardUncertaintyKgf.get(one), 2) : 0);
    }

    /**
     * The same with errors that belong together.
     *
     * @param covarianceKgf2 covariance of the errors of two loads, kgf squared; symmetric, of one corner with itself its variance
     */
    public static ShareUncertainty of(PerCorner<Double> loadsKgf, ToDoubleBiFunction<Corner, Corner> covarianceKgf2) {
        return new ShareUncertainty(share(loadsKgf, covarianceKgf2, Corner::isFront), share(loadsKgf, covarianceKgf2, Corner::isLeft),
                share(loadsKgf, covarianceKgf2, corner -> corner == Corner.RF || corner == Corner.LR));
    }

    private static Share share(PerCorner<Double> loads, ToDoubleBiFunction<Corner, Corner> covariance, Predicate<Corner> inside) {
        double total = Shares.of(loads).totalKgf();
        double part = 0;
        for (Corner corner : Corner.values()) {
            part += inside.test(corner) ? loads.get(corner) : 0;
        }
        double share = part / total;
        PerCorner<Double> slopes = PerCorner.of(c -> ((inside.test(c) ? 1 : 0) - share) / total);
        double variance = 0;
        for (Corner one : Corner.values()) {
            for (Corner other : Corner.values()) {
                variance += slopes.get(one) * slopes.get(other) * covariance.applyAsDouble(one, other);
            }
        }
        // Rounding may leave a hair below nothing where the errors cancel.
        return new Share(100 * share, 100 * Math.sqrt(Math.max(0, variance)));
    }
}
