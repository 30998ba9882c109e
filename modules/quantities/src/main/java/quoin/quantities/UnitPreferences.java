package quoin.quantities;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/**
 * How one person reads and types figures. Immutable.
 *
 * @param units the unit per dimension; a missing dimension takes its base unit
 * @param decimalMark shown, and taken as the person's own when reading
 * @param decimals per dimension, 0..9; a missing dimension takes {@link Unit#usualDecimals()}
 * @param angleStyle how angles are shown
 */
public record UnitPreferences(Map<Dimension, Unit> units, DecimalMark decimalMark, Map<Dimension, Integer> decimals,
        AngleStyle angleStyle) {
    private static final int MOST_DECIMALS = 9;

    /** @throws IllegalArgumentException if a unit is not of its dimension or decimals are outside 0..9 */
    public UnitPreferences {
        units = Map.copyOf(units);
        decimals = Map.copyOf(decimals);
        Objects.requireNonNull(decimalMark, "decimalMark");
        Objects.requireNonNull(angleStyle, "angleStyle");
        units.forEach((dimension, unit) -> {
            if (unit.dimension() != dimension) {
                throw new IllegalArgumentException("units: " + unit + " is for " + unit.dimension() + ", not for " + dimension
                        + "; choose a unit of " + dimension);
            }
        });
        decimals.forEach((dimension, count) -> {
            if (count < 0 || count > MOST_DECIMALS) {
                throw new IllegalArgumentException("decimals: " + count + " for " + dimension + "; choose 0 to "
                        + MOST_DECIMALS);
            }
        });
    }

    /** mm, degrees, kg also for loads, N/mm, bar, litre, °C, N m; decimal point. */
    public static UnitPreferences metric() {
        return new UnitPreferences(Map.of(Dimension.FORCE, Unit.KGF), DecimalMark.POINT, Map.of(), AngleStyle.DECIMAL);
    }

    /** Inches, degrees, lb also for loads, lb/in, psi, US gallons, °F, lbf ft; decimal point. */
    public static UnitPreferences inchPound() {
        return new UnitPreferences(Map.of(Dimension.LENGTH, Unit.IN, Dimension.MASS, Unit.LB, Dimension.FORCE, Unit.LBF,
                Dimension.STIFFNESS, Unit.LBF_PER_IN, Dimension.PRESSURE, Unit.PSI, Dimension.VOLUME, Unit.GAL_US,
                Dimension.TEMPERATURE, Unit.DEG_F, Dimension.TORQUE, Unit.LBF_FT), DecimalMark.POINT, Map.of(),
                AngleStyle.DECIMAL);
    }

    public Unit unit(Dimension dimension) {
        return units.getOrDefault(dimension, dimension.baseUnit());
    }

    public int decimals(Dimension dimension) {
        return decimals.getOrDefault(dimension, unit(dimension).usualDecimals());
    }

    /** A copy with this unit for its dimension, and the unit's usual decimals. */
    public UnitPreferences withUnit(Unit unit) {
        Map<Dimension, Unit> changed = new EnumMap<>(Dimension.class);
        changed.putAll(units);
        changed.put(unit.dimension(), unit);
        Map<Dimension, Integer> kept = new EnumMap<>(Dimension.class);
        kept.putAll(decimals);
        kept.remove(unit.dimension());
        return new UnitPreferences(changed, decimalMark, kept, angleStyle);
    }

    public UnitPreferences withDecimals(Dimension dimension, int count) {
        Map<Dimension, Integer> changed = new EnumMap<>(Dimension.class);
        changed.putAll(decimals);
        changed.put(dimension, count);
        return new UnitPreferences(units, decimalMark, changed, angleStyle);
    }

    public UnitPreferences withDecimalMark(DecimalMark mark) {
        return new UnitPreferences(units, mark, decimals, angleStyle);
    }

    public UnitPreferences withAngleStyle(AngleStyle style) {
        return new UnitPreferences(units, decimalMark, decimals, style);
    }
}
