package quoin.preparation.sheet;

import java.util.Optional;
import quoin.quantities.Dimension;

/**
 * One field of a form.
 *
 * @param key       stable; the journal keeps the figure under it
 * @param name      in full, as a message names it
 * @param dimension what it measures
 * @param usual     what stands in it to begin with, as typed; empty = nothing
 */
public record Cell(String key, String name, Dimension dimension, Optional<String> usual) {

    /** A field that begins blank. */
    public static Cell of(String key, String name, Dimension dimension) {
        return new Cell(key, name, dimension, Optional.empty());
    }

    /** A field that begins with what is usual. */
    public static Cell of(String key, String name, Dimension dimension, String usual) {
        return new Cell(key, name, dimension, Optional.of(usual));
    }
}
