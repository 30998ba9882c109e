package quoin.adjustment.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import quoin.adjustment.NoisePrior;
import quoin.adjustment.StopRule;
import quoin.adjustment.bench.SimulatedCar.Conditions;

/**
 * How many times must the driver climb in? Random cars, every strategy on the same cars and the same noise. Not a unit
 * test: run {@code main} with the number of cars (default 2000), the output folder (default target/rounds) and the number
 * of threads (default 1). Writes a table, CSV files and charts.
 *
 * <p>Full noise: cars of 460-1500 kg with driver, rates believed to 20 %, lifts to 5 %, friction 1-4 kg either way at each
 * suspension, heights read to 0.5-1 mm either way, quarter turns, cross 50 +-0.2 %, heights +-1 mm; truth is the
 * friction-free car. A round is one turn of the adjusters and one climb-in; the as-found reading is not counted.
 */
public final class RoundsBenchmark {

    private static final int ROUNDS = 10;

    private final RoundsTable table = new RoundsTable();
    private final Map<Trajectory.Readings, List<List<Trajectory.Point>>> full =
            new EnumMap<>(Trajectory.Readings.class);
    private final List<List<Trajectory.Point>> settled = new ArrayList<>();
    private final List<List<Trajectory.Point>> three = new ArrayList<>();

    /** Everything that one car gives. */
    private record CarRuns(Map<String, Run> runs, Map<Trajectory.Readings, List<Trajectory.Point>> full,
            List<Trajectory.Point> settled, List<Trajectory.Point> three) {
    }

    private RoundsBenchmark() {
    }

    public static void main(String[] args) throws IOException, InterruptedException, ExecutionException {
        int cars = args.length > 0 ? Integer.parseInt(args[0]) : 2000;
        Path folder = Path.of(args.length > 1 ? args[1] : "target/rounds");
        int threads = args.length > 2 ? Integer.parseInt(args[2]) : 1;
        Files.createDirectories(folder);
        RoundsBenchmark benchmark = new RoundsBenchmark();
        long start = System.nanoTime();
        benchmark.run(cars, threads);
        String report = benchmark.report(folder);
        report += String.format(Locale.ROOT, "%n%d cars, %.0f s%n", cars, (System.nanoTime() - start) / 1e9);
        System.out.println(report);
        Files.writeString(folder.resolve("rounds.txt"), report);
    }

    private void run(int cars, int threads) throws InterruptedException, ExecutionException {
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            List<Callable<CarRuns>> work = new ArrayList<>();
            for (int c = 0; c < cars; c++) {
                long seed = c;
                work.add(() -> car(seed));
            }
            for (Future<CarRuns> done : pool.invokeAll(work)) {
                CarRuns one = done.get();
                one.runs().forEach(table::add);
                one.full().forEach((r, points) -> full.computeIfAbsent(r, k -> new ArrayList<>()).add(points));
                settled.add(one.settled());
                three.add(one.three());
            }
        } finally {
            pool.shutdown();
        }
    }

    private static CarRuns car(long seed) {
        Map<String, Run> runs = new java.util.LinkedHashMap<>();
        references(seed, Conditions.FULL_NOISE, NoisePrior.garage(), "", runs);
        Map<Trajectory.Readings, List<Trajectory.Point>> full = new EnumMap<>(Trajectory.Readings.class);
        SimulatedCar car = new SimulatedCar(seed, Conditions.FULL_NOISE);
        for (Trajectory.Readings r : Trajectory.Readings.values()) {
            full.put(r, Trajectory.of(car, Conditions.FULL_NOISE, NoisePrior.garage(), r, ROUNDS));
        }
        Conditions well = Conditions.WELL_SETTLED;
        modelled(seed, well, NoisePrior.wellSettled(), ", well settled", runs);
        return new CarRuns(runs, full,
                Trajectory.of(new SimulatedCar(seed, well), well, NoisePrior.wellSettled(), Trajectory.Readings.ONE, 6),
                Trajectory.of(car, Conditions.THREE_WEIGHINGS, NoisePrior.garage(), Trajectory.Readings.ONE, 6));
    }

    private static void references(long seed, Conditions c, NoisePrior noise, String suffix, Map<String, Run> runs) {
        SimulatedCar car = new SimulatedCar(seed, c);
        runs.put("rule of thumb" + suffix, HandStrategies.ruleOfThumb(new Session(car, c)));
        runs.put("skilled by hand" + suffix, HandStrategies.skilledByHand(new Session(car, c)));
        modelled(seed, c, noise, suffix, runs);
        runs.put("true rates known, filtered, stop on the readings" + suffix,
                ModelStrategies.learning(new Session(car, c), car.knowing(noise), ModelStrategies.Stop.READING));
        runs.put("update, stop on the bare estimate (not to be claimed)" + suffix,
                ModelStrategies.learning(new Session(car, c), car.prior(noise), ModelStrategies.Stop.ESTIMATE));
    }

    private static void modelled(long seed, Conditions c, NoisePrior noise, String suffix, Map<String, Run> runs) {
        SimulatedCar car = new SimulatedCar(seed, c);
        runs.put("nominal model, stop on the readings" + suffix, ModelStrategies.nominal(new Session(car, c), noise));
        runs.put("nominal with update, stop on the readings" + suffix,
                ModelStrategies.learning(new Session(car, c), car.prior(noise), ModelStrategies.Stop.READING));
        runs.put("update, stop on estimate + 1 sigma" + suffix,
                ModelStrategies.learning(new Session(car, c), car.prior(noise),
                        ModelStrategies.Stop.ESTIMATE_AND_SIGMA));
    }

    private String report(Path folder) throws IOException {
        full.forEach((readings, cars) -> cars.forEach(points ->
                table.add("Quoin, " + Frontier.name(readings), Frontier.stop(points, StopRule.USUAL))));
        full.get(Trajectory.Readings.ONE).forEach(points -> table.add("Quoin, one weighing, 80 % or 6 points",
                Frontier.stop(points, new StopRule(0.8, 0.06, 2))));
        settled.forEach(points -> table.add("Quoin, one weighing, well settled", Frontier.stop(points, StopRule.USUAL)));
        three.forEach(points -> table.add("Quoin, three settled weighings a round",
                Frontier.stop(points, StopRule.USUAL)));
        StringBuilder out = new StringBuilder(RoundsTable.TEXT_HEAD).append('\n');
        StringBuilder csv = new StringBuilder(RoundsTable.CSV_HEAD).append('\n');
        for (RoundsTable.Row row : table.rows()) {
            out.append(row.text()).append('\n');
            csv.append(row.csv()).append('\n');
        }
        Files.writeString(folder.resolve("strategies.csv"), csv);
        List<Frontier.Curve> curves = new ArrayList<>();
        full.forEach((readings, cars) -> curves.add(Frontier.curve(readings, cars)));
        out.append('\n').append(Frontier.text(curves));
        Files.writeString(folder.resolve("frontier.csv"), Frontier.csv(curves));
        List<Calibration.Bin> stops = Calibration.ofStops(full);
        List<Calibration.Bin> points = Calibration.ofPoints(full);
        out.append('\n').append(Calibration.text("claimed at the stop", stops))
                .append('\n').append(Calibration.text("claimed after any reading", points));
        Files.writeString(folder.resolve("calibration.csv"), Calibration.csv(stops, points));
        RoundsCharts.write(folder, table.rows(), curves, stops, points);
        return out.toString();
    }
}
