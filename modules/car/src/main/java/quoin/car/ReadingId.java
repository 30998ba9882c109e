package quoin.car;

import java.util.Objects;
import java.util.Set;
import quoin.quantities.NotTakenException;
import quoin.quantities.Texts;

/**
 * One reading of the car: a kind and the place where it is read (a corner, an axle, a side, a height point's name or
 * "car").
 * The text form, "load.LF" or "height.rail LF", is what files store.
 */
public record ReadingId(ReadingKind kind, String place) implements Comparable<ReadingId> {
    private static final Texts TEXTS = Texts.of(ReadingId.class);

    public static final String CAR = "car";
    /** The left side of the car, or a turn to the left. */
    public static final String LEFT = "left";
    /** The right side of the car, or a turn to the right. */
    public static final String RIGHT = "right";
    private static final Set<String> PLACES = Set.of(Axle.FRONT.name(), Axle.REAR.name(), LEFT, RIGHT);

    public ReadingId {
        Objects.requireNonNull(kind, "kind");
        if (place.isBlank()) {
            throw new NotTakenException(TEXTS.phrase("readingNeedsAPlace"));
        }
    }

    public static ReadingId of(ReadingKind kind, Corner corner) {
        return new ReadingId(kind, corner.name());
    }

    public static ReadingId ofCar(ReadingKind kind) {
        return new ReadingId(kind, CAR);
    }

    /** As a racer says it: "LF weight", "cross weight RF+LR". */
    public String words() {
        return place.equals(CAR) ? kind.words() : TEXTS.say("reading.at", placeWords(), kind.words());
    }

    /** Where it is read, as a racer says it; the name of a height point stays as it was given. */
    public String placeWords() {
        if (kind != ReadingKind.HEIGHT) {
            for (Corner corner : Corner.values()) {
                if (corner.name().equals(place)) {
                    return corner.words();
                }
            }
            if (PLACES.contains(place)) {
                return TEXTS.say("place." + place);
            }
        }
        return place;
    }

    /**
     * Reads the text form.
     *
     * @throws IllegalArgumentException where the text names no kind of reading
     */
    public static ReadingId parse(String text) {
        int dot = text.indexOf('.');
        if (dot > 0) {
            for (ReadingKind kind : ReadingKind.values()) {
                if (kind.key().equals(text.substring(0, dot))) {
                    return new ReadingId(kind, text.substring(dot + 1));
                }
            }
        }
        throw new NotTakenException(TEXTS.phrase("notAReadingWrite", text));
    }

    @Override
    public int compareTo(ReadingId other) {
        int byKind = kind.compareTo(other.kind);
        return byKind != 0 ? byKind : place.compareTo(other.place);
    }

    @Override
    public String toString() {
        return kind.key() + "." + place;
    }
}
