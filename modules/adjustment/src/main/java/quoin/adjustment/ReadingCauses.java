package quoin.adjustment;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import quoin.adjustment.ReadingDoubt.Cause;
import quoin.adjustment.ReadingDoubt.Level;
import quoin.adjustment.learn.Departure;
import quoin.adjustment.learn.Suspect;
import quoin.car.Corner;

/** Single causes that would explain an odd reading, and the likeliest of them in words. */
final class ReadingCauses {

    private static final double G = 9.80665;
    /** How far off a wrong load, a wrong height and a wrong count usually are (common practice, no source). */
    private static final double LOAD_SD_N = 15 * G;
    private static final double HEIGHT_SD_MM = 10;
    private static final double TURNS_SD = 2;
    /** A driver of 80 kg shifts by 60 mm either way. */
    private static final double DRIVER_KG = 80;
    private static final double MOMENT_SD_N_MM = DRIVER_KG * G * 60;
    private static final double LEAST_SLIP_KG = 1;
    private static final double LEAST_SLIP_MM = 1.5;
    /** A driver who moved by less only fidgets. */
    private static final double FIDGET_MM = 30;
    /** A slip of the finger that fits to the digit is a sharper explanation than "somehow wrong". */
    private static final double SLIP_BONUS = 2;

    /** An explanation: what to say, and the natural logarithm of its odds against the plain model. */
    private record Explained(double logOdds, ReadingDoubt doubt) {
    }

    private final LearningPrior prior;
    private final List<SettledReading> before;
    private final SettledReading reading;
    private final List<SettledReading> all;

    private ReadingCauses(LearningPrior prior, List<SettledReading> before, SettledReading reading) {
        this.prior = prior;
        this.before = before;
        this.reading = reading;
        all = with(reading);
    }

    /** The likeliest single cause, if its odds are good enough to name it. */
    static Optional<ReadingDoubt> likeliest(LearningPrior prior, List<SettledReading> before, SettledReading reading) {
        ReadingCauses causes = new ReadingCauses(prior, before, reading);
        List<Explained> explained = new ArrayList<>(causes.exchanges());
        Learner.departures(prior, causes.all, causes.suspects()).stream()
                .filter(d -> d.logOdds() > ReadingCheck.NAMED - SLIP_BONUS).map(causes::explain).forEach(explained::add);
        return explained.stream().filter(e -> e.logOdds() > ReadingCheck.NAMED)
                .max((a, b) -> Double.compare(a.logOdds(), b.logOdds())).map(Explained::doubt);
    }

    private List<SettledReading> with(SettledReading last) {
        List<SettledReading> out = new ArrayList<>(before);
        out.add(last);
        return out;
    }

    private List<Suspect> suspects() {
        int at = before.size();
        List<Suspect> out = new ArrayList<>();
        for (int row = 0; row < 8; row++) {
            if (reading.figure(row).isPresent()) {
                out.add(new Suspect(Suspect.Kind.FIGURE, row, at, 0, row < 4 ? LOAD_SD_N : HEIGHT_SD_MM));
            }
        }
        for (Corner corner : Corner.values()) {
            adjuster(corner).ifPresent(a -> out.add(new Suspect(Suspect.Kind.TURNS, a, at, 0, TURNS_SD)));
        }
        out.add(new Suspect(Suspect.Kind.MOMENT, 0, at, 0, MOMENT_SD_N_MM));
        out.add(new Suspect(Suspect.Kind.MOMENT, 1, at, 0, MOMENT_SD_N_MM));
        return out;
    }

    /** The adjuster of the corner that was turned, or else its first. */
    private OptionalInt adjuster(Corner corner) {
        int found = -1;
        for (int a = 0; a < prior.adjusters().size(); a++) {
            if (prior.adjusters().get(a).corner() == corner && (found < 0 || reading.turns().get(a) != 0)) {
                found = a;
            }
        }
        return found < 0 ? OptionalInt.empty() : OptionalInt.of(found);
    }

    private List<Explained> exchanges() {
        double plain = Learner.logEvidence(prior, all);
        List<Double> expected = Learner.learn(prior, before)
                .predict(reading.turns().stream().mapToDouble(Double::doubleValue).toArray()).mean();
        List<Explained> out = new ArrayList<>();
        for (int first = 0; first < 8; first += 4) {
            for (int i = first; i < first + 4; i++) {
                for (int j = i + 1; j < first + 4; j++) {
                    OptionalDouble one = reading.figure(i);
                    OptionalDouble other = reading.figure(j);
                    if (one.isPresent() && other.isPresent() && nearerExchanged(expected, i, j)) {
                        SettledReading swapped = reading.withFigure(i, other.getAsDouble()).withFigure(j, one.getAsDouble());
                        double odds = Learner.logEvidence(prior, with(swapped)) - plain;
                        out.add(new Explained(odds, new ReadingDoubt(Level.ERROR, Cause.CORNERS_EXCHANGED,
                                OptionalInt.of(i), String.format(Locale.ROOT, "The %ss of %s and %s look exchanged: %s and"
                                + " %s fit the other readings.", first == 0 ? "load" : "height", corner(i), corner(j),
                                figure(i, other.getAsDouble()), figure(j, one.getAsDouble())), other)));
                    }
                }
            }
        }
        return out;
    }

    /** Whether two figures lie nearer to what was expected when exchanged; all four move alike with the load case. */
    private boolean nearerExchanged(List<Double> expected, int i, int j) {
        double difference = reading.figure(i).orElseThrow() - reading.figure(j).orElseThrow();
        double wanted = expected.get(i) - expected.get(j);
        return Math.abs(difference) >= least(i) && Math.abs(-difference - wanted) < Math.abs(difference - wanted);
    }

    /** Slips smaller than this are no slips but noise, N or mm. */
    private static double least(int row) {
        return row < 4 ? LEAST_SLIP_KG * G : LEAST_SLIP_MM;
    }

    private Explained explain(Departure d) {
        return switch (d.suspect().kind()) {
            case FIGURE -> figure(d);
            case TURNS -> new Explained(d.logOdds(), turns(d));
            default -> new Explained(d.logOdds(), moved(d));
        };
    }

    private Explained figure(Departure d) {
        int row = d.suspect().index();
        double unit = row < 4 ? G : 1;
        double read = reading.figure(row).orElseThrow();
        double wanted = read - d.amount();
        Optional<TypingSlip> slip = TypingSlip.of(read / unit, wanted / unit, Math.max(3 * d.sd() / unit, 0.3), row < 4)
                .filter(s -> Math.abs(s.value() * unit - read) >= least(row));
        String expected = String.format(Locale.ROOT, "%s reads %s; the other readings allow %s ±%.1f", place(row),
                figure(row, read), figure(row, wanted), 2 * d.sd() / unit);
        if (slip.isPresent()) {
            double meant = slip.get().value();
            String why = slip.get().kind() == TypingSlip.Kind.POUNDS ? " Is that scale set to pounds?" : "";
            return new Explained(d.logOdds() + SLIP_BONUS, new ReadingDoubt(Level.ERROR, ReadingCheck.cause(slip.get().kind()),
                    OptionalInt.of(row), String.format(Locale.ROOT, "%s. Did you mean %s?%s", expected, figure(row, meant * unit), why),
                    OptionalDouble.of(meant * unit)));
        }
        Cause cause = row < 4 ? Cause.SCALE : Cause.HEIGHT;
        String todo = row < 4 ? String.format(Locale.ROOT, " (%.1f %% off). Zero that scale, free the wheel of any chock, and"
                + " read again; if it stays, exchange two scales.", 100 * d.amount() / wanted) : ". Read that height again.";
        return new Explained(d.logOdds(), new ReadingDoubt(Level.WARNING, cause, OptionalInt.of(row), expected + todo,
                OptionalDouble.empty()));
    }

    private ReadingDoubt turns(Departure d) {
        LiftAdjuster adjuster = prior.adjusters().get(d.suspect().index());
        double counted = reading.turns().get(d.suspect().index());
        double real = counted + d.amount();
        double near = Math.max(3 * d.sd(), 0.1);
        String fits = String.format(Locale.ROOT, "the readings fit %.2f turns %s ±%.2f", Math.abs(real), real < 0 ? "down" : "up",
                2 * d.sd());
        if (counted == 0) {
            return doubt(Cause.PAD_OR_UNRECORDED_TURN, String.format(Locale.ROOT, "%s acts as if it had been %s by %.1f mm since"
                    + " the last reading, with no turn recorded there. Look at its pad, and whether a ring was turned.",
                    adjuster.corner(), real > 0 ? "raised" : "lowered", Math.abs(real * adjuster.liftMmPerTurn())));
        }
        String recorded = String.format(Locale.ROOT, "%s is recorded as %.2f turns %s; ", adjuster.id(), Math.abs(counted),
                counted < 0 ? "down" : "up");
        if (Math.abs(real + counted) < near && Math.abs(counted) > near) {
            return doubt(Cause.TURNED_THE_OTHER_WAY, recorded + fits + ": turned the other way?");
        }
        if (Math.abs(real) < near) {
            return doubt(Cause.NOT_TURNED, recorded + "the readings show no turn there. Was it done, or does the ring stick?");
        }
        return doubt(Cause.MISCOUNTED, recorded + fits + ". Count again, or measure the thread.");
    }

    private ReadingDoubt moved(Departure d) {
        boolean lateral = d.suspect().index() == 1;
        String way = lateral ? d.amount() > 0 ? "to the left" : "to the right" : d.amount() > 0 ? "forward" : "rearward";
        List<CornerSpring> c = prior.corners();
        double span = lateral ? (c.get(0).yMm() - c.get(1).yMm() + c.get(2).yMm() - c.get(3).yMm()) / 2
                : (c.get(0).xMm() + c.get(1).xMm() - c.get(2).xMm() - c.get(3).xMm()) / 2;
        double totalN = java.util.stream.IntStream.range(0, 4).mapToDouble(i -> reading.figure(i).orElse(0)).sum();
        String share = String.format(Locale.ROOT, "The %s share changed by %+.2f points, and adjusters cannot change it: ",
                lateral ? "left" : "front", 100 * d.amount() / span / totalN);
        double mm = Math.abs(d.amount()) / G / DRIVER_KG;
        return new ReadingDoubt(mm < FIDGET_MM ? Level.INFO : Level.WARNING, Cause.DRIVER_MOVED, OptionalInt.empty(),
                (totalN > 0 ? share : "") + String.format(Locale.ROOT, "as if a driver of %.0f kg sat %.0f mm further %s."
                + " Sit in the race position and read again.", DRIVER_KG, mm, way), OptionalDouble.empty());
    }

    private static ReadingDoubt doubt(Cause cause, String words) {
        return new ReadingDoubt(Level.WARNING, cause, OptionalInt.empty(), words, OptionalDouble.empty());
    }

    static Corner corner(int row) {
        return Corner.values()[row % 4];
    }

    static String place(int row) {
        return corner(row) + (row < 4 ? " load" : " height");
    }

    /** A figure as shown: kg or mm. */
    static String figure(int row, double value) {
        return row < 4 ? String.format(Locale.ROOT, "%.1f kg", value / G) : String.format(Locale.ROOT, "%.1f mm", value);
    }
}
