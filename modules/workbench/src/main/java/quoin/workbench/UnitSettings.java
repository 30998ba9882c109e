package quoin.workbench;

import java.text.DecimalFormatSymbols;
import java.util.prefs.Preferences;
import org.openide.util.NbPreferences;
import quoin.quantities.AngleStyle;
import quoin.quantities.DecimalMark;
import quoin.quantities.Dimension;
import quoin.quantities.Unit;
import quoin.quantities.UnitPreferences;

/** Keeps how figures are shown between two runs. */
final class UnitSettings {

    private static final String INCH_POUND = "inchPound";
    private static final String DECIMAL_COMMA = "decimalComma";
    private static final String TOE_IN_MM = "toeInMm";
    private static final String MINUTES = "angleMinutes";

    DisplayUnits load() {
        Preferences node = node();
        UnitPreferences units = node.getBoolean(INCH_POUND, false) ? UnitPreferences.inchPound() : UnitPreferences.metric();
        boolean comma = node.getBoolean(DECIMAL_COMMA, DecimalFormatSymbols.getInstance().getDecimalSeparator() == ',');
        return new DisplayUnits(units.withDecimalMark(comma ? DecimalMark.COMMA : DecimalMark.POINT)
                .withAngleStyle(node.getBoolean(MINUTES, false) ? AngleStyle.DEGREES_MINUTES : AngleStyle.DECIMAL),
                node.getBoolean(TOE_IN_MM, true));
    }

    void save(DisplayUnits units) {
        UnitPreferences shown = units.preferences();
        Preferences node = node();
        node.putBoolean(INCH_POUND, shown.unit(Dimension.LENGTH) == Unit.IN);
        node.putBoolean(DECIMAL_COMMA, shown.decimalMark() == DecimalMark.COMMA);
        node.putBoolean(MINUTES, shown.angleStyle() == AngleStyle.DEGREES_MINUTES);
        node.putBoolean(TOE_IN_MM, units.toeInMm());
    }

    private static Preferences node() {
        return NbPreferences.forModule(UnitSettings.class);
    }
}
