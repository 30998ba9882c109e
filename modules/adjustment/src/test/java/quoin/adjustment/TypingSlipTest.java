package quoin.adjustment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The ways a figure goes wrong between the eye and the keys; one pound is 0.45359237 kg (NIST SP 811). */
class TypingSlipTest {

    private static void meant(double value, TypingSlip.Kind kind, double typed, double wanted, double within, boolean load) {
        assertEquals(Optional.of(new TypingSlip(value, kind)), TypingSlip.of(typed, wanted, within, load));
    }

    @Test
    void neighbouringDigitsChangePlaces() {
        meant(108.3, TypingSlip.Kind.DIGITS_SWAPPED, 180.3, 108, 1, true);
        meant(62.5, TypingSlip.Kind.DIGITS_SWAPPED, 65.2, 62.5, 0.3, false);
        meant(123.0, TypingSlip.Kind.DIGITS_SWAPPED, 132, 123, 0.5, false);
    }

    @Test
    void thePointIsForgottenOrMisplaced() {
        meant(62.5, TypingSlip.Kind.DECIMAL_POINT, 625, 62, 1, false);
        meant(108.3, TypingSlip.Kind.DECIMAL_POINT, 10.83, 108, 1, true);
        meant(108.3, TypingSlip.Kind.DECIMAL_POINT, 1.083, 108, 1, true);
        meant(1.083, TypingSlip.Kind.DECIMAL_POINT, 108.3, 1.08, 0.01, false);
        meant(62.5, TypingSlip.Kind.POINT_AND_DIGITS, 652, 62.5, 1, false);
    }

    @Test
    void poundsAreReadForKilograms() {
        meant(108.862, TypingSlip.Kind.POUNDS, 240, 108.9, 0.2, true);
        assertTrue(TypingSlip.of(240, 108.9, 0.2, false).isEmpty(), "a height has no pounds");
    }

    @Test
    void oneDigitIsAnother() {
        meant(108.3, TypingSlip.Kind.ONE_DIGIT, 158.3, 108, 1, true);
        meant(108.3, TypingSlip.Kind.ONE_DIGIT, 708.3, 108, 1, true);
        assertTrue(TypingSlip.of(108.3, 111.3, 0.5, true).isEmpty(), "a wrong unit is no plain slip: the reading may be right");
        assertTrue(TypingSlip.of(98.3, 108.3, 0.5, true).isEmpty(), "two digits differ");
    }

    @Test
    void theLikelierSlipComesFirstAndOfTwoAlikeTheNearer() {
        meant(12.0, TypingSlip.Kind.DIGITS_SWAPPED, 21, 12, 10, false);
        meant(143.2, TypingSlip.Kind.DIGITS_SWAPPED, 134.2, 143, 5, false);
        meant(131.0, TypingSlip.Kind.ONE_DIGIT, 141, 130, 10, false);
    }

    @Test
    void aFigureThatFitsIsNoSlip() {
        assertTrue(TypingSlip.of(111, 111, 0.5, true).isEmpty());
        assertTrue(TypingSlip.of(50, 73, 2, true).isEmpty());
    }
}
