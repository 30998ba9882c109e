package quoin.workflow;

import java.util.Map;
import java.util.Optional;
import quoin.car.AdjusterId;
import quoin.car.ReadingId;

/** How far adjustments are expected to have moved a reading. It only adds to the words; it never makes a reading fresh. */
@FunctionalInterface
public interface ExpectedMove {

    /** Knows nothing. */
    ExpectedMove UNKNOWN = (turns, reading) -> Optional.empty();

    /**
     * The expected move.
     *
     * @param turns   turns of threads or mm of shim per adjuster, plus raises the adjuster's own reading
     * @param reading the reading asked for
     * @return the move; empty = not known
     */
    Optional<Move> of(Map<AdjusterId, Double> turns, ReadingId reading);

    /**
     * A move.
     *
     * @param amount      expected change, base unit of the reading
     * @param uncertainty its standard uncertainty, same unit
     */
    record Move(double amount, double uncertainty) {
    }
}
