package quoin.rideheight;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import quoin.car.AssumedCar;
import quoin.car.Assumptions;
import quoin.car.Corner;
import quoin.car.HeightPoint;
import quoin.car.PerCorner;
import quoin.mechanics.FrameAttitude;
import quoin.mechanics.PlanPoint;
import quoin.quantities.Texts;
import quoin.workbench.DaySnapshot;

/** The frame as the four corner heights last read show it. */
final class Frame {

    private Frame() {
    }

    /** Rake, tilt and flatness; empty where a corner has no point or was not read. */
    static Optional<FrameAttitude> attitude(DaySnapshot day) {
        Map<String, PlanPoint> places = new HashMap<>();
        for (AssumedCar.PlacedPoint point : Assumptions.complete(day.car()).heightPoints()) {
            places.put(point.name(), new PlanPoint(point.xMm(), point.yMm()));
        }
        Map<Corner, PlanPoint> points = new HashMap<>();
        Map<Corner, Double> heights = new HashMap<>();
        for (Corner corner : Corner.values()) {
            Optional<HeightPoint> point = day.car().heightPoint(corner);
            OptionalDouble height = point.map(p -> day.last(p.reading())).orElse(OptionalDouble.empty());
            if (height.isEmpty()) {
                return Optional.empty();
            }
            points.put(corner, places.get(point.get().name()));
            heights.put(corner, height.getAsDouble());
        }
        return Optional.of(FrameAttitude.of(PerCorner.of(points::get), PerCorner.of(heights::get)));
    }

    static String twoDecimals(double degrees) {
        return Texts.figure("%+.2f", degrees);
    }
}
