package quoin.adjustment.bench;
public final class Dump {
    public static void main(String[] a) {
        int cars = Integer.parseInt(a[0]);
        for (var v : Trajectory.Readings.values()) {
            if (a.length > 1 && !v.name().equals(a[1])) continue;
            long t0 = System.nanoTime();
            for (int c = 0; c < cars; c++) {
                var car = new SimulatedCar(c, SimulatedCar.Conditions.FULL_NOISE);
                for (var p : Trajectory.of(car, SimulatedCar.Conditions.FULL_NOISE, quoin.adjustment.NoisePrior.garage(), v, 7)) {
                    System.out.printf("%s %d %d %d %.4f %.4f %.4f %.4f %d %d%n", v, c, p.round(), p.last() ? 1 : 0, p.now(), p.after(), p.twice(), p.settles(), p.inside() ? 1 : 0, p.extras());
                }
            }
            System.err.println(v + " " + (System.nanoTime() - t0) / 1e6 / cars + " ms per car");
        }
    }
}
