package quoin.wheelangles.measure;

import java.util.Optional;
import java.util.OptionalDouble;
import quoin.quantities.Dimension;

/**
 * One figure of a form.
 *
 * @param key       stable; the journal keeps the figure under it
 * @param name      in full, as a message names it: "LF, front edge"
 * @param dimension what it measures
 * @param by        what it is read with; empty = not read, or taken as exact
 * @param usual     what stands in the field to begin with, base unit; empty = nothing
 * @param isAnew    true for what is read anew each time, and so leaves the form when it has been recorded
 */
public record Field(String key, String name, Dimension dimension, Optional<Instrument> by, OptionalDouble usual, boolean isAnew) {

    /** A figure that is read and typed each time. */
    static Field read(String key, String name, Instrument by) {
        return new Field(key, name, by.dimension(), Optional.of(by), OptionalDouble.empty(), true);
    }

    /** A figure that is read and holds until it is typed over, such as the slope of the floor. */
    static Field kept(String key, String name, Instrument by, OptionalDouble usual) {
        return new Field(key, name, by.dimension(), Optional.of(by), usual, false);
    }

    /** A figure of the car that is known beforehand and may be typed over; taken as exact. */
    static Field known(String key, String name, Dimension dimension, double usual) {
        return new Field(key, name, dimension, Optional.empty(), OptionalDouble.of(usual), false);
    }

    /** A figure of the car that is typed once and taken as exact. */
    static Field once(String key, String name, Dimension dimension) {
        return new Field(key, name, dimension, Optional.empty(), OptionalDouble.empty(), false);
    }
}
