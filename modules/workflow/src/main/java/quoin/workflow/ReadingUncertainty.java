package quoin.workflow;

import java.util.List;
import java.util.OptionalDouble;
import quoin.car.Assumptions;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.Instruments;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Day;
import quoin.logbook.Derivation;

/**
 * Standard uncertainty of a reading in its base unit: the step of the instrument, step/sqrt(12) (JCGM 100:2008, F.2.2.1),
 * and the repeatability of settling and reading, added in squares. Repeatability starts at a usual value and gives way to
 * the spread of repeated readings as they come. Errors that stay the same all day and were not looked for (a tilted pad, a
 * scale that reads high) are not in it; what a test of the scales leaves uncertain is added by {@link LoadErrors}.
 */
public final class ReadingUncertainty {

    /** The usual repeatability counts like this many degrees of freedom beside the repeats. */
    static final double PRIOR_FREEDOM = 3;
    /** Camber gauge to caster at 20 deg of steer: 0.1 deg of reading costs 0.2 deg of caster (common practice). */
    private static final double CASTER_FACTOR = 2;
    /** Camber gauge to kingpin inclination at 20 deg: sqrt(3/2) / (1 - cos 20 deg). */
    private static final double KPI_FACTOR = 20.3;
    /** Step of a tape and of a turn plate (common practice). */
    private static final double TAPE_MM = 1;
    private static final double TURN_PLATE_DEG = 0.5;

    private record OfDay() implements Derivation<ReadingUncertainty> {
        @Override
        public ReadingUncertainty of(Day day) {
            return new ReadingUncertainty(day.car());
        }

        @Override
        public ReadingUncertainty onward(Day earlier, ReadingUncertainty known, Day day) {
            return known;
        }
    }

    private final Instruments instruments;
    private final double[] chordMm = new double[4];

    /** That of the day's car. */
    static ReadingUncertainty of(Day day) {
        return day.derive(new OfDay());
    }

    public ReadingUncertainty(Car car) {
        instruments = car.instruments();
        for (Corner corner : Corner.values()) {
            OptionalDouble known = car.corners().get(corner).rimChordMm();
            chordMm[corner.ordinal()] = known.isPresent() ? known.getAsDouble()
                    : Assumptions.complete(car).corners().get(corner).rimChordMm();
        }
    }

    /**
     * Uncertainty of one reading.
     *
     * @param parts   values the reading is made of, in the order of {@link Derived#parts}; for a typed reading its own value
     * @param repeats values of the reading in one and the same state of the car; fewer than two say nothing of their spread
     */
    public double of(ReadingId reading, double[] parts, List<Double> repeats) {
        return of(reading, parts, repeats, OptionalDouble.empty());
    }

    /**
     * As {@link #of(ReadingId, double[], List)}, for a figure whose way of measuring has an uncertainty of its own.
     *
     * @param instruments standard uncertainty from the steps of the instruments used, base unit; empty = the car's instruments
     */
    double of(ReadingId reading, double[] parts, List<Double> repeats, OptionalDouble instruments) {
        return ofMean(reading, parts, repeats, instruments, 1);
    }

    /**
     * Uncertainty of the mean of some readings: the repeatability divided by their number under the root (JCGM 100:2008,
     * 4.2.3), the step of the instrument in full, as settling again may find it at the same place.
     *
     * @param count how many readings the mean is taken of, 1 or more
     */
    double ofMean(ReadingId reading, double[] parts, List<Double> repeats, OptionalDouble instruments, int count) {
        return ofMean(reading, parts, RepeatSpread.NONE.with(repeats), instruments, count);
    }

    /**
     * The same with the spread of everything of the kind that was read more than once today. A usual value stands in for
     * {@link #PRIOR_FREEDOM} repeats: the mean of the variance under a scaled inverse chi-square prior, so that two readings that
     * happen to agree do not pass for certainty.
     */
    double ofMean(ReadingId reading, double[] parts, RepeatSpread spread, OptionalDouble instruments, int count) {
        double usual = usualRepeatability(reading);
        double repeatability2 = (PRIOR_FREEDOM * usual * usual + spread.squares()) / (PRIOR_FREEDOM + spread.freedom());
        double step = instruments.isPresent() ? instruments.getAsDouble() : instrument(reading, parts);
        return Math.sqrt(step * step + repeatability2 / count);
    }

    /**
     * Usual standard deviation of settling and reading again (common practice: weights repeat within 0.5 kg, heights within
     * 0.5 mm, taken as half-widths of a rectangle; cross moves with the friction of the joints).
     */
    private double usualRepeatability(ReadingId reading) {
        return switch (reading.kind()) {
            case LOAD -> 0.3;
            case HEIGHT, RAKE -> 0.3;
            case TOTAL -> 0.3;
            case CROSS -> 0.1;
            case FRONT_SHARE, LEFT_SHARE -> 0.03;
            case CAMBER -> 0.04;
            case CASTER -> 0.08;
            case TOE, THRUST_ANGLE, TOTAL_TOE -> Math.toDegrees(0.1 / chord(reading));
            case KPI -> 0.5;
            case WHEELBASE, SETBACK -> 0.5;
            case CIRCUMFERENCE -> 0.5;
            case CG_HEIGHT -> 5;
            case TURN_TOE_OUT -> 0.2;
            case PAD_HEIGHT -> 0.3;
            case PRESSURE -> 0.01;
            case SCALE_ZERO -> 0.05;
        };
    }

    private double chord(ReadingId reading) {
        if (reading.kind() == ReadingKind.TOE) {
            return chordMm[Corner.valueOf(reading.place()).ordinal()];
        }
        return reading.place().equals("FRONT") ? (chordMm[0] + chordMm[1]) / 2 : (chordMm[2] + chordMm[3]) / 2;
    }

    private double instrument(ReadingId reading, double[] parts) {
        double scale = instruments.scaleResolutionKg() / Math.sqrt(12);
        double height = instruments.heightResolutionMm() / Math.sqrt(12);
        double angle = instruments.angleResolutionDeg() / Math.sqrt(12);
        double toe = Math.toDegrees(instruments.toeResolutionMm() / Math.sqrt(12) / chord(reading));
        return switch (reading.kind()) {
            case LOAD, SCALE_ZERO -> scale;
            case HEIGHT, PAD_HEIGHT -> height;
            case CAMBER -> angle;
            case CASTER -> CASTER_FACTOR * angle;
            case KPI -> KPI_FACTOR * angle;
            case WHEELBASE, SETBACK, CIRCUMFERENCE, CG_HEIGHT -> TAPE_MM / Math.sqrt(12);
            case TURN_TOE_OUT -> Math.sqrt(2) * TURN_PLATE_DEG / Math.sqrt(12);
            case TOE -> toe;
            case PRESSURE -> 0.01;
            case TOTAL -> 2 * scale;
            case CROSS -> share(scale, parts, 1, 2);
            case FRONT_SHARE -> share(scale, parts, 0, 1);
            case LEFT_SHARE -> share(scale, parts, 0, 2);
            case RAKE -> height;
            case TOTAL_TOE -> Math.sqrt(2) * toe;
            case THRUST_ANGLE -> toe / Math.sqrt(2);
        };
    }

    /** A share of four independent scales: each load enters with (1 - share) / total or - share / total. */
    private static double share(double scale, double[] loads, int one, int two) {
        if (loads.length < 4) {
            return 0;
        }
        double total = loads[0] + loads[1] + loads[2] + loads[3];
        double share = (loads[one] + loads[two]) / total;
        return total > 0 ? 100 * scale / total * Math.sqrt(2 * (1 - share) * (1 - share) + 2 * share * share) : 0;
    }
}
