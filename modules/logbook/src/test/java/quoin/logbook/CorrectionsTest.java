package quoin.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Target;

class CorrectionsTest {

    private final List<Entry> entries = new ArrayList<>(List.of(new Entry.CarDescribed(Samples.header(1), Samples.bareCar())));

    private long add(Entry entry) {
        entries.add(entry.withHeader(new Header(entries.size() + 1, Samples.NOON.plusSeconds(entries.size()), entry.header().stage())));
        return entries.size();
    }

    private long withdraw(long number) {
        return add(new Entry.Correction(Header.draft(""), number, Optional.empty(), "undo"));
    }

    private long replace(long number, double value) {
        return add(new Entry.Correction(Header.draft("final-recheck"), number, Optional.of(Samples.reading(value)), "typed wrongly"));
    }

    private List<Double> loads() {
        return Day.of(entries).history(Samples.LF_LOAD).stream().map(Figure::value).toList();
    }

    @Test
    void undoAndRedo() {
        add(Samples.reading(100));
        long wrong = add(Samples.reading(901));
        long undo = withdraw(wrong);
        assertEquals(List.of(100.0), loads());
        long redo = withdraw(undo);
        assertEquals(List.of(100.0, 901.0), loads());
        withdraw(redo);
        assertEquals(List.of(100.0), loads());
        assertEquals(6, Day.of(entries).written().size(), "nothing written is ever gone");
    }

    @Test
    void correctedValueStandsInTheOldPlace() {
        long first = add(Samples.reading(100));
        add(Samples.reading(110));
        replace(first, 101);
        assertEquals(List.of(101.0, 110.0), loads());
        Figure figure = Day.of(entries).history(Samples.LF_LOAD).get(0);
        assertEquals(first, figure.entry());
        assertEquals("corner-weights", figure.stage());
    }

    @Test
    void lastCorrectionHoldsAndWithdrawingItBringsTheOneBefore() {
        long number = add(Samples.reading(100));
        replace(number, 101);
        long second = replace(number, 102);
        assertEquals(List.of(102.0), loads());
        long undo = withdraw(second);
        assertEquals(List.of(101.0), loads());
        withdraw(undo);
        assertEquals(List.of(102.0), loads());
    }

    @Test
    void adjustmentsConditionsTargetsAndSignOffsAreCorrectedAlike() {
        long turn = add(new Entry.Adjustment(Header.draft(""), List.of(new Entry.Turn(Samples.RR_PERCH, 2, Samples.of(60))), ""));
        add(new Entry.Adjustment(Header.draft(""), List.of(new Entry.Turn(Samples.RR_PERCH, 0.25, Samples.of(61))), ""));
        long in = add(new Entry.Condition(Header.draft(""), Conditions.DRIVER, Conditions.IN, ""));
        add(Samples.reading(100));
        long target = add(new Entry.TargetSet(Header.draft(""), Samples.LF_LOAD, new Target(108, 1)));
        long signed = add(new Entry.SignOff(Header.draft("corner-weights"), Optional.empty()));
        assertEquals(2.25, Day.of(entries).turned(Samples.RR_PERCH));
        withdraw(turn);
        withdraw(in);
        withdraw(target);
        withdraw(signed);
        Day day = Day.of(entries);
        assertEquals(0.25, day.turned(Samples.RR_PERCH));
        assertEquals(Optional.empty(), day.condition(Conditions.DRIVER));
        assertEquals(Map.of(), day.latest(Samples.LF_LOAD).orElseThrow().conditions());
        assertEquals(Optional.empty(), day.targets().of(Samples.LF_LOAD));
        assertEquals(Optional.empty(), day.signOff("corner-weights"));
    }

    @Test
    void figuresKeepTheConditionsTheyWereReadIn() {
        add(Samples.reading(100));
        add(new Entry.Condition(Header.draft(""), Conditions.DRIVER, Conditions.IN, ""));
        add(Samples.reading(120));
        add(new Entry.Condition(Header.draft(""), Conditions.DRIVER, Conditions.OUT, ""));
        assertEquals(List.of(Map.of(), Map.of("driver", "in")),
                Day.of(entries).history(Samples.LF_LOAD).stream().map(Figure::conditions).toList());
    }

    @Test
    void latestAtLooksNoFurtherThanTheEntry() {
        long first = add(Samples.reading(100));
        long second = add(Samples.reading(110));
        Day day = Day.of(entries);
        assertEquals(Optional.empty(), day.latestAt(Samples.LF_LOAD, first - 1));
        assertEquals(100, day.latestAt(Samples.LF_LOAD, first).orElseThrow().value());
        assertEquals(110, day.latestAt(Samples.LF_LOAD, second + 9).orElseThrow().value());
        assertEquals(Optional.empty(), day.latest(ReadingId.of(ReadingKind.LOAD, Corner.RR)));
    }

    @Test
    void dayNeedsItsCar() {
        assertThrows(IllegalArgumentException.class, () -> Day.of(List.of(Samples.note("no car"))));
    }
}
