package quoin.workbench;

import java.util.Objects;
import quoin.quantities.UnitPreferences;

/**
 * How the racer reads his figures.
 *
 * @param preferences unit, decimals and decimal mark per dimension
 * @param toeInMm     true where toe is typed and shown as a length at the rim chord; false where as an angle
 */
public record DisplayUnits(UnitPreferences preferences, boolean toeInMm) {

    public DisplayUnits {
        Objects.requireNonNull(preferences, "preferences");
    }

    /** Metric units with a decimal point, toe in mm at the rim. */
    public static DisplayUnits usual() {
        return new DisplayUnits(UnitPreferences.metric(), true);
    }
}
