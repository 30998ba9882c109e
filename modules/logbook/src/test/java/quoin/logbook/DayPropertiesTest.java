package quoin.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.constraints.IntRange;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;

/** What holds of any day whatever is recorded in it. */
class DayPropertiesTest {

    private static final List<ReadingId> LOADS = List.of(ReadingId.of(ReadingKind.LOAD, Corner.LF), ReadingId.of(ReadingKind.LOAD, Corner.RR));

    @Provide
    Arbitrary<List<Entry>> days() {
        Header draft = Header.draft("corner-weights");
        Arbitrary<Entry> reading = Combinators.combine(Arbitraries.of(LOADS), Arbitraries.doubles().between(50, 200))
                .as((id, value) -> new Entry.Reading(draft, Map.of(id, value), Map.of(), Entry.Source.RACER));
        Arbitrary<Entry> adjustment = Combinators.combine(Arbitraries.of(Corner.class), Arbitraries.integers().between(-16, 16))
                .as((corner, notches) -> new Entry.Adjustment(draft, List.of(new Entry.Turn(new AdjusterId(AdjusterKind.PERCH, corner),
                        notches / 8.0, OptionalDouble.empty())), ""));
        Arbitrary<Entry> condition = Combinators.combine(Arbitraries.of("driver", "settled"), Arbitraries.of("in", "out", "yes"))
                .as((key, value) -> new Entry.Condition(draft, key, value, ""));
        // the target of a correction is counted back from its own place when the day is put together
        Arbitrary<Entry> correction = Arbitraries.longs().between(1, 8)
                .flatMap(back -> reading.optional(0.5).map(r -> new Entry.Correction(draft, -back, r, "")));
        return Arbitraries.frequencyOf(Tuple.of(4, reading), Tuple.of(2, adjustment),
                Tuple.of(2, condition), Tuple.of(3, correction)).list().ofMinSize(1).ofMaxSize(25)
                .map(DayPropertiesTest::numbered);
    }

    private static List<Entry> numbered(List<Entry> drafts) {
        List<Entry> entries = new ArrayList<>(List.of(new Entry.CarDescribed(Samples.header(1), Samples.bareCar())));
        for (Entry draft : drafts) {
            long number = entries.size() + 1;
            Header header = new Header(number, Samples.NOON.plusSeconds(number), draft.header().stage());
            Entry entry = draft.withHeader(header);
            if (entry instanceof Entry.Correction c) {
                long corrects = Math.max(2, number + c.corrects());
                boolean ofCorrection = corrects <= entries.size() && entries.get((int) corrects - 1) instanceof Entry.Correction;
                entry = corrects > entries.size() ? Samples.note("nothing to correct yet").withHeader(header)
                        : new Entry.Correction(header, corrects, ofCorrection ? Optional.empty() : c.replacement(), "");
            }
            entries.add(entry);
        }
        return List.copyOf(entries);
    }

    private static List<Entry> with(List<Entry> entries, Entry draft) {
        List<Entry> longer = new ArrayList<>(entries);
        longer.add(draft.withHeader(new Header(entries.size() + 1, Samples.NOON, "")));
        return longer;
    }

    private static Entry withdraw(long number) {
        return new Entry.Correction(Header.draft(""), number, Optional.empty(), "undo");
    }

    private static void assertSameDay(Day expected, Day actual) {
        assertEquals(expected.effective(), actual.effective());
        assertEquals(expected.turned(), actual.turned());
        assertEquals(expected.targets(), actual.targets());
        for (ReadingId load : LOADS) {
            assertEquals(expected.history(load), actual.history(load));
        }
        for (String key : List.of("driver", "settled")) {
            assertEquals(expected.conditionEntry(key), actual.conditionEntry(key));
        }
    }

    @Property(tries = 300)
    void recordingMoreNeverChangesWhatWasWrittenBefore(@ForAll("days") List<Entry> entries, @ForAll @IntRange(max = 25) int cut) {
        Day whole = Day.of(entries);
        Day start = Day.of(entries.subList(0, Math.min(entries.size(), cut + 1)));
        assertEquals(start.written(), whole.written().subList(0, start.written().size()));
        if (entries.stream().skip(start.written().size()).noneMatch(Entry.Correction.class::isInstance)) {
            assertEquals(start.effective(), whole.effective().subList(0, start.effective().size()));
            for (ReadingId load : LOADS) {
                assertEquals(start.history(load), whole.history(load).subList(0, start.history(load).size()));
            }
        }
    }

    @Property(tries = 300)
    void withdrawingAndBringingBackIsTheSameDay(@ForAll("days") List<Entry> entries, @ForAll @IntRange(min = 2, max = 26) int number) {
        if (number > entries.size()) {
            return;
        }
        List<Entry> undone = with(entries, withdraw(number));
        List<Entry> redone = with(undone, withdraw(undone.size()));
        assertSameDay(Day.of(entries), Day.of(redone));
        assertSameDay(Day.of(undone), Day.of(with(redone, withdraw(redone.size()))));
    }

    @Property(tries = 300)
    void withdrawingTheLastEntryIsTheDayWithoutIt(@ForAll("days") List<Entry> entries) {
        assertSameDay(Day.of(entries.subList(0, entries.size() - 1)), Day.of(with(entries, withdraw(entries.size()))));
    }

    @Property(tries = 200)
    void sameEntriesGiveTheSameDay(@ForAll("days") List<Entry> entries) {
        assertSameDay(Day.of(entries), Day.of(new ArrayList<>(entries)));
        assertEquals(entries.size(), Day.of(entries).revision());
    }

    @Property(tries = 300)
    void nothingThatCountsIsOlderThanItsEntryOrOutOfOrder(@ForAll("days") List<Entry> entries) {
        Day day = Day.of(entries);
        List<Long> numbers = day.effective().stream().map(Entry::number).toList();
        assertEquals(numbers.stream().sorted().distinct().toList(), numbers);
        day.effective().forEach(e -> assertEquals(entries.get((int) e.number() - 1).header(), e.header()));
    }
}
