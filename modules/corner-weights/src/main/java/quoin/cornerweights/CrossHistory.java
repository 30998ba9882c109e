package quoin.cornerweights;

import java.util.ArrayList;
import java.util.List;
import quoin.car.Corner;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.mechanics.Shares;

/** Cross weight of every weighing of the day, oldest first. */
final class CrossHistory {

    /**
     * One weighing.
     *
     * @param number       1 for the first weighing of the day
     * @param entry        number of its entry
     * @param crossPercent (RF + LR) / total, %
     */
    record Weighing(int number, long entry, double crossPercent) {
    }

    private CrossHistory() {
    }

    /** Only entries that hold all four loads count as a weighing. */
    static List<Weighing> of(Day day) {
        List<Weighing> weighings = new ArrayList<>();
        for (Entry entry : day.effective()) {
            if (entry instanceof Entry.Reading reading && hasAllLoads(reading)) {
                PerCorner<Double> loads = PerCorner.of(c -> reading.values().get(ReadingId.of(ReadingKind.LOAD, c)));
                weighings.add(new Weighing(weighings.size() + 1, entry.number(), Shares.of(loads).crossPercent()));
            }
        }
        return weighings;
    }

    private static boolean hasAllLoads(Entry.Reading reading) {
        double total = 0;
        for (Corner corner : Corner.values()) {
            Double load = reading.values().get(ReadingId.of(ReadingKind.LOAD, corner));
            if (load == null) {
                return false;
            }
            total += load;
        }
        return total > 0;
    }
}
