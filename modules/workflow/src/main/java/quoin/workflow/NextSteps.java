package quoin.workflow;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import quoin.car.AdjusterKind;
import quoin.car.ReadingId;
import quoin.logbook.Conditions;
import quoin.quantities.Texts;
import quoin.workflow.NextStep.Kind;
import quoin.workflow.spi.Requirement;
import quoin.workflow.spi.Stage;

/** Picks the one next thing: conditions, then settling, then reading, then turning, then signing off. */
final class NextSteps {

    private static final Texts TEXTS = Texts.of(NextSteps.class);

    private final Assessor assessor;
    private final StageRules rules;
    private final List<Stage> stages;
    private final boolean part;

    /** @param part true where the stages are part of the job only */
    NextSteps(Assessor assessor, StageRules rules, List<Stage> stages, boolean part) {
        this.assessor = assessor;
        this.rules = rules;
        this.stages = stages;
        this.part = part;
    }

    NextStep next() {
        if (assessor.day().closed().isPresent()) {
            return new NextStep(lastId(), Kind.DONE, TEXTS.say("next.closed"), Optional.empty());
        }
        Optional<Stage> open = stages.stream().filter(s -> rules.signed(s).isEmpty()).findFirst();
        List<Stage> before = open.map(o -> stages.subList(0, stages.indexOf(o))).orElse(stages);
        for (Stage stage : before) {
            Optional<NextStep> step = again(stage, open);
            if (step.isPresent()) {
                return step.get();
            }
        }
        if (open.isEmpty()) {
            return stages.isEmpty() ? new NextStep("", Kind.DONE, TEXTS.say("next.noStage"), Optional.empty()) : closing();
        }
        return work(open.get(), rules.toSign(open.get())).orElseGet(() -> new NextStep(open.get().id(), Kind.SIGN_OFF,
                TEXTS.say("next.signOff", Words.inSentence(open.get().title())), Optional.empty()));
    }

    private String lastId() {
        return stages.isEmpty() ? "" : stages.get(stages.size() - 1).id();
    }

    /**
     * What a signed stage that no longer holds asks for; left to the open stage where that is its own work. The driver comes
     * back first, as that may be all there is to it.
     */
    private Optional<NextStep> again(Stage stage, Optional<Stage> open) {
        List<Problem> problems = rules.notHolding(stage).stream()
                .filter(p -> open.isEmpty() || !rules.workOf(open.get(), stage, p)).toList();
        if (problems.isEmpty()) {
            return Optional.empty();
        }
        boolean onlyReading = problems.stream().allMatch(p -> p.kind() == Problem.Kind.READ);
        Optional<Requirement> driver = assessor.asked().requirements(stage).stream()
                .filter(r -> r.key().equals(Conditions.DRIVER) && !assessor.holds(r)).findFirst();
        if (onlyReading && driver.isPresent()) {
            return condition(stage, List.of(driver.get()));
        }
        if (open.isPresent() && onlyReading && readsAll(open.get(), problems)) {
            List<Problem> together = new ArrayList<>(problems);
            together.addAll(rules.toSign(open.get()));
            return work(open.get(), together);
        }
        return work(stage, problems);
    }

    private boolean readsAll(Stage stage, List<Problem> problems) {
        List<ReadingId> readings = assessor.asked().readings(stage);
        return problems.stream().flatMap(p -> p.about().stream()).flatMap(id -> rules.typedParts(id).stream())
                .allMatch(readings::contains);
    }

    private Optional<NextStep> work(Stage stage, List<Problem> problems) {
        Set<ReadingId> unread = new LinkedHashSet<>();
        Set<ReadingId> outside = new LinkedHashSet<>();
        for (Problem problem : problems) {
            if (problem.kind() == Problem.Kind.READ) {
                problem.about().forEach(id -> unread.addAll(rules.typedParts(id)));
            } else if (problem.kind() == Problem.Kind.OUTSIDE) {
                outside.addAll(problem.about());
            }
        }
        if (!unread.isEmpty()) {
            return Optional.of(read(stage, inWalkingOrder(stage, unread)));
        }
        if (!outside.isEmpty()) {
            return Optional.of(turn(stage, outside));
        }
        return problems.stream().anyMatch(p -> p.kind() == Problem.Kind.CONDITION) ? condition(stage, assessor.asked().requirements(stage))
                : Optional.empty();
    }

    private List<ReadingId> inWalkingOrder(Stage stage, Set<ReadingId> unread) {
        List<ReadingId> order = assessor.asked().readings(stage);
        List<ReadingId> sorted = new ArrayList<>(order.stream().filter(unread::contains).toList());
        unread.stream().filter(id -> !sorted.contains(id)).forEach(sorted::add);
        return sorted;
    }

    private Optional<NextStep> condition(Stage stage, List<Requirement> requirements) {
        return requirements.stream().filter(r -> !assessor.holds(r)).findFirst().map(r -> new NextStep(stage.id(),
                r.key().equals(Conditions.SETTLED) ? Kind.SETTLE : Kind.CONDITION, r.words(), r.caution()));
    }

    /** The conditions the readings need come first, those of the stage each reading belongs to. */
    private NextStep read(Stage stage, List<ReadingId> readings) {
        Set<Requirement> needed = new LinkedHashSet<>();
        readings.forEach(id -> needed.addAll(assessor.asked().needed(id)));
        return condition(stage, settleLast(needed)).orElseGet(() -> new NextStep(stage.id(), Kind.READ, TEXTS.say("next.read", Words.list(readings)),
                readCaution(readings)));
    }

    private static List<Requirement> settleLast(Set<Requirement> needed) {
        return Stream.concat(needed.stream().filter(r -> !r.key().equals(Conditions.SETTLED)),
                needed.stream().filter(r -> r.key().equals(Conditions.SETTLED))).toList();
    }

    private static Optional<String> readCaution(List<ReadingId> readings) {
        return readings.stream().map(id -> switch (id.kind()) {
            case TOE -> TEXTS.say("caution.toe");
            case LOAD -> TEXTS.say("caution.load");
            case HEIGHT -> TEXTS.say("caution.height");
            default -> "";
        }).filter(c -> !c.isEmpty()).findFirst();
    }

    private NextStep turn(Stage stage, Set<ReadingId> outside) {
        Set<ReadingId> byMass = new LinkedHashSet<>(outside);
        byMass.removeIf(id -> !Staleness.isMass(id));
        if (byMass.size() == outside.size()) {
            return new NextStep(stage.id(), Kind.TURN, TEXTS.say("next.mass", areOutside(outside)), Optional.of(TEXTS.say("caution.mass")));
        }
        outside.removeAll(byMass);
        if (stage.adjusters().stream().anyMatch(AdjusterKind::isSpringLeg) && !outside.stream().allMatch(NextSteps::setByLinks)) {
            return new NextStep(stage.id(), Kind.TURN, TEXTS.say("next.perches", areOutside(outside)),
                    Optional.of(TEXTS.say("caution.perches")));
        }
        return new NextStep(stage.id(), Kind.TURN, TEXTS.say("next.links", areOutside(outside)),
                Optional.of(TEXTS.say("caution.links")));
    }

    private static String areOutside(Set<ReadingId> outside) {
        return TEXTS.say(outside.size() == 1 ? "outside.one" : "outside.many", Words.list(outside));
    }

    private static boolean setByLinks(ReadingId id) {
        return switch (id.kind()) {
            case CAMBER, CASTER, TOE, TOTAL_TOE, THRUST_ANGLE -> true;
            default -> false;
        };
    }

    private NextStep closing() {
        Optional<Problem> first = (part ? Closing.leftUndone(assessor.day()) : rules.toClose()).stream().findFirst();
        if (first.isEmpty()) {
            return new NextStep(lastId(), Kind.CLOSE, TEXTS.say("next.close"), Optional.empty());
        }
        Problem problem = first.get();
        Stage last = stages.get(stages.size() - 1);
        Set<Requirement> needed = new LinkedHashSet<>();
        switch (problem.kind()) {
            case CONDITION -> needed.addAll(part ? Closing.touched(assessor.day()) : Closing.requirements(assessor.car()));
            case READ -> problem.about().forEach(id -> assessor.asked().parts(id).forEach(p -> needed.addAll(Closing.needed(assessor, p))));
            default -> {
                String where = problem.about().stream().flatMap(id -> assessor.asked().parts(id).stream()).findFirst()
                        .filter(Staleness::isAngle).flatMap(assessor.asked()::owner).map(Stage::id).orElse(last.id());
                return new NextStep(where, Kind.TURN, Texts.sentence(problem.words()), Optional.empty());
            }
        }
        return condition(last, settleLast(needed)).orElseGet(() -> problem.kind() == Problem.Kind.CONDITION ? leftOpen(problem)
                : new NextStep(last.id(), Kind.READ, Texts.sentence(problem.words()),
                        readCaution(problem.about().stream().flatMap(id -> assessor.asked().parts(id).stream()).toList())));
    }

    /** What was left open in the check of the car is done where it was written down. */
    private NextStep leftOpen(Problem problem) {
        String where = CarCheck.leftOpen(assessor.day()).stream().findFirst().flatMap(i -> assessor.day().conditionEntry(i.key()))
                .map(c -> c.header().stage()).filter(id -> stages.stream().anyMatch(s -> s.id().equals(id))).orElse(lastId());
        return new NextStep(where, Kind.CONDITION, Texts.sentence(problem.words()), Optional.empty());
    }
}
