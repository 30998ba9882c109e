package quoin.adjustment.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Runs gathered by strategy, and the figures made of them. */
final class RoundsTable {

    /** Figures of one strategy. */
    record Row(String strategy, int cars, int median, int p90, double within1, double within2, double within3,
            double inside, double extrasPerRound, double never) {

        String csv() {
            return String.format(Locale.ROOT, "\"%s\",%d,%d,%d,%.2f,%.2f,%.2f,%.2f,%.3f,%.2f", strategy, cars, median, p90,
                    within1, within2, within3, inside, extrasPerRound, never);
        }

        String text() {
            return String.format(Locale.ROOT, "%-62s %6d %4d %8.1f %8.1f %8.1f %8.1f %8.2f %7.1f", strategy, median, p90,
                    within1, within2, within3, inside, extrasPerRound, never);
        }
    }

    static final String CSV_HEAD = "strategy,cars,median,p90,within 1 %,within 2 %,within 3 %,truly inside %,extra"
            + " readings a round,never stopped %";
    static final String TEXT_HEAD = String.format("%-62s %6s %4s %8s %8s %8s %8s %8s %7s", "strategy", "median", "p90",
            "<= 1 %", "<= 2 %", "<= 3 %", "inside %", "extra/r", "never %");

    private final Map<String, List<Run>> runs = new LinkedHashMap<>();

    void add(String strategy, Run run) {
        runs.computeIfAbsent(strategy, s -> new ArrayList<>()).add(run);
    }

    List<Run> runs(String strategy) {
        return runs.get(strategy);
    }

    List<Row> rows() {
        return runs.entrySet().stream().map(e -> row(e.getKey(), e.getValue())).toList();
    }

    static Row row(String strategy, List<Run> runs) {
        int n = runs.size();
        int[] rounds = runs.stream().mapToInt(Run::rounds).sorted().toArray();
        List<Run> stopped = runs.stream().filter(Run::stopped).toList();
        double inside = 100.0 * stopped.stream().filter(Run::inside).count() / Math.max(1, stopped.size());
        double extras = stopped.stream().mapToDouble(r -> (double) r.extras() / r.rounds()).average().orElse(0);
        return new Row(strategy, n, rounds[n / 2], rounds[(int) (n * 0.9)], within(rounds, 1), within(rounds, 2),
                within(rounds, 3), inside, extras, 100.0 * (n - stopped.size()) / n);
    }

    private static double within(int[] rounds, int limit) {
        int c = 0;
        for (int r : rounds) {
            c += r <= limit ? 1 : 0;
        }
        return 100.0 * c / rounds.length;
    }
}
