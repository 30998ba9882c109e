package quoin.workflow;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import quoin.adjustment.Verdict;
import quoin.car.ReadingId;
import quoin.car.Target;

/**
 * A reading as it stands now.
 *
 * @param reading     which reading, typed or derived
 * @param value       as last read, base unit: the mean of the readings in one and the same state of the car; empty = never read
 * @param count       how many readings it is the mean of; 0 = never read
 * @param entry       number of the entry that holds it (for a derived reading the last of them); 0 = none
 * @param freshness   whether it still tells how the car stands
 * @param reasons     why it is not fresh, in words, oldest first
 * @param target      target of the day; empty = none
 * @param uncertainty standard uncertainty, base unit: instrument step, repeatability, and that of the scales' corrections
 * @param lasting     what of it stays the same from reading to reading
 * @param verdict     the value against the target; only where it is fresh or doubtful and has a target
 */
public record ReadingState(ReadingId reading, OptionalDouble value, int count, long entry, Freshness freshness, List<String> reasons,
        Optional<Target> target, double uncertainty, Measured.Lasting lasting, Optional<Verdict> verdict) {

    public ReadingState {
        Objects.requireNonNull(reading, "reading");
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(freshness, "freshness");
        reasons = List.copyOf(reasons);
        Objects.requireNonNull(target, "target");
        Objects.requireNonNull(lasting, "lasting");
        Objects.requireNonNull(verdict, "verdict");
    }

    static ReadingState missing(ReadingId reading, Optional<Target> target, double uncertainty) {
        return new ReadingState(reading, OptionalDouble.empty(), 0, 0, Freshness.MISSING, List.of(), target, uncertainty,
                Measured.Lasting.NONE, Optional.empty());
    }
}
