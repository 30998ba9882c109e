package quoin.car;

import java.util.Optional;
import quoin.quantities.Phrase;
import quoin.quantities.Texts;

/** Ways of naming the four corners. Chosen once, at the start of the program, by the system property {@link #PROPERTY}. */
public enum CornerNames {
    /** LF, RF, LR, RR: side first. */
    LF,
    /** FL, FR, RL, RR: axle first. */
    FL,
    /** VL, VR, HL, HR: the same in German. */
    VL,
    /** In words: left front, vorn links. */
    WORDS;

    /** Holds the name of a constant; anything else leaves the choice to the language. */
    public static final String PROPERTY = "quoin.corners";
    private static final Texts TEXTS = Texts.of(CornerNames.class);

    /** What was chosen; empty = what the language has. */
    public static Optional<CornerNames> chosen() {
        String name = System.getProperty(PROPERTY, "");
        for (CornerNames names : values()) {
            if (names.name().equals(name)) {
                return Optional.of(names);
            }
        }
        return Optional.empty();
    }

    static Phrase phrase(Corner corner) {
        return TEXTS.phrase(chosen().map(names -> "corner." + names + "." + corner).orElse("corner." + corner));
    }

    /** One corner in this way of naming. */
    public String of(Corner corner) {
        return TEXTS.say("corner." + this + "." + corner);
    }
}
