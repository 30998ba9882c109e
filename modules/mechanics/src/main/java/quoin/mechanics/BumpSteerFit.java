package quoin.mechanics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;
import quoin.quantities.Texts;

/**
 * Toe against wheel travel from two dials on a plate on the hub, spring out and steering held. Both dials read more when the
 * plate moves outboard at their place.
 *
 * @param spacingMm distance between the dials along the car
 * @param positions what the dials read, in any order; one of them at travel 0
 */
public record BumpSteerFit(double spacingMm, List<Position> positions) {
    private static final Texts TEXTS = Texts.of(BumpSteerFit.class);

    private static final double AT_RIDE_HEIGHT_MM = 1e-6;

    /**
     * One position of the wheel.
     *
     * @param travelMm from ride height, + bump
     * @param frontMm  front dial
     * @param rearMm   rear dial
     */
    public record Position(double travelMm, double frontMm, double rearMm) {
        public Position {
            Require.finite("travel_mm", travelMm);
            Require.finite("front_mm", frontMm);
            Require.finite("rear_mm", rearMm);
        }
    }

    /**
     * Change of toe at one travel.
     *
     * @param travelMm from ride height, + bump
     * @param toeInDeg less that at ride height, + in
     */
    public record Point(double travelMm, double toeInDeg) {
    }

    /** @throws InvalidInputException naming what cannot be */
    public BumpSteerFit {
        Require.positive("spacing_mm", spacingMm);
        positions = positions.stream().sorted(Comparator.comparingDouble(Position::travelMm)).toList();
        if (positions.size() < 2) {
            throw new InvalidInputException("travel_mm", TEXTS.phrase("twoPositionsOrMore"));
        }
        for (int i = 0; i < positions.size(); i++) {
            Position at = positions.get(i);
            if (i > 0 && at.travelMm() == positions.get(i - 1).travelMm()) {
                throw new InvalidInputException("travel_mm", TEXTS.phrase("sameTravelStandsTwice", at.travelMm()));
            }
            if (Math.abs(at.rearMm() - at.frontMm()) >= spacingMm) {
                throw new InvalidInputException("front_mm", TEXTS.phrase("differsFromTheRear"));
            }
        }
        if (positions.stream().noneMatch(p -> Math.abs(p.travelMm()) < AT_RIDE_HEIGHT_MM)) {
            throw new InvalidInputException("travel_mm", TEXTS.phrase("onePositionMustBe"));
        }
    }

    /** Change of toe at each travel, by rising travel. */
    public List<Point> points() {
        double zero = positions.stream().filter(p -> Math.abs(p.travelMm()) < AT_RIDE_HEIGHT_MM).findFirst().map(this::toeDeg).orElseThrow();
        return positions.stream().map(p -> new Point(p.travelMm(), toeDeg(p) - zero)).toList();
    }

    /** The plate stands in the wheel's plane: toe-in brings its front end inboard. */
    private double toeDeg(Position at) {
        return Math.toDegrees(Math.asin((at.rearMm() - at.frontMm()) / spacingMm));
    }

    /**
     * The curve near ride height, toe = slope * z + curvature * z^2 / 2, by least squares through all points; with two points only
     * a slope.
     *
     * @param slopeDegPerMm      + where bump turns the wheel in
     * @param curvatureDegPerMm2 how fast the slope changes
     */
    public record Curve(double slopeDegPerMm, double curvatureDegPerMm2) {
    }

    public Curve curve() {
        List<Point> points = points();
        int terms = Math.min(3, points.size());
        List<double[]> rows = new ArrayList<>();
        for (Point p : points) {
            double[] row = new double[terms];
            for (int i = 0; i < terms; i++) {
                row[i] = Math.pow(p.travelMm(), i);
            }
            rows.add(row);
        }
        double[] toe = points.stream().mapToDouble(Point::toeInDeg).toArray();
        double[] fit = new QRDecomposition(new Array2DRowRealMatrix(rows.toArray(new double[0][]), false)).getSolver()
                .solve(new ArrayRealVector(toe, false)).toArray();
        return new Curve(fit[1], terms > 2 ? 2 * fit[2] : 0);
    }
}
