package quoin.seatview;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.openide.util.NbBundle.Messages;
import quoin.car.Corner;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.workbench.DaySnapshot;
import quoin.workbench.Mark;
import quoin.workbench.VerdictWords;
import quoin.workflow.Derived;
import quoin.workflow.NextStep;

/**
 * What the screen says: four figures, the cross weight with its verdict, and the one next thing.
 *
 * @param corners  one cell per corner
 * @param cross    the cross weight RF+LR, in %: "49.87"
 * @param verdict  the verdict on the cross weight
 * @param next     the one next thing, or what was just typed wrong or recorded
 * @param warning  true where {@code next} asks for a look at what was typed
 */
record SeatPage(PerCorner<Cell> corners, String cross, VerdictWords verdict, String next, boolean warning) {

    /**
     * One corner.
     *
     * @param figure what is typed, or else what was last read
     * @param typed  true where the figure is being typed and not recorded yet
     * @param here   true where the next key goes
     */
    record Cell(String figure, boolean typed, boolean here) {
    }

    private static final String STAGE = "corner-weights";
    private static final ReadingId CROSS = ReadingId.ofCar(ReadingKind.CROSS);

    /**
     * @param message in place of the next thing; empty for none
     * @param warning true where the message asks for a look at what was typed
     */
    @Messages({"seat.noFigure=–", "seat.typing=not recorded yet"})
    static SeatPage of(DaySnapshot day, SeatEntry entry, NextStep step, Optional<String> message, boolean warning) {
        PerCorner<Cell> cells = PerCorner.of(corner -> cell(day, entry, corner));
        OptionalDouble cross = entry.isBlank() ? Derived.value(day.car(), CROSS, day::last) : crossTyped(day, entry);
        String value = cross.isPresent() ? day.format().number(CROSS, cross.getAsDouble()) : Bundle.seat_noFigure();
        VerdictWords verdict = !entry.isBlank() ? new VerdictWords(Mark.NONE, cross.isPresent() ? Bundle.seat_typing() : "")
                : cross.isEmpty() ? new VerdictWords(Mark.NONE, "") : VerdictWords.of(day.reading(STAGE, CROSS), day.format());
        return new SeatPage(cells, value, verdict, message.orElse(words(step)), warning);
    }

    private static String words(NextStep step) {
        return step.caution().isPresent() && step.kind() == NextStep.Kind.READ ? step.words() + ". " + step.caution().get() : step.words();
    }

    private static Cell cell(DaySnapshot day, SeatEntry entry, Corner corner) {
        ReadingId load = ReadingId.of(ReadingKind.LOAD, corner);
        int field = entry.typed().readings().indexOf(load);
        String typed = field < 0 ? "" : entry.typed().texts().get(field);
        OptionalDouble last = day.last(load);
        boolean here = field == entry.at();
        if (!entry.isBlank()) {
            return new Cell(typed, true, here);
        }
        return new Cell(last.isPresent() ? day.format().number(load, last.getAsDouble()) : Bundle.seat_noFigure(), false, here);
    }

    /** The cross weight of what is typed, as soon as all four figures can be read. */
    private static OptionalDouble crossTyped(DaySnapshot day, SeatEntry entry) {
        var values = entry.read(day.format(), day::last).values();
        Function<ReadingId, OptionalDouble> loads = id -> values.containsKey(id) ? OptionalDouble.of(values.get(id)) : OptionalDouble.empty();
        return Derived.value(day.car(), CROSS, loads);
    }

    /** The loads that are typed, in the racer's walking order. */
    static List<ReadingId> loads(DaySnapshot day) {
        return day.car().cornerReadings(ReadingKind.LOAD);
    }
}
