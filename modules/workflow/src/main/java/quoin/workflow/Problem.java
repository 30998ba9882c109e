package quoin.workflow;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import quoin.car.AdjusterKind;
import quoin.car.ReadingId;
import quoin.quantities.Texts;

/**
 * One thing that keeps a stage from being signed off, or from staying so.
 *
 * @param kind   what kind of thing
 * @param why    as said to the racer, without the readings it is about
 * @param about  the readings that share it; empty = a condition or another stage
 * @param workOf where readings are stale through adjusters only: their kinds; empty = anything else
 */
record Problem(Kind kind, String why, List<ReadingId> about, Set<AdjusterKind> workOf) {

    enum Kind { EARLIER_STAGE, CONDITION, READ, OUTSIDE }

    private record Key(Kind kind, String why, Set<AdjusterKind> workOf) {
    }

    Problem {
        about = List.copyOf(about);
        workOf = Set.copyOf(workOf);
    }

    static Problem condition(String words) {
        return new Problem(Kind.CONDITION, words, List.of(), Set.of());
    }

    static Problem earlier(String words) {
        return new Problem(Kind.EARLIER_STAGE, words, List.of(), Set.of());
    }

    /** "RR height and LR height: RR perch turned 2 notches after this". */
    String words() {
        return about.isEmpty() ? why : Texts.of(Problem.class).say("rules.of", Words.list(about), why);
    }

    /** Readings that share their reason are told of together. */
    static List<Problem> merged(List<Problem> problems) {
        Map<Key, List<ReadingId>> groups = new LinkedHashMap<>();
        problems.forEach(p -> groups.computeIfAbsent(new Key(p.kind, p.why, p.workOf), k -> new ArrayList<>()).addAll(p.about));
        List<Problem> all = new ArrayList<>();
        groups.forEach((key, about) -> all.add(new Problem(key.kind, key.why, about, key.workOf)));
        return List.copyOf(all);
    }
}
