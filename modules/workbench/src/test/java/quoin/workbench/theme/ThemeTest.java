package quoin.workbench.theme;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.UUID;
import java.util.function.Function;
import java.util.prefs.BackingStoreException;
import java.util.prefs.Preferences;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class ThemeTest {

    private final Preferences node = Preferences.userRoot().node("quoin-test-" + UUID.randomUUID());

    @AfterEach
    void remove() throws BackingStoreException {
        node.removeNode();
    }

    @Test
    void lightWhereNothingWasChosen() {
        assertEquals(Theme.LIGHT, Theme.chosen(node));
    }

    @Test
    void aChoiceIsKeptAndThePlatformFindsItsLook() {
        Theme.DARK.keep(node, false);
        assertEquals(Theme.DARK, Theme.chosen(node));
        assertEquals("com.formdev.flatlaf.FlatDarkLaf", node.get("laf", ""));
        Theme.LIGHT.keep(node, true);
        assertEquals(Theme.LIGHT, Theme.chosen(node));
        assertEquals("com.formdev.flatlaf.FlatLightLaf", node.get("laf", ""));
    }

    @Test
    void asTheSystemFollowsIt() {
        Theme.SYSTEM.keep(node, true);
        assertEquals(Theme.SYSTEM, Theme.chosen(node));
        assertEquals("com.formdev.flatlaf.FlatDarkLaf", node.get("laf", ""));
        Theme.SYSTEM.keep(node, false);
        assertEquals("com.formdev.flatlaf.FlatLightLaf", node.get("laf", ""));
    }

    /** What the tools of the three systems print (from memory). */
    @Test
    void theSystemsAnswerIsUnderstood() {
        assertTrue(SystemTheme.isDark("Mac OS X", says("defaults", "Dark\n")));
        assertFalse(SystemTheme.isDark("Mac OS X", says("defaults", "")));
        assertTrue(SystemTheme.isDark("Windows 11", says("reg", "\r\n    AppsUseLightTheme    REG_DWORD    0x0\r\n\r\n")));
        assertFalse(SystemTheme.isDark("Windows 11", says("reg", "\r\n    AppsUseLightTheme    REG_DWORD    0x1\r\n\r\n")));
        assertTrue(SystemTheme.isDark("Linux", says("color-scheme", "'prefer-dark'\n")));
        assertFalse(SystemTheme.isDark("Linux", says("gtk-theme", "'Adwaita'\n")));
        assertTrue(SystemTheme.isDark("Linux", says("gtk-theme", "'Adwaita-dark'\n")));
        assertFalse(SystemTheme.isDark("Linux", command -> ""));
    }

    private static Function<List<String>, String> says(String word, String answer) {
        return command -> command.contains(word) ? answer : "";
    }
}
