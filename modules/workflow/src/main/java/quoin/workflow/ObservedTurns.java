package quoin.workflow;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import quoin.car.AdjusterId;
import quoin.car.Car;
import quoin.car.ReadingId;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.suspension.spi.SuspensionTypes;
import quoin.workflow.ExpectedMove.Move;

/**
 * What a turn did: rounds with the reading taken on both sides, less what the other adjusters of the round were expected to do,
 * which adds to the uncertainty.
 *
 * @param adjuster what was turned
 * @param reading  what it moved
 * @param rounds   how many rounds tell of it
 * @param observed move per turn (mm of shim), mean of the rounds weighted by their uncertainty, and its standard uncertainty
 * @param expected move per turn by the response as it is believed at the end of the day; empty = not known
 */
public record ObservedTurns(AdjusterId adjuster, ReadingId reading, int rounds, Move observed, Optional<Move> expected) {

    private static final double NOTHING = 1e-9;

    private record Key(AdjusterId adjuster, ReadingId reading) {
    }

    /** Sums of a weighted mean: sum of y / u2 and of 1 / u2. */
    private record Sums(double weighted, double weight, int rounds) {
        Sums plus(double value, double u) {
            return new Sums(weighted + value / (u * u), weight + 1 / (u * u), rounds + 1);
        }

        Sums plus(Sums other) {
            return new Sums(weighted + other.weighted(), weight + other.weight(), rounds + other.rounds());
        }
    }

    /** Every adjuster turned on a day, with every reading the turn was there to move. */
    public static List<ObservedTurns> of(Day day, SuspensionTypes types) {
        ExpectedMoves expected = new ExpectedMoves(day, types);
        ReadingsAt read = new ReadingsAt(day);
        Map<Key, Sums> sums = new LinkedHashMap<>();
        long from = 0;
        Map<AdjusterId, Double> turned = new LinkedHashMap<>();
        boolean readSince = false;
        for (Entry entry : day.effective()) {
            if (entry instanceof Entry.Adjustment adjustment) {
                if (readSince && !turned.isEmpty()) {
                    round(day, read, expected, new long[] {from, entry.number() - 1}, turned, sums);
                    turned.clear();
                }
                if (turned.isEmpty()) {
                    from = entry.number() - 1;
                }
                adjustment.turns().forEach(t -> turned.merge(t.adjuster(), t.amount(), Double::sum));
                readSince = false;
            } else if (entry instanceof Entry.Reading) {
                readSince = true;
            }
        }
        if (readSince && !turned.isEmpty()) {
            round(day, read, expected, new long[] {from, day.revision()}, turned, sums);
        }
        List<ObservedTurns> found = new ArrayList<>();
        sums.forEach((key, s) -> found.add(new ObservedTurns(key.adjuster(), key.reading(), s.rounds(),
                new Move(s.weighted() / s.weight(), 1 / Math.sqrt(s.weight())),
                Optional.ofNullable(expected.perUnit(key.adjuster()).get(key.reading())))));
        found.sort(Comparator.comparing(ObservedTurns::adjuster).thenComparing(ObservedTurns::reading, StateComparison.ORDERED));
        return found;
    }

    private static void round(Day day, ReadingsAt read, ExpectedMoves expected, long[] span, Map<AdjusterId, Double> turned, Map<Key, Sums> sums) {
        Map<ReadingId, Measured> before = read.at(span[0]);
        Map<ReadingId, Measured> after = read.at(span[1]);
        turned.forEach((id, turns) -> {
            if (Math.abs(turns) > NOTHING) {
                expected.perUnit(id).keySet().stream().filter(r -> isItsOwn(day.car(), id, r)).forEach(reading ->
                        one(before, after, reading, span[0]).ifPresent(moved -> {
                            Map<AdjusterId, Double> others = new LinkedHashMap<>(turned);
                            others.remove(id);
                            Move rest = expected.of(others, reading).orElse(new Move(0, 0));
                            sums.merge(new Key(id, reading), new Sums(0, 0, 0).plus((moved.amount() - rest.amount()) / turns,
                                    Math.hypot(moved.uncertainty(), rest.uncertainty()) / Math.abs(turns)), Sums::plus);
                        }));
            }
        });
    }

    /** A ring moves the weight and height of its own corner and the cross weight; a link the angles of its own wheel. */
    private static boolean isItsOwn(Car car, AdjusterId id, ReadingId reading) {
        return switch (reading.kind()) {
            case CROSS -> id.kind().isSpringLeg();
            case LOAD -> id.kind().isSpringLeg() && reading.place().equals(id.corner().name());
            case HEIGHT -> id.kind().isSpringLeg() && car.heightPoint(id.corner()).filter(p -> p.reading().equals(reading)).isPresent();
            case CAMBER, CASTER, TOE -> !id.kind().isSpringLeg() && reading.place().equals(id.corner().name());
            default -> false;
        };
    }

    private static Optional<Move> one(Map<ReadingId, Measured> before, Map<ReadingId, Measured> after, ReadingId reading, long from) {
        Measured was = before.get(reading);
        Measured is = after.get(reading);
        if (was == null || is == null || is.entry() <= from) {
            return Optional.empty();
        }
        Difference difference = Difference.of(was, is);
        return Optional.of(new Move(difference.amount(), difference.uncertainty()));
    }

    /** Observed over expected per turn; empty where nothing was expected. */
    public OptionalDouble ratio() {
        return expected.filter(e -> Math.abs(e.amount()) > NOTHING).map(e -> OptionalDouble.of(observed.amount() / e.amount()))
                .orElse(OptionalDouble.empty());
    }
}
