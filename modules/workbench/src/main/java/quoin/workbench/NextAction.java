package quoin.workbench;

import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.openide.util.NbBundle.Messages;
import quoin.logbook.Conditions;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.workflow.Closing;
import quoin.workflow.Loosened;
import quoin.workflow.NextStep;
import quoin.workflow.RequirementState;
import quoin.workflow.spi.Requirement;

/**
 * What pressing the button on the card does: record that the step was done, or go to where it is done.
 *
 * @param button words on the button, with its mnemonic marked
 * @param stage  stage the step belongs to
 * @param record the entry to record; empty where the step is done in the stage's window or is a
 *               sign-off
 */
@Messages({
    "next.done=Do&ne",
    "next.read=To the fields (&N)",
    "next.turn=To the turns (&N)",
    "next.sign=Sig&n off",
    "next.close=Close the day (&N)",
    "next.nuts=To the nuts (&N)",
    "next.nothing=&Nothing left to do"})
public record NextAction(String button, String stage, Optional<Function<Header, Entry>> record) {

    /**
     * @param next the step that is due
     */
    public static NextAction of(DaySnapshot day, NextStep next) {
        return switch (next.kind()) {
            case CONDITION -> nutsOpen(day, next) ? going(Bundle.next_nuts(), next) : unmet(day, next)
                    .map(r -> recording(Bundle.next_done(), next, h -> new Entry.Condition(h, r.key(), r.value(), "")))
                    .orElseGet(() -> going(Bundle.next_read(), next));
            case SETTLE -> recording(Bundle.next_done(), next, h -> new Entry.Condition(h, Conditions.SETTLED, Conditions.YES, ""));
            case READ -> going(Bundle.next_read(), next);
            case TURN -> going(Bundle.next_turn(), next);
            case SIGN_OFF -> going(Bundle.next_sign(), next);
            case CLOSE -> going(Bundle.next_close(), next);
            case DONE -> going(Bundle.next_nothing(), next);
        };
    }

    /**
     * Does the step where that needs no window: records that it was done, signs off, closes the day.
     *
     * @return false where it could not be written, or the rules do not allow it
     */
    public boolean perform(CurrentDay current, NextStep step) {
        return switch (step.kind()) {
            case SIGN_OFF -> current.signOff(step.stageId(), Optional.empty());
            case CLOSE -> current.closeDay(Optional.empty());
            default -> record.isEmpty() || current.record(stage, record.get());
        };
    }

    /** Nuts are ticked one by one, each with its torque or why none is known; no key ticks them all. */
    private static boolean nutsOpen(DaySnapshot day, NextStep step) {
        return unmet(day, step).filter(r -> r.key().equals(Conditions.LOCKNUTS)).isPresent()
                && !Loosened.open(Loosened.of(day.day())).isEmpty();
    }

    /** The condition the step is about; empty where it wants a figure and so is recorded in its window. */
    private static Optional<Requirement> unmet(DaySnapshot day, NextStep step) {
        Stream<Requirement> asked = day.status().stages().stream().flatMap(s -> s.requirements().stream())
                .map(RequirementState::requirement);
        return Stream.concat(asked, Closing.requirements(day.car()).stream())
                .filter(r -> r.words().equals(step.words()) && !r.value().isEmpty()).findFirst();
    }

    private static NextAction recording(String button, NextStep next, Function<Header, Entry> entry) {
        return new NextAction(button, next.stageId(), Optional.of(entry));
    }

    private static NextAction going(String button, NextStep next) {
        return new NextAction(button, next.stageId(), Optional.empty());
    }
}
