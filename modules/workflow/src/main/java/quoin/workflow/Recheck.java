package quoin.workflow;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import quoin.car.ReadingId;
import quoin.logbook.Entry;
import quoin.workflow.Assessor.View;
import quoin.workflow.spi.Stage;

/**
 * The final look: every reading beside what was signed.
 *
 * @param comparisons typed and derived readings of the signed stages, in the order of work
 * @param redo        id of the first stage whose judged readings are outside now; empty = none
 * @param reasons     which readings send the racer back, and which angles must be read again, in words
 */
public record Recheck(List<Comparison> comparisons, Optional<String> redo, List<String> reasons) {

    public Recheck {
        comparisons = List.copyOf(comparisons);
        reasons = List.copyOf(reasons);
    }

    static Recheck of(Assessor assessor, StageRules rules, List<Stage> stages) {
        List<Comparison> comparisons = new ArrayList<>();
        List<String> reasons = new ArrayList<>();
        Optional<String> redo = Optional.empty();
        ReadingsAt read = new ReadingsAt(assessor.day());
        for (Stage stage : stages) {
            Optional<Entry.SignOff> signOff = rules.signed(stage);
            for (ReadingId id : compared(stage, assessor, rules)) {
                Optional<Measured> signed = signOff.flatMap(s -> read.at(id, s.number()));
                comparisons.add(Comparison.of(id, signed, assessor.of(id, View.COUNTING).state()));
            }
            List<Problem> problems = rules.notHolding(stage);
            if (redo.isEmpty() && problems.stream().anyMatch(p -> p.kind() == Problem.Kind.OUTSIDE)) {
                redo = Optional.of(stage.id());
            }
            problems.forEach(p -> reasons.add(stage.title() + ": " + p.words()));
        }
        return new Recheck(comparisons, redo, reasons);
    }

    /** Readings that belong to a stage and mean something on the car: not zeros, pads and pressures. */
    private static Set<ReadingId> compared(Stage stage, Assessor assessor, StageRules rules) {
        Set<ReadingId> ids = new LinkedHashSet<>(assessor.asked().readings(stage));
        ids.addAll(Derived.all(assessor.car()));
        ids.addAll(rules.judged(stage));
        ids.removeIf(id -> !rules.ownsAll(stage, id) || stage.adjusters().isEmpty());
        return ids;
    }
}
