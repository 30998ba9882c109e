package quoin.workflow;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import quoin.adjustment.Verdict;
import quoin.car.AdjusterId;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Target;

/**
 * Two states of a car side by side.
 *
 * @param lines     one per reading that either state knows
 * @param positions adjusters that stand otherwise: later less earlier, mm; only those measured in both states
 */
public record StateComparison(List<Line> lines, Map<AdjusterId, Double> positions) {

    private static final List<ReadingKind> ORDER = List.of(ReadingKind.CROSS, ReadingKind.TOTAL, ReadingKind.FRONT_SHARE,
            ReadingKind.LEFT_SHARE, ReadingKind.LOAD, ReadingKind.HEIGHT, ReadingKind.RAKE, ReadingKind.CAMBER, ReadingKind.CASTER,
            ReadingKind.TOE, ReadingKind.TOTAL_TOE, ReadingKind.THRUST_ANGLE);
    /** Cross weight first, angles last, corners as one reads: LF, RF, LR, RR. */
    public static final Comparator<ReadingId> ORDERED = Comparator.comparingInt((ReadingId id) -> ORDER.indexOf(id.kind()))
            .thenComparingInt(StateComparison::corner).thenComparing(ReadingId::compareTo);
    private static final double NOTHING_MM = 1e-6;

    public StateComparison {
        lines = List.copyOf(lines);
        positions = Map.copyOf(positions);
    }

    /** A height point that is called after its corner stands with it; what belongs to no corner comes last. */
    private static int corner(ReadingId id) {
        for (Corner corner : Corner.values()) {
            if (id.place().startsWith(corner.name())) {
                return corner.ordinal();
            }
        }
        return Corner.values().length;
    }

    /** What a line says. */
    public enum Word {
        /** Inside the noise of both readings. */
        NO_CHANGE,
        /** Outside it. */
        CHANGED,
        /** One and the same reading: nothing was read between. */
        NOT_READ_BETWEEN,
        /** Only one of the states knows it. */
        MISSING,
        /** Against a target: inside, outside, or too close to call. */
        ON_TARGET, OFF_TARGET, TOO_CLOSE
    }

    /**
     * One reading in both states.
     *
     * @param from       in the earlier state; empty = not known
     * @param to         in the later state; empty = not known
     * @param difference to less from; empty where one is missing
     */
    public record Line(ReadingId reading, Optional<Measured> from, Optional<Measured> to, Optional<Difference> difference, Word word) {
    }

    /** Which readings are looked at. */
    public enum Part {
        ALL(EnumSet.allOf(ReadingKind.class)),
        WEIGHTS_AND_HEIGHTS(EnumSet.of(ReadingKind.CROSS, ReadingKind.TOTAL, ReadingKind.FRONT_SHARE, ReadingKind.LEFT_SHARE,
                ReadingKind.LOAD, ReadingKind.HEIGHT, ReadingKind.RAKE)),
        ANGLES(EnumSet.of(ReadingKind.CAMBER, ReadingKind.CASTER, ReadingKind.TOE, ReadingKind.TOTAL_TOE, ReadingKind.THRUST_ANGLE,
                ReadingKind.KPI));

        private final Set<ReadingKind> kinds;

        Part(Set<ReadingKind> kinds) {
            this.kinds = kinds;
        }

        boolean has(ReadingId id) {
            return kinds.contains(id.kind()) && ORDER.contains(id.kind());
        }
    }

    /** Compares two states; a target on either side has no noise of its own. */
    public static StateComparison of(CarState from, CarState to, Part part) {
        Set<ReadingId> ids = new TreeSet<>(ORDERED);
        for (CarState state : List.of(from, to)) {
            state.readings().keySet().stream().filter(part::has).forEach(ids::add);
            state.targets().keySet().stream().filter(part::has).forEach(ids::add);
        }
        List<Line> lines = new ArrayList<>();
        ids.forEach(id -> lines.add(line(id, from, to)));
        return new StateComparison(lines, moved(from, to));
    }

    private static Line line(ReadingId id, CarState from, CarState to) {
        Optional<Measured> before = value(from, id);
        Optional<Measured> after = value(to, id);
        if (before.isEmpty() || after.isEmpty()) {
            return new Line(id, before, after, Optional.empty(), Word.MISSING);
        }
        boolean same = from.day().equals(to.day()) && before.get().entry() == after.get().entry() && !from.isTarget() && !to.isTarget();
        if (same) {
            return new Line(id, before, after, Optional.empty(), Word.NOT_READ_BETWEEN);
        }
        Difference difference = Difference.of(before.get(), after.get());
        return new Line(id, before, after, Optional.of(difference), word(id, from, to, difference));
    }

    private static Word word(ReadingId id, CarState from, CarState to, Difference difference) {
        Target target = from.isTarget() ? from.targets().get(id) : to.targets().get(id);
        if (target == null) {
            return difference.isNoise() ? Word.NO_CHANGE : Word.CHANGED;
        }
        return switch (Verdict.of(difference.amount(), 0, target.tolerance(), difference.uncertainty()).answer()) {
            case INSIDE -> Word.ON_TARGET;
            case OUTSIDE -> Word.OFF_TARGET;
            case TOO_CLOSE -> Word.TOO_CLOSE;
        };
    }

    private static Optional<Measured> value(CarState state, ReadingId id) {
        return state.isTarget() ? Optional.ofNullable(state.targets().get(id)).map(t -> new Measured(t.value(), 0, 1, 0)) : state.reading(id);
    }

    private static Map<AdjusterId, Double> moved(CarState from, CarState to) {
        Map<AdjusterId, Double> moved = new TreeMap<>();
        to.positions().forEach((id, mm) -> {
            Double before = from.positions().get(id);
            if (before != null && Math.abs(mm - before) > NOTHING_MM) {
                moved.put(id, mm - before);
            }
        });
        return moved;
    }
}
