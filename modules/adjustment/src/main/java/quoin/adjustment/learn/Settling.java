package quoin.adjustment.learn;

/**
 * One settled reading.
 *
 * @param turns turns since the reading before
 * @param values four loads N, four heights mm
 * @param present which of the values were read
 * @param load weight N, moments N mm (times x, times y) put in against the target's load case
 * @param settlings number of settlings averaged
 */
public record Settling(double[] turns, double[] values, boolean[] present, double[] load, int settlings) {
}
