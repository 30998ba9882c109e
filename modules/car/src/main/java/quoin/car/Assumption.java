package quoin.car;

/**
 * A value nobody gave, filled in by a stated rule.
 *
 * @param field what was unknown, as the racer would name it: "LF motion ratio"
 * @param value the value used, in {@code unit}
 * @param unit  unit symbol, or empty for a ratio
 * @param rule  the rule, in words
 */
public record Assumption(String field, double value, String unit, String rule) {
}
