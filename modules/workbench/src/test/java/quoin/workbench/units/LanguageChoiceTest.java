package quoin.workbench.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JComponent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quoin.car.Corner;
import quoin.car.CornerNames;
import quoin.workbench.DisplayUnits;

class LanguageChoiceTest {

    private Locale before;
    private Locale ofWindows;

    @BeforeEach
    void keepTheLanguage() {
        before = Locale.getDefault();
        ofWindows = JComponent.getDefaultLocale();
    }

    @AfterEach
    void giveTheLanguageBack() {
        Locale.setDefault(before);
        JComponent.setDefaultLocale(ofWindows);
        System.clearProperty(CornerNames.PROPERTY);
    }

    @Test
    void isKeptInTheUserFolder(@TempDir Path user) throws IOException {
        Path file = LanguageChoice.file(user);
        assertEquals(LanguageChoice.USUAL, LanguageChoice.load(file));
        LanguageChoice german = new LanguageChoice(Optional.of("de"), Optional.of(CornerNames.FL));
        german.save(file);
        assertEquals(german, LanguageChoice.load(file));
        LanguageChoice.USUAL.save(file);
        assertEquals(LanguageChoice.USUAL, LanguageChoice.load(file));
    }

    /** A language that was taken out again, and a file that is no text, leave the computer's own. */
    @Test
    void whatCannotBeUsedIsLeftOut(@TempDir Path user) throws IOException {
        Path file = LanguageChoice.file(user);
        Files.createDirectories(file.getParent());
        Files.writeString(file, "language=xx\ncorners=VL\n");
        assertEquals(new LanguageChoice(Optional.empty(), Optional.of(CornerNames.VL)), LanguageChoice.load(file));
        Files.write(file, new byte[] {(byte) 0xff, (byte) 0xfe, 0, 1});
        assertEquals(LanguageChoice.USUAL, LanguageChoice.load(file));
        Files.writeString(file, "language=\\u12");
        assertEquals(LanguageChoice.USUAL, LanguageChoice.load(file));
    }

    @Test
    void takesEffect() {
        Locale.setDefault(Locale.US);
        new LanguageChoice(Optional.of("de"), Optional.empty()).apply();
        assertEquals("de", Locale.getDefault().getLanguage());
        assertEquals("HL", Corner.LR.words());
        new LanguageChoice(Optional.empty(), Optional.of(CornerNames.FL)).apply();
        assertEquals("RL", Corner.LR.words());
        new LanguageChoice(Optional.of("en"), Optional.of(CornerNames.WORDS)).apply();
        assertEquals("left rear", Corner.LR.words());
    }

    @Test
    void theCountryOfTheComputerIsKept() {
        Locale.setDefault(Locale.UK);
        new LanguageChoice(Optional.of("en"), Optional.empty()).apply();
        assertEquals(Locale.UK, Locale.getDefault());
    }

    @Test
    void theFormShowsWhatWasChosen() {
        LanguageChoice german = new LanguageChoice(Optional.of("de"), Optional.of(CornerNames.VL));
        assertEquals(german, new UnitsForm(DisplayUnits.usual(), german).language());
        assertEquals(LanguageChoice.USUAL, new UnitsForm(DisplayUnits.usual(), LanguageChoice.USUAL).language());
    }
}
