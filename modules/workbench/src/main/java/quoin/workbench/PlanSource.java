package quoin.workbench;

import java.util.List;
import java.util.Map;
import quoin.adjustment.PlanCancellation;
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
        public List<RoundPlan> plans(Day day, Stage stage, PlanCancellation cancellation) {
            return stage.adjusters().stream().anyMatch(AdjusterKind::isSpringLeg) ? RoundPlanner.options(day, cancellation) : List.of();
        }

        @Override
        public Map<ReadingId, Predicted> forecast(Day day, Map<AdjusterId, Double> turns) {
            return RoundPlanner.forecast(day, turns);
        }
    };

    /** Makes no plans. */
    PlanSource NONE = new PlanSource() {
        @Override
        public List<RoundPlan> plans(Day day, Stage stage, PlanCancellation cancellation) {
            return List.of();
        }

        @Override
        public Map<ReadingId, Predicted> forecast(Day day, Map<AdjusterId, Double> turns) {
            return Map.of();
        }
    };

    /** The plan offered first and those with other numbers of corners; none where the readings do not allow one yet. */
    List<RoundPlan> plans(Day day, Stage stage, PlanCancellation cancellation);

    /** What turns will do to every reading as the day stands; empty where nothing can be said. */
    Map<ReadingId, Predicted> forecast(Day day, Map<AdjusterId, Double> turns);
}
