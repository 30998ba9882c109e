package quoin.adjustment.search;

/**
 * Whether all readings can be inside their bands at once, steps aside: the least squares distance of {@code error +
 * sum_j column[j] t_j} from the box of bands {@code |.| <= 1}, over {@code low <= t <= high}, with one slack variable per
 * reading, so that it is a problem for {@link BoxedLeastSquares}.
 *
 * @param turns the nearest point
 * @param excess per reading, by how much (in tolerances, with sign) it stays outside its band there
 * @param provenDistance a lower bound of the distance, by duality; above zero no point has all readings inside
 */
public record BandFit(double[] turns, double[] excess, double provenDistance) {

    /** Solves for the problem's ranges, steps and prices left aside. */
    public static BandFit of(SearchSpace space) {
        int n = space.adjusters();
        int m = space.rows();
        double[][] design = new double[n + m][m];
        double[] low = new double[n + m];
        double[] high = new double[n + m];
        for (int j = 0; j < n; j++) {
            design[j] = space.column()[j];
            low[j] = space.position()[j][0];
            high[j] = space.position()[j][space.position()[j].length - 1];
        }
        for (int i = 0; i < m; i++) {
            design[n + i][i] = -1;
            low[n + i] = -1;
            high[n + i] = 1;
        }
        double[][] gram = new double[n + m][n + m];
        double[] linear = new double[n + m];
        for (int a = 0; a < n + m; a++) {
            for (int b = 0; b < n + m; b++) {
                gram[a][b] = dot(design[a], design[b]);
            }
            linear[a] = dot(design[a], space.error());
        }
        double[] t = new double[n + m];
        new BoxedLeastSquares(gram, new double[n + m], low, high).solve(n + m, linear, t);
        double[] y = space.error().clone();
        for (int i = 0; i < m; i++) {
            for (int a = 0; a < n + m; a++) {
                y[i] += design[a][i] * t[a];
            }
        }
        double distanceSquared = 2 * dot(y, space.error()) - dot(y, y);
        for (int a = 0; a < n + m; a++) {
            double slope = 2 * dot(design[a], y);
            distanceSquared += Math.min(slope * low[a], slope * high[a]);
        }
        double doubt = 1e-9 * (1 + dot(space.error(), space.error()));
        double proven = distanceSquared > doubt ? Math.sqrt(distanceSquared) : 0;
        return new BandFit(java.util.Arrays.copyOf(t, n), y, proven);
    }

    private static double dot(double[] one, double[] two) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * two[i];
        }
        return sum;
    }
}
