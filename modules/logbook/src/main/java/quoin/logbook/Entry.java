package quoin.logbook;

import java.time.Instant;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import quoin.car.AdjusterId;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.CrossGoal;
import quoin.car.ReadingId;
import quoin.car.Target;

/**
 * One line of the logbook. Entries are only ever added; what was wrong is put right by a {@link Correction} that names the
 * entry it corrects, so that the old figure stays readable.
 */
public sealed interface Entry {

    Header header();

    /** The same entry under another header. */
    Entry withHeader(Header header);

    default long number() {
        return header().number();
    }

    /** Opens a day with the car as it is, or records that the car's description changed. */
    record CarDescribed(Header header, Car car) implements Entry {
        @Override
        public CarDescribed withHeader(Header changed) {
            return new CarDescribed(changed, car);
        }
    }

    /**
     * Figures read together, in one settling of the car.
     *
     * @param values base-unit value per reading
     * @param typed  what was typed, per reading, where it differs from the plain number
     * @param source who read it
     * @param measured how they were measured where they were computed from other figures; empty = read directly
     */
    record Reading(Header header, Map<ReadingId, Double> values, Map<ReadingId, String> typed, Source source,
            Optional<Measurement> measured) implements Entry {
        public Reading {
            values = Collections.unmodifiableMap(new TreeMap<>(values));
            typed = Collections.unmodifiableMap(new TreeMap<>(typed));
            Objects.requireNonNull(source, "source");
            Objects.requireNonNull(measured, "measured");
            values.forEach((id, value) -> {
                if (!Double.isFinite(value)) {
                    throw EntryFault.of("mustBeANumber", id.words());
                }
            });
        }

        /** Figures read directly. */
        public Reading(Header header, Map<ReadingId, Double> values, Map<ReadingId, String> typed, Source source) {
            this(header, values, typed, source, Optional.empty());
        }

        @Override
        public Reading withHeader(Header changed) {
            return new Reading(changed, values, typed, source, measured);
        }
    }

    /**
     * Toe of one wheel against its travel, spring out, steering held. {@link Day#bumpSteer} gives the last one of each wheel.
     *
     * @param corner   the wheel
     * @param points   by rising travel, no two at the same travel, at least two
     * @param measured the method ("bump-steer" with two dials) and what was read
     */
    record BumpSteer(Header header, Corner corner, List<Point> points, Measurement measured) implements Entry {

        /**
         * One position of the wheel.
         *
         * @param travelMm       wheel travel from ride height, mm, plus = bump
         * @param toeInChangeDeg toe less toe at ride height, deg, plus = toe-in
         */
        public record Point(double travelMm, double toeInChangeDeg) {
            public Point {
                if (!Double.isFinite(travelMm) || !Double.isFinite(toeInChangeDeg)) {
                    throw EntryFault.of("travelAndToeMust");
                }
            }
        }

        public BumpSteer {
            Objects.requireNonNull(corner, "corner");
            Objects.requireNonNull(measured, "measured");
            points = points.stream().sorted(Comparator.comparingDouble(Point::travelMm)).toList();
            if (points.size() < 2 || points.stream().map(Point::travelMm).distinct().count() < points.size()) {
                throw EntryFault.of("bumpSteerNeedsTwo");
            }
        }

        @Override
        public BumpSteer withHeader(Header changed) {
            return new BumpSteer(changed, corner, points, measured);
        }
    }

    /**
     * Something measured that is no reading of the car: the pads, the scales, a spring on the bench.
     *
     * @param subject  stable name of what was measured, such as "pads"; {@link Day#check} gives the last one of each
     * @param results  what follows, base units, under stable keys such as "LF"; never empty
     * @param measured the method and what was read
     */
    record Check(Header header, String subject, Map<String, Double> results, Measurement measured) implements Entry {
        public Check {
            Objects.requireNonNull(measured, "measured");
            results = Collections.unmodifiableMap(new LinkedHashMap<>(results));
            if (subject.isBlank() || results.isEmpty()) {
                throw EntryFault.of("checkNeedsASubject");
            }
            results.forEach((key, value) -> {
                if (!Double.isFinite(value)) {
                    throw EntryFault.of("mustBeANumber2", subject, key);
                }
            });
        }

        /** One result; empty where the check has none under the key. */
        public OptionalDouble result(String key) {
            Double value = results.get(key);
            return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
        }

        @Override
        public Check withHeader(Header changed) {
            return new Check(changed, subject, results, measured);
        }
    }

    /** Who read a figure. */
    enum Source { RACER, PRACTICE_CAR }

    /**
     * What was really turned or shimmed, in one go before the car is settled again.
     *
     * @param turns one line per adjuster
     * @param words what the racer wants to remember about it, or empty
     */
    record Adjustment(Header header, List<Turn> turns, String words) implements Entry {
        public Adjustment {
            turns = List.copyOf(turns);
            Objects.requireNonNull(words, "words");
        }

        @Override
        public Adjustment withHeader(Header changed) {
            return new Adjustment(changed, turns, words);
        }
    }

    /**
     * One adjuster moved.
     *
     * @param adjuster which one
     * @param amount   turns of a thread or mm of shim; plus raises the adjuster's own reading
     * @param lengthMm thread length measured afterwards, mm; empty = not measured
     */
    record Turn(AdjusterId adjuster, double amount, OptionalDouble lengthMm) {
        public Turn {
            Objects.requireNonNull(adjuster, "adjuster");
            Objects.requireNonNull(lengthMm, "lengthMm");
            if (!Double.isFinite(amount)) {
                throw EntryFault.of("turnsMustBeA", adjuster.words());
            }
        }
    }

    /**
     * A condition of the car or the place, see {@link Conditions}.
     *
     * @param key   stable key, such as "driver" or "front-bar"
     * @param value what it is now, such as "in" or "disconnected"
     * @param words remark, or empty
     */
    record Condition(Header header, String key, String value, String words) implements Entry {
        public Condition {
            Objects.requireNonNull(value, "value");
            Objects.requireNonNull(words, "words");
            if (key.isBlank()) {
                throw EntryFault.of("conditionNeedsAKey");
            }
        }

        @Override
        public Condition withHeader(Header changed) {
            return new Condition(changed, key, value, words);
        }
    }

    /** A target set during the day; replaces the car's target of the same reading. */
    record TargetSet(Header header, ReadingId reading, Target target) implements Entry {
        @Override
        public TargetSet withHeader(Header changed) {
            return new TargetSet(changed, reading, target);
        }
    }

    /** The kind of cross target chosen during the day. */
    record GoalSet(Header header, CrossGoal goal) implements Entry {
        @Override
        public GoalSet withHeader(Header changed) {
            return new GoalSet(changed, goal);
        }
    }

    /**
     * What an earlier day had taught about the car when this one began. It holds all that this day needs of it, so that the
     * earlier day may be elsewhere or gone.
     *
     * @param fromDay  id of the day it was taken from
     * @param learntOn when that was learnt: the last entry of the day that taught it
     * @param loadKg   driver, fuel and ballast of the car then, kg
     * @param effects  what was learnt
     */
    record ResponseTakenOver(Header header, String fromDay, Instant learntOn, double loadKg, List<Effect> effects) implements Entry {

        /**
         * One learnt figure.
         *
         * @param key         stable key, such as "wheel-rate.LF"
         * @param described   what followed from the car as described then; another description makes it void
         * @param value       what was learnt, same unit
         * @param uncertainty its standard uncertainty, same unit, 0 or more
         */
        public record Effect(String key, double described, double value, double uncertainty) {
            public Effect {
                if (!Double.isFinite(described) || !Double.isFinite(value) || !(uncertainty >= 0) || Double.isInfinite(uncertainty)) {
                    throw EntryFault.of("mustBeNumbersIts", key);
                }
            }
        }

        public ResponseTakenOver {
            Objects.requireNonNull(fromDay, "fromDay");
            Objects.requireNonNull(learntOn, "learntOn");
            effects = List.copyOf(effects);
            if (!(loadKg >= 0) || Double.isInfinite(loadKg)) {
                throw EntryFault.of("loadkgMustBeOr");
            }
        }

        @Override
        public ResponseTakenOver withHeader(Header changed) {
            return new ResponseTakenOver(changed, fromDay, learntOn, loadKg, effects);
        }
    }

    record Note(Header header, String words) implements Entry {
        @Override
        public Note withHeader(Header changed) {
            return new Note(changed, words);
        }
    }

    /**
     * A stage (the header's) signed off.
     *
     * @param waived why it was signed though the rules did not allow it; empty = by the rules
     */
    record SignOff(Header header, Optional<String> waived) implements Entry {
        public SignOff {
            if (waived.isPresent() && waived.get().isBlank()) {
                throw EntryFault.of("signingOffOutOf");
            }
        }

        @Override
        public SignOff withHeader(Header changed) {
            return new SignOff(changed, waived);
        }
    }

    /** A signed stage opened again by the racer. */
    record Reopened(Header header, String words) implements Entry {
        @Override
        public Reopened withHeader(Header changed) {
            return new Reopened(changed, words);
        }
    }

    /**
     * The day closed.
     *
     * @param outOfOrder why it was closed out of order; empty = in order
     * @param notProved  what a day for part of the job left open, in words; none for the whole job
     */
    record DayClosed(Header header, Optional<String> outOfOrder, List<String> notProved) implements Entry {

        /** Closes the whole job. */
        public DayClosed(Header header, Optional<String> outOfOrder) {
            this(header, outOfOrder, List.of());
        }

        public DayClosed {
            notProved = List.copyOf(notProved);
            if (outOfOrder.isPresent() && outOfOrder.get().isBlank()) {
                throw EntryFault.of("closingADayOut");
            }
        }

        @Override
        public DayClosed withHeader(Header changed) {
            return new DayClosed(changed, outOfOrder, notProved);
        }
    }

    /**
     * Puts an earlier entry right. Correcting a correction brings the older entry back, which is how undo and redo work.
     *
     * @param corrects    number of the entry that was wrong
     * @param replacement what holds instead (its header is the old entry's); empty = the entry does not count
     * @param words       why, in the racer's words or a name such as "undo"
     */
    record Correction(Header header, long corrects, Optional<Entry> replacement, String words) implements Entry {
        public Correction {
            Objects.requireNonNull(words, "words");
            if (replacement.isPresent() && replacement.get() instanceof Correction) {
                throw EntryFault.of("correctionCannotBeReplaced");
            }
        }

        @Override
        public Correction withHeader(Header changed) {
            return new Correction(changed, corrects, replacement, words);
        }
    }

    /**
     * An entry of a kind this program does not know: kept and shown, never changed.
     *
     * @param kind its kind as written in the file
     * @param raw  the line exactly as it stands in the file
     */
    record Unknown(Header header, String kind, String raw) implements Entry {
        @Override
        public Unknown withHeader(Header changed) {
            return new Unknown(changed, kind, raw);
        }
    }
}
