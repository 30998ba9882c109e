package quoin.application;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.openide.util.Lookup;
import quoin.adjustment.PlanCancellation;
import quoin.car.Car;
import quoin.car.ReadingId;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.rehearsal.Ouzel23;
import quoin.rehearsal.PracticeCar;
import quoin.suspension.spi.SuspensionTypes;
import quoin.workflow.AnglePlanner;
import quoin.workflow.Closing;
import quoin.workflow.NextStep;
import quoin.workflow.OrderOfWork;
import quoin.workflow.RoundPlan;
import quoin.workflow.RoundPlanner;
import quoin.workflow.spi.Stage;

/**
 * Whole days of the practice car without a window, each with its own noise: whoever does the next thing and turns what the
 * plan says must come to the end of the day, and not by endless polishing.
 */
class PracticeDaysTest {

    private static final int MOST_STEPS = 120;
    private static final int DAYS = 12;

    @Test
    void followingTheNextStepEndsTheDay() {
        List<String> table = new ArrayList<>();
        int angleRounds = 0;
        for (long seed = 23; seed < 23 + DAYS; seed++) {
            Walk walk = new Walk(seed);
            walk.toTheEnd();
            table.add("seed " + seed + ": " + walk.entries.size() + " entries, rounds " + walk.rounds("ride-height") + " height, "
                    + walk.rounds("corner-weights") + " weights, " + walk.rounds("wheel-angles") + " angles");
            angleRounds += walk.rounds("wheel-angles");
        }
        System.out.println(String.join("\n", table));
        assertTrue(angleRounds <= 5 * DAYS, "angles take more than five passes a day, the loop back included:\n" + String.join("\n", table));
    }

    /** One day. */
    private static final class Walk {
        private final OrderOfWork order = new OrderOfWork(List.copyOf(Lookup.getDefault().lookupAll(Stage.class)));
        private final SuspensionTypes types = SuspensionTypes.installed();
        private final List<Entry> entries = new ArrayList<>();
        private final List<String> walked = new ArrayList<>();
        private final PracticeCar practice;
        private final Car car = Ouzel23.car();

        Walk(long seed) {
            practice = PracticeCar.ouzel23(seed);
            entries.add(new Entry.CarDescribed(header(""), car));
        }

        private Header header(String stage) {
            return new Header(entries.size() + 1, Instant.EPOCH.plusSeconds(entries.size()), stage);
        }

        int rounds(String stage) {
            return (int) entries.stream().filter(Entry.Adjustment.class::isInstance).filter(e -> e.header().stage().equals(stage)).count();
        }

        void toTheEnd() {
            for (int i = 0; i < MOST_STEPS; i++) {
                Day day = Day.of(entries);
                NextStep next = order.status(day).next();
                walked.add(entries.size() + " " + next.stageId() + " " + next.kind() + ": " + next.words());
                if (next.kind() == NextStep.Kind.DONE) {
                    return;
                }
                act(day, next);
            }
            throw new AssertionError("no end after " + MOST_STEPS + " steps:\n" + String.join("\n", walked));
        }

        private void act(Day day, NextStep next) {
            Stage stage = order.stages().stream().filter(s -> s.id().equals(next.stageId())).findFirst().orElseThrow();
            switch (next.kind()) {
                case CONDITION -> condition(day, next);
                case SETTLE -> settle(next.stageId());
                case READ -> read(day, stage);
                case TURN -> turn(day, stage);
                case SIGN_OFF -> entries.add(order.signOff(day, next.stageId()).entry().orElseThrow().withHeader(header(next.stageId())));
                case CLOSE -> entries.add(order.close(day).entry().orElseThrow().withHeader(header(next.stageId())));
                default -> throw new AssertionError(next);
            }
        }

        private void settle(String stage) {
            entries.add(new Entry.Condition(header(stage), Conditions.SETTLED, Conditions.YES, ""));
        }

        private void condition(Day day, NextStep next) {
            order.status(day).stages().stream().flatMap(s -> s.requirements().stream())
                    .filter(r -> r.requirement().words().equals(next.words())).findFirst()
                    .or(() -> Closing.states(day).stream().filter(r -> r.requirement().words().equals(next.words())).findFirst())
                    .ifPresentOrElse(r -> entries.add(new Entry.Condition(header(next.stageId()), r.requirement().key(),
                            r.requirement().key().equals(Conditions.FUEL) ? "20" : r.requirement().value(), "")),
                            () -> {
                                throw new AssertionError("nothing fits: " + next);
                            });
        }

        private void read(Day day, Stage stage) {
            Map<ReadingId, Double> values = practice.read(day, stage.readings(car));
            entries.add(new Entry.Reading(header(stage.id()), values, Map.of(), Entry.Source.PRACTICE_CAR));
        }

        private void turn(Day day, Stage stage) {
            boolean legs = stage.adjusters().stream().anyMatch(k -> k.isSpringLeg());
            Optional<RoundPlan> plan = legs ? RoundPlanner.options(day, types, PlanCancellation.NEVER).stream().findFirst()
                    : AnglePlanner.plan(day, types, PlanCancellation.NEVER);
            if (plan.isEmpty() || plan.get().moves().isEmpty()) {
                walked.add("   the plan leaves it: " + plan.map(RoundPlan::why).orElse("no plan"));
                settle(stage.id());
                read(Day.of(entries), stage);
                return;
            }
            walked.add("   " + plan.get().moves() + " " + plan.get().probabilityInside());
            entries.add(new Entry.Adjustment(header(stage.id()), plan.get().moves().stream()
                    .map(m -> new Entry.Turn(m.adjuster(), m.turns(), OptionalDouble.empty())).toList(), ""));
        }
    }
}
