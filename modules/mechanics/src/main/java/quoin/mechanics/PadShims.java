package quoin.mechanics;

import java.util.List;
import quoin.car.Corner;
import quoin.car.PerCorner;
import quoin.car.Setting;
import quoin.quantities.Texts;

/**
 * What to put under four pads from the shims at hand. Whole shims only and none used twice: a small integer programme, solved
 * exactly. Nearest to what is wanted comes first, then the fewest shims; in a plane then the least warp.
 *
 * @param shimsMm thicknesses under each pad, mm, thickest first
 * @param after   the pads with these shims under them
 * @param reached true where the tolerance is met
 */
public record PadShims(PerCorner<List<Double>> shimsMm, PadSurvey after, boolean reached) {
    private static final Texts TEXTS = Texts.of(PadShims.class);

    /** Loose shims under one pad; a taller stack slides and creeps (common practice, no source). */
    public static final int MOST_UNDER_A_PAD = 6;
    /** Thicknesses a stock may hold. */
    public static final int MOST_THICKNESSES = 8;

    public PadShims {
        shimsMm = shimsMm.map(List::copyOf);
    }

    /**
     * The fewest shims that bring the four tops into one plane, however it tilts.
     *
     * @param stock            thicknesses and counts, at most {@link #MOST_THICKNESSES}
     * @param warpToleranceMm how much warp may be left, mm as {@link PadSurvey#warpMm()} counts it
     * @throws InvalidInputException naming the stock or the tolerance
     */
    public static PadShims toPlane(PadSurvey survey, List<Setting.Shim> stock, double warpToleranceMm) {
        Require.notNegative("warpTolerance_mm", warpToleranceMm);
        return solve(survey, stock, new ShimSearch.Wanted(warpToleranceMm, Double.POSITIVE_INFINITY));
    }

    /**
     * The fewest shims that bring the four tops to one level and into one plane.
     *
     * @param stock              thicknesses and counts, at most {@link #MOST_THICKNESSES}
     * @param warpToleranceMm  how much warp may be left, mm as {@link PadSurvey#warpMm()} counts it
     * @param levelToleranceMm how far a top may be from the middle of the highest and the lowest, mm
     * @throws InvalidInputException naming the stock or the tolerance
     */
    public static PadShims toLevel(PadSurvey survey, List<Setting.Shim> stock, double warpToleranceMm, double levelToleranceMm) {
        Require.notNegative("warpTolerance_mm", warpToleranceMm);
        Require.notNegative("levelTolerance_mm", levelToleranceMm);
        return solve(survey, stock, new ShimSearch.Wanted(warpToleranceMm, 2 * levelToleranceMm));
    }

    private static PadShims solve(PadSurvey survey, List<Setting.Shim> stock, ShimSearch.Wanted wanted) {
        if (stock.size() > MOST_THICKNESSES) {
            throw new InvalidInputException("shimStock",
                    TEXTS.phrase("holdsThicknessesLeaveThe", stock.size(), MOST_THICKNESSES));
        }
        ShimSearch.Found found = new ShimSearch(survey, stock, wanted).search();
        PerCorner<Double> heights = PerCorner.of(c -> survey.heightsMm().get(c) + sum(found.shimsMm().get(c)));
        return new PadShims(found.shimsMm(), new PadSurvey(survey.positionsMm(), heights), found.excessMm() <= ShimSearch.EXACT_MM);
    }

    private static double sum(List<Double> shims) {
        return shims.stream().mapToDouble(Double::doubleValue).sum();
    }

    /** Shims used in all. */
    public int count() {
        int count = 0;
        for (Corner corner : Corner.values()) {
            count += shimsMm.get(corner).size();
        }
        return count;
    }

    /** What comes under one pad in all, mm. */
    public double underMm(Corner corner) {
        return sum(shimsMm.get(corner));
    }
}
