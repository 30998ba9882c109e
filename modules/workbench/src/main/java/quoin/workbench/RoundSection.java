package quoin.workbench;

import java.awt.BorderLayout;
import java.awt.Font;
import java.awt.GridBagLayout;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.openide.util.NbBundle.Messages;
import quoin.car.AdjusterId;
import quoin.car.Car;
import quoin.car.ReadingId;
import quoin.workflow.CornerMove;
import quoin.workflow.Freshness;
import quoin.workflow.NextStep;
import quoin.workflow.Predicted;
import quoin.workflow.RoundPlan;
import quoin.workflow.RoundUnderway;
import quoin.workflow.StageStatus;

/** One round in a stage's window: the plan, what was really turned, and the last round as predicted and as read. */
@Messages({
    "section.plan=Plan", "section.turn=Turn", "section.lastRound=Last round: predicted beside read",
    "section.planning=Working out the plan...",
    "section.readFirst=The plan follows when this stage has been read as the car stands now.",
    "section.noRound=No round yet.",
    "section.rest=Still to turn in this round",
    "# {0} - turn", "# {1} - adjusters after it", "section.nextCorner=Turn {0}. {1,choice,0#Then settle the car and read|1#One more after it|1<{1} more after it}.",
    "# {0} - length", "section.thread=, thread then {0}",
    "section.turnCaution=Driver out and the weight taken off with a jack, stands under the frame; a spanner slips under load.",
    "round.reading=Reading", "round.before=Before", "round.predicted=Predicted", "round.read=Read", "round.verdict=In words",
    "# {0} - turns", "round.turned=Turned: {0}"})
public final class RoundSection {

    private final CurrentDay current;
    private final String stageId;
    private final PlanTable plan = new PlanTable();
    private final PlanChoice choice;
    private final AdviceLines advice = new AdviceLines();
    private final TurnsForm turns;
    private final JComponent choices;
    private final JComponent rest = Looks.label(Bundle.section_rest(), Looks.HEADING, Font.BOLD);
    private final WrapText noPlan = new WrapText("");
    private final JPanel planPart = new JPanel(new BorderLayout());
    private final JPanel lastPart = new JPanel(new BorderLayout());
    private final BuiltFrom lastBuilt = new BuiltFrom();

    /** What the table of the last round was made from; most entries leave it as it is. */
    private record LastShown(Optional<LastRound> last, DisplayUnits units, Car car) {
    }

    /**
     * @param which the adjusters that may be turned, in walking order
     */
    public RoundSection(CurrentDay current, String stageId, Function<Car, List<AdjusterId>> which) {
        this.current = current;
        this.stageId = stageId;
        this.turns = new TurnsForm(current, stageId, which);
        this.choice = new PlanChoice(() -> current.snapshot().ifPresent(this::show));
        this.choices = Looks.column(advice, choice);
        planPart.add(Looks.column(noPlan, rest, choices), BorderLayout.NORTH);
        planPart.add(plan, BorderLayout.CENTER);
    }

    /** What follows when turns have been recorded. */
    public RoundSection onTurned(Runnable next) {
        turns.onRecorded(next);
        return this;
    }

    public JComponent planPart() {
        return Looks.section(Bundle.section_plan(), planPart);
    }

    public JComponent turnPart() {
        return Looks.section(Bundle.section_turn(), turns);
    }

    public JComponent lastPart() {
        return Looks.section(Bundle.section_lastRound(), lastPart);
    }

    public void toTurns() {
        turns.toFirst();
    }

    public void show(DaySnapshot day) {
        List<RoundPlan> asked = current.plans(stageId);
        boolean underway = isUnderway(day);
        List<RoundPlan> made = underway || readAsItStands(day) ? asked : List.of();
        choice.show(made);
        if (!made.isEmpty()) {
            plan.show(choice.chosen(), day, current.advice(stageId).isEmpty());
            advice.show(current.advice(stageId));
        } else {
            noPlan.setText((underway || readAsItStands(day)) && current.isPlanning(stageId) ? Bundle.section_planning() : Bundle.section_readFirst());
        }
        noPlan.setVisible(made.isEmpty());
        plan.setVisible(!made.isEmpty());
        rest.setVisible(!made.isEmpty() && underway);
        choices.setVisible(!made.isEmpty() && !underway);
        if (underway && current.isPlanning(stageId)) {
            turns.showTurned(day);
        } else {
            turns.show(day, made.isEmpty() ? Optional.empty() : Optional.of(choice.chosen()));
        }
        showLast(day);
    }

    private boolean isUnderway(DaySnapshot day) {
        return day.stage(stageId).flatMap(s -> RoundUnderway.of(day.day(), s.stage())).isPresent();
    }

    /** The corner that comes next in a round under way. */
    static NextStep turnNext(DaySnapshot day, RoundPlan rest) {
        CornerMove first = rest.moves().get(0);
        AdjusterWords words = day.adjusterWords();
        String next = words.sentence(first.adjuster(), first.turns());
        String thread = first.newLengthMm().isPresent() ? Bundle.section_thread(words.length(first.newLengthMm().getAsDouble())) : "";
        return new NextStep(day.status().next().stageId(), NextStep.Kind.TURN,
                Bundle.section_nextCorner(next + thread, rest.moves().size() - 1), Optional.of(Bundle.section_turnCaution()));
    }

    /** A plan made from readings that no longer hold would send the racer turning twice. */
    private boolean readAsItStands(DaySnapshot day) {
        Optional<StageStatus> stage = day.stage(stageId);
        List<ReadingId> typed = stage.map(s -> s.stage().readings(day.car())).orElse(List.of());
        return stage.isPresent() && stage.get().readings().stream().filter(r -> typed.contains(r.reading()))
                .allMatch(r -> r.freshness() == Freshness.FRESH || r.freshness() == Freshness.DOUBTFUL
                        || r.freshness() == Freshness.OUT_OF_ORDER);
    }

    private void showLast(DaySnapshot day) {
        Optional<LastRound> last = current.lastRound();
        if (!lastBuilt.isNew(new LastShown(last, day.units(), day.car()))) {
            return;
        }
        lastPart.removeAll();
        if (last.isEmpty()) {
            lastPart.add(new WrapText(Bundle.section_noRound()), BorderLayout.CENTER);
        } else {
            AdjusterWords words = day.adjusterWords();
            String turned = last.get().turned().entrySet().stream().map(t -> words.sentence(t.getKey(), t.getValue()))
                    .collect(Collectors.joining("; "));
            lastPart.add(new WrapText(Bundle.round_turned(turned)), BorderLayout.NORTH);
            lastPart.add(table(last.get(), day.format()), BorderLayout.CENTER);
        }
        lastPart.revalidate();
        lastPart.repaint();
    }

    private static JPanel table(LastRound round, ReadingFormat format) {
        JPanel table = new JPanel(new GridBagLayout());
        String[] heads = {Bundle.round_reading(), Bundle.round_before(), Bundle.round_predicted(), Bundle.round_read(), Bundle.round_verdict()};
        int row = 0;
        addRow(table, row++, heads, Font.BOLD);
        for (Map.Entry<ReadingId, Predicted> line : round.predicted().entrySet()) {
            ReadingId id = line.getKey();
            Double read = round.measured().get(id);
            addRow(table, row++, new String[] {format.nameWithUnit(id), format.number(id, line.getValue().now()),
                format.number(id, line.getValue().predicted()), read == null ? "–" : format.number(id, read), round.word(id, format)}, Font.PLAIN);
        }
        return table;
    }

    private static void addRow(JPanel table, int row, String[] texts, int style) {
        int last = texts.length - 1;
        for (int i = 0; i <= last; i++) {
            table.add(i < last ? Looks.label(texts[i], 1, style) : words(texts[i], style), Looks.closeCell(i, row, i == last ? 1 : 0));
        }
    }

    /** The last column wraps where a sentence is longer than what the figures leave. */
    private static JComponent words(String text, int style) {
        return text.length() > PlanTable.SHORT ? new WrapText(text, 1, style).narrow() : Looks.label(text, 1, style);
    }
}
