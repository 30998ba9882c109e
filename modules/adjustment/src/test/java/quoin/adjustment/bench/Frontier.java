package quoin.adjustment.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import quoin.adjustment.StopRule;

/** Share stopped within three rounds against share truly inside, as the stop threshold varies. */
final class Frontier {

    private static final double[] THRESHOLDS = {0.55, 0.6, 0.65, 0.7, 0.75, 0.8, 0.85, 0.9, 0.95};
    private static final double[] GAINS = {0, 0.02, 0.04, 0.06, 0.08, 0.1, 0.12};

    /** One curve: threshold varied with no gain rule, then the gain rule varied at the usual threshold. */
    record Curve(String name, List<Knot> threshold, List<Knot> gain) {
    }

    /** One rule and what it gave. */
    record Knot(StopRule rule, RoundsTable.Row row) {
    }

    private Frontier() {
    }

    static String name(Trajectory.Readings readings) {
        return switch (readings) {
            case ONE -> "one weighing";
            case SECOND_WHEN_CLOSE -> "second settled reading when close";
            case TWO -> "always two settled readings";
            case DRIVER_OUT_AND_IN -> "driver out and in every round";
            case DRIVER_OUT_THEN_SECOND -> "driver out and in as found, second when close";
        };
    }

    /** Applies the rule to what was noted on the way. */
    static Run stop(List<Trajectory.Point> points, StopRule rule) {
        for (Trajectory.Point p : points) {
            boolean enough = p.now() >= rule.enoughProbability();
            double gain = Math.max(p.after() - p.now(), (p.twice() - p.now()) / 2);
            if (enough || p.last() && gain < rule.leastGain()) {
                return new Run(p.round(), p.inside(), p.now(), p.extras());
            }
        }
        Trajectory.Point end = points.get(points.size() - 1);
        return new Run(Run.LIMIT + 1, end.inside(), end.now(), end.extras());
    }

    static Curve curve(Trajectory.Readings readings, List<List<Trajectory.Point>> cars) {
        List<Knot> threshold = new ArrayList<>();
        for (double t : THRESHOLDS) {
            threshold.add(knot(new StopRule(t, 0, 2), cars));
        }
        List<Knot> gain = new ArrayList<>();
        for (double g : GAINS) {
            gain.add(knot(new StopRule(StopRule.USUAL.enoughProbability(), g, 2), cars));
        }
        return new Curve(name(readings), threshold, gain);
    }

    private static Knot knot(StopRule rule, List<List<Trajectory.Point>> cars) {
        String label = String.format(Locale.ROOT, "%.2f / %.2f", rule.enoughProbability(), rule.leastGain());
        return new Knot(rule, RoundsTable.row(label, cars.stream().map(c -> stop(c, rule)).toList()));
    }

    static String text(List<Curve> curves) {
        StringBuilder out = new StringBuilder("Frontier: stop probability / least gain of a round\n");
        for (Curve curve : curves) {
            out.append(curve.name()).append('\n').append(RoundsTable.TEXT_HEAD).append('\n');
            curve.threshold().forEach(k -> out.append(k.row().text()).append('\n'));
            curve.gain().forEach(k -> out.append(k.row().text()).append('\n'));
        }
        return out.toString();
    }

    static String csv(List<Curve> curves) {
        StringBuilder out = new StringBuilder("readings,").append(RoundsTable.CSV_HEAD).append('\n');
        for (Curve curve : curves) {
            curve.threshold().forEach(k -> out.append('"').append(curve.name()).append("\",").append(k.row().csv())
                    .append('\n'));
            curve.gain().forEach(k -> out.append('"').append(curve.name()).append("\",").append(k.row().csv())
                    .append('\n'));
        }
        return out.toString();
    }
}
