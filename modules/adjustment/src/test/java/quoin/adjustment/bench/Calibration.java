package quoin.adjustment.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import quoin.adjustment.StopRule;

/** Claimed probability against the share that was truly inside. */
final class Calibration {

    private static final double[] EDGES = {0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.85, 0.9, 0.95, 1.0001};

    /**
     * Claims within one band.
     *
     * @param claimed mean claim
     * @param inside share truly inside
     * @param count number of claims
     */
    record Bin(double claimed, double inside, int count) {
    }

    private Calibration() {
    }

    /** Claims at the stop: the usual rule, all kinds of readings pooled. */
    static List<Bin> ofStops(Map<Trajectory.Readings, List<List<Trajectory.Point>>> full) {
        List<double[]> claims = new ArrayList<>();
        full.values().forEach(cars -> cars.forEach(points -> {
            Run run = Frontier.stop(points, StopRule.USUAL);
            if (run.stopped()) {
                claims.add(new double[] {run.claimed(), run.inside() ? 1 : 0});
            }
        }));
        return bins(claims);
    }

    /** Claims after every reading of every trajectory. */
    static List<Bin> ofPoints(Map<Trajectory.Readings, List<List<Trajectory.Point>>> full) {
        List<double[]> claims = new ArrayList<>();
        full.values().forEach(cars -> cars.forEach(points -> points.forEach(
                p -> claims.add(new double[] {p.now(), p.inside() ? 1 : 0}))));
        return bins(claims);
    }

    private static List<Bin> bins(List<double[]> claims) {
        List<Bin> out = new ArrayList<>();
        for (int k = 0; k + 1 < EDGES.length; k++) {
            double low = EDGES[k];
            double high = EDGES[k + 1];
            List<double[]> in = claims.stream().filter(c -> c[0] >= low && c[0] < high).toList();
            if (!in.isEmpty()) {
                out.add(new Bin(in.stream().mapToDouble(c -> c[0]).average().orElse(0),
                        in.stream().mapToDouble(c -> c[1]).average().orElse(0), in.size()));
            }
        }
        return out;
    }

    static String text(String title, List<Bin> bins) {
        StringBuilder out = new StringBuilder("Calibration, ").append(title).append('\n');
        for (Bin b : bins) {
            out.append(String.format(Locale.ROOT, "%6.1f %% claimed, %6.1f %% truly inside, %+5.1f points (+-%.1f), n = %d%n",
                    100 * b.claimed(), 100 * b.inside(), 100 * (b.inside() - b.claimed()),
                    200 * Math.sqrt(b.inside() * (1 - b.inside()) / b.count()), b.count()));
        }
        return out.toString();
    }

    static String csv(List<Bin> stops, List<Bin> points) {
        StringBuilder out = new StringBuilder("kind,claimed,truly inside,count\n");
        stops.forEach(b -> out.append(line("stop", b)));
        points.forEach(b -> out.append(line("any reading", b)));
        return out.toString();
    }

    private static String line(String kind, Bin b) {
        return String.format(Locale.ROOT, "%s,%.4f,%.4f,%d%n", kind, b.claimed(), b.inside(), b.count());
    }
}
