package quoin.workflow;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import quoin.car.AdjusterKind;
import quoin.car.ReadingId;
import quoin.logbook.Entry;
import quoin.quantities.Texts;
import quoin.workflow.Assessor.Assessed;
import quoin.workflow.Assessor.View;
import quoin.workflow.Causes.Cause;
import quoin.workflow.Staleness.Effect;
import quoin.workflow.spi.Requirement;
import quoin.workflow.spi.Stage;

/**
 * The rules of the order of work for one day.
 *
 * <ul>
 * <li>A stage may be signed off when nothing earlier stands in its way and its judged readings are fresh and inside; one
 * that turns nothing (the preparation) when its conditions hold. As a fresh reading is one that nothing disturbed since,
 * readings that are all fresh belong to one and the same state of the car.
 * <li>A signed stage holds as long as its judged readings do. A doubtful one does not undo it; a stale one does, and so
 * does one that was read again outside. Reading it again inside, in order, brings the stage back without a new signature.
 * <li>An earlier stage stands in the way unless it holds. One exception: what is stale only through adjusters that this
 * stage turns and the earlier one does not (camber work moves heights and weights) waits for the final re-check.
 * <li>A stage that judges readings of earlier stages (the final re-check) takes their angles as they are after perch or
 * pushrod work within {@link Staleness#LEG_LIMIT_MM}; anything else it judges must be fresh, weights and heights read
 * since the last sign-off before it.
 * <li>A stage signed with a written reason holds until what it judges is disturbed after the signature.
 * </ul>
 */
final class StageRules {

    private static final Texts TEXTS = Texts.of(StageRules.class);

    private static final int MOST_REASONS = 3;

    private final Assessor assessor;
    private final List<Stage> stages;
    private final Map<String, List<Problem>> holding = new HashMap<>();
    private final Map<String, List<Problem>> barring = new HashMap<>();
    private final Map<String, List<Problem>> signing = new HashMap<>();

    StageRules(Assessor assessor, List<Stage> stages) {
        this.assessor = assessor;
        this.stages = stages;
    }

    /** What a stage is judged by: its judged readings, or where it has none every reading that belongs to it. */
    List<ReadingId> judged(Stage stage) {
        List<ReadingId> judged = assessor.asked().judged(stage);
        return judged.isEmpty() && !isConditionsOnly(stage)
                ? assessor.asked().readings(stage).stream().filter(r -> owns(stage, r)).toList() : judged;
    }

    /** A stage that has no reading to a target by its nature, such as the preparation: its conditions are its sign-off. */
    private boolean isConditionsOnly(Stage stage) {
        return stage.adjusters().isEmpty();
    }

    private boolean owns(Stage stage, ReadingId typed) {
        return assessor.asked().owner(typed).map(s -> s == stage).orElse(false);
    }

    boolean ownsAll(Stage stage, ReadingId reading) {
        return assessor.asked().parts(reading).stream().allMatch(p -> owns(stage, p));
    }

    Optional<Entry.SignOff> signed(Stage stage) {
        return assessor.timeline().signOff(stage.id());
    }

    /** Typed readings a judged one is made of. */
    List<ReadingId> typedParts(ReadingId reading) {
        return assessor.asked().parts(reading);
    }

    /** What keeps a stage from its sign-off. */
    List<Problem> toSign(Stage stage) {
        if (!signing.containsKey(stage.id())) {
            signing.put(stage.id(), findToSign(stage));
        }
        return signing.get(stage.id());
    }

    private List<Problem> findToSign(Stage stage) {
        List<Problem> problems = new ArrayList<>(inTheWay(stage));
        if (isConditionsOnly(stage)) {
            problems.addAll(conditions(stage, false));
        }
        long lookedAt = looksAgainFrom(stage);
        for (ReadingId id : judged(stage)) {
            Assessed seen = assessor.of(id, View.COUNTING);
            if (!usable(stage, id, seen)) {
                problems.add(unread(id, seen));
            } else if (readBefore(id, lookedAt)) {
                problems.add(again(id));
            } else if (!seen.inside()) {
                problems.add(outside(seen.state()));
            }
        }
        return Problem.merged(problems);
    }

    private boolean usable(Stage stage, ReadingId id, Assessed seen) {
        return switch (seen.state().freshness()) {
            case FRESH -> true;
            case DOUBTFUL -> !ownsAll(stage, id) && Staleness.isAngle(typedParts(id).get(0))
                    && seen.causes().stream().allMatch(Cause::small);
            default -> false;
        };
    }

    /**
     * The last sign-off before a stage whose judged readings all belong to stages before it: such a stage looks again, so
     * what was read for their sign-offs is not enough. 0 for every other stage.
     */
    private long looksAgainFrom(Stage stage) {
        if (isConditionsOnly(stage) || judged(stage).stream().flatMap(id -> typedParts(id).stream()).anyMatch(p -> owns(stage, p))) {
            return 0;
        }
        return stages.stream().filter(s -> s.position() < stage.position()).flatMap(s -> signed(s).stream())
                .mapToLong(Entry.SignOff::number).max().orElse(0);
    }

    /** Weights and heights are always taken again; angles only where something disturbed them. */
    private boolean readBefore(ReadingId id, long entry) {
        List<ReadingId> parts = typedParts(id);
        return !Staleness.isAngle(parts.get(0)) && parts.stream().anyMatch(p -> assessor.of(p, View.COUNTING).state().entry() < entry);
    }

    private static Problem again(ReadingId id) {
        return new Problem(Problem.Kind.READ, TEXTS.say("rules.notAgain"), List.of(id), Set.of());
    }

    /** Conditions of a stage that do not hold now. */
    private List<Problem> conditions(Stage stage, boolean lastingOnly) {
        return assessor.asked().requirements(stage).stream().filter(r -> (r.lasting() || !lastingOnly) && !assessor.holds(r))
                .map(Requirement::words).map(Problem::condition).toList();
    }

    /** What no longer holds of a signed stage; empty where it holds. */
    List<Problem> notHolding(Stage stage) {
        return holding.computeIfAbsent(stage.id(), k -> signed(stage).map(s -> findNotHolding(stage, s)).orElse(List.of()));
    }

    private List<Problem> findNotHolding(Stage stage, Entry.SignOff signOff) {
        List<Problem> problems = new ArrayList<>();
        if (isConditionsOnly(stage) && signOff.waived().isEmpty()) {
            problems.addAll(conditions(stage, true));
        }
        for (ReadingId id : judged(stage)) {
            Assessed seen = assessor.of(id, View.COUNTING);
            if (signOff.waived().isPresent() && !disturbedSince(id, signOff.number())) {
                continue;
            }
            boolean holds = seen.state().freshness() == Freshness.FRESH || seen.state().freshness() == Freshness.DOUBTFUL;
            if (!holds) {
                problems.add(unread(id, seen));
            } else if (readBefore(id, looksAgainFrom(stage)) && signOff.waived().isEmpty()) {
                problems.add(again(id));
            } else if (!seen.inside()) {
                problems.add(outside(seen.state()));
            }
        }
        return Problem.merged(problems);
    }

    private boolean disturbedSince(ReadingId id, long entry) {
        return typedParts(id).stream().anyMatch(p -> assessor.timeline().staleSince(p, entry));
    }

    /** Earlier stages that stand in the way of a sign-off. */
    List<Problem> inTheWay(Stage stage) {
        if (!barring.containsKey(stage.id())) {
            barring.put(stage.id(), findInTheWay(stage));
        }
        return barring.get(stage.id());
    }

    private List<Problem> findInTheWay(Stage stage) {
        List<Problem> problems = new ArrayList<>();
        for (Stage earlier : stages) {
            if (earlier.position() >= stage.position()) {
                continue;
            }
            if (signed(earlier).isEmpty()) {
                problems.add(Problem.earlier(TEXTS.say("rules.first", earlier.title())));
            } else {
                notHolding(earlier).stream().filter(p -> !workOf(stage, earlier, p))
                        .forEach(p -> problems.add(Problem.earlier(TEXTS.say("rules.of", earlier.title(), p.words()))));
            }
        }
        return problems;
    }

    /** What keeps the day from being closed. */
    List<Problem> toClose() {
        List<Problem> problems = new ArrayList<>();
        for (Stage stage : stages) {
            if (signed(stage).isEmpty()) {
                problems.add(Problem.earlier(TEXTS.say("rules.notSigned", stage.title())));
            }
            notHolding(stage).forEach(p -> problems.add(Problem.earlier(TEXTS.say("rules.of", stage.title(), p.words()))));
        }
        problems.addAll(Closing.open(assessor, stages.stream().flatMap(s -> judged(s).stream()).distinct().toList()));
        return List.copyOf(problems);
    }

    /** True where a problem of an earlier stage is this stage's own work, which the final re-check reads again. */
    boolean workOf(Stage stage, Stage earlier, Problem problem) {
        return !problem.workOf().isEmpty() && stage.adjusters().containsAll(problem.workOf())
                && problem.workOf().stream().noneMatch(earlier.adjusters()::contains);
    }

    private Problem unread(ReadingId id, Assessed seen) {
        ReadingState state = seen.state();
        Set<AdjusterKind> kinds = EnumSet.noneOf(AdjusterKind.class);
        boolean onlyWork = state.freshness() == Freshness.STALE;
        for (Cause cause : seen.causes()) {
            if (cause.effect() == Effect.STALE) {
                onlyWork &= cause.kind().isPresent();
                cause.kind().ifPresent(kinds::add);
            }
        }
        String why = state.freshness() == Freshness.MISSING ? missing(id) : few(state.reasons());
        return new Problem(Problem.Kind.READ, why, List.of(id), onlyWork ? kinds : Set.of());
    }

    /** The first reasons: after a round at every link the whole list fills the window and says no more. */
    private static String few(List<String> reasons) {
        String first = String.join("; ", reasons.subList(0, Math.min(MOST_REASONS, reasons.size())));
        return reasons.size() > MOST_REASONS ? TEXTS.say("rules.andMore", first, reasons.size() - MOST_REASONS) : first;
    }

    /** Says of a reading that does not count whether it was read at all. */
    private String missing(ReadingId id) {
        ReadingState shown = assessor.of(id, View.SHOWN).state();
        return shown.freshness() == Freshness.MISSING ? TEXTS.say("rules.notRead") : TEXTS.say("rules.notCounting", few(shown.reasons()));
    }

    private static Problem outside(ReadingState state) {
        String why = TEXTS.say("rules.outside", Words.figure(state.value().orElseThrow(), state.reading().kind()),
                Words.target(state.target().orElseThrow(), state.reading().kind()));
        return new Problem(Problem.Kind.OUTSIDE, why, List.of(state.reading()), Set.of());
    }

    /** Where a stage stands. */
    StageState state(Stage stage) {
        if (signed(stage).isPresent()) {
            return notHolding(stage).isEmpty() ? StageState.SIGNED : StageState.CHECK_AGAIN;
        }
        if (!inTheWay(stage).isEmpty()) {
            return StageState.WAITING;
        }
        return toSign(stage).isEmpty() ? StageState.READY : StageState.OPEN;
    }

    /** Why it stands there, in words. */
    List<String> reasons(Stage stage) {
        Optional<Entry.SignOff> signOff = signed(stage);
        if (signOff.isEmpty()) {
            return toSign(stage).stream().map(Problem::words).toList();
        }
        List<String> words = new ArrayList<>();
        words.add(TEXTS.say("rules.signedAt", signOff.get().number(), signOff.get().waived().map(w -> TEXTS.say("rules.waived", w)).orElse(""),
                readAgain(stage, signOff.get().number())));
        notHolding(stage).forEach(p -> words.add(p.words()));
        return words;
    }

    private String readAgain(Stage stage, long signedAt) {
        List<ReadingId> judged = judged(stage);
        if (!notHolding(stage).isEmpty() || judged.stream().noneMatch(id -> disturbedSince(id, signedAt))) {
            return "";
        }
        long last = judged.stream().mapToLong(id -> assessor.of(id, View.COUNTING).state().entry()).max().orElse(0);
        return last > signedAt ? TEXTS.say("rules.readAgain", last) : "";
    }
}
