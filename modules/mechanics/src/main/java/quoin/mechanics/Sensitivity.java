package quoin.mechanics;

import java.util.Map;
import quoin.car.Corner;
import quoin.car.PerCorner;

/**
 * What one unit of one input does, exactly at one state of the car: derivatives, not differences.
 *
 * @param input what is changed
 * @param corner where
 * @param loadsKgf change of the four loads per unit
 * @param frontPercent change of the front share per unit, percent of the total
 * @param leftPercent change of the left share per unit
 * @param crossPercent change of (RF + LR) / total per unit
 * @param rideHeightsMm change of every named point's height per unit
 * @param wheelTravelMm change of each wheel's travel per unit; moves camber and toe
 */
public record Sensitivity(LoadInput input, Corner corner, PerCorner<Double> loadsKgf, double frontPercent,
        double leftPercent, double crossPercent, Map<String, Double> rideHeightsMm, PerCorner<Double> wheelTravelMm) {
}
