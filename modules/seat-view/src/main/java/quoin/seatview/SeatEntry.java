package quoin.seatview;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import quoin.car.ReadingId;
import quoin.workbench.ReadingFormat;
import quoin.workbench.TypedSet;

/**
 * What is being typed from the seat: the four loads in walking order, one after the other. Immutable.
 *
 * @param typed what stands in each field
 * @param at    the field the next key goes to
 */
record SeatEntry(TypedSet typed, int at) {

    /** Longest text a field takes: a figure with its unit. */
    private static final int MOST_CHARACTERS = 12;

    static SeatEntry empty(List<ReadingId> loads) {
        return new SeatEntry(TypedSet.empty(loads), 0);
    }

    /** The fields filled with figures that were read elsewhere; Enter then goes on from the last one. */
    static SeatEntry of(List<ReadingId> loads, Function<ReadingId, String> text) {
        return new SeatEntry(new TypedSet(loads, loads.stream().map(text).toList()), loads.size() - 1);
    }

    ReadingId reading() {
        return typed.readings().get(at);
    }

    String text() {
        return typed.texts().get(at);
    }

    boolean isBlank() {
        return typed.isBlank();
    }

    boolean isLast() {
        return at == typed.readings().size() - 1;
    }

    /** One more character in the field, where there is room. */
    SeatEntry type(char character) {
        return text().length() >= MOST_CHARACTERS ? this : with(text() + character);
    }

    /** "As last time". */
    SeatEntry repeat() {
        return with("=");
    }

    /** Takes the last character away; in an empty field it goes back to the field before. */
    SeatEntry back() {
        return text().isEmpty() ? to(at - 1) : with(text().substring(0, text().length() - 1));
    }

    /** The next field, or the same where it is the last. */
    SeatEntry next() {
        return to(at + 1);
    }

    SeatEntry to(ReadingId reading) {
        return to(typed.readings().indexOf(reading));
    }

    private SeatEntry to(int field) {
        return new SeatEntry(typed, Math.max(0, Math.min(typed.readings().size() - 1, field)));
    }

    SeatEntry with(String text) {
        List<String> texts = new ArrayList<>(typed.texts());
        texts.set(at, text);
        return new SeatEntry(new TypedSet(typed.readings(), texts), at);
    }

    /**
     * The likely figure in this field, and where two were exchanged, what was typed here in the other.
     *
     * @param typedHere what stood in this field when it was doubted
     */
    SeatEntry mended(String likely, Optional<ReadingId> exchanged, String typedHere) {
        SeatEntry one = with(likely);
        return exchanged.map(other -> one.to(other).with(typedHere).to(reading())).orElse(one);
    }

    /** What the fields mean. */
    TypedSet.Understood read(ReadingFormat format, Function<ReadingId, OptionalDouble> last) {
        return typed.read(format, last);
    }
}
