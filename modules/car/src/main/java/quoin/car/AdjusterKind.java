package quoin.car;

import quoin.quantities.Texts;

/**
 * What a racer can turn or shim. The sign of every adjustment follows one rule: plus raises the reading the adjuster is
 * there for.
 */
public enum AdjusterKind {
    /** Spring seat ring: plus compresses the spring seat, the corner rises. */
    PERCH("perch"),
    /** Push- or pullrod: plus raises the corner, whichever way the hex turns on the car. */
    PUSHROD("pushrod"),
    /** Rod end or link that sets camber: plus moves camber towards top outboard. */
    CAMBER_ROD("camber-rod"),
    /** Shims under an upper bracket: plus thickness moves camber towards top outboard. */
    CAMBER_SHIM("camber-shim"),
    /** Fore-and-aft links in pairs: plus moves the top of the upright rearward. */
    CASTER_ROD("caster-rod"),
    /** Tie rod or toe link: plus turns the wheel towards toe-in. */
    TOE_LINK("toe-link"),
    /** Drop link of an anti-roll bar: plus loads the left wheel of its axle. */
    BAR_LINK("bar-link");

    private final String key;

    AdjusterKind(String key) {
        this.key = key;
    }

    /** Stable name, as files store it. */
    public String key() {
        return key;
    }

    /** The trade's name, as in "RR perch". */
    public String words() {
        return Texts.of(AdjusterKind.class).say("adjuster." + name());
    }

    /** True where turning it changes the length of a corner's leg: it moves loads and heights first. */
    public boolean isSpringLeg() {
        return this == PERCH || this == PUSHROD;
    }
}
