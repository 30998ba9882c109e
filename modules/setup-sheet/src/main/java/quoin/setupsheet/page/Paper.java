package quoin.setupsheet.page;

import java.util.Locale;
import java.util.Set;

/** Sizes of paper, upright. */
public enum Paper {
    A4(210, 297), LETTER(215.9, 279.4);

    /** Where the shops sell Letter paper. */
    private static final Set<String> LETTER_COUNTRIES = Set.of("US", "CA", "MX", "PH", "CL", "CO", "VE");

    private final double widthMm;
    private final double heightMm;

    Paper(double widthMm, double heightMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    public double widthMm() {
        return widthMm;
    }

    public double heightMm() {
        return heightMm;
    }

    /** The paper usual in a country. */
    public static Paper usual(Locale locale) {
        return LETTER_COUNTRIES.contains(locale.getCountry()) ? LETTER : A4;
    }
}
