package quoin.mechanics;

import quoin.car.Corner;
import quoin.car.PerCorner;
import quoin.quantities.Texts;

/**
 * The one pattern of load changes on four contact points that moves neither the total nor its balance fore and aft or
 * side to side: sum n = 0, sum n x = 0, sum n y = 0. Perches, pads and bar links move loads along it and along nothing
 * else. Each entry is the area of the triangle of the other three points, with alternating sign.
 */
public final class TransferVector {
    private static final Texts TEXTS = Texts.of(TransferVector.class);
    private static final double COINCIDE_MM = 1e-6;

    private TransferVector() {
    }

    /**
     * @param points contact points or pads
     * @param path name of the input for a refusal
     * @return the pattern, scaled to 1 at LF
     * @throws InvalidInputException if points coincide or RF, LR and RR lie on one line
     */
    public static PerCorner<Double> of(PerCorner<PlanPoint> points, String path) {
        for (Corner corner : Corner.values()) {
            Require.present(path + "." + corner, points.get(corner));
            Require.finite(path + "." + corner + ".x", points.get(corner).xMm());
            Require.finite(path + "." + corner + ".y", points.get(corner).yMm());
            for (Corner other : Corner.values()) {
                if (other.ordinal() < corner.ordinal() && distance(points.get(corner), points.get(other)) < COINCIDE_MM) {
                    throw new InvalidInputException(path + "." + corner, TEXTS.phrase("coincidesWith", other));
                }
            }
        }
        double lf = area(points.rf(), points.lr(), points.rr());
        if (Math.abs(lf) < COINCIDE_MM * distance(points.rf(), points.lr())) {
            throw new InvalidInputException(path, TEXTS.phrase("threeOnALine"));
        }
        return new PerCorner<>(1.0, -area(points.lf(), points.lr(), points.rr()) / lf,
                area(points.lf(), points.rf(), points.rr()) / lf, -area(points.lf(), points.rf(), points.lr()) / lf);
    }

    private static double distance(PlanPoint a, PlanPoint b) {
        return Math.hypot(a.xMm() - b.xMm(), a.yMm() - b.yMm());
    }

    private static double area(PlanPoint a, PlanPoint b, PlanPoint c) {
        return (b.xMm() - a.xMm()) * (c.yMm() - a.yMm()) - (c.xMm() - a.xMm()) * (b.yMm() - a.yMm());
    }
}
