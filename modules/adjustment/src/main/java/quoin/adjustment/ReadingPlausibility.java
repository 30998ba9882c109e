package quoin.adjustment;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import quoin.adjustment.ReadingDoubt.Cause;
import quoin.adjustment.ReadingDoubt.Level;
import quoin.quantities.Texts;

/** What a reading must satisfy whatever the springs: sizes alike, a flat frame, a total that stays. */
final class ReadingPlausibility {
    private static final Texts TEXTS = Texts.of(ReadingPlausibility.class);

    private static final double G = 9.80665;
    /** No corner of a car carries, or stands, four times what the middle one does. */
    private static final double ALIKE = 4;
    /** Heights smaller than this say nothing by their ratio. */
    private static final double RATIO_FROM_MM = 20;
    private static final double SIGMAS = 3.5;
    private static final double TOTAL_SIGMAS = 3;
    /** Alarm on the total from here on, N (common practice, no source: scales repeat to half a kilogram). */
    private static final double LEAST_TOTAL_N = 0.5 * G;
    /** 99.99 % of chi-squared with eight degrees of freedom. */
    private static final double CHI_SQUARED_8 = 31.83;

    private ReadingPlausibility() {
    }

    /** Figures far out of scale with the other three corners: the decimal point, as a rule. */
    static List<ReadingDoubt> outOfScale(SettledReading reading) {
        List<ReadingDoubt> out = new ArrayList<>();
        for (int first = 0; first < 8; first += 4) {
            double[] present = IntStream.range(first, first + 4).mapToObj(reading::figure).filter(OptionalDouble::isPresent)
                    .mapToDouble(OptionalDouble::getAsDouble).sorted().toArray();
            double middle = present.length < 3 ? 0 : (present[(present.length - 1) / 2] + present[present.length / 2]) / 2;
            if (middle <= (first == 0 ? 0 : RATIO_FROM_MM)) {
                continue;
            }
            for (int row = first; row < first + 4; row++) {
                OptionalDouble value = reading.figure(row);
                if (value.isPresent() && (value.getAsDouble() > ALIKE * middle || value.getAsDouble() < middle / ALIKE)) {
                    out.add(outOfScale(row, value.getAsDouble(), middle));
                }
            }
        }
        return out;
    }

    private static ReadingDoubt outOfScale(int row, double value, double middle) {
        double unit = row < 4 ? G : 1;
        Optional<TypingSlip> slip = TypingSlip.ofThePoint(value / unit, middle / unit, 0.75 * middle / unit);
        String todo = slip.map(s -> TEXTS.say("scale.meant", ReadingCauses.figure(row, s.value() * unit))).orElseGet(() -> TEXTS.say("scale.again"));
        String words = TEXTS.say("scale.out", ReadingCauses.place(row), ReadingCauses.figure(row, value), ReadingCauses.figure(row, middle), todo);
        return new ReadingDoubt(Level.ERROR, Cause.DECIMAL_POINT, OptionalInt.of(row), words,
                slip.map(s -> OptionalDouble.of(s.value() * unit)).orElse(OptionalDouble.empty()));
    }

    /** Front tilt against rear tilt: a stiff frame has one tilt. */
    static Optional<ReadingDoubt> frame(LearningPrior prior, SettledReading reading) {
        if (IntStream.range(4, 8).anyMatch(i -> reading.figure(i).isEmpty())) {
            return Optional.empty();
        }
        double[] n = nullVector(prior);
        double twist = 0;
        double length = 0;
        for (int i = 0; i < 4; i++) {
            twist += n[i] * reading.figure(4 + i).orElseThrow();
            length += n[i] * n[i];
        }
        double sd = prior.noise().heightSdMm() * Math.exp(prior.noise().heightLogSd()) * Math.sqrt(length / reading.settlings());
        if (Math.abs(twist) < SIGMAS * sd) {
            return Optional.empty();
        }
        String tilts = TEXTS.say("frame.tilts", Texts.figure("%+.1f", difference(reading, 4)), Texts.figure("%+.1f", difference(reading, 6)),
                ReadingCauses.corner(0).words(), ReadingCauses.corner(1).words());
        int best = -1;
        TypingSlip slip = null;
        for (int i = 0; i < 4; i++) {
            double read = reading.figure(4 + i).orElseThrow();
            Optional<TypingSlip> found = TypingSlip.of(read, read - twist / n[i], Math.max(SIGMAS * sd / Math.abs(n[i]), 0.5), false);
            if (found.isPresent() && (slip == null || found.get().kind().compareTo(slip.kind()) < 0)) {
                slip = found.get();
                best = 4 + i;
            }
        }
        if (slip == null) {
            return Optional.of(new ReadingDoubt(Level.WARNING, Cause.FRAME_NOT_FLAT, OptionalInt.empty(),
                    TEXTS.say("frame.again", tilts), OptionalDouble.empty()));
        }
        return Optional.of(new ReadingDoubt(Level.WARNING, ReadingCheck.cause(slip.kind()), OptionalInt.of(best),
                TEXTS.say("frame.meant", tilts, Texts.figure("%.1f", slip.value()), ReadingCauses.corner(best).words()),
                OptionalDouble.of(slip.value())));
    }

    private static double difference(SettledReading reading, int left) {
        return reading.figure(left).orElseThrow() - reading.figure(left + 1).orElseThrow();
    }

    /** Weights of the four heights that add to zero for every plane; their size is of no account. */
    private static double[] nullVector(LearningPrior prior) {
        double[] n = new double[4];
        for (int i = 0; i < 4; i++) {
            List<CornerSpring> c = new ArrayList<>(prior.corners());
            c.remove(i);
            double area = (c.get(1).heightXMm() - c.get(0).heightXMm()) * (c.get(2).heightYMm() - c.get(0).heightYMm())
                    - (c.get(2).heightXMm() - c.get(0).heightXMm()) * (c.get(1).heightYMm() - c.get(0).heightYMm());
            n[i] = i % 2 == 0 ? area : -area;
        }
        return n;
    }

    /** What stays when no single cause stands out. */
    static List<ReadingDoubt> unexplained(LearningPrior prior, List<SettledReading> before, SettledReading reading) {
        List<ReadingDoubt> out = new ArrayList<>();
        total(prior, before, reading).ifPresent(out::add);
        if (out.isEmpty()) {
            frame(prior, reading).ifPresent(out::add);
        }
        if (out.isEmpty()) {
            jump(prior, before, reading).ifPresent(out::add);
        }
        return out;
    }

    private static Optional<ReadingDoubt> total(LearningPrior prior, List<SettledReading> before, SettledReading reading) {
        double[] earlier = before.stream().map(ReadingPlausibility::totalN).filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble).toArray();
        OptionalDouble now = totalN(reading);
        if (earlier.length == 0 || now.isEmpty()) {
            return Optional.empty();
        }
        double was = Arrays.stream(earlier).average().orElseThrow();
        double sd = 2 * prior.noise().scaleSdN() * Math.sqrt(1 + 1.0 / earlier.length);
        double change = now.getAsDouble() - was;
        if (Math.abs(change) < Math.max(TOTAL_SIGMAS * sd, LEAST_TOTAL_N)) {
            return Optional.empty();
        }
        return Optional.of(new ReadingDoubt(Level.WARNING, Cause.TOTAL_CHANGED, OptionalInt.empty(), TEXTS.say("total.changed",
                Texts.figure("%.1f", now.getAsDouble() / G), Texts.figure("%.1f", was / G), Texts.figure("%.1f", 2 * sd / G)),
                OptionalDouble.empty()));
    }

    /** Total in the load case of the targets, N. */
    private static OptionalDouble totalN(SettledReading reading) {
        if (IntStream.range(0, 4).anyMatch(i -> reading.figure(i).isEmpty())) {
            return OptionalDouble.empty();
        }
        double sum = IntStream.range(0, 4).mapToDouble(i -> reading.figure(i).orElseThrow()).sum();
        return OptionalDouble.of(sum - reading.loadChanges().stream().mapToDouble(c -> c.massKg() * G).sum());
    }

    /** The whole reading against the prediction, in the load case of the targets. */
    private static Optional<ReadingDoubt> jump(LearningPrior prior, List<SettledReading> before, SettledReading reading) {
        if (!reading.loadChanges().isEmpty() || IntStream.range(0, 8).anyMatch(i -> reading.figure(i).isEmpty())) {
            return Optional.empty();
        }
        ReadingForecast forecast = Learner.learn(prior, before)
                .predict(reading.turns().stream().mapToDouble(Double::doubleValue).toArray());
        double[] off = IntStream.range(0, 8).mapToDouble(i -> reading.figure(i).orElseThrow() - forecast.mean().get(i)).toArray();
        if (Mahalanobis.squared(off, forecast.readingCovariance()) < CHI_SQUARED_8) {
            return Optional.empty();
        }
        int worst = IntStream.range(0, 8).boxed().max((a, b) -> Double.compare(Math.abs(off[a]) / forecast.readingSd(a),
                Math.abs(off[b]) / forecast.readingSd(b))).orElseThrow();
        return Optional.of(new ReadingDoubt(Level.WARNING, Cause.UNEXPLAINED, OptionalInt.of(worst), TEXTS.say("jump", ReadingCauses.place(worst),
                ReadingCauses.figure(worst, reading.figure(worst).orElseThrow()), ReadingCauses.figure(worst, forecast.mean().get(worst))), OptionalDouble.empty()));
    }
}
