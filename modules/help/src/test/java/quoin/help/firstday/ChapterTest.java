package quoin.help.firstday;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import quoin.workflow.NextStep;
import quoin.workflow.NextStep.Kind;

class ChapterTest {

    private static Chapter of(String stage, Kind kind) {
        return Chapter.of(new NextStep(stage, kind, "what is due", Optional.empty()));
    }

    /** The steps of a day in the order of work come past every chapter, in the chapters' own order. */
    @Test
    void aDayWalksThroughEveryChapter() {
        List<Chapter> walked = List.of(of("preparation", Kind.CONDITION), of("preparation", Kind.SIGN_OFF), of("ride-height", Kind.SETTLE),
                of("ride-height", Kind.READ), of("ride-height", Kind.TURN), of("corner-weights", Kind.CONDITION), of("corner-weights", Kind.READ),
                of("wheel-angles", Kind.READ), of("wheel-angles", Kind.TURN), of("final-recheck", Kind.READ), of("final-recheck", Kind.SIGN_OFF),
                of("final-recheck", Kind.CLOSE), of("final-recheck", Kind.DONE));
        List<Chapter> met = walked.stream().distinct().toList();
        assertEquals(List.of(Chapter.values()), met);
    }

    @Test
    void goingBackOpensTheEarlierChapter() {
        assertEquals(Chapter.TURN, of("corner-weights", Kind.TURN));
        assertEquals(Chapter.WEIGH, of("corner-weights", Kind.SETTLE));
        assertEquals(Chapter.HEIGHT, of("ride-height", Kind.READ));
    }

    @Test
    void everyChapterAndEveryKindOfStepHasWordsOfItsOwn() {
        Set<Kind> kinds = EnumSet.allOf(Kind.class);
        assertEquals(kinds.size(), kinds.stream().map(Hint::of).distinct().count());
        assertEquals(Chapter.values().length, Arrays.stream(Chapter.values()).map(Chapter::title).distinct().count());
        assertEquals(Chapter.values().length, Arrays.stream(Chapter.values()).map(Chapter::why).distinct().count());
        assertFalse(Arrays.stream(Chapter.values()).anyMatch(c -> c.why().isBlank()));
    }
}
