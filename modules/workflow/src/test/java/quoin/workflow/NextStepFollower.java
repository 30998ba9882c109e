package quoin.workflow;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.ReadingId;
import quoin.logbook.Conditions;
import quoin.workflow.spi.Requirement;
import quoin.workflow.spi.Stage;

/** A racer who does the next step and nothing else, in the window it names. */
final class NextStepFollower {

    private final OrderOfWork order;
    private final LinearCar car;
    private final List<String> trail = new ArrayList<>();

    NextStepFollower(OrderOfWork order, LinearCar car) {
        this.order = order;
        this.car = car;
    }

    /** Stages and kinds of the steps done so far. */
    List<String> trail() {
        return trail;
    }

    /**
     * Goes on until the day is closed.
     *
     * @throws AssertionError where that takes more steps than a day can need
     */
    List<String> follow(DayBook book, int mostSteps) {
        for (int steps = 0; steps < mostSteps; steps++) {
            DayStatus status = order.status(book.day());
            NextStep next = status.next();
            trail.add(next.stageId() + " " + next.kind());
            switch (next.kind()) {
                case CONDITION, SETTLE -> condition(book, status, next);
                case READ -> book.read(next.stageId(), car.read(book.day(), readings(book, status, next)));
                case TURN -> turn(book, status.stage(next.stageId()).stage(), next);
                case SIGN_OFF -> book.sign(order, next.stageId());
                case CLOSE -> book.add(order.close(book.day()).entry().orElseThrow(
                        () -> new AssertionError("refused: " + order.close(book.day()).reasons())));
                default -> {
                    return trail;
                }
            }
        }
        throw new AssertionError("the day does not end: " + trail.subList(Math.max(0, trail.size() - 20), trail.size()) + ", "
                + order.status(book.day()).next());
    }

    private List<ReadingId> readings(DayBook book, DayStatus status, NextStep next) {
        return status.stage(next.stageId()).stage().readings(book.day().car());
    }

    private static void condition(DayBook book, DayStatus status, NextStep next) {
        List<Requirement> known = new ArrayList<>(Closing.requirements(book.day().car()));
        status.stages().forEach(s -> s.requirements().forEach(r -> known.add(r.requirement())));
        Requirement asked = known.stream().filter(r -> r.words().equals(next.words())).findFirst().orElseThrow();
        book.condition(asked.key(), asked.value().isEmpty() ? "20" : asked.value());
    }

    private void turn(DayBook book, Stage stage, NextStep next) {
        Map<AdjusterId, Double> turns = next.words().contains("joined bars") ? car.planForBar(book.day())
                : stage.adjusters().contains(AdjusterKind.PERCH) ? car.planForLegs(book.day()) : car.planForAngles(book.day());
        if (turns.isEmpty()) {
            throw new AssertionError("nothing to turn for: " + next.words());
        }
        book.turn(turns);
        if (!next.words().contains("joined bars")) {
            book.condition(Conditions.DRIVER, Conditions.OUT).condition(Conditions.DRIVER, Conditions.IN);
        }
    }
}
