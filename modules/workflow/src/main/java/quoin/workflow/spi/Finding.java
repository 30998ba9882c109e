package quoin.workflow.spi;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import quoin.car.ReadingId;

/**
 * Something doubtful in what was recorded. The reading stays as it is; the finding stands beside it.
 *
 * @param level     how serious it is
 * @param words     what was found and what to do about it
 * @param about     the reading it is about; empty = the stage as a whole
 * @param suggested value the reading may have been meant to be, base unit; empty = no suggestion
 * @param exchanged the reading whose figure this one's was exchanged with; empty = it is about one figure
 */
public record Finding(Level level, String words, Optional<ReadingId> about, OptionalDouble suggested, Optional<ReadingId> exchanged) {

    /** How serious a finding is. */
    public enum Level { INFO, WARNING, ERROR }

    public Finding {
        Objects.requireNonNull(level, "level");
        Objects.requireNonNull(about, "about");
        Objects.requireNonNull(suggested, "suggested");
        Objects.requireNonNull(exchanged, "exchanged");
        if (words.isBlank()) {
            throw new IllegalArgumentException("a finding needs words");
        }
    }

    /** A finding about one figure, or about the stage as a whole. */
    public Finding(Level level, String words, Optional<ReadingId> about, OptionalDouble suggested) {
        this(level, words, about, suggested, Optional.empty());
    }

    public static Finding info(String words) {
        return new Finding(Level.INFO, words, Optional.empty(), OptionalDouble.empty());
    }

    public static Finding warning(String words) {
        return new Finding(Level.WARNING, words, Optional.empty(), OptionalDouble.empty());
    }

    public static Finding warning(String words, ReadingId about) {
        return new Finding(Level.WARNING, words, Optional.of(about), OptionalDouble.empty());
    }

    /** A copy that suggests what the reading may have been meant to be. */
    public Finding suggesting(double value) {
        return new Finding(level, words, about, OptionalDouble.of(value), exchanged);
    }
}
