package quoin.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;

/** What a day says when it is asked, and how it goes on with what the journal has gained. */
class DayAskedTest {

    private static final ReadingId RR_LOAD = ReadingId.of(ReadingKind.LOAD, Corner.RR);

    /** How many entries count, and how often that was carried on from an earlier state. */
    private record Counted(int entries, int carriedOn) {
    }

    private record Counting() implements Derivation<Counted> {
        @Override
        public Counted of(Day day) {
            return new Counted(day.effective().size(), 0);
        }

        @Override
        public Counted onward(Day earlier, Counted known, Day day) {
            return new Counted(known.entries() + day.beyond(earlier).size(), known.carriedOn() + 1);
        }
    }

    private final List<Entry> entries = new ArrayList<>();

    @BeforeEach
    void aCar() {
        add(new Entry.CarDescribed(Header.draft(""), Samples.bareCar()));
    }

    private long add(Entry entry) {
        return add(entries.size() + 1L, entry);
    }

    private long add(long number, Entry entry) {
        entries.add(entry.withHeader(new Header(number, Samples.NOON.plusSeconds(number), entry.header().stage())));
        return number;
    }

    private Day day() {
        return Day.of(List.copyOf(entries));
    }

    private void condition(String key, String value) {
        add(new Entry.Condition(Header.draft(""), key, value, ""));
    }

    @Test
    void itGoesOnWithWhatTheJournalHasGained() {
        add(Samples.reading(100));
        Day before = day();
        before.derive(new Counting());
        add(Samples.reading(101));
        add(Samples.note("stiff"));
        Day after = before.goingOn(List.copyOf(entries));
        assertEquals(entries, after.written());
        assertEquals(4, after.derive(new Counting()).entries());
        assertEquals(1, after.derive(new Counting()).carriedOn(), "not counted from the beginning again");
        assertSame(after, after.goingOn(after.written()), "nothing new");
    }

    @Test
    void entriesOfAnotherDayMakeAnotherDay() {
        add(Samples.reading(100));
        add(Samples.reading(101));
        Day day = day();
        List<Entry> shorter = entries.subList(0, 2);
        assertEquals(shorter, day.goingOn(shorter).written());
        List<Entry> other = List.of(entries.get(0), entries.get(1), Samples.reading(300).withHeader(Samples.header(3)), entries.get(2));
        assertEquals(other, day.goingOn(other).written());
        assertEquals(Day.of(other).history(Samples.LF_LOAD), day.goingOn(other).history(Samples.LF_LOAD));
    }

    @Test
    void theCarItselfIsCorrectedDuringTheDay() {
        add(Samples.reading(100));
        Day day = day().with(Samples.reading(101).withHeader(Samples.header(3)));
        Day corrected = day.with(new Entry.Correction(Samples.header(4), 1,
                Optional.of(new Entry.CarDescribed(Samples.header(1), Samples.fullCar())), "wrong car"));
        assertEquals(Samples.fullCar(), corrected.car());
        assertEquals(2, corrected.history(Samples.LF_LOAD).size());
    }

    /** On a long day, undoing goes on from a state near its end: a car described after that state is forgotten all the same. */
    @Test
    void aCarDescribedLateOnALongDayIsForgottenWhenItIsWithdrawn() {
        while (entries.size() < 600) {
            add(Samples.note("note"));
        }
        long car = add(new Entry.CarDescribed(Header.draft(""), Samples.fullCar()));
        Day day = day().with(Samples.reading(100).withHeader(Samples.header(602)));
        assertEquals(Samples.fullCar(), day.car());
        Day withdrawn = day.with(new Entry.Correction(Samples.header(603), car, Optional.empty(), "wrong car"));
        assertEquals(Samples.bareCar(), withdrawn.car());
        Day back = withdrawn.with(new Entry.Correction(Samples.header(604), 603, Optional.empty(), "it was right"));
        assertEquals(Samples.fullCar(), back.car());
        assertEquals(100, back.latest(Samples.LF_LOAD).orElseThrow().value());
    }

    @Test
    void itTellsEveryCorrectionAlsoTheWithdrawnOnes() {
        long reading = add(Samples.reading(901));
        long undo = add(new Entry.Correction(Header.draft(""), reading, Optional.empty(), "undo"));
        add(new Entry.Correction(Header.draft(""), undo, Optional.empty(), "redo"));
        assertEquals(List.of(entries.get(2), entries.get(3)), day().corrections());
        assertEquals(Optional.empty(), day().counting(undo), "a correction itself counts for nothing");
        assertEquals(Optional.of(entries.get(1)), day().counting(reading));
    }

    @Test
    void itTellsWhatWasReadAndNothingElse() {
        assertEquals(Set.of(), day().readings());
        add(Samples.reading(100));
        assertEquals(Set.of(Samples.LF_LOAD), day().readings());
        assertEquals(List.of(), day().history(RR_LOAD));
        assertEquals(0, day().countAt(RR_LOAD, 99));
    }

    @Test
    void whatAnEarlierDayTaughtIsThereOnceTakenOver() {
        assertEquals(Optional.empty(), day().takenOver());
        add(new Entry.ResponseTakenOver(Header.draft(""), "2026-05-12-1", Samples.NOON, 96, List.of()));
        assertEquals("2026-05-12-1", day().takenOver().orElseThrow().fromDay());
    }

    @Test
    void conditionsStandInTheOrderInWhichTheyWereFirstSet() {
        condition(Conditions.FUEL, "20");
        condition(Conditions.DRIVER, Conditions.IN);
        condition(Conditions.FUEL, "12");
        assertEquals(List.of("fuel=12", "driver=in"), day().conditions().stream().map(c -> c.key() + "=" + c.value()).toList());
    }

    @Test
    void theDriverIsWhoWasNamedTodayElseTheLoadCases() {
        entries.set(0, new Entry.CarDescribed(Samples.header(1), Samples.fullCar()));
        assertEquals("Ann, dressed", day().driver());
        condition(Conditions.DRIVER_NAME, " Ben ");
        assertEquals("Ben", day().driver());
        condition(Conditions.DRIVER_NAME, "  ");
        assertEquals("Ann, dressed", day().driver());
    }

    @Test
    void whatWasMeasuredOfASubjectIsTheLast() {
        Measurement person = new Measurement("known-person", Map.of(), "", Map.of());
        assertEquals(Optional.empty(), day().check("scales"));
        add(new Entry.Check(Header.draft(""), "scales", Map.of("factor.LF", 1.01), person));
        long last = add(new Entry.Check(Header.draft(""), "scales", Map.of("factor.LF", 1.02), person));
        assertEquals(last, day().check("scales").orElseThrow().number());
        long curve = add(new Entry.BumpSteer(Header.draft(""), Corner.RF, List.of(new Entry.BumpSteer.Point(10, -0.02),
                new Entry.BumpSteer.Point(-10, 0.015)), new Measurement("bump-steer", Map.of(), "", Map.of())));
        assertEquals(curve, day().bumpSteer(Corner.RF).orElseThrow().number());
        assertEquals(Optional.empty(), day().bumpSteer(Corner.LF));
    }

    /** Where two programs wrote one file, numbers may jump back: the place in the file says which value came last. */
    @Test
    void numbersInDisorderAreCountedByTheirPlaceInTheFile() {
        add(3, Samples.reading(103));
        add(7, Samples.reading(107));
        add(5, Samples.reading(105));
        Day day = day();
        assertEquals(0, day.countAt(Samples.LF_LOAD, 2));
        assertEquals(3, day.countAt(Samples.LF_LOAD, 5));
        assertEquals(3, day.countAt(Samples.LF_LOAD, 6));
        assertEquals(1, day.countAt(Samples.LF_LOAD, 4));
        assertEquals(105, day.latestAt(Samples.LF_LOAD, 6).orElseThrow().value());
        assertEquals(Optional.empty(), day.latestAt(Samples.LF_LOAD, 2));
        assertEquals(2, day.after(3).size());
    }
}
