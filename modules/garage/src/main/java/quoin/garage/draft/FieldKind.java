package quoin.garage.draft;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quoin.quantities.Dimension;

/** What may be typed into a field. */
public sealed interface FieldKind {

    /**
     * A figure with a unit.
     *
     * @param dimension what it measures
     * @param sign      which signs make sense
     * @param usual     sizes a race car has, in the base unit; beyond them the racer is asked, never refused
     */
    record Figure(Dimension dimension, Sign sign, Optional<Range> usual) implements FieldKind {
        public Figure {
            Objects.requireNonNull(dimension, "dimension");
            Objects.requireNonNull(sign, "sign");
            Objects.requireNonNull(usual, "usual");
        }
    }

    /** Which signs a figure may have. */
    enum Sign { ANY, NOT_NEGATIVE, POSITIVE }

    /** A toe angle, typed as a length on the rim chord or as an angle, plus = toe-in. */
    record Toe(Sign sign) implements FieldKind {
        public Toe {
            Objects.requireNonNull(sign, "sign");
        }
    }

    /** A whole number of 1 or more. */
    record Whole() implements FieldKind {
    }

    /** One of several; an unanswered choice is the first. */
    record Choice(List<Option> options) implements FieldKind {
        public Choice {
            options = List.copyOf(options);
        }
    }

    /**
     * One answer of a choice.
     *
     * @param value the field's text when it is chosen
     * @param words as shown
     */
    record Option(String value, String words) {
        @Override
        public String toString() {
            return words;
        }
    }

    /** Free words. */
    record Words() implements FieldKind {
    }

    /** Shims at hand: "0.5 x 4; 1 x 6". */
    record ShimStock() implements FieldKind {
    }

    /**
     * Sizes that are usual.
     *
     * @param low  least, base unit
     * @param high most, base unit
     */
    record Range(double low, double high) {
        boolean holds(double value) {
            return value >= low && value <= high;
        }
    }
}
