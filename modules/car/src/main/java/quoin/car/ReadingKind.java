package quoin.car;

import quoin.quantities.Phrase;
import quoin.quantities.Texts;

/** What can be read on a car. The text form of the kind is what files store. */
public enum ReadingKind {
    /** Vertical load on one wheel's scale, kg (kgf); place = corner. */
    LOAD("load", Unit.KG, false),
    /** Height of a named point above the pad plane, mm; place = point name. */
    HEIGHT("height", Unit.MM, false),
    /** Camber relative to the pad plane, deg, plus = top outboard; place = corner. */
    CAMBER("camber", Unit.DEG, false),
    /** Caster, deg, plus = top rearward; place = corner. */
    CASTER("caster", Unit.DEG, false),
    /** Toe of one wheel to the car's centre line, deg, plus = toe-in; place = corner. */
    TOE("toe", Unit.DEG, false),
    /** Height of a pad top above the lowest one, mm; place = corner. */
    PAD_HEIGHT("pad-height", Unit.MM, false),
    /** Tyre pressure, bar gauge; place = corner. */
    PRESSURE("pressure", Unit.BAR, false),
    /** What a scale shows with nothing on it, kg; place = corner. */
    SCALE_ZERO("scale-zero", Unit.KG, false),
    /** Sum of the four loads, kg; place = car. */
    TOTAL("total", Unit.KG, true),
    /** (RF + LR) / total, %; place = car. */
    CROSS("cross", Unit.PERCENT, true),
    /** (LF + RF) / total, %; place = car. */
    FRONT_SHARE("front-share", Unit.PERCENT, true),
    /** (LF + LR) / total, %; place = car. */
    LEFT_SHARE("left-share", Unit.PERCENT, true),
    /** Mean rear height less mean front height of the four corner points, mm, plus = nose down; place = car. */
    RAKE("rake", Unit.MM, true),
    /** Sum of both wheels' toe, deg; place = FRONT or REAR. */
    TOTAL_TOE("total-toe", Unit.DEG, true),
    /** Half of (RR toe - LR toe), deg, plus = to the left; place = car. */
    THRUST_ANGLE("thrust-angle", Unit.DEG, true),
    /** Kingpin inclination, deg, plus = top inboard; place = corner. */
    KPI("kpi", Unit.DEG, false),
    /** Wheelbase of one side, mm; place = {@link ReadingId#LEFT} or {@link ReadingId#RIGHT}. */
    WHEELBASE("wheelbase", Unit.MM, false),
    /** How far the left wheel of an axle stands ahead of the right one, mm along the centre line; place = FRONT or REAR. */
    SETBACK("setback", Unit.MM, false),
    /** Steer of the inner wheel less that of the outer one, deg; place = {@link ReadingId#LEFT} or {@link ReadingId#RIGHT} turn. */
    TURN_TOE_OUT("turn-toe-out", Unit.DEG, false),
    /** Circumference of a tyre by tape, mm; place = corner. */
    CIRCUMFERENCE("circumference", Unit.MM, false),
    /** Height of the centre of gravity above the pads, car level, mm; place = car. */
    CG_HEIGHT("cg-height", Unit.MM, false);

    /** Base unit a kind is stored in. */
    public enum Unit { KG, MM, DEG, BAR, PERCENT }

    private final String key;
    private final Unit unit;
    private final boolean derived;

    ReadingKind(String key, Unit unit, boolean derived) {
        this.key = key;
        this.unit = unit;
        this.derived = derived;
    }

    public String key() {
        return key;
    }

    /** The trade's name in lower case. */
    public String words() {
        return phrase().toString();
    }

    /** The trade's name, to be said in the language of the program or in English. */
    public Phrase phrase() {
        Texts texts = Texts.of(ReadingKind.class);
        return this == CROSS ? texts.phrase("kind." + name(), Corner.RF.phrase(), Corner.LR.phrase()) : texts.phrase("kind." + name());
    }

    public Unit unit() {
        return unit;
    }

    /** True where it is computed from other readings and never typed. */
    public boolean isDerived() {
        return derived;
    }
}
