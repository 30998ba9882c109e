package quoin.car;

import quoin.quantities.Texts;

/**
 * A value nobody gave, filled in by a stated rule.
 *
 * @param key   what was unknown, such as {@code motionRatio}
 * @param place where: the name of a corner, of a height point, or empty for the car
 * @param value the value used, in {@code unit}
 * @param unit  unit symbol, or empty for a ratio
 */
public record Assumption(String key, String place, double value, String unit) {

    /** Key of a height point's place along the car. */
    public static final String POINT_X = "pointX";
    /** Key of a height point's place across the car. */
    public static final String POINT_Y = "pointY";
    private static final Texts TEXTS = Texts.of(Assumption.class);

    /** What was unknown, as the racer would name it: "LF motion ratio". */
    public String field() {
        if (key.equals(POINT_X) || key.equals(POINT_Y)) {
            return place + (key.equals(POINT_X) ? " x" : " y");
        }
        String what = TEXTS.say("assumed." + key);
        return place.isEmpty() ? what : TEXTS.say("assumed.at", Corner.parse(place).words(), what);
    }

    /** The rule, in words. */
    public String rule() {
        return TEXTS.say("assumed." + key + ".rule");
    }
}
