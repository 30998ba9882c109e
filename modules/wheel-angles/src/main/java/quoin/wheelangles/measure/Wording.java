package quoin.wheelangles.measure;

import quoin.quantities.AngleStyle;
import quoin.quantities.Dimension;
import quoin.quantities.QuantityFormat;
import quoin.quantities.UnitPreferences;

/**
 * Figures inside sentences.
 *
 * @param preferences how the racer reads figures
 */
record Wording(UnitPreferences preferences) {

    private static final int FINE = 3;

    /** "0.075°". */
    String fineDeg(double deg) {
        return angle(FINE).text(deg, Dimension.ANGLE);
    }

    /** "5.20°". */
    String deg(double deg) {
        return angle(2).text(deg, Dimension.ANGLE);
    }

    /** "+0.07°". */
    String signedDeg(double deg) {
        return angle(2).signed().text(deg, Dimension.ANGLE);
    }

    /** "+0.005°". */
    String signedFineDeg(double deg) {
        return angle(FINE).signed().text(deg, Dimension.ANGLE);
    }

    private QuantityFormat angle(int decimals) {
        return QuantityFormat.of(preferences.withAngleStyle(AngleStyle.DECIMAL).withDecimals(Dimension.ANGLE, decimals));
    }

    /** "4.0 mm" in the racer's unit of length. */
    String length(double mm) {
        return QuantityFormat.formatWithUnit(mm, Dimension.LENGTH, preferences);
    }

    /** "20.3". */
    String number(double value, int decimals) {
        return QuantityFormat.of(preferences.withDecimals(Dimension.NUMBER, decimals)).number(value, Dimension.NUMBER);
    }
}
