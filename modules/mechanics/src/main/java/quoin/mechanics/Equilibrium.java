package quoin.mechanics;

import java.util.List;
import java.util.Map;
import quoin.car.PerCorner;

/**
 * The car at rest on its four scales.
 *
 * @param loadsKgf load on each pad
 * @param shares total and shares of these loads
 * @param centreOfGravity of the whole car seen from above, in road axes through the body's origin
 * @param rideHeightsMm height above the pad plane of every named point, in the order of the model
 * @param heaveMm rise of the body's origin
 * @param rollDeg + left side up, at mid-wheelbase
 * @param pitchDeg + nose down
 * @param twistDeg roll of the front axle's section less roll of the rear's
 * @param wheelTravelMm wheel against body, + bump
 * @param springForceN along the spring, + compression
 * @param findings what makes the figures doubtful; empty = nothing
 */
public record Equilibrium(PerCorner<Double> loadsKgf, Shares shares, PlanPoint centreOfGravity,
        Map<String, Double> rideHeightsMm, double heaveMm, double rollDeg, double pitchDeg, double twistDeg,
        PerCorner<Double> wheelTravelMm, PerCorner<Double> springForceN, List<LoadFinding> findings) {
}
