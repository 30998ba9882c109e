package quoin.adjustment.learn;

import java.util.ArrayList;
import java.util.List;

/**
 * One level of reading noise.
 *
 * @param friction standard deviation of the friction force at each suspension, N
 * @param height standard deviation of one height reading, mm
 * @param scale standard deviation of one scale, N
 * @param logPrior log of the prior weight of this level
 */
public record NoiseLevel(double friction, double height, double scale, double logPrior) {

    private static final double[] FRICTION_AT = {-2.4, -1.6, -0.8, 0, 0.8, 1.6, 2.4};
    private static final double[] HEIGHT_AT = {-1.3, 0, 1.3};
    private static final double[] COARSE = {-1.2, 0, 1.2};

    /** A grid over log-normal friction and height noise. */
    public static List<NoiseLevel> grid(double friction, double frictionLogSd, double height, double heightLogSd,
            double scale) {
        return grid(FRICTION_AT, HEIGHT_AT, friction, frictionLogSd, height, heightLogSd, scale);
    }

    /** Three levels of friction at the usual height noise: enough to compare departures from the plain model. */
    public static List<NoiseLevel> coarse(double friction, double frictionLogSd, double height, double scale) {
        return grid(COARSE, new double[] {0}, friction, frictionLogSd, height, 0, scale);
    }

    private static List<NoiseLevel> grid(double[] frictionAt, double[] heightAt, double friction, double frictionLogSd,
            double height, double heightLogSd, double scale) {
        List<NoiseLevel> out = new ArrayList<>();
        for (double zf : frictionAt) {
            for (double zh : heightAt) {
                out.add(new NoiseLevel(friction * Math.exp(frictionLogSd * zf), height * Math.exp(heightLogSd * zh),
                        scale, -(zf * zf + zh * zh) / 2));
            }
        }
        return out;
    }

    /** Covariance of the eight readings of the mean of some settlings; the scale's own error does not average out. */
    double[][] covariance(double[][] response, int settlings) {
        double[][] out = new double[8][8];
        double f = friction * friction / settlings;
        for (int i = 0; i < 8; i++) {
            for (int j = 0; j <= i; j++) {
                double sum = 0;
                for (int c = 0; c < 4; c++) {
                    sum += response[i][FourSprings.FRICTION + c] * response[j][FourSprings.FRICTION + c];
                }
                out[i][j] = f * sum;
                out[j][i] = out[i][j];
            }
            out[i][i] += i < 4 ? scale * scale : height * height / settlings;
        }
        return out;
    }
}
