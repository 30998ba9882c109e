package quoin.seatview;

import java.awt.GraphicsConfiguration;
import java.util.prefs.Preferences;
import org.openide.util.NbPreferences;

/** Keeps size, colours and sound of the seat view between two runs. */
final class SeatSettings {

    /** Before the size of a screen: two screens of a laptop have different pixels. */
    private static final String PIXELS_PER_MM = "pixelsPerMm.";
    private static final String FACTOR = "factor";
    private static final String WHITE = "whiteOnBlack";
    private static final String SOUND = "sound";

    private final Preferences node = NbPreferences.forModule(SeatSettings.class);

    private static String key(GraphicsConfiguration screen) {
        return PIXELS_PER_MM + screen.getBounds().width + "x" + screen.getBounds().height;
    }

    /** The scale last used; before a rule was held to this screen the density it has as far as is known. */
    SeatScale scale(GraphicsConfiguration screen) {
        double perMm = node.getDouble(key(screen), ScreenDensity.perMm(screen));
        double factor = node.getDouble(FACTOR, 1);
        return perMm > 0 && factor > 0 ? new SeatScale(perMm, factor) : new SeatScale(1, 1);
    }

    boolean whiteOnBlack() {
        return node.getBoolean(WHITE, false);
    }

    Sound.Kind sound() {
        String stored = node.get(SOUND, Sound.Kind.OFF.name());
        return stored.equals(Sound.Kind.BEEP.name()) ? Sound.Kind.BEEP
                : stored.equals(Sound.Kind.VOICE.name()) ? Sound.Kind.VOICE : Sound.Kind.OFF;
    }

    void save(GraphicsConfiguration screen, SeatScale scale, boolean whiteOnBlack, Sound.Kind sound) {
        if (scale.pixelsPerMm() != scale(screen).pixelsPerMm()) {
            node.putDouble(key(screen), scale.pixelsPerMm());
        }
        node.putDouble(FACTOR, scale.factor());
        node.putBoolean(WHITE, whiteOnBlack);
        node.put(SOUND, sound.name());
    }
}
