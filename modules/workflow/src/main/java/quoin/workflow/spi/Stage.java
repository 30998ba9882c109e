package quoin.workflow.spi;

import java.util.List;
import java.util.Set;
import quoin.car.AdjusterKind;
import quoin.car.Car;
import quoin.car.ReadingId;
import quoin.logbook.Day;

/**
 * One stage of the set-up day. A stage says what is read, judged and turned in it; the order of work decides from that
 * what may be signed off. Stages are found as services; one that is not installed leaves its entries in the logbook
 * untouched.
 */
public interface Stage {

    /** Stable id that entries store, such as "ride-height". */
    String id();

    /** Place in the order of work; smaller comes first. */
    int position();

    /** As shown: "Ride height". */
    String title();

    /** One sentence: why the stage is done. */
    String purpose();

    /** What is typed in this stage, in walking order. A reading belongs to the first stage that lists it. */
    List<ReadingId> readings(Car car);

    /**
     * What must be fresh and inside tolerance for the sign-off: the readings, typed and derived, that have a target.
     * Where it is empty, every reading that belongs to the stage must be fresh.
     *
     * @param car the car with the targets of the day
     */
    List<ReadingId> judged(Car car);

    /** Conditions that must hold while this stage's own readings are taken, in the order they are best seen to. */
    List<Requirement> requirements(Car car);

    /** What is turned or shimmed in this stage. */
    Set<AdjusterKind> adjusters();

    /** The stage's own checks of what was recorded. */
    List<Finding> findings(Day day);
}
