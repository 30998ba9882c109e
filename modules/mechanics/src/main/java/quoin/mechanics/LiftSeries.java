package quoin.mechanics;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import quoin.quantities.Texts;

/**
 * Height of the centre of gravity from several lifts of the rear axle, the front on scales, the level reading being a
 * lift of 0. ISO 10392 asks for three lifts or more, up and down, and a straight plot of load against tan theta.
 *
 * <p>With theta the rotation of the car, W its weight, L the wheelbase, Rf and Rr the heights of the wheel centres and N
 * the front load, the balance about the front contact point is exactly linear in the unknowns N0 (level) and h:
 * {@code N (L - (Rr - Rf) tan theta) / W = N0 L / W + (h - Rr) tan theta}. They are found by least squares. Derived here
 * from the balance in {@link AxleLift}.
 *
 * @param totalKgf             weight of the car
 * @param wheelbaseMm          distance between the axles, car level
 * @param frontWheelCentreMm   height of the front wheel centre above its contact point
 * @param rearWheelCentreMm    height of the rear wheel centre above its contact point
 * @param lifts                at least two at different heights
 */
public record LiftSeries(double totalKgf, double wheelbaseMm, double frontWheelCentreMm, double rearWheelCentreMm, List<Lift> lifts) {
    private static final Texts TEXTS = Texts.of(LiftSeries.class);

    /** Degrees of freedom beyond which t is the normal distribution to every digit shown. */
    private static final double UNLIMITED = 1e5;

    /**
     * One reading.
     *
     * @param rearLiftMm how far the rear wheel centres were lifted; 0 = car level
     * @param frontKgf   front axle load
     */
    public record Lift(double rearLiftMm, double frontKgf) {
    }

    /**
     * Standard uncertainties of what goes in (JCGM 100:2008).
     *
     * @param totalKgf weight of the car, kgf
     * @param loadKgf  each front axle load, kgf; also used for its settling where the lifts tell nothing of it
     * @param lengthMm wheelbase and wheel centres by a tape, mm
     * @param liftMm   each lift, mm
     */
    public record Uncertainties(double totalKgf, double loadKgf, double lengthMm, double liftMm) {
    }

    /**
     * The fit.
     *
     * @param cgHeightMm         height above the road, car level
     * @param standardMm         its standard uncertainty
     * @param frontLevelKgf      front axle load, car level, as fitted
     * @param residualsKgf       read front load less the fitted one, in the order of the lifts
     * @param residualSdKgf      their standard deviation, n - 2 degrees of freedom; empty with two lifts only
     * @param degreesOfFreedom   effective, Welch-Satterthwaite; empty = unlimited
     * @param expandedMm         half width of the 95 % interval
     */
    public record Fit(double cgHeightMm, double standardMm, double frontLevelKgf, List<Double> residualsKgf,
            OptionalDouble residualSdKgf, OptionalDouble degreesOfFreedom, double expandedMm) {
    }

    /** @throws InvalidInputException naming the reading that cannot be */
    public LiftSeries {
        lifts = List.copyOf(lifts);
        Require.positive("total_kgf", totalKgf);
        if (lifts.stream().mapToDouble(Lift::rearLiftMm).distinct().count() < 2) {
            throw new InvalidInputException("lifts", TEXTS.phrase("twoLiftsAtDifferent"));
        }
        for (Lift lift : lifts) {
            if (!(lift.rearLiftMm() >= 0)) {
                throw new InvalidInputException("rearLift_mm", TEXTS.phrase("mustNotBeNegative"));
            }
            if (lift.rearLiftMm() > 0) {
                new AxleLift(totalKgf, lift.frontKgf(), lift.frontKgf(), wheelbaseMm, frontWheelCentreMm, rearWheelCentreMm, lift.rearLiftMm());
            } else if (!(lift.frontKgf() > 0 && lift.frontKgf() < totalKgf)) {
                throw new InvalidInputException("frontAxleLevel_kgf", TEXTS.phrase("mustBeMoreThan"));
            }
        }
    }

    /** Height and level front load by least squares, with the uncertainty of both the instruments and the scatter. */
    public Fit fit(Uncertainties u) {
        double[] found = solve(inputs());
        List<Double> residuals = residuals(found);
        int spare = lifts.size() - 2;
        OptionalDouble scatter = spare > 0
                ? OptionalDouble.of(Math.sqrt(residuals.stream().mapToDouble(r -> r * r).sum() / spare)) : OptionalDouble.empty();
        boolean scatterRules = scatter.orElse(0) > u.loadKgf();
        double load = scatterRules ? scatter.getAsDouble() : u.loadKgf();
        OptionalDouble freedom = scatterRules ? OptionalDouble.of(spare) : OptionalDouble.empty();
        MeasurementModel.Result result = height(u, load, freedom);
        return new Fit(found[1], result.standardUncertainty(), found[0], residuals, scatter, result.degreesOfFreedom(),
                result.expandedUncertainty(0.95));
    }

    private MeasurementModel.Result height(Uncertainties u, double loadKgf, OptionalDouble freedom) {
        double[] values = inputs();
        List<MeasurementModel.Input> inputs = new ArrayList<>();
        double[] tape = {u.totalKgf(), u.lengthMm(), u.lengthMm(), u.lengthMm()};
        for (int i = 0; i < values.length; i++) {
            if (i < tape.length) {
                inputs.add(MeasurementModel.Input.of(values[i], tape[i]));
            } else if (i % 2 == 0) {
                inputs.add(MeasurementModel.Input.of(values[i], values[i] == 0 ? 0 : u.liftMm()));
            } else {
                // The loads share one degree of freedom count: each enters with its part of the scatter.
                inputs.add(new MeasurementModel.Input(values[i], loadKgf, freedom));
            }
        }
        MeasurementModel.Result result = new MeasurementModel(v -> solve(v)[1]).evaluate(inputs);
        return freedom.isEmpty() ? result : pooled(result, freedom.getAsDouble());
    }

    /** Loads whose scatter was found together have its degrees of freedom once, not once each (JCGM 100:2008, H.3.2). */
    private static MeasurementModel.Result pooled(MeasurementModel.Result result, double freedom) {
        double loads = 0;
        for (int i = 5; i < result.contributions().size(); i += 2) {
            loads += Math.pow(result.contributions().get(i), 2);
        }
        double effective = Math.pow(result.standardUncertainty(), 4) / (loads * loads / freedom);
        return new MeasurementModel.Result(result.value(), result.standardUncertainty(), result.contributions(),
                effective < UNLIMITED ? OptionalDouble.of(effective) : OptionalDouble.empty());
    }

    private double[] inputs() {
        double[] values = new double[4 + 2 * lifts.size()];
        values[0] = totalKgf;
        values[1] = wheelbaseMm;
        values[2] = frontWheelCentreMm;
        values[3] = rearWheelCentreMm;
        for (int i = 0; i < lifts.size(); i++) {
            values[4 + 2 * i] = lifts.get(i).rearLiftMm();
            values[5 + 2 * i] = lifts.get(i).frontKgf();
        }
        return values;
    }

    /** Level front load and height from the inputs in their order. */
    private static double[] solve(double[] v) {
        int n = (v.length - 4) / 2;
        double sx = 0;
        double sy = 0;
        double sxx = 0;
        double sxy = 0;
        for (int i = 0; i < n; i++) {
            double x = tangent(v[1], v[2], v[3], v[4 + 2 * i]);
            double y = v[5 + 2 * i] * (v[1] - (v[3] - v[2]) * x) / v[0];
            sx += x;
            sy += y;
            sxx += x * x;
            sxy += x * y;
        }
        double slope = (n * sxy - sx * sy) / (n * sxx - sx * sx);
        return new double[] {(sy - slope * sx) / n * v[0] / v[1], v[3] + slope};
    }

    private static double tangent(double wheelbase, double front, double rear, double lift) {
        double between = Math.hypot(wheelbase, rear - front);
        return Math.tan(Math.asin((rear + lift - front) / between) - Math.asin((rear - front) / between));
    }

    private List<Double> residuals(double[] found) {
        List<Double> residuals = new ArrayList<>();
        for (Lift lift : lifts) {
            double t = tangent(wheelbaseMm, frontWheelCentreMm, rearWheelCentreMm, lift.rearLiftMm());
            double fitted = (found[0] * wheelbaseMm + (found[1] - rearWheelCentreMm) * t * totalKgf)
                    / (wheelbaseMm - (rearWheelCentreMm - frontWheelCentreMm) * t);
            residuals.add(lift.frontKgf() - fitted);
        }
        return List.copyOf(residuals);
    }
}
