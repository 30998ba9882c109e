package quoin.garage.draft;

import java.util.Objects;
import java.util.Optional;

/**
 * A value used because none was typed.
 *
 * @param path  the blank field it fills; empty where it fills none of the form's
 * @param field in words
 * @param value figure with its unit, as the racer reads it
 * @param rule  how it was found
 */
public record Assumed(Optional<String> path, String field, String value, String rule) {

    public Assumed {
        Objects.requireNonNull(path, "path");
        Objects.requireNonNull(field, "field");
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(rule, "rule");
    }
}
