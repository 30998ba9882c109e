package quoin.workflow;

import java.util.List;
import java.util.NoSuchElementException;
import java.util.Objects;
import java.util.Optional;
import quoin.car.ReadingId;

/**
 * The whole day as it stands at one revision.
 *
 * @param revision number of the last entry it was computed from
 * @param stages   every installed stage in the order of work
 * @param next     the one thing to do next
 */
public record DayStatus(long revision, List<StageStatus> stages, NextStep next) {

    public DayStatus {
        stages = List.copyOf(stages);
        Objects.requireNonNull(next, "next");
    }

    /**
     * The status of a stage.
     *
     * @throws NoSuchElementException where no installed stage has this id
     */
    public StageStatus stage(String id) {
        return stages.stream().filter(s -> s.stage().id().equals(id)).findFirst()
                .orElseThrow(() -> new NoSuchElementException("no installed stage has the id '" + id + "'"));
    }

    /** A reading as it stands; missing where no stage names it. */
    public ReadingState reading(ReadingId id) {
        return stages.stream().flatMap(s -> s.readings().stream()).filter(r -> r.reading().equals(id)).findFirst()
                .orElseGet(() -> ReadingState.missing(id, Optional.empty(), 0));
    }
}
