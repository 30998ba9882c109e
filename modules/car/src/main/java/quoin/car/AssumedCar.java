package quoin.car;

import java.util.List;

/**
 * A car with nothing unknown that the mechanics need, and the list of what was assumed.
 *
 * @param car          the car as given
 * @param corners      every corner complete
 * @param totalKg      total mass, kg
 * @param cgHeightMm   height of the centre of gravity above the pads, mm
 * @param heightPoints every height point with x and y
 * @param assumptions  what was assumed and by which rule; empty where everything was known
 */
public record AssumedCar(Car car, PerCorner<AssumedCorner> corners, double totalKg, double cgHeightMm,
        List<PlacedPoint> heightPoints, List<Assumption> assumptions) {

    /**
     * A height point with its place.
     *
     * @param name the point's name
     * @param xMm  forward of the front axle line, mm
     * @param yMm  left of the centre line, mm
     */
    public record PlacedPoint(String name, double xMm, double yMm) {
    }

    public AssumedCar {
        heightPoints = List.copyOf(heightPoints);
        assumptions = List.copyOf(assumptions);
    }
}
