package quoin.workflow;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quoin.car.AdjusterKind;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.ReadingKind;
import quoin.suspension.spi.SuspensionType;
import quoin.suspension.spi.SuspensionTypes;

/** What a turn of a link is believed to do, before and after the rounds of the day (conjugate normal by hand, JCGM 101:2008, 6.4.7). */
class AngleBeliefTest {

    private static final ReadingUncertainty UNCERTAINTY = new ReadingUncertainty(DayBook.car());

    private static AngleBelief belief(DayBook book, SuspensionType... types) {
        return new AngleBelief(book.day(), AnglePlanner.described(DayBook.car(), new SuspensionTypes(List.of(types))), UNCERTAINTY);
    }

    private static void assertKnownTo(double sd, AngleBelief belief, ReadingKind angle, AdjusterKind kind) {
        assertEquals(sd, belief.sd(Axle.FRONT, angle, Map.of(kind, 1.0)), 1e-9, kind + " " + angle);
    }

    /** A described effect is known to 15 %, to 0.03 deg at best; a guessed one to half, on other angles to 0.1 deg (common practice, no source). */
    @Test
    void whatIsDescribedIsSurerThanWhatIsGuessed() {
        AngleBelief described = belief(new DayBook(), new StraightSuspension("measured"));
        assertKnownTo(0.15 * StraightSuspension.CAMBER, described, ReadingKind.CAMBER, AdjusterKind.CAMBER_ROD);
        assertKnownTo(0.03, described, ReadingKind.TOE, AdjusterKind.CAMBER_ROD);
        assertKnownTo(0.15 * StraightSuspension.TOE, described, ReadingKind.TOE, AdjusterKind.TOE_LINK);
        assertKnownTo(0.5 * 0.35, described, ReadingKind.CASTER, AdjusterKind.CASTER_ROD);
        AngleBelief guessed = belief(new DayBook());
        assertKnownTo(0.5 * 0.35, guessed, ReadingKind.CAMBER, AdjusterKind.CAMBER_ROD);
        assertKnownTo(0.1, guessed, ReadingKind.TOE, AdjusterKind.CAMBER_ROD);
    }

    /** Three rounds of a turn each that did 0.6 deg: each counts for its own turn, weighed against 0.32 +- 0.048 as described. */
    @Test
    void everyRoundTellsOfItsOwnTurn() {
        DayBook book = new DayBook().read("wheel-angles", Map.of(DayBook.camber(Corner.LF), -3.0));
        for (int round = 1; round <= 3; round++) {
            book.turn(AdjusterKind.CAMBER_ROD, Corner.LF, 1).read("wheel-angles", Map.of(DayBook.camber(Corner.LF), -3 + 0.6 * round));
        }
        double prior = 1 / Math.pow(0.15 * StraightSuspension.CAMBER, 2);
        double one = UNCERTAINTY.of(DayBook.camber(Corner.LF), new double[0], List.of());
        double round = 1 / (2 * one * one);
        assertEquals((StraightSuspension.CAMBER * prior + 3 * 0.6 * round) / (prior + 3 * round),
                belief(book, new StraightSuspension("measured")).effect(Axle.FRONT, ReadingKind.CAMBER, AdjusterKind.CAMBER_ROD), 1e-9);
    }
}
