package quoin.car;

import quoin.quantities.NotTakenException;
import quoin.quantities.Phrase;
import quoin.quantities.Texts;

/**
 * The four corners of the car, named as the trade names them: left front, right front, left rear, right rear, seen by
 * the driver in his seat. The order of the constants is the order of every four-element array in the project.
 */
public enum Corner {
    LF, RF, LR, RR;

    private static final Texts TEXTS = Texts.of(Corner.class);

    /** True for LF and RF. */
    public boolean isFront() {
        return this == LF || this == RF;
    }

    /** As the racer calls it: LF, FL, VL or in words, see {@link CornerNames}. Files always say {@link #name()}. */
    public String words() {
        return phrase().toString();
    }

    /** The diagonal whose share of the total is the cross weight, by the names of its corners: "RF+LR". */
    public static String crossWords() {
        return RF.words() + "+" + LR.words();
    }

    /** The diagonal beside it: "LF+RR". */
    public static String otherCrossWords() {
        return LF.words() + "+" + RR.words();
    }

    /** Its name as the racer chose it; LF, RF, LR or RR where that is left to the language and English is asked for. */
    public Phrase phrase() {
        return CornerNames.phrase(this);
    }

    /** True for LF and LR; left is the driver's left, ISO 8855 y positive. */
    public boolean isLeft() {
        return this == LF || this == LR;
    }

    public Axle axle() {
        return isFront() ? Axle.FRONT : Axle.REAR;
    }

    /** The other wheel of the same axle: LF gives RF. */
    public Corner acrossAxle() {
        return of(axle(), !isLeft());
    }

    /** The other wheel of the same side: LF gives LR. */
    public Corner sameSide() {
        return of(axle().other(), isLeft());
    }

    /** The diagonally opposite wheel: LF gives RR. */
    public Corner diagonal() {
        return of(axle().other(), !isLeft());
    }

    public static Corner of(Axle axle, boolean left) {
        if (axle == Axle.FRONT) {
            return left ? LF : RF;
        }
        return left ? LR : RR;
    }

    /**
     * Reads a corner's name.
     *
     * @throws IllegalArgumentException where the text is none of LF, RF, LR, RR
     */
    public static Corner parse(String text) {
        for (Corner corner : values()) {
            if (corner.name().equals(text)) {
                return corner;
            }
        }
        throw new NotTakenException(TEXTS.phrase("notACornerWrite", text));
    }
}
