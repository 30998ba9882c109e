package quoin.car;

import java.util.Objects;
import quoin.quantities.NotTakenException;
import quoin.quantities.Texts;

/** One adjuster of the car, such as the perch at RR. The text form, "perch.RR", is what files store. */
public record AdjusterId(AdjusterKind kind, Corner corner) implements Comparable<AdjusterId> {
    private static final Texts TEXTS = Texts.of(AdjusterId.class);

    public AdjusterId {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(corner, "corner");
    }

    /** As a racer says it: "RR perch". */
    public String words() {
        return Texts.of(AdjusterId.class).say("adjuster.at", corner.words(), kind.words());
    }

    /**
     * Reads the text form.
     *
     * @throws IllegalArgumentException where the text names no adjuster kind or corner
     */
    public static AdjusterId parse(String text) {
        int dot = text.lastIndexOf('.');
        if (dot > 0) {
            for (AdjusterKind kind : AdjusterKind.values()) {
                if (kind.key().equals(text.substring(0, dot))) {
                    return new AdjusterId(kind, Corner.parse(text.substring(dot + 1)));
                }
            }
        }
        throw new NotTakenException(TEXTS.phrase("notAnAdjusterWrite", text));
    }

    @Override
    public int compareTo(AdjusterId other) {
        int byCorner = corner.compareTo(other.corner);
        return byCorner != 0 ? byCorner : kind.compareTo(other.kind);
    }

    @Override
    public String toString() {
        return kind.key() + "." + corner;
    }
}
