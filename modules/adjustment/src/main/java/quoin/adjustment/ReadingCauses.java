package quoin.adjustment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import quoin.adjustment.ReadingDoubt.Cause;
import quoin.adjustment.ReadingDoubt.Level;
import quoin.adjustment.learn.Departure;
import quoin.adjustment.learn.Suspect;
import quoin.car.Corner;
import quoin.quantities.Texts;

/** Single causes that would explain an odd reading, and the likeliest of them in words. */
final class ReadingCauses {
    private static final Texts TEXTS = Texts.of(ReadingCauses.class);

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
    /** From so many figures of a kind on the model tells causes apart. */
    private static final int ENOUGH_OF_A_KIND = 3;
    /** A figure nearer to the expected one than this is none to ask about. */
    private static final double SIGMAS_OF_A_SLIP = 6;
    /** A slip of the finger that fits to the digit is a sharper explanation than "somehow wrong". */
    private static final double SLIP_BONUS = 2;

    /**
     * An explanation.
     *
     * @param logOdds natural logarithm of its odds against the plain model
     * @param doubt   what to say
     * @param mended  the reading as it was meant; empty where that is not known
     */
    record Explained(double logOdds, ReadingDoubt doubt, Optional<SettledReading> mended) {
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
    static Optional<Explained> likeliest(LearningPrior prior, List<SettledReading> before, SettledReading reading) {
        ReadingCauses causes = new ReadingCauses(prior, before, reading);
        List<Explained> explained = new ArrayList<>(causes.exchanges());
        Learner.departures(prior, causes.all, causes.suspects()).stream().map(causes::explain).forEach(explained::add);
        return explained.stream().filter(e -> e.logOdds() > ReadingCheck.NAMED)
                .max((a, b) -> Double.compare(a.logOdds(), b.logOdds()));
    }

    /**
     * A slip of the finger in one of the first figures of a set. With less than three of a kind a wrong figure, a turn not recorded
     * and a driver who moved explain the same, so the model cannot tell them apart; a figure that is the expected one with two digits
     * exchanged, the point forgotten or in pounds is asked about all the same, while the caret is still near it.
     */
    static Optional<ReadingDoubt> slipOfFew(LearningPrior prior, List<SettledReading> before, SettledReading reading) {
        boolean fewLoads = IntStream.range(0, 4).filter(r -> reading.figure(r).isPresent()).count() < ENOUGH_OF_A_KIND;
        boolean fewHeights = IntStream.range(4, 8).filter(r -> reading.figure(r).isPresent()).count() < ENOUGH_OF_A_KIND;
        if (!fewLoads && !fewHeights) {
            return Optional.empty();
        }
        ReadingForecast forecast = Learner.learn(prior, before).predict(reading.turns().stream().mapToDouble(Double::doubleValue).toArray());
        return IntStream.range(0, 8).filter(r -> reading.figure(r).isPresent() && (r < 4 ? fewLoads : fewHeights))
                .mapToObj(r -> slip(r, reading.figure(r).orElseThrow(), forecast.mean().get(r), forecast.readingSd(r)))
                .flatMap(Optional::stream).findFirst();
    }

    private static Optional<ReadingDoubt> slip(int row, double read, double wanted, double sd) {
        if (Math.abs(read - wanted) < Math.max(least(row), SIGMAS_OF_A_SLIP * sd)) {
            return Optional.empty();
        }
        double unit = row < 4 ? G : 1;
        return TypingSlip.of(read / unit, wanted / unit, Math.max(3 * sd / unit, 0.3), row < 4)
                .filter(s -> s.kind() != TypingSlip.Kind.ONE_DIGIT)
                .map(s -> slip(row, read, wanted, 2 * sd, s));
    }

    private static ReadingDoubt slip(int row, double read, double wanted, double within, TypingSlip slip) {
        double unit = row < 4 ? G : 1;
        String why = slip.kind() == TypingSlip.Kind.POUNDS ? TEXTS.say("figure.pounds") : "";
        return new ReadingDoubt(Level.ERROR, ReadingCheck.cause(slip.kind()), OptionalInt.of(row), TEXTS.say("figure.slip", place(row),
                figure(row, read), figure(row, wanted), Texts.figure("%.1f", within / unit), figure(row, slip.value() * unit), why),
                OptionalDouble.of(slip.value() * unit));
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
                                OptionalInt.of(i), TEXTS.say(first == 0 ? "exchanged.loads" : "exchanged.heights",
                                corner(i).words(), corner(j).words(), figure(i, other.getAsDouble()), figure(j, one.getAsDouble())), other, OptionalInt.of(j)),
                                Optional.of(swapped)));
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
            case TURNS -> new Explained(d.logOdds(), turns(d), Optional.empty());
            default -> new Explained(d.logOdds(), moved(d), Optional.empty());
        };
    }

    private Explained figure(Departure d) {
        int row = d.suspect().index();
        double unit = row < 4 ? G : 1;
        double read = reading.figure(row).orElseThrow();
        double wanted = read - d.amount();
        Optional<TypingSlip> slip = TypingSlip.of(read / unit, wanted / unit, Math.max(3 * d.sd() / unit, 0.3), row < 4)
                .filter(s -> Math.abs(s.value() * unit - read) >= least(row));
        if (slip.isPresent()) {
            return new Explained(d.logOdds() + SLIP_BONUS, slip(row, read, wanted, 2 * d.sd(), slip.get()),
                    Optional.of(reading.withFigure(row, slip.get().value() * unit)));
        }
        String within = Texts.figure("%.1f", 2 * d.sd() / unit);
        Cause cause = row < 4 ? Cause.SCALE : Cause.HEIGHT;
        String words = TEXTS.say(row < 4 ? "figure.scale" : "figure.height", place(row), figure(row, read), figure(row, wanted), within,
                Texts.figure("%.1f", 100 * d.amount() / wanted));
        return new Explained(d.logOdds(), new ReadingDoubt(Level.WARNING, cause, OptionalInt.of(row), words,
                OptionalDouble.empty()), Optional.empty());
    }

    private ReadingDoubt turns(Departure d) {
        LiftAdjuster adjuster = prior.adjusters().get(d.suspect().index());
        double counted = reading.turns().get(d.suspect().index());
        double real = counted + d.amount();
        double near = Math.max(3 * d.sd(), 0.1);
        if (counted == 0) {
            return doubt(Cause.PAD_OR_UNRECORDED_TURN, TEXTS.say(real > 0 ? "moved.raised" : "moved.lowered",
                    adjuster.corner().words(), Texts.figure("%.1f", Math.abs(real * adjuster.liftMmPerTurn()))));
        }
        Object[] told = {adjuster.id(), Texts.figure("%.2f", Math.abs(counted)), way(counted), Texts.figure("%.2f", Math.abs(real)), way(real),
            Texts.figure("%.2f", 2 * d.sd())};
        if (Math.abs(real + counted) < near && Math.abs(counted) > near) {
            return doubt(Cause.TURNED_THE_OTHER_WAY, TEXTS.say("turns.otherWay", told));
        }
        if (Math.abs(real) < near) {
            return doubt(Cause.NOT_TURNED, TEXTS.say("turns.none", told));
        }
        return doubt(Cause.MISCOUNTED, TEXTS.say("turns.miscounted", told));
    }

    private ReadingDoubt moved(Departure d) {
        boolean lateral = d.suspect().index() == 1;
        String way = lateral ? d.amount() > 0 ? "left" : "right" : d.amount() > 0 ? "forward" : "rearward";
        List<CornerSpring> c = prior.corners();
        double span = lateral ? (c.get(0).yMm() - c.get(1).yMm() + c.get(2).yMm() - c.get(3).yMm()) / 2
                : (c.get(0).xMm() + c.get(1).xMm() - c.get(2).xMm() - c.get(3).xMm()) / 2;
        double totalN = java.util.stream.IntStream.range(0, 4).mapToDouble(i -> reading.figure(i).orElse(0)).sum();
        double mm = Math.abs(d.amount()) / G / DRIVER_KG;
        String driver = TEXTS.say("driver." + way, Texts.figure("%.0f", DRIVER_KG), Texts.figure("%.0f", mm));
        return new ReadingDoubt(mm < FIDGET_MM ? Level.INFO : Level.WARNING, Cause.DRIVER_MOVED, OptionalInt.empty(),
                totalN > 0 ? TEXTS.say(lateral ? "share.left" : "share.front", Texts.figure("%+.2f", 100 * d.amount() / span / totalN), driver)
                : Texts.sentence(driver), OptionalDouble.empty());
    }

    private static String way(double turns) {
        return TEXTS.say(turns < 0 ? "way.down" : "way.up");
    }

    private static ReadingDoubt doubt(Cause cause, String words) {
        return new ReadingDoubt(Level.WARNING, cause, OptionalInt.empty(), words, OptionalDouble.empty());
    }

    static Corner corner(int row) {
        return Corner.values()[row % 4];
    }

    static String place(int row) {
        return TEXTS.say(row < 4 ? "place.load" : "place.height", corner(row).words());
    }

    /** A figure as shown: kg or mm. */
    static String figure(int row, double value) {
        return row < 4 ? Texts.figure("%.1f kg", value / G) : Texts.figure("%.1f mm", value);
    }
}
