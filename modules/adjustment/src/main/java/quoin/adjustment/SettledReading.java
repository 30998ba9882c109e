package quoin.adjustment;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One settling of the car and what was read then.
 *
 * @param turns turns made at each adjuster since the reading before this one, in the order of the prior's adjusters;
 *     all zero for the first reading and for a mere second settling
 * @param loadsN four loads, N, order LF RF LR RR; empty where not read
 * @param heightsMm four heights, mm, same order; empty where not read
 * @param loadChanges masses in or out against the load case of the targets; empty list when in that load case
 * @param settlings how many settlings the figures are the mean of, at least 1
 */
public record SettledReading(List<Double> turns, List<OptionalDouble> loadsN, List<OptionalDouble> heightsMm,
        List<LoadChange> loadChanges, int settlings) {

    public SettledReading {
        turns = List.copyOf(turns);
        loadsN = List.copyOf(loadsN);
        heightsMm = List.copyOf(heightsMm);
        loadChanges = List.copyOf(loadChanges);
        if (loadsN.size() != 4 || heightsMm.size() != 4) {
            throw new IllegalArgumentException("loadsN and heightsMm hold four values each, LF RF LR RR; give an empty"
                    + " value where nothing was read");
        }
        if (settlings < 1) {
            throw new IllegalArgumentException("settlings must be at least 1; got " + settlings);
        }
    }

    /** A complete reading of one settling in the load case of the targets. */
    public static SettledReading of(double[] turns, double[] loadsN, double[] heightsMm) {
        return new SettledReading(boxed(turns), present(loadsN), present(heightsMm), List.of(), 1);
    }

    /** The same reading taken with masses in or out. */
    public SettledReading with(List<LoadChange> changes) {
        return new SettledReading(turns, loadsN, heightsMm, changes, settlings);
    }

    /** The same figures, being the mean of several settlings. */
    public SettledReading meanOf(int count) {
        return new SettledReading(turns, loadsN, heightsMm, loadChanges, count);
    }

    /** Figure of one row: 0-3 loads N, 4-7 heights mm; empty where not read. */
    public OptionalDouble figure(int row) {
        return row < 4 ? loadsN.get(row) : heightsMm.get(row - 4);
    }

    /** The same reading with another figure in one row (0-3 loads N, 4-7 heights mm). */
    public SettledReading withFigure(int row, double value) {
        List<OptionalDouble> loads = new ArrayList<>(loadsN);
        List<OptionalDouble> heights = new ArrayList<>(heightsMm);
        (row < 4 ? loads : heights).set(row % 4, OptionalDouble.of(value));
        return new SettledReading(turns, loads, heights, loadChanges, settlings);
    }

    /** Whether any adjuster was turned before this reading. */
    public boolean turned() {
        return turns.stream().anyMatch(t -> t != 0);
    }

    private static List<Double> boxed(double[] values) {
        return java.util.Arrays.stream(values).boxed().toList();
    }

    private static List<OptionalDouble> present(double[] values) {
        return java.util.Arrays.stream(values).mapToObj(OptionalDouble::of).toList();
    }
}
