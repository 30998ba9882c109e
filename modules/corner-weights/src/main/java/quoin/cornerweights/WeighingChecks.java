package quoin.cornerweights;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import org.openide.util.NbBundle.Messages;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Figure;
import quoin.quantities.Texts;
import quoin.workflow.Derived;
import quoin.workflow.spi.Finding;

/**
 * Perches only move weight between the diagonals: total, front share and left share stay (a law of statics). Where they
 * changed between two weighings though nothing else was touched, a scale or the seat is to be looked at.
 */
@Messages({
    "weighing.total=a scale has drifted, or something was put on or taken off",
    "weighing.front=the driver sits differently, or a scale is wrong",
    "weighing.left=the driver leans, or a scale is wrong",
    "# {0} - reading",
    "# {1} - change",
    "# {2} - likely cause",
    "weighing.changed={0} changed by {1} since the last weighing, which perches cannot do: {2}; zero the scales and weigh again"})
final class WeighingChecks {

    /** Three standard deviations of the difference of two totals, kg, with scales read to 0.2 kg (common practice). */
    static final double TOTAL_LIMIT_KG = 0.6;
    /** The same for a share of a car of some 500 kg, %: 0.1 kg a scale, and the driver never sits twice alike. */
    static final double SHARE_LIMIT_PERCENT = 0.15;
    private static final Set<String> THAT_MOVE_MASS = Set.of(Conditions.DRIVER, Conditions.FUEL, Conditions.BALLAST, Conditions.TYRES,
            Conditions.PADS);

    private WeighingChecks() {
    }

    /** Findings on the last two weighings in which all four loads were read together. */
    static List<Finding> of(Day day) {
        List<Long> weighings = weighings(day);
        if (weighings.size() < 2) {
            return List.of();
        }
        long last = weighings.get(weighings.size() - 1);
        long before = weighings.get(weighings.size() - 2);
        if (otherThanPerches(day, before, last)) {
            return List.of();
        }
        List<Finding> findings = new ArrayList<>();
        check(day, ReadingKind.TOTAL, before, last, TOTAL_LIMIT_KG, "kg",
                Bundle.weighing_total()).ifPresent(findings::add);
        check(day, ReadingKind.FRONT_SHARE, before, last, SHARE_LIMIT_PERCENT, "%",
                Bundle.weighing_front()).ifPresent(findings::add);
        check(day, ReadingKind.LEFT_SHARE, before, last, SHARE_LIMIT_PERCENT, "%",
                Bundle.weighing_left()).ifPresent(findings::add);
        return List.copyOf(findings);
    }

    /** The last two entries in which all four loads were read, the older one first; fewer where there were fewer. */
    private static List<Long> weighings(Day day) {
        List<Figure> lf = day.history(ReadingId.of(ReadingKind.LOAD, Corner.LF));
        List<Long> found = new ArrayList<>();
        for (int i = lf.size() - 1; i >= 0 && found.size() < 2; i--) {
            long entry = lf.get(i).entry();
            boolean together = List.of(Corner.values()).stream().allMatch(c -> day.latestAt(ReadingId.of(ReadingKind.LOAD, c), entry)
                    .filter(f -> f.entry() == entry).isPresent());
            if (together) {
                found.add(0, entry);
            }
        }
        return found;
    }

    /** True where anything happened between that may change total or shares, or the two were not read in the same state. */
    private static boolean otherThanPerches(Day day, long before, long last) {
        ReadingId any = ReadingId.of(ReadingKind.LOAD, Corner.LF);
        if (!massState(day, any, before).equals(massState(day, any, last))) {
            return true;
        }
        return day.after(before).stream().takeWhile(e -> e.number() < last).anyMatch(e ->
                e instanceof Entry.Adjustment a && a.turns().stream().anyMatch(t -> !t.adjuster().kind().isSpringLeg())
                || e instanceof Entry.Condition c && (c.key().equals(Conditions.BALLAST) || c.key().equals(Conditions.PADS)));
    }

    private static Map<String, String> massState(Day day, ReadingId load, long entry) {
        Map<String, String> state = new TreeMap<>();
        day.latestAt(load, entry).map(Figure::conditions).orElse(Map.of()).forEach((key, value) -> {
            if (THAT_MOVE_MASS.contains(key)) {
                state.put(key, value);
            }
        });
        return state;
    }

    private static Optional<Finding> check(Day day, ReadingKind kind, long before, long last, double limit, String unit, String likely) {
        ReadingId id = ReadingId.ofCar(kind);
        double change = value(day, id, last) - value(day, id, before);
        if (Math.abs(change) <= limit) {
            return Optional.empty();
        }
        return Optional.of(Finding.warning(Bundle.weighing_changed(Texts.sentence(kind.words()), Texts.figure("%+.2f ", change) + unit, likely), id));
    }

    private static double value(Day day, ReadingId id, long entry) {
        Car car = day.car();
        return Derived.value(car, id, part -> day.latestAt(part, entry).map(f -> OptionalDouble.of(f.value()))
                .orElse(OptionalDouble.empty())).orElseThrow();
    }
}
