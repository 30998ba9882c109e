package quoin.workbench;

import java.text.DecimalFormatSymbols;
import java.util.Arrays;
import java.util.prefs.Preferences;
import org.openide.util.NbPreferences;
import quoin.quantities.AngleStyle;
import quoin.quantities.DecimalMark;
import quoin.quantities.Dimension;
import quoin.quantities.Unit;
import quoin.quantities.UnitPreferences;

/** Keeps how figures are shown between two runs, one entry per dimension. */
final class UnitSettings {

    private static final String UNIT = "unit.";
    private static final String DECIMAL_COMMA = "decimalComma";
    private static final String TOE_IN_MM = "toeInMm";
    private static final String MINUTES = "angleMinutes";

    private final Preferences node;

    UnitSettings() {
        this(NbPreferences.forModule(UnitSettings.class));
    }

    UnitSettings(Preferences node) {
        this.node = node;
    }

    DisplayUnits load() {
        UnitPreferences units = UnitPreferences.metric();
        for (Dimension dimension : Dimension.values()) {
            String stored = node.get(UNIT + dimension.name(), "");
            UnitPreferences before = units;
            units = Arrays.stream(Unit.values()).filter(u -> u.dimension() == dimension && u.name().equals(stored)).findFirst()
                    .map(before::withUnit).orElse(before);
        }
        boolean comma = node.getBoolean(DECIMAL_COMMA, DecimalFormatSymbols.getInstance().getDecimalSeparator() == ',');
        return new DisplayUnits(units.withDecimalMark(comma ? DecimalMark.COMMA : DecimalMark.POINT)
                .withAngleStyle(node.getBoolean(MINUTES, false) ? AngleStyle.DEGREES_MINUTES : AngleStyle.DECIMAL),
                node.getBoolean(TOE_IN_MM, true));
    }

    void save(DisplayUnits units) {
        UnitPreferences shown = units.preferences();
        for (Dimension dimension : Dimension.values()) {
            node.put(UNIT + dimension.name(), shown.unit(dimension).name());
        }
        node.putBoolean(DECIMAL_COMMA, shown.decimalMark() == DecimalMark.COMMA);
        node.putBoolean(MINUTES, shown.angleStyle() == AngleStyle.DEGREES_MINUTES);
        node.putBoolean(TOE_IN_MM, units.toeInMm());
    }
}
