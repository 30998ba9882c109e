package quoin.workflow;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import quoin.car.AdjusterKind;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;

/**
 * Where one angle of one wheel stands by all its readings: each new reading is weighed against what the turns since the last
 * one should have done (Kalman's filter of one variable), so that a plan does not chase the noise of a single reading.
 *
 * @param mean most credible value, deg
 * @param sd   its standard uncertainty, deg
 */
record AngleState(double mean, double sd) {

    /** The state; empty where the angle was not read, or something other than its own links disturbed it since. */
    static Optional<AngleState> of(Day day, ReadingId reading, AngleBelief belief, ReadingUncertainty uncertainty) {
        Corner corner = Corner.valueOf(reading.place());
        AngleState state = null;
        for (Entry entry : day.effective()) {
            if (entry instanceof Entry.Adjustment adjustment) {
                state = disturbs(adjustment) ? null : state == null ? null : state.after(turned(adjustment, corner), reading, belief);
            } else if (entry instanceof Entry.Condition condition && disturbs(condition)) {
                state = null;
            } else if (entry instanceof Entry.Reading values && values.values().containsKey(reading)) {
                double value = values.values().get(reading);
                double read = uncertainty.of(reading, new double[0], List.of(),
                        values.measured().map(m -> m.uncertaintyOf(reading)).orElse(OptionalDouble.empty()));
                state = state == null ? new AngleState(value, read) : state.with(value, read);
            }
        }
        return Optional.ofNullable(state);
    }

    private AngleState with(double value, double read) {
        double gain = sd * sd / (sd * sd + read * read);
        return new AngleState(mean + gain * (value - mean), Math.sqrt(1 - gain) * sd);
    }

    private AngleState after(Map<AdjusterKind, Double> units, ReadingId reading, AngleBelief belief) {
        Corner corner = Corner.valueOf(reading.place());
        double moved = units.entrySet().stream()
                .mapToDouble(e -> belief.effect(corner.axle(), reading.kind(), e.getKey()) * e.getValue()).sum();
        return new AngleState(mean + moved, Math.hypot(sd, belief.sd(corner.axle(), reading.kind(), units)));
    }

    private static Map<AdjusterKind, Double> turned(Entry.Adjustment adjustment, Corner corner) {
        Map<AdjusterKind, Double> units = new EnumMap<>(AdjusterKind.class);
        for (Entry.Turn turn : adjustment.turns()) {
            if (turn.adjuster().corner() == corner && AngleBelief.KINDS.contains(turn.adjuster().kind())) {
                units.merge(turn.adjuster().kind(), turn.amount(), Double::sum);
            }
        }
        return units;
    }

    /** Perches and pushrods change every angle by the ride height. */
    private static boolean disturbs(Entry.Adjustment adjustment) {
        return adjustment.turns().stream().anyMatch(t -> t.adjuster().kind().isSpringLeg());
    }

    private static boolean disturbs(Entry.Condition condition) {
        return condition.key().equals(Conditions.PADS) || condition.key().equals(Conditions.TYRES);
    }
}
