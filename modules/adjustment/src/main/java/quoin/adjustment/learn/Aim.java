package quoin.adjustment.learn;

/**
 * A wish: a weighted sum of the eight readings (divided by the total load if asked) within target plus or minus
 * tolerance.
 *
 * @param weights weights of four loads N and four heights mm
 * @param ofTotal whether the sum is divided by the sum of the four loads
 * @param target target in the same unit
 * @param tolerance half-width, greater than 0
 */
public record Aim(double[] weights, boolean ofTotal, double target, double tolerance) {

    /** The value for eight readings. */
    public double value(double[] readings) {
        double sum = 0;
        for (int i = 0; i < 8; i++) {
            sum += weights[i] * readings[i];
        }
        return ofTotal ? sum / (readings[0] + readings[1] + readings[2] + readings[3]) : sum;
    }
}
