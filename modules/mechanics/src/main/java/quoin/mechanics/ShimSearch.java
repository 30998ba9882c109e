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

    Found search() {
        double warp = 0;
        for (int pad = 0; pad < PADS; pad++) {
            warp += weight[pad] * top[pad];
        }
        // As it stands is a plan too, and a bound to begin with.
        Arrays.fill(chosen, byHeight[0]);
        keep(warp, Arrays.stream(top).min().orElseThrow(), Arrays.stream(top).max().orElseThrow(), 0);
        descend(0, warp, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, 0);
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
        double tilt = Double.isInfinite(wanted.spreadMm()) ? 0 : high - low - wanted.spreadMm();
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
        double from = 0;
        double to = tallest;
        if (!Double.isInfinite(wanted.spreadMm()) && depth > 0) {
            from = Math.max(from, high - wanted.spreadMm() - bestExcess - top[pad]);
            to = Math.min(to, low + wanted.spreadMm() + bestExcess - top[pad]);
        }
        if (depth == PADS - 1) {
            double room = wanted.warpMm() + bestExcess;
            double a = (-room - warp) / weight[pad];
            double b = (room - warp) / weight[pad];
            from = Math.max(from, Math.min(a, b));
            to = Math.min(to, Math.max(a, b));
        }
        for (int i = first(from - EXACT_MM); i < byHeight.length && byHeight[i].heightMm() <= to + EXACT_MM; i++) {
            Stack stack = byHeight[i];
            if (bestExcess == 0 && pieces + stack.pieces() > bestPieces || !take(stack)) {
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

    private boolean isHopeless(int depth, double warp, double low, double high, int pieces) {
        double up = 0;
        double down = 0;
        double lift = 0;
        int needed = 0;
        double thickest = 0;
        double stock = 0;
        for (int k = 0; k < left.length; k++) {
            stock += left[k] * thickness[k];
            thickest = left[k] > 0 ? Math.max(thickest, thickness[k]) : thickest;
        }
        double most = 0;
        for (int d = depth; d < PADS; d++) {
            int pad = order[d];
            most = Math.max(most, Math.abs(weight[pad]));
            up += Math.max(0, weight[pad]) * Math.min(tallest, stock);
            down += Math.max(0, -weight[pad]) * Math.min(tallest, stock);
            double missing = depth == 0 || Double.isInfinite(wanted.spreadMm()) ? 0
                    : Math.max(0, high - wanted.spreadMm() - bestExcess - top[pad]);
            lift += missing;
            needed += missing > EXACT_MM ? thickest > 0 ? (int) Math.ceil((missing - EXACT_MM) / thickest) : PADS * PadShims.MOST_UNDER_A_PAD : 0;
        }
        double beyond = Math.max(Math.max(-wanted.warpMm() - (warp + up), warp - down - wanted.warpMm()), 0);
        if (beyond > bestExcess + EXACT_MM || lift > stock + EXACT_MM) {
            return true;
        }
        double toTurn = Math.abs(warp) - wanted.warpMm() - bestExcess;
        if (toTurn > EXACT_MM) {
            needed = Math.max(needed, thickest > 0 ? (int) Math.ceil((toTurn - EXACT_MM) / (most * thickest)) : Integer.MAX_VALUE / 2);
        }
        return bestExcess == 0 && pieces + needed > bestPieces;
    }
}
