package quoin.adjustment;

import java.util.List;

/**
 * What is believed of the car before the first reading.
 *
 * @param corners four corners, order LF RF LR RR
 * @param adjusters the adjusters that raise corners
 * @param barRatesNPerMm anti-roll bars front and rear, N per mm of left-right difference at the wheel; 0 when
 *     disconnected
 * @param noise the reading noise
 * @param exactResponse readings (four loads N, four heights mm) per turn of each adjuster at the believed rates, from
 *     exact mechanics: 8 rows, one column per adjuster; an empty list leaves the linear four-spring response. Learning
 *     adds its corrections to this matrix
 */
public record LearningPrior(List<CornerSpring> corners, List<LiftAdjuster> adjusters, List<Double> barRatesNPerMm,
        NoisePrior noise, List<List<Double>> exactResponse) {

    public LearningPrior {
        corners = List.copyOf(corners);
        adjusters = List.copyOf(adjusters);
        barRatesNPerMm = List.copyOf(barRatesNPerMm);
        exactResponse = exactResponse.stream().map(List::copyOf).toList();
        if (corners.size() != 4) {
            throw new IllegalArgumentException("corners must be four, LF RF LR RR; got " + corners.size());
        }
        if (barRatesNPerMm.size() != 2) {
            throw new IllegalArgumentException("barRatesNPerMm must hold front and rear; use 0 for none");
        }
        if (adjusters.isEmpty()) {
            throw new IllegalArgumentException("adjusters is empty; learning needs at least one adjuster");
        }
        int columns = adjusters.size();
        if (!exactResponse.isEmpty()
                && (exactResponse.size() != 8 || exactResponse.stream().anyMatch(r -> r.size() != columns))) {
            throw new IllegalArgumentException("exactResponse must have 8 rows (four loads, four heights) and one"
                    + " column per adjuster, or be empty");
        }
    }

    /** Bars disconnected, linear four-spring response, garage noise. */
    public static LearningPrior of(List<CornerSpring> corners, List<LiftAdjuster> adjusters) {
        return new LearningPrior(corners, adjusters, List.of(0.0, 0.0), NoisePrior.garage(), List.of());
    }

    /** The same prior with another noise. */
    public LearningPrior withNoise(NoisePrior other) {
        return new LearningPrior(corners, adjusters, barRatesNPerMm, other, exactResponse);
    }

    /** The same prior with other adjusters. */
    public LearningPrior withAdjusters(List<LiftAdjuster> other) {
        return new LearningPrior(corners, other, barRatesNPerMm, noise, exactResponse);
    }

    /** The same prior with nothing known of the wheel rates. */
    public LearningPrior withUnknownRates() {
        return new LearningPrior(
                corners.stream().map(c -> c.withRateRelativeSd(CornerSpring.UNKNOWN_RATE_SD)).toList(),
                adjusters, barRatesNPerMm, noise, exactResponse);
    }
}
