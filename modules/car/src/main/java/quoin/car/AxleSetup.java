package quoin.car;

import java.util.Objects;
import java.util.Optional;

/**
 * What the two wheels of an axle share.
 *
 * @param trackMm    distance between the two contact patch centres, mm, greater than 0
 * @param bar        anti-roll bar; empty where none is fitted
 * @param suspension the suspension type and its parameters
 */
public record AxleSetup(double trackMm, Optional<AntiRollBar> bar, SuspensionChoice suspension) {
    public AxleSetup {
        Checks.positive(trackMm, "name.track");
        Objects.requireNonNull(bar, "bar");
        Objects.requireNonNull(suspension, "suspension");
    }
}
