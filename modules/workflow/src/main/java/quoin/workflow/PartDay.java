package quoin.workflow;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.quantities.Texts;
import quoin.workflow.spi.Stage;

/**
 * A day that was declared to be for part of the job: weigh only, toe only, a check after a knock. Its stages may be entered
 * without those before them, and it closes with the list of what it did not prove instead of with a reason.
 *
 * @param words     what the day is for, in the racer's words: "weigh only"
 * @param stages    ids of the stages that belong to it, in the order of work
 * @param notProved what the day leaves open, in words, in the order of work
 */
public record PartDay(String words, List<String> stages, List<String> notProved) {

    private static final Texts TEXTS = Texts.of(PartDay.class);

    private static final String SEPARATOR = ",";

    public PartDay {
        stages = List.copyOf(stages);
        notProved = List.copyOf(notProved);
    }

    /**
     * Value of the condition {@link Conditions#PART} for some stages.
     *
     * @param stages ids of the stages; all or none of the installed ones = the whole job
     */
    public static String value(List<Stage> installed, List<String> stages) {
        boolean whole = stages.isEmpty() || installed.stream().allMatch(s -> stages.contains(s.id()));
        return whole ? Conditions.WHOLE : String.join(SEPARATOR, stages);
    }

    /** Stages that belong to the day, in the order of work; all of them unless it was declared to be for part of the job. */
    static List<Stage> stagesOf(Day day, List<Stage> installed) {
        Optional<String> part = day.condition(Conditions.PART).filter(v -> !v.equals(Conditions.WHOLE));
        if (part.isEmpty()) {
            return installed;
        }
        List<String> ids = List.of(part.get().split(SEPARATOR));
        List<Stage> some = installed.stream().filter(s -> ids.contains(s.id())).toList();
        return some.isEmpty() ? installed : some;
    }

    /** What the racer called the part. */
    static String words(Day day) {
        return day.conditionEntry(Conditions.PART).map(Entry.Condition::words).filter(w -> !w.isBlank()).orElse(TEXTS.say("part.job"));
    }

    /** What a part day does not prove: the stages left out, those not signed with the reasons, and those signed out of order. */
    static List<String> notProved(Day day, StageRules rules, List<Stage> part, List<Stage> installed) {
        List<String> open = new ArrayList<>();
        for (Stage stage : installed) {
            if (!part.contains(stage)) {
                open.add(TEXTS.say("part.notPart", stage.title()));
                continue;
            }
            Optional<Entry.SignOff> signed = rules.signed(stage);
            if (signed.isEmpty()) {
                List<String> reasons = rules.toSign(stage).stream().map(Problem::words).toList();
                open.add(reasons.isEmpty() ? TEXTS.say("part.notSigned", stage.title())
                        : TEXTS.say("part.notSignedWhy", stage.title(), String.join("; ", reasons)));
            } else {
                Stream.concat(signed.get().waived().map(w -> TEXTS.say("part.waived", w)).stream(),
                        rules.notHolding(stage).stream().map(Problem::words)).forEach(w -> open.add(TEXTS.say("rules.of", stage.title(), w)));
            }
        }
        return open;
    }
}
