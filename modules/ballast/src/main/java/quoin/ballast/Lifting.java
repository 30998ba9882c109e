package quoin.ballast;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.openide.util.NbBundle.Messages;
import quoin.car.Car;
import quoin.car.KnownMass;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Measurement;
import quoin.mechanics.LiftSeries.Fit;
import quoin.mechanics.LiftSeries.Lift;
import quoin.mechanics.LiftSeries.Uncertainties;
import quoin.mechanics.LiftSeries;
import quoin.quantities.Texts;

/**
 * The height of the centre of gravity from the lifts read, as it is told and recorded.
 *
 * @param series      what was read
 * @param fit         the fit of the car as it was lifted
 * @param cgHeightMm  height with the driver in, mm
 * @param standardMm  its standard uncertainty, mm
 * @param expandedMm  half width of its 95 % interval, mm
 * @param driverKg    driver put in by calculation, kg; 0 = he was in the car or is not known
 */
record Lifting(LiftSeries series, Fit fit, double cgHeightMm, double standardMm, double expandedMm, double driverKg) {

    static final String METHOD = "cg-axle-lift";
    static final ReadingId HEIGHT = ReadingId.ofCar(ReadingKind.CG_HEIGHT);
    /** A tape to 1 mm read twice, and where a wheel centre is (common practice). */
    private static final double TAPE_MM = 1.0;
    /** Settling of an axle on blocked suspension beside the step of two scales, kg (common practice). */
    private static final double SETTLING_KG = 0.3;
    private static final int FEWEST_LIFTS = 3;

    /** How finely this car's own scales and a tape read. */
    static Uncertainties uncertainties(Car car) {
        double step = car.instruments().scaleResolutionKg() / Math.sqrt(12);
        return new Uncertainties(Math.hypot(2 * step, SETTLING_KG), Math.hypot(Math.sqrt(2) * step, SETTLING_KG), TAPE_MM, TAPE_MM);
    }

    /**
     * Fits the lifts.
     *
     * @param driverOut true where the driver was out of the car: he is put in by calculation, at his place in the car's
     *                  description
     */
    static Lifting of(Car car, LiftSeries series, boolean driverOut) {
        Fit fit = series.fit(uncertainties(car));
        double driver = 0;
        double moment = 0;
        for (KnownMass known : car.masses().known()) {
            if (driverOut && known.role() == KnownMass.Role.DRIVER) {
                driver += known.massKg();
                moment += known.massKg() * known.zMm();
            }
        }
        double total = series.totalKgf() + driver;
        double part = series.totalKgf() / total;
        return new Lifting(series, fit, fit.cgHeightMm() * part + moment / total, fit.standardMm() * part, fit.expandedMm() * part, driver);
    }

    /** What the lifts themselves make doubtful, with the remedy. */
    @Messages({
        "lift.few=Fewer than three lifts: a bent line cannot be seen; lift to more heights, up and down again",
        "# {0} - lift", "# {1} - residual", "lift.bent=The lift of {0} mm is {1} kg off the line: look for a brake that holds, a spring that "
                + "moves or fuel that runs, and read it again",
        "lift.low=The highest lift is below a tenth of the wheelbase: the change of load is hardly more than the step of the scales; lift higher",
        "# {0} - height", "lift.impossible=A height of {0} mm is unlikely for any car: check the lifts and that the front axle is on the scales"})
    List<String> doubts() {
        List<String> doubts = new ArrayList<>();
        long heights = series.lifts().stream().map(Lift::rearLiftMm).filter(l -> l > 0).distinct().count();
        double highest = series.lifts().stream().mapToDouble(Lift::rearLiftMm).max().orElse(0);
        if (heights < FEWEST_LIFTS) {
            doubts.add(Bundle.lift_few());
        }
        if (highest < series.wheelbaseMm() / 10) {
            doubts.add(Bundle.lift_low());
        }
        double usual = 3 * SETTLING_KG;
        for (int i = 0; i < series.lifts().size(); i++) {
            double off = fit.residualsKgf().get(i);
            if (Math.abs(off) > usual) {
                doubts.add(Bundle.lift_bent(Math.round(series.lifts().get(i).rearLiftMm()), Texts.figure("%+.1f", off)));
            }
        }
        if (cgHeightMm < 100 || cgHeightMm > series.wheelbaseMm() / 2) {
            doubts.add(Bundle.lift_impossible(Math.round(cgHeightMm)));
        }
        return List.copyOf(doubts);
    }

    /** As the logbook keeps it: everything read, and the uncertainty. */
    Measurement measurement(Map<String, String> raw, String words) {
        return new Measurement(METHOD, raw, words, Map.of(HEIGHT, standardMm));
    }

    /** Value of a reading to be recorded, mm. */
    Map<ReadingId, Double> values() {
        return Map.of(HEIGHT, cgHeightMm);
    }

    /** Standard deviation of the lifts about their line, kg; empty with two lifts only. */
    OptionalDouble scatterKg() {
        return fit.residualSdKgf();
    }
}
