package quoin.workbench;

import java.util.Set;
import java.util.stream.Stream;
import javax.swing.JComponent;
import org.openide.util.NbBundle.Messages;
import quoin.car.AdjusterKind;
import quoin.workflow.spi.Stage;

/**
 * What every stage has that is read, turned and read again: fields for its readings, the bar that settles the car, one round,
 * its checks and conditions, tied together so that the caret goes on where the work does. A stage's own view adds how the car
 * stands and lays the parts out.
 */
@Messages({"roundView.findings=Checks", "roundView.conditions=Conditions while reading"})
public abstract class RoundView implements StageView {

    private final String stageId;
    private final ReadingGrid grid;
    private final SettleBar settle;
    private final RoundSection round;
    private final FindingsList findings = new FindingsList();
    private final RequirementsList conditions;

    /**
     * Reads and turns what the stage's rule says.
     *
     * @param stageId id of a stage that is installed
     */
    protected RoundView(CurrentDay current, String stageId) {
        this(current, rule(current, stageId));
    }

    /**
     * Reads what the stage's rule says.
     *
     * @param stageId id of a stage that is installed
     * @param turned  kinds of adjuster that may be recorded here
     */
    protected RoundView(CurrentDay current, String stageId, Set<AdjusterKind> turned) {
        this(current, rule(current, stageId), turned);
    }

    private RoundView(CurrentDay current, Stage rule) {
        this(current, rule, rule.adjusters());
    }

    private RoundView(CurrentDay current, Stage rule, Set<AdjusterKind> turned) {
        stageId = rule.id();
        grid = new ReadingGrid(current, stageId, rule::readings);
        settle = new SettleBar(current, stageId);
        round = new RoundSection(current, stageId, car -> TurnsForm.adjusters(car, turned));
        conditions = new RequirementsList(current, stageId);
        settle.onSettled(grid::toFirst);
        round.onTurned(settle::toButton);
        conditions.onAllHold(grid::toFirst);
    }

    private static Stage rule(CurrentDay current, String stageId) {
        return current.stages().stream().filter(s -> s.id().equals(stageId)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no stage " + stageId));
    }

    /**
     * Reading and settling, the plan, and what was turned, one below the other.
     *
     * @param heading over the fields
     * @param below   what stands under them
     */
    protected final JComponent workPart(String heading, JComponent... below) {
        JComponent[] reading = Stream.concat(Stream.of(grid, settle), Stream.of(below)).toArray(JComponent[]::new);
        return Looks.column(Looks.section(heading, Looks.column(reading)), round.planPart(), round.turnPart());
    }

    /** The last round, as predicted and as read. */
    protected final JComponent lastPart() {
        return round.lastPart();
    }

    /** What the stage's checks found. */
    protected final JComponent findingsPart() {
        return Looks.section(Bundle.roundView_findings(), findings);
    }

    /** What has to hold while reading, to tick off. */
    protected final JComponent conditionsPart() {
        return Looks.section(Bundle.roundView_conditions(), conditions);
    }

    @Override
    public void show(DaySnapshot day) {
        grid.show(day);
        settle.show(day);
        round.show(day);
        day.stage(stageId).ifPresent(s -> {
            findings.show(s.findings(), day.format());
            conditions.show(s.requirements());
        });
    }

    @Override
    public void showPlans(DaySnapshot day) {
        round.show(day);
    }

    @Override
    public void toEntry() {
        grid.toFirst();
    }

    @Override
    public void toTurns() {
        round.toTurns();
    }
}
