package quoin.workbench;

import java.util.Map;
import java.util.Optional;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.ReadingId;
import quoin.logbook.Day;
import quoin.workflow.Predicted;
import quoin.workflow.RoundPlan;
import quoin.workflow.RoundPlanner;
import quoin.workflow.spi.Stage;

/** Makes the plan of the next round and predicts what turns do; called off the event thread. */
public interface PlanSource {

    /** Plans of the perches and pushrods for the stages that turn them; no plan for the others. */
    PlanSource SPRING_LEGS = new PlanSource() {
        @Override
        public Optional<RoundPlan> plan(Day day, Stage stage) {
            return stage.adjusters().stream().anyMatch(AdjusterKind::isSpringLeg) ? RoundPlanner.plan(day) : Optional.empty();
        }

        @Override
        public Map<ReadingId, Predicted> forecast(Day day, Map<AdjusterId, Double> turns) {
            return RoundPlanner.forecast(day, turns);
        }
    };

    /** Makes no plans. */
    PlanSource NONE = new PlanSource() {
        @Override
        public Optional<RoundPlan> plan(Day day, Stage stage) {
            return Optional.empty();
        }

        @Override
        public Map<ReadingId, Predicted> forecast(Day day, Map<AdjusterId, Double> turns) {
            return Map.of();
        }
    };

    /** The plan for a stage as the day stands; empty where its readings do not allow one yet. */
    Optional<RoundPlan> plan(Day day, Stage stage);

    /** What turns will do to every reading as the day stands; empty where nothing can be said. */
    Map<ReadingId, Predicted> forecast(Day day, Map<AdjusterId, Double> turns);
}
