package quoin.workbench.theme;

import java.util.prefs.Preferences;

/**
 * Light, dark, or as the system stands when Quoin starts. The platform takes its look from the entry {@code laf} of its own
 * settings before the first window is made; the choice behind it is kept beside it.
 */
enum Theme {
    LIGHT, DARK, SYSTEM;

    /** Entry of the platform's settings that names the class of its look. */
    static final String LAF = "laf";
    static final String LIGHT_LAF = "com.formdev.flatlaf.FlatLightLaf";
    static final String DARK_LAF = "com.formdev.flatlaf.FlatDarkLaf";

    private static final String CHOICE = "choice";

    /**
     * @param node the platform's settings of its look
     */
    static Theme chosen(Preferences node) {
        String stored = node.get(CHOICE, "");
        if (stored.equals(SYSTEM.name())) {
            return SYSTEM;
        }
        return node.get(LAF, LIGHT_LAF).equals(DARK_LAF) ? DARK : LIGHT;
    }

    /** Keeps the choice, and the look that follows from it today. */
    void keep(Preferences node, boolean systemIsDark) {
        put(node, CHOICE, name());
        put(node, LAF, this == DARK || this == SYSTEM && systemIsDark ? DARK_LAF : LIGHT_LAF);
    }

    /** Nothing is written at a start that changes nothing. */
    private static void put(Preferences node, String key, String value) {
        if (!value.equals(node.get(key, null))) {
            node.put(key, value);
        }
    }
}
