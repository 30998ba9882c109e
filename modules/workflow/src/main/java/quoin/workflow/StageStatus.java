package quoin.workflow;

import java.util.List;
import java.util.Objects;
import quoin.workflow.spi.Finding;
import quoin.workflow.spi.Stage;

/**
 * A stage as it stands now.
 *
 * @param stage        the stage
 * @param state        where it stands
 * @param reasons      why it stands there, in words: what keeps it from its sign-off, or what happened since
 * @param readings     what is typed in it and what follows from that, as last read
 * @param requirements its conditions and whether they hold now
 * @param findings     its own checks
 */
public record StageStatus(Stage stage, StageState state, List<String> reasons, List<ReadingState> readings,
        List<RequirementState> requirements, List<Finding> findings) {

    public StageStatus {
        Objects.requireNonNull(stage, "stage");
        Objects.requireNonNull(state, "state");
        reasons = List.copyOf(reasons);
        readings = List.copyOf(readings);
        requirements = List.copyOf(requirements);
        findings = List.copyOf(findings);
    }
}
