package quoin.mechanics;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import quoin.quantities.Texts;

/**
 * What each scale shows for one true kilogram, from readings of loads that change places. A scale shows factor times load, so
 * logarithms make it linear: ln shown = ln factor + ln load. Weighted least squares over everything that was read, with what
 * is known beforehand of scales and loads as further observations; covariance from the normal equations (JCGM 100:2008, H.3,
 * and JCGM 102:2011, 6). What the readings cannot tell stays as known beforehand, with that uncertainty.
 *
 * @param factors    shown over true, per scale
 * @param standard   standard uncertainty of each factor
 * @param covariance of the factors
 * @param chiSquare  weighted squares of what is left over
 * @param degreesOfFreedom readings and known loads less loads and scales the readings decide, at least 0
 */
public record ScaleFactors(List<Double> factors, List<Double> standard, List<List<Double>> covariance, double chiSquare,
        int degreesOfFreedom) {
    private static final Texts TEXTS = Texts.of(ScaleFactors.class);

    /**
     * One figure on one display.
     *
     * @param scale      which scale, from 0
     * @param load       what stands on it; the same name = the same load
     * @param shownKg    as shown, zero already taken off
     * @param standardKg standard uncertainty of putting it there and reading it
     */
    public record Reading(int scale, String load, double shownKg, double standardKg) {
        public Reading {
            Require.positive("readings." + load, shownKg);
            Require.positive("readings." + load + ".standardUncertainty_kg", standardKg);
        }
    }

    /** A load whose mass is known, with its standard uncertainty, kg. */
    public record Known(String load, double massKg, double standardKg) {
        public Known {
            Require.positive("known." + load, massKg);
            Require.positive("known." + load + ".standardUncertainty_kg", standardKg);
        }
    }

    public ScaleFactors {
        factors = List.copyOf(factors);
        standard = List.copyOf(standard);
        covariance = List.copyOf(covariance);
    }

    /**
     * Solves for the factors.
     *
     * @param priorRelative standard uncertainty of each scale's factor before anything was read; each greater than 0
     * @param readings      everything that was read
     * @param known         loads of known mass; may be empty: the scales are then only compared with each other
     * @throws InvalidInputException naming a reading that cannot be
     */
    public static ScaleFactors solve(List<Double> priorRelative, List<Reading> readings, List<Known> known) {
        if (readings.isEmpty()) {
            throw new InvalidInputException("readings", TEXTS.phrase("atLeastOneReading"));
        }
        int scales = priorRelative.size();
        Map<String, Integer> columns = new LinkedHashMap<>();
        readings.forEach(r -> columns.computeIfAbsent(r.load(), k -> scales + columns.size()));
        int size = scales + columns.size();
        List<double[]> rows = new ArrayList<>();
        List<Double> right = new ArrayList<>();
        for (int s = 0; s < scales; s++) {
            add(rows, right, size, new int[] {s}, 0, Require.positive("scales." + s + ".prior", priorRelative.get(s)));
        }
        for (Reading reading : readings) {
            if (reading.scale() < 0 || reading.scale() >= scales) {
                throw new InvalidInputException("readings." + reading.load(), TEXTS.phrase("onAScaleThat"));
            }
            add(rows, right, size, new int[] {reading.scale(), columns.get(reading.load())}, Math.log(reading.shownKg()),
                    reading.standardKg() / reading.shownKg());
        }
        int told = 0;
        for (Known mass : known) {
            Integer column = columns.get(mass.load());
            if (column != null) {
                add(rows, right, size, new int[] {column}, Math.log(mass.massKg()), mass.standardKg() / mass.massKg());
                told++;
            }
        }
        return solved(rows, right, scales, readings.size() + told - columns.size());
    }

    private static void add(List<double[]> rows, List<Double> right, int size, int[] columns, double value, double standard) {
        double[] row = new double[size];
        for (int column : columns) {
            row[column] = 1 / standard;
        }
        rows.add(row);
        right.add(value / standard);
    }

    private static ScaleFactors solved(List<double[]> rows, List<Double> right, int scales, int freedom) {
        RealMatrix a = new Array2DRowRealMatrix(rows.toArray(double[][]::new), false);
        ArrayRealVector b = new ArrayRealVector(right.stream().mapToDouble(Double::doubleValue).toArray(), false);
        RealMatrix inverse = new CholeskyDecomposition(a.transposeMultiply(a), 1e-12, 1e-14).getSolver().getInverse();
        double[] x = inverse.operate(a.transpose().operate(b)).toArray();
        double chi = 0;
        for (int i = 0; i < rows.size(); i++) {
            double left = -b.getEntry(i);
            for (int j = 0; j < x.length; j++) {
                left += rows.get(i)[j] * x[j];
            }
            chi += left * left;
        }
        List<Double> factors = new ArrayList<>();
        List<Double> standard = new ArrayList<>();
        List<List<Double>> covariance = new ArrayList<>();
        for (int i = 0; i < scales; i++) {
            factors.add(Math.exp(x[i]));
            standard.add(factors.get(i) * Math.sqrt(inverse.getEntry(i, i)));
        }
        for (int i = 0; i < scales; i++) {
            List<Double> line = new ArrayList<>();
            for (int j = 0; j < scales; j++) {
                line.add(factors.get(i) * factors.get(j) * inverse.getEntry(i, j));
            }
            covariance.add(List.copyOf(line));
        }
        return new ScaleFactors(factors, standard, covariance, chi, Math.max(0, freedom));
    }

    /** Correlation of the factors of two scales, -1 to 1. */
    public double correlation(int one, int other) {
        return covariance.get(one).get(other) / (standard.get(one) * standard.get(other));
    }

    /** Chance of readings that agree no better than these where their uncertainties are right; 1 where nothing can be said. */
    public double agreement() {
        return degreesOfFreedom == 0 ? 1 : 1 - new ChiSquaredDistribution(degreesOfFreedom).cumulativeProbability(chiSquare);
    }
}
