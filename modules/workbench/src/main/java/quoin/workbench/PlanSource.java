package quoin.workbench;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import quoin.adjustment.PlanCancellation;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.ReadingId;
import quoin.logbook.Day;
import quoin.suspension.spi.SuspensionTypes;
import quoin.workflow.AnglePlanner;
import quoin.workflow.Predicted;
import quoin.workflow.RoundAdvice;
import quoin.workflow.RoundPlan;
import quoin.workflow.RoundPlanner;
import quoin.workflow.spi.Stage;

/** Makes the plan of the next round and predicts what turns do; called off the event thread. */
public interface PlanSource {

    /** Plans of perches and pushrods, or of the wheel angles, by what a stage turns; the suspension types are those installed. */
    PlanSource BY_STAGE = new PlanSource() {
        @Override
        public List<RoundPlan> plans(Day day, Stage stage, PlanCancellation cancellation) {
            SuspensionTypes types = SuspensionTypes.installed();
            return stage.adjusters().stream().anyMatch(AdjusterKind::isSpringLeg) ? RoundPlanner.options(day, types, cancellation)
                    : stage.adjusters().isEmpty() ? List.of() : AnglePlanner.plan(day, types, cancellation).stream().toList();
        }

        @Override
        public Optional<RoundAdvice> advice(Day day, Stage stage) {
            return stage.adjusters().stream().anyMatch(AdjusterKind::isSpringLeg) ? RoundAdvice.of(day) : Optional.empty();
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
        public Optional<RoundAdvice> advice(Day day, Stage stage) {
            return Optional.empty();
        }

        @Override
        public Map<ReadingId, Predicted> forecast(Day day, Map<AdjusterId, Double> turns) {
            return Map.of();
        }
    };

    /** The plan offered first and those with other numbers of corners; none where the readings do not allow one yet. */
    List<RoundPlan> plans(Day day, Stage stage, PlanCancellation cancellation);

    /** What the rounds so far say; empty where nothing was read that counts. */
    Optional<RoundAdvice> advice(Day day, Stage stage);

    /** What turns will do to every reading as the day stands; empty where nothing can be said. */
    Map<ReadingId, Predicted> forecast(Day day, Map<AdjusterId, Double> turns);
}
