package quoin.workflow;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quoin.adjustment.LinearBelief;
import quoin.car.Adjuster;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.suspension.AngleChange;
import quoin.suspension.AngleResponse;

/**
 * What one turn of each camber, caster and toe adjuster does to the angles of its wheel: from the suspension as described,
 * corrected by what the turns of the day really did. Both wheels of an axle teach each other.
 */
final class AngleBelief {

    /** The angles in the order of every array here. */
    static final List<ReadingKind> ANGLES = List.of(ReadingKind.CAMBER, ReadingKind.CASTER, ReadingKind.TOE);
    /** What turns them. */
    static final List<AdjusterKind> KINDS = List.of(AdjusterKind.CAMBER_ROD, AdjusterKind.CAMBER_SHIM, AdjusterKind.CASTER_ROD,
            AdjusterKind.TOE_LINK);

    /** Relative uncertainty of a described effect, and its least, deg per unit (common practice, no source). */
    private static final double DESCRIBED_RELATIVE_SD = 0.15;
    private static final double DESCRIBED_LEAST_SD = 0.03;
    /** Effect of an adjuster nothing is known of on the angle it is there for, deg per turn or mm (common practice). */
    private static final double GUESS_DEG = 0.35;
    private static final double GUESS_RELATIVE_SD = 0.5;
    /** What it may do to the other angles. */
    private static final double GUESS_SIDE_SD = 0.1;

    private final Day day;
    private final Map<Axle, Map<ReadingKind, LinearBelief>> effects = new EnumMap<>(Axle.class);
    private final Map<Axle, AngleResponse> described;
    private final TakenOver before;

    AngleBelief(Day day, Map<Axle, AngleResponse> described, ReadingUncertainty uncertainty) {
        this.day = day;
        this.described = described;
        this.before = TakenOver.of(day);
        for (Axle axle : Axle.values()) {
            Map<ReadingKind, LinearBelief> byAngle = new EnumMap<>(ReadingKind.class);
            for (ReadingKind angle : ANGLES) {
                byAngle.put(angle, LinearBelief.of(begun(axle, angle, true), begun(axle, angle, false), seen(axle, angle, uncertainty)));
            }
            effects.put(axle, byAngle);
        }
    }

    /** Change of an angle per unit of an adjuster at a wheel of the axle, deg. */
    double effect(Axle axle, ReadingKind angle, AdjusterKind adjuster) {
        return effects.get(axle).get(angle).mean(KINDS.indexOf(adjuster));
    }

    /** Standard uncertainty of the change of an angle by the units given, deg. */
    double sd(Axle axle, ReadingKind angle, Map<AdjusterKind, Double> units) {
        double[] x = new double[KINDS.size()];
        units.forEach((kind, amount) -> x[KINDS.indexOf(kind)] = amount);
        return effects.get(axle).get(angle).sd(x);
    }

    /** Whether the effect of an adjuster was described, and not only guessed. */
    boolean isDescribed(AdjusterId id) {
        return described.get(id.corner().axle()).knows(id.kind());
    }

    /** Means, or standard uncertainties, that the day begins with: as learnt before where that holds, otherwise as described. */
    private double[] begun(Axle axle, ReadingKind angle, boolean means) {
        double[] mean = prior(axle, angle);
        double[] sd = priorSd(axle, angle);
        for (int k = 0; k < mean.length; k++) {
            Optional<ExpectedMove.Move> learnt = before.angle(axle, angle, KINDS.get(k), mean[k], sd[k]);
            mean[k] = learnt.map(ExpectedMove.Move::amount).orElse(mean[k]);
            sd[k] = learnt.map(ExpectedMove.Move::uncertainty).orElse(sd[k]);
        }
        return means ? mean : sd;
    }

    /** Effect of an adjuster by the suspension as described, or guessed, deg per unit. */
    double described(Axle axle, ReadingKind angle, AdjusterKind adjuster) {
        return prior(axle, angle)[KINDS.indexOf(adjuster)];
    }

    private double[] prior(Axle axle, ReadingKind angle) {
        double[] mean = new double[KINDS.size()];
        for (int k = 0; k < mean.length; k++) {
            boolean known = described.get(axle).knows(KINDS.get(k));
            mean[k] = known ? of(described.get(axle).of(KINDS.get(k)).angles(), angle) : own(KINDS.get(k)) == angle ? GUESS_DEG : 0;
        }
        return mean;
    }

    private double[] priorSd(Axle axle, ReadingKind angle) {
        double[] mean = prior(axle, angle);
        double[] sd = new double[mean.length];
        for (int k = 0; k < sd.length; k++) {
            if (described.get(axle).knows(KINDS.get(k))) {
                sd[k] = Math.max(DESCRIBED_LEAST_SD, DESCRIBED_RELATIVE_SD * Math.abs(mean[k]));
            } else {
                sd[k] = own(KINDS.get(k)) == angle ? GUESS_RELATIVE_SD * GUESS_DEG : GUESS_SIDE_SD;
            }
        }
        return sd;
    }

    /** The angle an adjuster is there for. */
    static ReadingKind own(AdjusterKind adjuster) {
        return switch (adjuster) {
            case CASTER_ROD -> ReadingKind.CASTER;
            case TOE_LINK -> ReadingKind.TOE;
            default -> ReadingKind.CAMBER;
        };
    }

    static double of(AngleChange change, ReadingKind angle) {
        return switch (angle) {
            case CAMBER -> change.camberDeg();
            case CASTER -> change.casterDeg();
            default -> change.toeDeg();
        };
    }

    /** What the day saw: two readings of one wheel with nothing but its own angle adjusters turned between them. */
    private List<LinearBelief.Observation> seen(Axle axle, ReadingKind angle, ReadingUncertainty uncertainty) {
        List<LinearBelief.Observation> seen = new ArrayList<>();
        for (Corner corner : List.of(axle.left(), axle.right())) {
            ReadingId reading = ReadingId.of(angle, corner);
            double sd = Math.sqrt(2) * uncertainty.of(reading, new double[0], List.of());
            Map<AdjusterKind, Double> moved = new HashMap<>();
            Optional<Double> last = Optional.empty();
            for (Entry entry : day.effective()) {
                if (entry instanceof Entry.Adjustment adjustment) {
                    last = turned(adjustment, corner, moved) ? last : Optional.empty();
                } else if (entry instanceof Entry.Reading values && values.values().containsKey(reading)) {
                    double now = values.values().get(reading);
                    if (last.isPresent() && !moved.isEmpty()) {
                        seen.add(new LinearBelief.Observation(KINDS.stream().mapToDouble(k -> moved.getOrDefault(k, 0.0)).toArray(),
                                now - last.get(), sd));
                    }
                    last = Optional.of(now);
                    moved.clear();
                }
            }
        }
        return seen;
    }

    /** Adds what was turned at a corner; false where a spring leg moved, which changes every angle by the ride height. */
    private static boolean turned(Entry.Adjustment adjustment, Corner corner, Map<AdjusterKind, Double> moved) {
        boolean onlyAngles = true;
        for (Entry.Turn turn : adjustment.turns()) {
            if (turn.adjuster().kind().isSpringLeg()) {
                onlyAngles = false;
            } else if (turn.adjuster().corner() == corner && KINDS.contains(turn.adjuster().kind())) {
                moved.merge(turn.adjuster().kind(), turn.amount(), Double::sum);
            }
        }
        return onlyAngles;
    }

    /** The angle adjusters of a corner that may be turned. */
    static List<Adjuster> adjusters(Day day, Corner corner) {
        return day.car().corners().get(corner).adjusters().stream().filter(a -> KINDS.contains(a.id().kind()) && !a.locked()).toList();
    }
}
