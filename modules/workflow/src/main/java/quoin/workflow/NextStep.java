package quoin.workflow;

import java.util.Objects;
import java.util.Optional;

/**
 * The one thing to do next.
 *
 * @param stageId stage it is done in
 * @param kind    what kind of thing it is
 * @param words   what to do, as said to the racer
 * @param caution where somebody or something can be hurt, one line
 */
public record NextStep(String stageId, Kind kind, String words, Optional<String> caution) {

    /** Kinds of next step. */
    public enum Kind { CONDITION, SETTLE, READ, TURN, SIGN_OFF, CLOSE, DONE }

    public NextStep {
        Objects.requireNonNull(stageId, "stageId");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(words, "words");
        Objects.requireNonNull(caution, "caution");
    }
}
