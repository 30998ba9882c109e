package quoin.wheelangles.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.logbook.Entry;
import quoin.quantities.Dimension;

/**
 * What follows from the figures.
 *
 * @param results in the order they are shown
 * @param remarks what there is to say about them
 * @param curve   bump steer; empty for every other way of measuring
 */
public record Outcome(List<Result> results, List<Remark> remarks, Optional<Curve> curve) {

    /**
     * One figure.
     *
     * @param name      as shown
     * @param reading   what it is recorded as; empty = shown only
     * @param dimension angle, length, per cent or number
     * @param value     base unit
     * @param chordMm   where an angle is also a length: mm = chord * sin(angle); 0 = it is not
     */
    public record Result(String name, Optional<ReadingId> reading, Dimension dimension, double value, double chordMm) {

        static Result angle(String name, double deg, double chordMm) {
            return new Result(name, Optional.empty(), Dimension.ANGLE, deg, chordMm);
        }

        static Result reading(String name, ReadingId id, double value, double chordMm) {
            Dimension dimension = switch (id.kind().unit()) {
                case MM -> Dimension.LENGTH;
                case PERCENT -> Dimension.PERCENT;
                default -> Dimension.ANGLE;
            };
            return new Result(name, Optional.of(id), dimension, value, chordMm);
        }
    }

    /**
     * A sentence.
     *
     * @param kind  whether it belongs to the result and goes into the log, asks for attention, or only helps
     * @param words without a full stop
     */
    public record Remark(Kind kind, String words) {
        /** What a sentence is for. */
        public enum Kind { RESULT, WARNING, HINT }
    }

    /**
     * A measured curve.
     *
     * @param corner the wheel
     * @param points by rising travel
     */
    public record Curve(Corner corner, List<Entry.BumpSteer.Point> points) {
        public Curve {
            points = List.copyOf(points);
        }
    }

    public Outcome {
        results = List.copyOf(results);
        remarks = List.copyOf(remarks);
    }

    /** What goes into the log. */
    String words() {
        return remarks.stream().filter(r -> r.kind() == Remark.Kind.RESULT).map(Remark::words).collect(Collectors.joining("; "));
    }

    /** Collects an outcome. */
    static final class Builder {
        private final List<Result> results = new ArrayList<>();
        private final List<Remark> remarks = new ArrayList<>();

        Builder add(Result result) {
            results.add(result);
            return this;
        }

        Builder says(String words) {
            remarks.add(new Remark(Remark.Kind.RESULT, words));
            return this;
        }

        Builder warns(String words) {
            remarks.add(new Remark(Remark.Kind.WARNING, words));
            return this;
        }

        Builder hints(String words) {
            remarks.add(new Remark(Remark.Kind.HINT, words));
            return this;
        }

        Outcome build() {
            return new Outcome(results, remarks, Optional.empty());
        }

        Outcome build(Curve curve) {
            return new Outcome(results, remarks, Optional.of(curve));
        }
    }
}
