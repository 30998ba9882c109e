package quoin.mechanics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.stat.descriptive.DescriptiveStatistics;
import quoin.quantities.Texts;

/**
 * Readings of one thing that should be alike, judged so that one bad reading cannot hide itself. Robust centre and
 * spread: median and median absolute deviation; suspects by the modified z score (Iglewicz and Hoaglin, How to Detect and
 * Handle Outliers, 1993). If more than half of the readings agree exactly, the mean absolute deviation stands in, as
 * the same authors advise.
 *
 * @param values at least three readings, any unit
 */
public record RepeatReadings(List<Double> values) {
    private static final Texts TEXTS = Texts.of(RepeatReadings.class);
    /** 1 / Phi^-1(3/4): makes the median absolute deviation an estimate of sigma for normal noise. */
    private static final double MAD_TO_SIGMA = 1.482602218505602;
    /** sqrt(pi / 2): the same for the mean absolute deviation. */
    private static final double MEAN_AD_TO_SIGMA = 1.2533141373155001;
    private static final double SUSPECT = 3.5;

    public RepeatReadings {
        if (values.size() < 3) {
            throw new InvalidInputException("values", TEXTS.phrase("threeReadingsOrMore"));
        }
        values.forEach(value -> Require.finite("values", value));
        values = List.copyOf(values);
    }

    public double median() {
        return median(values.stream().mapToDouble(Double::doubleValue).toArray());
    }

    /** Median of the distances from the median. */
    public double medianAbsoluteDeviation() {
        return median(distances());
    }

    /** Robust standard deviation. */
    public double robustSd() {
        double mad = medianAbsoluteDeviation();
        return mad > 0 ? MAD_TO_SIGMA * mad : MEAN_AD_TO_SIGMA * Arrays.stream(distances()).average().orElse(0);
    }

    /** Distance of a reading from the median in robust standard deviations, with sign; 0 if all readings agree. */
    public double modifiedZ(int index) {
        double sd = robustSd();
        return sd == 0 ? 0 : (values.get(index) - median()) / sd;
    }

    /** Positions of the readings whose modified z is beyond 3.5. */
    public List<Integer> suspects() {
        List<Integer> found = new ArrayList<>();
        for (int i = 0; i < values.size(); i++) {
            if (Math.abs(modifiedZ(i)) > SUSPECT) {
                found.add(i);
            }
        }
        return found;
    }

    /** Grubbs' statistic: the largest distance from the mean in standard deviations; 0 if all readings agree. */
    public double grubbsStatistic() {
        DescriptiveStatistics all = new DescriptiveStatistics(values.stream().mapToDouble(Double::doubleValue).toArray());
        double sd = all.getStandardDeviation();
        double far = Math.max(all.getMax() - all.getMean(), all.getMean() - all.getMin());
        return sd == 0 ? 0 : far / sd;
    }

    /** Two-sided critical value of Grubbs' statistic (NIST/SEMATECH e-Handbook 1.3.5.17.1). */
    public double grubbsCritical(double significance) {
        int n = values.size();
        double t = new TDistribution(n - 2.0).inverseCumulativeProbability(1 - significance / (2 * n));
        return (n - 1) / Math.sqrt(n) * Math.sqrt(t * t / (n - 2 + t * t));
    }

    private double[] distances() {
        double middle = median();
        return values.stream().mapToDouble(value -> Math.abs(value - middle)).toArray();
    }

    private static double median(double[] data) {
        double[] sorted = data.clone();
        Arrays.sort(sorted);
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }
}
