package quoin.quantities;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Locale;
import java.util.MissingResourceException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class TextsTest {

    private final Texts texts = Texts.of(Texts.class);
    private Locale before;

    @BeforeEach
    void keepTheLanguage() {
        before = Locale.getDefault();
    }

    @AfterEach
    void giveTheLanguageBack() {
        Locale.setDefault(before);
    }

    @Test
    void isSaidInTheLanguageOfTheProgram() {
        Locale.setDefault(Locale.GERMANY);
        assertEquals("der Bruch teilt durch null", texts.say("problem.zero"));
        Locale.setDefault(Locale.US);
        assertEquals("the fraction divides by zero", texts.say("problem.zero"));
    }

    /** A language without a file is said in English, also where the computer's own language is another. */
    @Test
    void anUnknownLanguageIsSaidInEnglish() {
        Locale.setDefault(Locale.JAPAN);
        assertEquals("the fraction divides by zero", texts.say("problem.zero"));
    }

    @Test
    void englishStaysEnglishWhateverTheLanguage() {
        Locale.setDefault(Locale.GERMANY);
        Phrase phrase = texts.phrase("remedy.suchAs", Dimension.LENGTH.phrase(), texts.phrase("example.figure", "mm"));
        assertEquals("type a length such as 108.3 or 108,3 mm", phrase.english());
        assertEquals("eingeben: eine Länge, etwa 108.3 oder 108,3 mm", phrase.toString());
    }

    @Test
    void aFaultIsToldInTheLanguageAndReportedInEnglish() {
        Locale.setDefault(Locale.GERMANY);
        QuantityFormatException fault = assertThrows(QuantityFormatException.class, () -> Quantities.parse("12 xyz", Unit.MM));
        assertEquals("\"xyz\" is not a unit known here; type mm, cm, m, in or ft", fault.getMessage());
        assertEquals("\"xyz\" ist keine bekannte Einheit; mm, cm, m, in oder ft eingeben", fault.getLocalizedMessage());
        assertEquals("\"xyz\" ist keine bekannte Einheit", fault.problem());
    }

    @Test
    void turnsAreCountedAndReadInGerman() {
        Locale.setDefault(Locale.GERMANY);
        assertEquals("2 U + 1,5 Kerben", Turns.text(2.375, 4, "notch"));
        assertEquals("1 Vierteldrehung", Turns.text(0.25, 4, "quarter turn"));
        assertEquals("notch", Turns.stepName("Kerbe"));
        assertEquals("halbe Umdrehung", Turns.stepWord("half turn"));
        assertEquals("2 Kerben", Turns.text(0.5, 4, "Kerbe"));
        assertEquals(2.75, Turns.parse("2 Umdrehungen + 3 Kerben", 4));
        assertEquals(-2.75, Turns.parse("-2u 3k", 4));
    }

    @Test
    void figuresHaveTheMarkOfTheLanguage() {
        Locale.setDefault(Locale.GERMANY);
        assertEquals("12,5 kg", Texts.figure("%.1f kg", 12.5));
        assertEquals(DecimalMark.COMMA, DecimalMark.usual());
        Locale.setDefault(Locale.UK);
        assertEquals("12.5 kg", Texts.figure("%.1f kg", 12.5));
    }

    @Test
    void languagesAreThoseWithAFile() {
        assertEquals(List.of("en", "de"), Texts.languages());
    }

    @Test
    void aTextThatIsNotThereIsAFault() {
        assertThrows(MissingResourceException.class, () -> texts.say("no.such.text"));
    }

    @Test
    void wordsOfOneLanguageAreTheSameInAll() {
        assertEquals("must be inboard", Phrase.same("must be inboard").english());
        assertEquals("must be inboard", Phrase.same("must be inboard").in(Locale.GERMAN));
    }
}
