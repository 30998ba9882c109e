package quoin.garage.draft;

import java.util.Objects;

/**
 * One field of the form.
 *
 * @param path  stable name, such as "corners.LF.springRate"
 * @param label what the racer calls it where it stands alone: "LF spring rate"
 * @param help  one line on what to type and how to find it
 * @param kind  what may be typed
 * @param unit  unit of a figure typed without one, or empty
 * @param required true where the car cannot be saved without it
 */
public record Field(String path, String label, String help, FieldKind kind, String unit, boolean required) {

    public Field {
        Objects.requireNonNull(path, "path");
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(help, "help");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(unit, "unit");
    }
}
