package quoin.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quoin.car.Adjuster;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Corner;

/** What was turned, said and read. The demo car's perches have eight notches a turn. */
class AdjusterWordsTest {

    private static final AdjusterId PERCH = new AdjusterId(AdjusterKind.PERCH, Corner.RR);
    private final AdjusterWords words = new AdjusterWords(TestCars.car(), DisplayUnits.usual());

    @Test
    void directionIsAWordInsteadOfASign() {
        assertEquals("2 turns + 3 notches down", words.amount(PERCH, -2.375));
        assertEquals("5 notches up", words.amount(PERCH, 0.625));
        assertEquals("leave", words.amount(PERCH, 0));
        assertEquals("RR perch: 2 notches up", words.sentence(PERCH, 0.25));
        assertEquals("toe out", AdjusterWords.direction(AdjusterKind.TOE_LINK, false));
    }

    @ParameterizedTest
    @CsvSource({"2 turns + 3 notches down,-2.375", "-2t 3n,-2.375", "2t 3n up,2.375", "down 5n,-0.625", "2 1/4,2.25", "-2 1/4,-2.25",
        "leave,0", "'',0", "5 NOTCHES UP,0.625"})
    void readsWhatRacersType(String text, double turns) {
        assertEquals(turns, words.parse(PERCH, text), 1e-12);
    }

    @Test
    void whatItSaysItReadsBack() {
        for (AdjusterId id : TestCars.car().adjusters().stream().map(Adjuster::id).toList()) {
            for (int steps = -20; steps <= 20; steps++) {
                double amount = steps / 8.0;
                String said = words.amount(id, amount);
                double read = words.parse(id, said);
                assertTrue(Math.signum(read) == Math.signum(amount) || Math.abs(read) < 0.06, id + ": " + said);
                assertEquals(said, words.amount(id, read), id + " " + amount);
            }
        }
    }

    @Test
    void aMinusAndAWordContradictEachOther() {
        assertThrows(IllegalArgumentException.class, () -> words.parse(PERCH, "-2t down"));
        assertThrows(IllegalArgumentException.class, () -> words.parse(PERCH, "2t up down"));
        assertThrows(IllegalArgumentException.class, () -> words.parse(PERCH, "two turns"));
    }

    @Test
    void lengthsAreReadInAnyUnit() {
        assertEquals(60.6, words.parseLength("60,6").getAsDouble(), 1e-9);
        assertEquals(25.4, words.parseLength("1 in").getAsDouble(), 1e-9);
        assertTrue(words.parseLength(" ").isEmpty());
    }
}
