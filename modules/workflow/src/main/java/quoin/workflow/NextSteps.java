package quoin.workflow;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import quoin.car.AdjusterKind;
import quoin.car.ReadingId;
import quoin.logbook.Conditions;
import quoin.workflow.NextStep.Kind;
import quoin.workflow.spi.Requirement;
import quoin.workflow.spi.Stage;

/** Picks the one next thing: conditions, then settling, then reading, then turning, then signing off. */
final class NextSteps {

    private final Assessor assessor;
    private final StageRules rules;
    private final List<Stage> stages;

    NextSteps(Assessor assessor, StageRules rules, List<Stage> stages) {
        this.assessor = assessor;
        this.rules = rules;
        this.stages = stages;
    }

    NextStep next() {
        if (assessor.day().closed().isPresent()) {
            return new NextStep(lastId(), Kind.DONE, "The day is closed", Optional.empty());
        }
        Optional<Stage> open = stages.stream().filter(s -> rules.signed(s).isEmpty()).findFirst();
        List<Stage> signed = stages.stream().filter(s -> rules.signed(s).isPresent()).toList();
        for (Stage stage : signed) {
            Optional<NextStep> step = again(stage, open);
            if (step.isPresent()) {
                return step.get();
            }
        }
        if (open.isEmpty()) {
            return stages.isEmpty() ? new NextStep("", Kind.DONE, "No stage is installed", Optional.empty()) : closing();
        }
        return work(open.get(), rules.toSign(open.get())).orElseGet(() -> new NextStep(open.get().id(), Kind.SIGN_OFF,
                "Sign off " + lower(open.get()), Optional.empty()));
    }

    private String lastId() {
        return stages.isEmpty() ? "" : stages.get(stages.size() - 1).id();
    }

    /** What a signed stage that no longer holds asks for; left to the open stage where that is its own work. */
    private Optional<NextStep> again(Stage stage, Optional<Stage> open) {
        List<Problem> problems = rules.notHolding(stage).stream()
                .filter(p -> open.isEmpty() || !rules.workOf(open.get(), stage, p)).toList();
        if (problems.isEmpty()) {
            return Optional.empty();
        }
        boolean onlyReading = problems.stream().allMatch(p -> p.kind() == Problem.Kind.READ);
        if (open.isPresent() && onlyReading && readsAll(open.get(), problems)) {
            List<Problem> together = new ArrayList<>(problems);
            together.addAll(rules.toSign(open.get()));
            return work(open.get(), together);
        }
        return work(stage, problems);
    }

    private boolean readsAll(Stage stage, List<Problem> problems) {
        List<ReadingId> readings = assessor.readings(stage);
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
        return problems.stream().anyMatch(p -> p.kind() == Problem.Kind.CONDITION) ? condition(stage, assessor.requirements(stage))
                : Optional.empty();
    }

    private List<ReadingId> inWalkingOrder(Stage stage, Set<ReadingId> unread) {
        List<ReadingId> order = assessor.readings(stage);
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
        for (ReadingId id : readings) {
            assessor.owner(id).ifPresent(owner -> assessor.requirements(owner).stream()
                    .filter(r -> r.appliesTo(id.kind())).forEach(needed::add));
        }
        List<Requirement> settleLast = new ArrayList<>(needed.stream().filter(r -> !r.key().equals(Conditions.SETTLED)).toList());
        needed.stream().filter(r -> r.key().equals(Conditions.SETTLED)).forEach(settleLast::add);
        return condition(stage, settleLast).orElseGet(() -> new NextStep(stage.id(), Kind.READ, "Read " + Words.list(readings),
                readCaution(readings)));
    }

    private static Optional<String> readCaution(List<ReadingId> readings) {
        return readings.stream().map(id -> switch (id.kind()) {
            case TOE -> "Cords are at shin height: flag them, and check the bars after every wheel";
            case LOAD -> "Sit still in the race position; a lean of 60 mm moves 3 kg";
            case HEIGHT -> "From the pad plane to the marked points, not from the floor; hands out from under a car on its springs";
            default -> "";
        }).filter(c -> !c.isEmpty()).findFirst();
    }

    private NextStep turn(Stage stage, Set<ReadingId> outside) {
        String what;
        String caution;
        if (stage.adjusters().stream().anyMatch(AdjusterKind::isSpringLeg) && !outside.stream().allMatch(NextSteps::setByLinks)) {
            what = "Turn the perches or pushrods of the plan: ";
            caution = "Driver out, take the weight off with a jack, stands under the frame; a C-spanner slips under load";
        } else {
            what = "Set the links: ";
            caution = "Note every nut you loosen; keep 1.5 thread diameters of every rod end screwed in";
        }
        return new NextStep(stage.id(), Kind.TURN, what + Words.list(outside) + (outside.size() == 1 ? " is outside" : " are outside"),
                Optional.of(caution));
    }

    private static boolean setByLinks(ReadingId id) {
        return switch (id.kind()) {
            case CAMBER, CASTER, TOE, TOTAL_TOE, THRUST_ANGLE -> true;
            default -> false;
        };
    }

    private NextStep closing() {
        List<Problem> problems = rules.toClose();
        Optional<NextStep> condition = condition(stages.get(stages.size() - 1), Closing.requirements(assessor.car()));
        if (condition.isPresent()) {
            return condition.get();
        }
        Optional<Problem> left = problems.stream().findFirst();
        return left.map(p -> new NextStep(lastId(), p.kind() == Problem.Kind.READ ? Kind.READ : Kind.TURN, Words.sentence(p.words()),
                Optional.<String>empty())).orElseGet(() -> new NextStep(lastId(), Kind.CLOSE, "Close the day", Optional.empty()));
    }

    private static String lower(Stage stage) {
        return stage.title().toLowerCase(Locale.ROOT);
    }
}
