package quoin.seatview;

import java.awt.Toolkit;
import java.util.prefs.Preferences;
import org.openide.util.NbPreferences;

/** Keeps size, colours and sound of the seat view between two runs. */
final class SeatSettings {

    private static final String PIXELS_PER_MM = "pixelsPerMm";
    private static final String FACTOR = "factor";
    private static final String WHITE = "whiteOnBlack";
    private static final String SOUND = "sound";
    private static final double MM_PER_INCH = 25.4;

    private final Preferences node = NbPreferences.forModule(SeatSettings.class);

    /** The scale last used; before the first time the density the system gives. */
    SeatScale scale() {
        double perMm = node.getDouble(PIXELS_PER_MM, Toolkit.getDefaultToolkit().getScreenResolution() / MM_PER_INCH);
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

    void save(SeatScale scale, boolean whiteOnBlack, Sound.Kind sound) {
        node.putDouble(PIXELS_PER_MM, scale.pixelsPerMm());
        node.putDouble(FACTOR, scale.factor());
        node.putBoolean(WHITE, whiteOnBlack);
        node.put(SOUND, sound.name());
    }
}
