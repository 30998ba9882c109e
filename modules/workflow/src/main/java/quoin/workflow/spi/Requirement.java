package quoin.workflow.spi;

import java.util.EnumSet;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import quoin.car.ReadingKind;

/**
 * A condition that must hold while a stage's readings are taken (or, in a stage that reads nothing to a target, when it
 * is signed off).
 *
 * @param key     condition key, see {@link quoin.logbook.Conditions}
 * @param value   value it must have; empty = any value, as long as it was recorded
 * @param words   what to do, as said to the racer: "Take one link off the front bar"
 * @param caution where somebody or something can be hurt, or the reading spoilt; one line
 * @param kinds   readings it matters for; empty = all of the stage
 * @param lasting true where the stage does not stay signed off once it fails (pads, pressures); false where it comes and
 *                goes with the work (driver, steering lock)
 */
public record Requirement(String key, String value, String words, Optional<String> caution, Set<ReadingKind> kinds,
        boolean lasting) {

    public Requirement {
        Objects.requireNonNull(value, "value");
        Objects.requireNonNull(caution, "caution");
        kinds = kinds.isEmpty() ? Set.of() : Set.copyOf(EnumSet.copyOf(kinds));
        if (key.isBlank() || words.isBlank()) {
            throw new IllegalArgumentException("a requirement needs a key and words");
        }
    }

    /** Matters for every reading of the stage and comes and goes. */
    public Requirement(String key, String value, String words, Optional<String> caution) {
        this(key, value, words, caution, Set.of(), false);
    }

    public boolean appliesTo(ReadingKind kind) {
        return kinds.isEmpty() || kinds.contains(kind);
    }

    /** A copy that matters for some kinds of reading only. */
    public Requirement onlyFor(Set<ReadingKind> some) {
        return new Requirement(key, value, words, caution, some, lasting);
    }

    /** A copy that must go on holding after the sign-off. */
    public Requirement asLasting() {
        return new Requirement(key, value, words, caution, kinds, true);
    }
}
