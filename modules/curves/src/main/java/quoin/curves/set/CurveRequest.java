package quoin.curves.set;

import java.util.Objects;
import java.util.Optional;

/**
 * What is to be drawn of an axle.
 *
 * @param sweep   what runs along
 * @param rangeMm how far to either side, mm; more than zero
 * @param turned  the adjuster whose effect is shown beside; empty = none
 */
public record CurveRequest(Sweep sweep, double rangeMm, Optional<Turned> turned) {

    public CurveRequest {
        Objects.requireNonNull(sweep, "sweep");
        Objects.requireNonNull(turned, "turned");
        if (!(rangeMm > 0)) {
            throw new IllegalArgumentException("the range must be more than zero");
        }
    }
}
