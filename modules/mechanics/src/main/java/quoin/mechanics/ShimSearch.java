package quoin.mechanics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import quoin.car.Corner;
import quoin.car.PerCorner;
import quoin.car.Setting;

/**
 * Branch and bound over the four pads: each takes one of the stacks that the stock allows. A branch is left where what is
 * still to come cannot better the best found: by the warp and the spread it could still reach, then by the shims it needs.
 */
final class ShimSearch {

    static final double EXACT_MM = 1e-9;
    private static final int PADS = 4;
    private static final double FIRST_LIMIT_MM = 0.2;
    /** What counts as nearer; less is arithmetic. */
    private static final double NEARER_MM = 1e-7;
    private static final int NEVER = 1_000_000;

    /**
     * @param warpMm   warp that may be left
     * @param spreadMm highest less lowest top that may be left; infinite = tilt does not matter
     */
    record Wanted(double warpMm, double spreadMm) {
    }

    /**
     * @param shimsMm  thicknesses under each pad, thickest first
     * @param excessMm how far beyond what is wanted; 0 = reached
     */
    record Found(PerCorner<List<Double>> shimsMm, double excessMm) {
    }

    /** Some shims on each other: how many of each thickness. */
    private record Stack(int[] counts, int pieces, double heightMm) {
    }

    private final Wanted wanted;
    private final double[] thickness;
    private final int[] left;
    private final Stack[] byHeight;
    private final double[] weight = new double[PADS];
    private final double[] top = new double[PADS];
    private final int[] order;
    private final double tallest;
    private final int[][] fewest;
    private final Stack[] chosen = new Stack[PADS];
    private Stack[] best;
    private double bestExcess = Double.POSITIVE_INFINITY;
    private int bestPieces = Integer.MAX_VALUE;
    private double bestWarp = Double.POSITIVE_INFINITY;

    ShimSearch(PadSurvey survey, List<Setting.Shim> stock, Wanted wanted) {
        this.wanted = wanted;
        List<Setting.Shim> some = stock.stream().filter(s -> s.count() > 0)
                .sorted(Comparator.comparingDouble(Setting.Shim::thicknessMm).reversed()).toList();
        thickness = some.stream().mapToDouble(Setting.Shim::thicknessMm).toArray();
        left = some.stream().mapToInt(Setting.Shim::count).toArray();
        PerCorner<Double> n = survey.transferVector();
        for (Corner corner : Corner.values()) {
            weight[corner.ordinal()] = n.get(corner);
            top[corner.ordinal()] = survey.heightsMm().get(corner);
        }
        // Level: from the highest down, so that the height to come up to is known first. Plane: the low diagonal first.
        double warp = survey.warpMm();
        order = Arrays.stream(Corner.values()).sorted(Comparator.comparingDouble(c -> Double.isInfinite(wanted.spreadMm())
                ? weight[c.ordinal()] * Math.signum(warp) : -top[c.ordinal()])).mapToInt(Enum::ordinal).toArray();
        List<Stack> all = new ArrayList<>();
        stacks(0, new int[thickness.length], 0, 0, all);
        all.sort(Comparator.comparingDouble(Stack::heightMm).thenComparingInt(Stack::pieces));
        byHeight = all.toArray(Stack[]::new);
        fewest = table(byHeight);
        tallest = byHeight[byHeight.length - 1].heightMm();
    }

    private void stacks(int kind, int[] counts, int pieces, double height, List<Stack> out) {
        if (kind == thickness.length) {
            out.add(new Stack(counts.clone(), pieces, height));
            return;
        }
        for (int k = 0; k <= Math.min(left[kind], PadShims.MOST_UNDER_A_PAD - pieces); k++) {
            counts[kind] = k;
            stacks(kind + 1, counts, pieces + k, height + k * thickness[kind], out);
        }
        counts[kind] = 0;
    }

    /**
     * Looks for a plan that reaches what is wanted, and where there is none for one that misses it by little, then by more:
     * a tight limit leaves few branches.
     */
    Found search() {
        double warp = 0;
        for (int pad = 0; pad < PADS; pad++) {
            warp += weight[pad] * top[pad];
        }
        double low = Arrays.stream(top).min().orElseThrow();
        double high = Arrays.stream(top).max().orElseThrow();
        double asItStands = excess(warp, low, high);
        for (double limit = 0; best == null; limit = Math.max(FIRST_LIMIT_MM, 2 * limit)) {
            bestExcess = Math.min(limit, asItStands);
            if (limit >= asItStands) {
                Arrays.fill(chosen, byHeight[0]);
                bestExcess = Double.POSITIVE_INFINITY;
                keep(warp, low, high, 0);
            }
            descend(0, warp, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 0);
        }
        return new Found(PerCorner.of(c -> shims(best[c.ordinal()])), Math.max(0, bestExcess));
    }

    private List<Double> shims(Stack stack) {
        List<Double> shims = new ArrayList<>();
        for (int kind = 0; kind < thickness.length; kind++) {
            shims.addAll(Collections.nCopies(stack.counts()[kind], thickness[kind]));
        }
        return shims;
    }

    private double excess(double warp, double low, double high) {
        double tilt = anyTilt() ? 0 : high - low - wanted.spreadMm();
        return Math.max(0, Math.max(Math.abs(warp) - wanted.warpMm(), tilt));
    }

    private void keep(double warp, double low, double high, int pieces) {
        double excess = excess(warp, low, high);
        excess = excess <= EXACT_MM ? 0 : excess;
        boolean better = excess < bestExcess - EXACT_MM;
        boolean same = Math.abs(excess - bestExcess) <= EXACT_MM;
        if (better || same && (pieces < bestPieces || pieces == bestPieces && Math.abs(warp) < bestWarp - EXACT_MM)) {
            best = chosen.clone();
            bestExcess = excess;
            bestPieces = pieces;
            bestWarp = Math.abs(warp);
        }
    }

    private void descend(int depth, double warp, double low, double high, int pieces) {
        if (depth == PADS) {
            keep(warp, low, high, pieces);
            return;
        }
        if (isHopeless(depth, warp, low, high, pieces)) {
            return;
        }
        int pad = order[depth];
        double[] window = window(pad, low, high, bestExcess);
        if (depth == PADS - 1) {
            double room = wanted.warpMm() + bestExcess;
            double a = (-room - warp) / weight[pad];
            double b = (room - warp) / weight[pad];
            window[0] = Math.max(window[0], Math.min(a, b));
            window[1] = Math.min(window[1], Math.max(a, b));
        }
        for (int i = first(window[0] - EXACT_MM); i < byHeight.length && byHeight[i].heightMm() <= window[1] + EXACT_MM; i++) {
            Stack stack = byHeight[i];
            if (bestExcess == 0 && pieces + stack.pieces() > mostPieces() || !take(stack)) {
                continue;
            }
            chosen[pad] = stack;
            double raised = top[pad] + stack.heightMm();
            descend(depth + 1, warp + weight[pad] * stack.heightMm(), Math.min(low, raised), Math.max(high, raised), pieces + stack.pieces());
            for (int k = 0; k < left.length; k++) {
                left[k] += stack.counts()[k];
            }
        }
    }

    private boolean take(Stack stack) {
        for (int k = 0; k < left.length; k++) {
            if (stack.counts()[k] > left[k]) {
                return false;
            }
        }
        for (int k = 0; k < left.length; k++) {
            left[k] -= stack.counts()[k];
        }
        return true;
    }

    private int first(double height) {
        int from = 0;
        int to = byHeight.length;
        while (from < to) {
            int middle = (from + to) >>> 1;
            if (byHeight[middle].heightMm() < height) {
                from = middle + 1;
            } else {
                to = middle;
            }
        }
        return from;
    }

    private boolean anyTilt() {
        return Double.isInfinite(wanted.spreadMm());
    }

    /** Pieces with which a plan as near as the best is still worth having; in a plane the warp then decides. */
    private int mostPieces() {
        return anyTilt() ? bestPieces : bestPieces - 1;
    }

    /** From and to what height a stack on a pad may go without spoiling the level by more than the excess. */
    private double[] window(int pad, double low, double high, double excess) {
        if (anyTilt() || high < low) {
            return new double[] {0, tallest};
        }
        return new double[] {Math.max(0, high - wanted.spreadMm() - excess - top[pad]),
            Math.min(tallest, low + wanted.spreadMm() + excess - top[pad])};
    }

    /** Fewest pieces of a stack between two heights; {@link #NEVER} where there is none. */
    private int fewest(double[] window) {
        int from = first(window[0] - EXACT_MM);
        int to = first(window[1] + EXACT_MM);
        if (from >= to) {
            return NEVER;
        }
        int level = 31 - Integer.numberOfLeadingZeros(to - from);
        return Math.min(fewest[level][from], fewest[level][to - (1 << level)]);
    }

    /** Fewest pieces of the stacks from each place on, over 1, 2, 4, ... of them. */
    private static int[][] table(Stack[] stacks) {
        int[][] table = new int[32 - Integer.numberOfLeadingZeros(stacks.length)][stacks.length];
        table[0] = Arrays.stream(stacks).mapToInt(Stack::pieces).toArray();
        for (int level = 1; level < table.length; level++) {
            for (int i = 0; i + (1 << level) <= stacks.length; i++) {
                table[level][i] = Math.min(table[level - 1][i], table[level - 1][i + (1 << level - 1)]);
            }
        }
        return table;
    }

    private boolean isHopeless(int depth, double warp, double low, double high, int pieces) {
        double stock = 0;
        double thickest = 0;
        for (int k = 0; k < left.length; k++) {
            stock += left[k] * thickness[k];
            thickest = left[k] > 0 ? Math.max(thickest, thickness[k]) : thickest;
        }
        double up = 0;
        double down = 0;
        double most = 0;
        double lift = 0;
        long needed = 0;
        boolean nearer = bestExcess > 0;
        double better = Math.max(0, bestExcess - NEARER_MM);
        for (int d = depth; d < PADS; d++) {
            int pad = order[d];
            most = Math.max(most, Math.abs(weight[pad]));
            up += Math.max(0, weight[pad]) * Math.min(tallest, stock);
            down += Math.max(0, -weight[pad]) * Math.min(tallest, stock);
            double[] window = window(pad, low, high, bestExcess);
            lift += window[0];
            needed += fewest(window);
            nearer &= fewest(window(pad, low, high, better)) < NEVER;
        }
        double beyond = Math.max(Math.max(-wanted.warpMm() - (warp + up), warp - down - wanted.warpMm()), 0);
        if (beyond > bestExcess + EXACT_MM || lift > stock + EXACT_MM || needed >= NEVER) {
            return true;
        }
        double toTurn = Math.abs(warp) - wanted.warpMm() - bestExcess;
        if (toTurn > EXACT_MM) {
            needed = Math.max(needed, thickest > 0 ? (long) Math.ceil((toTurn - EXACT_MM) / (most * thickest)) : NEVER);
        }
        return needed >= NEVER || !(nearer && beyond < better) && pieces + needed > mostPieces();
    }
}
