package quoin.adjustment.learn;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * A car whose springs and lifts are known, so that what is read is linear in what is not: four loads and a plane of heights as
 * found. Its posterior and the probability of its readings follow from the law of the multivariate normal distribution alone,
 * here by Hipparchus' matrices (JCGM 102:2011; Rasmussen and Williams, Gaussian Processes, 2006, appendix A.2).
 */
final class LinearCar {
    static final double[][] WHEELS = {{0, 720}, {0, -720}, {-2380, 700}, {-2380, -700}};
    static final double[][] POINTS = {{-300, 350}, {-300, -350}, {-2200, 300}, {-2200, -300}};
    static final double[] TYRE = {200, 205, 210, 215};
    static final double[] RATE = {45, 47, 60, 58};
    static final double[] BAR = {12, 5};
    static final double[] LIFT = {1.5, 1.4, 1.2, 1.3};
    private static final double KNOWN = 1e-7;
    private static final double LOOSE_LOAD_N = 5000;
    private static final double LOOSE_HEIGHT_MM = 500;

    final CarModel model = model(KNOWN, KNOWN);
    final List<Settling> history;
    private final double[][] response = model.springs().response(RATE, BAR);
    private final RealVector sd = new ArrayRealVector(new double[] {LOOSE_LOAD_N, LOOSE_LOAD_N, LOOSE_LOAD_N, LOOSE_LOAD_N,
        LOOSE_HEIGHT_MM, LOOSE_HEIGHT_MM, LOOSE_HEIGHT_MM});

    LinearCar(List<Settling> history) {
        this.history = history;
    }

    static CarModel model(double rateSd, double liftSd) {
        return CarModel.of(WHEELS, POINTS, TYRE, RATE, new double[] {rateSd, rateSd, rateSd, rateSd}, BAR, new int[] {0, 1, 2, 3}, LIFT,
                new int[] {0, 0, 1, 1}, new double[] {liftSd, liftSd}, new double[0][]);
    }

    /** As found, after a round (two figures not read), once more with the driver out (two settlings), and after a second round. */
    static List<Settling> day() {
        boolean[] all = {true, true, true, true, true, true, true, true};
        boolean[] some = {true, true, false, true, true, true, true, false};
        double[] none = new double[3];
        double[] out = {-700, 700 * 1300, -700 * 40};
        List<Settling> day = new ArrayList<>();
        Random random = new Random(4);
        double[] at = {1150, 1010, 1280, 1470, 41, 44, 55, 56};
        for (Settling s : List.of(new Settling(new double[4], new double[8], all, none, 1),
                new Settling(new double[] {1.5, -1, 0, 0.5}, new double[8], some, none, 1),
                new Settling(new double[4], new double[8], all, out, 2),
                new Settling(new double[] {0, 1, -2, 0}, new double[8], all, none, 3))) {
            day.add(new Settling(s.turns(), read(at, s, random), s.present(), s.load(), s.settlings()));
        }
        return day;
    }

    /** The true state, moved by the turns, as it reads: friction of 11 N, heights to 0.5 mm, scales to 1 N. */
    private static double[] read(double[] at, Settling s, Random random) {
        double[][] response = model(KNOWN, KNOWN).springs().response(RATE, BAR);
        double[] friction = new double[4];
        for (int c = 0; c < 4; c++) {
            friction[c] = 11 * random.nextGaussian() / Math.sqrt(s.settlings());
        }
        double[] values = new double[8];
        for (int i = 0; i < 8; i++) {
            values[i] = i < 4 ? random.nextGaussian() : 0.5 * random.nextGaussian() / Math.sqrt(s.settlings());
            for (int c = 0; c < 4; c++) {
                at[i] += response[i][c] * LIFT[c] * s.turns()[c];
                values[i] += response[i][FourSprings.FRICTION + c] * friction[c];
            }
            for (int c = 0; c < 3; c++) {
                values[i] += response[i][FourSprings.LOAD + c] * s.load()[c];
            }
            values[i] = s.present()[i] ? values[i] + at[i] : 0;
        }
        return values;
    }

    /** Rows of the figures that were read. */
    List<int[]> rows() {
        List<int[]> rows = new ArrayList<>();
        for (int r = 0; r < history.size(); r++) {
            for (int i = 0; i < 8; i++) {
                if (history.get(r).present()[i]) {
                    rows.add(new int[] {r, i});
                }
            }
        }
        return rows;
    }

    /** What the as-found state gives of one row: loads and plane, height points in metres. */
    static RealVector asFound(int row) {
        double[] out = new double[7];
        if (row < 4) {
            out[row] = 1;
        } else {
            out[4] = 1;
            out[5] = POINTS[row - 4][0] / 1000;
            out[6] = POINTS[row - 4][1] / 1000;
        }
        return new ArrayRealVector(out, false);
    }

    RealMatrix design() {
        List<int[]> rows = rows();
        RealMatrix a = new Array2DRowRealMatrix(rows.size(), 7);
        for (int k = 0; k < rows.size(); k++) {
            a.setRowVector(k, asFound(rows.get(k)[1]));
        }
        return a;
    }

    /** What turns up to a reading have moved one row, by the known springs and lifts. */
    double turned(int reading, int row) {
        double moved = 0;
        for (int r = 0; r <= reading; r++) {
            for (int a = 0; a < 4; a++) {
                moved += perTurn(row, a) * history.get(r).turns()[a];
            }
        }
        return moved;
    }

    double perTurn(int row, int adjuster) {
        return response[row][adjuster] * LIFT[adjuster];
    }

    double perLoad(int row, int load) {
        return response[row][FourSprings.LOAD + load];
    }

    /** Readings less what is known beforehand and less the prior mean of the as-found state. */
    RealVector unexplained() {
        List<int[]> rows = rows();
        RealVector prior = design().operate(priorMean());
        RealVector out = new ArrayRealVector(rows.size());
        for (int k = 0; k < rows.size(); k++) {
            int r = rows.get(k)[0];
            int i = rows.get(k)[1];
            double known = turned(r, i);
            for (int c = 0; c < 3; c++) {
                known += perLoad(i, c) * history.get(r).load()[c];
            }
            out.setEntry(k, history.get(r).values()[i] - known - prior.getEntry(k));
        }
        return out;
    }

    /** The first figures read stand for what was believed beforehand, very loosely. */
    RealVector priorMean() {
        double[] first = history.get(0).values();
        return new ArrayRealVector(new double[] {first[0], first[1], first[2], first[3], first[4], 0, 0});
    }

    RealMatrix noise(NoiseLevel level) {
        List<int[]> rows = rows();
        RealMatrix n = new Array2DRowRealMatrix(rows.size(), rows.size());
        for (int k = 0; k < rows.size(); k++) {
            for (int l = 0; l < rows.size(); l++) {
                int i = rows.get(k)[1];
                int j = rows.get(l)[1];
                if (rows.get(k)[0] == rows.get(l)[0]) {
                    n.setEntry(k, l, noise(level, i, j, history.get(rows.get(k)[0]).settlings()));
                }
            }
        }
        return n;
    }

    /** Friction at each suspension, drawn at every settling; heights with it, scales once. */
    double noise(NoiseLevel level, int i, int j, int settlings) {
        double sum = 0;
        for (int c = 0; c < 4; c++) {
            sum += Math.pow(level.friction(), 2) / settlings * response[i][FourSprings.FRICTION + c] * response[j][FourSprings.FRICTION + c];
        }
        return i != j ? sum : sum + (i < 4 ? Math.pow(level.scale(), 2) : Math.pow(level.height(), 2) / settlings);
    }

    RealMatrix covariance(NoiseLevel level, RealMatrix design, RealVector sds) {
        RealMatrix d = MatrixUtils.createRealDiagonalMatrix(sds.ebeMultiply(sds).toArray());
        return design.multiply(d).multiplyTransposed(design).add(noise(level));
    }

    /** Log density of what is unexplained, the constant n/2 log 2 pi left out; design and sds may hold more unknowns. */
    static double logDensity(RealVector unexplained, RealMatrix covariance) {
        LUDecomposition lu = new LUDecomposition(covariance);
        double log = 0;
        for (int k = 0; k < covariance.getRowDimension(); k++) {
            log += Math.log(Math.abs(lu.getU().getEntry(k, k)));
        }
        return -(log + unexplained.dotProduct(lu.getSolver().solve(unexplained))) / 2;
    }

    double logEvidence(NoiseLevel level) {
        return logDensity(unexplained(), covariance(level, design(), sd));
    }

    /** Mean of the as-found state. */
    RealVector mean(NoiseLevel level) {
        RealVector weighted = new LUDecomposition(covariance(level, design(), sd)).getSolver().solve(unexplained());
        return priorMean().add(sd.ebeMultiply(sd).ebeMultiply(design().preMultiply(weighted)));
    }

    /** Its covariance, as the inverse of the sum of the precisions. */
    RealMatrix spread(NoiseLevel level) {
        RealMatrix precision = design().transposeMultiply(MatrixUtils.inverse(noise(level)).multiply(design()));
        for (int k = 0; k < 7; k++) {
            precision.addToEntry(k, k, 1 / Math.pow(sd.getEntry(k), 2));
        }
        return MatrixUtils.inverse(precision);
    }

    /** Design and prior spread with one more unknown. */
    RealMatrix design(RealVector column) {
        RealMatrix a = design();
        RealMatrix out = new Array2DRowRealMatrix(a.getRowDimension(), 8);
        out.setSubMatrix(a.getData(), 0, 0);
        out.setColumnVector(7, column);
        return out;
    }

    RealVector sds(double another) {
        return sd.append(another);
    }
}
