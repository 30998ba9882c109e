package quoin.workflow;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleBiFunction;
import java.util.stream.Stream;
import quoin.car.Corner;
import quoin.car.PerCorner;
import quoin.car.ReadingKind;
import quoin.logbook.Day;
import quoin.logbook.Derivation;
import quoin.logbook.Entry;
import quoin.logbook.Figure;
import quoin.mechanics.ShareUncertainty;

/**
 * What the scales themselves leave uncertain in loads and in what is made of them, settling aside: the steps of the displays, and
 * the factors the readings were put right by. The factors of one test belong together (JCGM 100:2008, 5.2.2): what all four
 * scales read high alike drops out of every share. A mean of several readings has their error once and in full.
 */
final class LoadErrors {

    /**
     * @param stepsUncertainty standard uncertainty from the displays alone, base unit of the reading
     * @param lasting          from the factors of the scales
     */
    record Scales(double stepsUncertainty, Measured.Lasting lasting) {
    }

    /** Tests of the scales by entry. */
    private record Tests() implements Derivation<Map<Long, ScaleCorrection>> {
        @Override
        public Map<Long, ScaleCorrection> of(Day day) {
            return with(Map.of(), day.effective());
        }

        @Override
        public Map<Long, ScaleCorrection> onward(Day earlier, Map<Long, ScaleCorrection> known, Day day) {
            return with(known, day.beyond(earlier));
        }

        private static Map<Long, ScaleCorrection> with(Map<Long, ScaleCorrection> known, List<Entry> more) {
            Map<Long, ScaleCorrection> tests = known;
            for (Entry entry : more) {
                Optional<ScaleCorrection> found = entry instanceof Entry.Check check ? ScaleCorrection.of(check) : Optional.empty();
                if (found.isPresent()) {
                    tests = new HashMap<>(tests);
                    tests.put(entry.number(), found.get());
                }
            }
            return tests;
        }
    }

    private final Day day;
    private final Map<Long, ScaleCorrection> tests;
    private final double stepKg;

    LoadErrors(Day day) {
        this.day = day;
        tests = day.derive(new Tests());
        stepKg = day.car().instruments().scaleResolutionKg() / Math.sqrt(12);
    }

    static boolean isMadeOfLoads(ReadingKind kind) {
        return switch (kind) {
            case TOTAL, CROSS, FRONT_SHARE, LEFT_SHARE -> true;
            default -> false;
        };
    }

    private Optional<ScaleCorrection> correction(Figure figure) {
        if (tests.isEmpty() || figure.reading().kind() != ReadingKind.LOAD) {
            return Optional.empty();
        }
        return day.counting(figure.entry()).filter(Entry.Reading.class::isInstance).map(Entry.Reading.class::cast)
                .flatMap(ScaleCorrection::test).filter(test -> test < figure.entry()).map(tests::get);
    }

    /** What the factor of its scale leaves uncertain in a load; none for any other reading. */
    Measured.Lasting of(Figure figure, double loadKg) {
        return correction(figure).map(c -> new Measured.Lasting(loadKg * c.relative(Corner.valueOf(figure.reading().place())), c.source()))
                .orElse(Measured.Lasting.NONE);
    }

    /**
     * For a reading that is made of the four loads.
     *
     * @param figures the four, LF RF LR RR
     * @param loadsKg their values
     */
    Scales of(ReadingKind kind, List<Figure> figures, double[] loadsKg) {
        PerCorner<Double> loads = PerCorner.of(c -> loadsKg[c.ordinal()]);
        List<Optional<ScaleCorrection>> tests = new ArrayList<>();
        figures.forEach(f -> tests.add(correction(f)));
        double steps = uncertainty(kind, loads, (one, other) -> one != other ? 0
                : Math.pow(tests.get(one.ordinal()).isPresent() ? stepKg : figures.get(one.ordinal()).instrumentUncertainty().orElse(stepKg), 2));
        double factors = uncertainty(kind, loads, lasting(tests, loads));
        boolean alike = tests.stream().allMatch(t -> t.isPresent() && t.get().entry() == tests.get(0).orElseThrow().entry());
        return new Scales(steps, new Measured.Lasting(factors, alike ? tests.get(0).orElseThrow().source() : ""));
    }

    /**
     * What the factors leave uncertain in the four loads together.
     *
     * @param figures the loads as read, each with its value, kg
     * @return covariance, kg2, rows and columns LF RF LR RR; all 0 where the scales were not tested
     */
    List<List<Double>> lasting(PerCorner<Figure> figures) {
        ToDoubleBiFunction<Corner, Corner> covariance = lasting(Stream.of(Corner.values()).map(figures::get).map(this::correction).toList(),
                figures.map(Figure::value));
        return Stream.of(Corner.values()).map(one -> Stream.of(Corner.values())
                .map(other -> covariance.applyAsDouble(one, other)).toList()).toList();
    }

    private static ToDoubleBiFunction<Corner, Corner> lasting(List<Optional<ScaleCorrection>> tests, PerCorner<Double> loadsKg) {
        return (one, other) -> tests.get(one.ordinal()).filter(t -> tests.get(other.ordinal()).filter(o -> o.entry() == t.entry()).isPresent())
                .map(t -> loadsKg.get(one) * loadsKg.get(other) * t.relativeCovariance(one, other)).orElse(0.0);
    }

    private static double uncertainty(ReadingKind kind, PerCorner<Double> loads, ToDoubleBiFunction<Corner, Corner> covariance) {
        ShareUncertainty shares = ShareUncertainty.of(loads, covariance);
        return switch (kind) {
            case CROSS -> shares.cross().standardPercent();
            case FRONT_SHARE -> shares.front().standardPercent();
            case LEFT_SHARE -> shares.left().standardPercent();
            default -> ofSum(covariance);
        };
    }

    private static double ofSum(ToDoubleBiFunction<Corner, Corner> covariance) {
        double variance = 0;
        for (Corner one : Corner.values()) {
            for (Corner other : Corner.values()) {
                variance += covariance.applyAsDouble(one, other);
            }
        }
        return Math.sqrt(Math.max(0, variance));
    }
}
