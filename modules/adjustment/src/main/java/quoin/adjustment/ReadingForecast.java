package quoin.adjustment;

import java.util.List;

/**
 * Readings to expect.
 *
 * @param mean four loads N, four heights mm
 * @param truthCovariance covariance of the friction-free readings: what is not known of the car
 * @param readingCovariance covariance of one settled reading: the same plus the reading noise
 */
public record ReadingForecast(List<Double> mean, List<List<Double>> truthCovariance,
        List<List<Double>> readingCovariance) {

    /** Standard deviation of the next settled reading of row i (0-3 loads N, 4-7 heights mm). */
    public double readingSd(int row) {
        return Math.sqrt(readingCovariance.get(row).get(row));
    }
}
