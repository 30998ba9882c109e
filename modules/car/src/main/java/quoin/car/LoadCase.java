package quoin.car;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * The state every signed figure belongs to.
 *
 * @param driver      who sits in the seat, dressed to race; blank = driver not named
 * @param fuelKg      fuel on board, kg
 * @param pressureBar hot running pressure per axle, bar gauge
 */
public record LoadCase(String driver, OptionalDouble fuelKg, PerAxle<OptionalDouble> pressureBar) {
    public LoadCase {
        Objects.requireNonNull(driver, "driver");
        Objects.requireNonNull(fuelKg, "fuelKg");
        Objects.requireNonNull(pressureBar, "pressureBar");
    }

    public static LoadCase unknown() {
        return new LoadCase("", OptionalDouble.empty(), PerAxle.both(OptionalDouble.empty()));
    }
}
