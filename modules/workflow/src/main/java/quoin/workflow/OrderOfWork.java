package quoin.workflow;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import quoin.adjustment.Verdict;
import quoin.car.ReadingId;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.quantities.Texts;
import quoin.workflow.Assessor.View;
import quoin.workflow.spi.Finding;
import quoin.workflow.spi.Stage;

/**
 * The order of work: what may be signed off, what no longer holds, what comes next. It decides and draws nothing; it keeps
 * nothing either, so the same day always gives the same answers. Recording is never refused here: readings out of turn are
 * marked and do not count. See {@link Staleness} for what disturbs what.
 */
public final class OrderOfWork {

    private static final Texts TEXTS = Texts.of(OrderOfWork.class);

    private final List<Stage> stages;
    private final ExpectedMove expected;

    /**
     * An order of work over some stages.
     *
     * @throws IllegalArgumentException where two stages have the same id
     */
    public OrderOfWork(List<Stage> stages) {
        this(stages, ExpectedMove.UNKNOWN);
    }

    private OrderOfWork(List<Stage> stages, ExpectedMove expected) {
        this.stages = stages.stream().sorted(Comparator.comparingInt(Stage::position)).toList();
        this.expected = Objects.requireNonNull(expected, "expected");
        Set<String> ids = new HashSet<>();
        for (Stage stage : stages) {
            if (!ids.add(stage.id())) {
                throw new IllegalArgumentException("two stages have the id '" + stage.id() + "'; install only one of them");
            }
        }
    }

    /** The same order of work that also says how far readings are expected to have moved. */
    public OrderOfWork withExpectedMove(ExpectedMove move) {
        return new OrderOfWork(stages, move);
    }

    /** Stages in the order of work. */
    public List<Stage> stages() {
        return stages;
    }

    /** How the whole day stands. */
    public DayStatus status(Day day) {
        List<Stage> part = PartDay.stagesOf(day, stages);
        Assessor assessor = new Assessor(day, part, expected);
        StageRules rules = new StageRules(assessor, part);
        Assessor whole = part.size() == stages.size() ? assessor : new Assessor(day, stages, expected);
        List<StageStatus> all = stages.stream().map(s -> part.contains(s) ? status(s, assessor, rules, part) : leftOut(s, whole)).toList();
        return new DayStatus(day.revision(), all, new NextSteps(assessor, rules, part, part.size() < stages.size()).next());
    }

    /** A stage that is no part of the day: what was read there is shown all the same. */
    private StageStatus leftOut(Stage stage, Assessor whole) {
        StageStatus as = status(stage, whole, new StageRules(whole, stages), stages);
        return new StageStatus(stage, StageState.WAITING, List.of(TEXTS.say("order.notPart", PartDay.words(whole.day()))),
                as.readings(), as.requirements(), as.findings());
    }

    /** What the day was declared to be for and what it does not prove; empty for a day of the whole job. */
    public Optional<PartDay> part(Day day) {
        List<Stage> part = PartDay.stagesOf(day, stages);
        if (part.size() == stages.size()) {
            return Optional.empty();
        }
        StageRules rules = new StageRules(new Assessor(day, part, expected), part);
        return Optional.of(new PartDay(PartDay.words(day), part.stream().map(Stage::id).toList(), PartDay.notProved(day, rules, part, stages)));
    }

    private static StageStatus status(Stage stage, Assessor assessor, StageRules rules, List<Stage> stages) {
        List<ReadingState> readings = new ArrayList<>();
        for (ReadingId id : shown(stage, assessor)) {
            readings.add(shown(id, assessor, rules, stages));
        }
        List<RequirementState> requirements = assessor.asked().requirements(stage).stream()
                .map(r -> new RequirementState(r, assessor.holds(r))).toList();
        List<Finding> findings = new ArrayList<>(stage.findings(assessor.day()));
        findings.addAll(LoadCaseCheck.of(assessor.day(), assessor.asked().readings(stage).stream()
                .filter(id -> assessor.asked().owner(id).filter(stage::equals).isPresent()).toList()));
        findings.addAll(tooClose(stage, assessor, rules));
        return new StageStatus(stage, rules.state(stage), rules.reasons(stage), readings, requirements, findings);
    }

    /**
     * A reading as it is shown: as last read; as it counted for the signatures where the day is closed; as it counts where
     * everything is signed and the last was taken in order but for what closing undoes. The last look has its own verdict.
     */
    private static ReadingState shown(ReadingId id, Assessor assessor, StageRules rules, List<Stage> stages) {
        ReadingState last = assessor.of(id, View.SHOWN).state();
        boolean closed = assessor.day().closed().isPresent();
        boolean closing = last.freshness() == Freshness.OUT_OF_ORDER
                && stages.stream().allMatch(s -> rules.signed(s).isPresent()) && Closing.isClosingLook(assessor, id);
        if (!closed && !closing) {
            return last;
        }
        ReadingState counted = assessor.of(id, closed ? View.CLOSED : View.COUNTING).state();
        return counted.value().isPresent() ? counted : last;
    }

    /** What is typed in a stage, what is judged, and what follows from both. */
    private static Set<ReadingId> shown(Stage stage, Assessor assessor) {
        Set<ReadingId> ids = new LinkedHashSet<>(assessor.asked().readings(stage));
        Derived.all(assessor.car()).stream().filter(d -> ids.containsAll(assessor.asked().parts(d))).toList().forEach(ids::add);
        ids.addAll(assessor.asked().judged(stage));
        return ids;
    }

    private static List<Finding> tooClose(Stage stage, Assessor assessor, StageRules rules) {
        List<Finding> findings = new ArrayList<>();
        for (ReadingId id : rules.judged(stage)) {
            ReadingState state = assessor.of(id, View.COUNTING).state();
            state.verdict().filter(v -> v.answer() == Verdict.Answer.TOO_CLOSE && rules.ownsAll(stage, id)).ifPresent(v -> findings.add(
                    new Finding(Finding.Level.INFO, TEXTS.say("order.tooClose", id.words(), Math.round(100 * v.probabilityInside())),
                            Optional.of(id), OptionalDouble.empty())));
        }
        return findings;
    }

    /** The sign-off of a stage by the rules, or why it is refused. */
    public Gate<Entry.SignOff> signOff(Day day, String stageId) {
        return signOff(day, stageId, Optional.empty());
    }

    /**
     * The sign-off of a stage with a written reason: allowed whatever the rules say. Where the rules allow it anyway the
     * reason is left out.
     *
     * @throws IllegalArgumentException where the reason is blank
     */
    public Gate<Entry.SignOff> signOff(Day day, String stageId, String writtenReason) {
        return signOff(day, stageId, Optional.of(written(writtenReason, "order.signReason")));
    }

    private Gate<Entry.SignOff> signOff(Day day, String stageId, Optional<String> writtenReason) {
        Stage stage = stage(stageId);
        List<Stage> part = PartDay.stagesOf(day, stages);
        List<Stage> among = part.contains(stage) ? part : stages;
        StageRules rules = new StageRules(new Assessor(day, among, expected), among);
        if (rules.state(stage) == StageState.SIGNED) {
            return new Gate<>(Optional.empty(), List.of(TEXTS.say("order.signed", stage.title())));
        }
        List<String> reasons = rules.toSign(stage).stream().map(Problem::words).toList();
        if (!reasons.isEmpty() && writtenReason.isEmpty()) {
            return new Gate<>(Optional.empty(), reasons);
        }
        Optional<String> waived = reasons.isEmpty() ? Optional.empty() : writtenReason;
        return new Gate<>(Optional.of(new Entry.SignOff(header(stageId), waived)), reasons);
    }

    /** Closing the day by the rules, or why it is refused. */
    public Gate<Entry.DayClosed> close(Day day) {
        return close(day, Optional.empty());
    }

    /**
     * Closing the day with a written reason: allowed whatever the rules say. Where the rules allow it anyway the reason is
     * left out.
     *
     * @throws IllegalArgumentException where the reason is blank
     */
    public Gate<Entry.DayClosed> close(Day day, String writtenReason) {
        return close(day, Optional.of(written(writtenReason, "order.closeReason")));
    }

    /** A part day is closed with what it did not prove: only what was undone for it has to be put back. */
    private Gate<Entry.DayClosed> close(Day day, Optional<String> writtenReason) {
        List<Stage> part = PartDay.stagesOf(day, stages);
        Assessor assessor = new Assessor(day, part, expected);
        StageRules rules = new StageRules(assessor, part);
        if (day.closed().isPresent()) {
            return new Gate<>(Optional.empty(), List.of(TEXTS.say("order.closedAt", day.closed().get().number())));
        }
        List<Problem> open = part.size() == stages.size() ? rules.toClose() : Closing.leftUndone(day);
        List<String> reasons = open.stream().map(Problem::words).toList();
        if (!reasons.isEmpty() && writtenReason.isEmpty()) {
            return new Gate<>(Optional.empty(), reasons);
        }
        Optional<String> outOfOrder = reasons.isEmpty() ? Optional.empty() : writtenReason;
        String last = stages.isEmpty() ? "" : stages.get(stages.size() - 1).id();
        List<String> notProved = part.size() == stages.size() ? List.of() : PartDay.notProved(day, rules, part, stages);
        return new Gate<>(Optional.of(new Entry.DayClosed(header(last), outOfOrder, notProved)), reasons);
    }

    /** The signed values beside what is read now, and the stage to redo. */
    public Recheck recheck(Day day) {
        Assessor assessor = new Assessor(day, stages, expected);
        return Recheck.of(assessor, new StageRules(assessor, stages), stages);
    }

    private Stage stage(String id) {
        return stages.stream().filter(s -> s.id().equals(id)).findFirst()
                .orElseThrow(() -> new NoSuchElementException("no installed stage has the id '" + id + "'"));
    }

    private static String written(String reason, String key) {
        if (reason.isBlank()) {
            throw new IllegalArgumentException(TEXTS.say(key));
        }
        return reason.strip();
    }

    private static Header header(String stageId) {
        return new Header(0, Instant.EPOCH, stageId);
    }
}
