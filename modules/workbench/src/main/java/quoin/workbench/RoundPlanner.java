package quoin.workbench;

import java.util.Optional;
import quoin.logbook.Day;
import quoin.workflow.RoundPlan;
import quoin.workflow.spi.Stage;

/** Makes the plan of the next round; called off the event thread. */
@FunctionalInterface
public interface RoundPlanner {

    /** Makes no plans. */
    RoundPlanner NONE = (day, stage) -> Optional.empty();

    /** The plan for a stage as the day stands; empty where its readings do not allow one yet. */
    Optional<RoundPlan> plan(Day day, Stage stage);
}
