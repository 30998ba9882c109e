package quoin.quantities;

import java.math.BigDecimal;

/** Reads unsigned numbers: 107,9 .5 1 234,5 3/16 1 3/16 2-3/8 1½. One pass, no look-ahead beyond a fraction. */
final class FigureScanner {
    private static final Texts TEXTS = Texts.of(FigureScanner.class);
    private static final int MOST_DIGITS = 15;
    private static final int MOST_FRACTION_DIGITS = 4;
    private static final String VULGAR = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";
    private static final int[][] VULGAR_VALUES = {{1, 2}, {1, 3}, {2, 3}, {1, 4}, {3, 4}, {1, 5}, {2, 5}, {3, 5}, {4, 5},
        {1, 6}, {5, 6}, {1, 8}, {3, 8}, {5, 8}, {7, 8}};

    private final Typed text;
    private final DecimalMark ownMark;
    private final boolean inLine;

    /** @param inLine whether a comma that no digit follows separates figures */
    FigureScanner(Typed text, DecimalMark ownMark, boolean inLine) {
        this.text = text;
        this.ownMark = ownMark;
        this.inLine = inLine;
    }

    /** Whether an unsigned number starts here. */
    boolean startsHere() {
        char c = text.peek();
        return Typed.isDigit(c) || isVulgar(c) || Typed.isMark(c) && Typed.isDigit(text.peekNext());
    }

    static boolean isVulgar(char c) {
        return VULGAR.indexOf(c) >= 0;
    }

    /** Reads the number that {@link #startsHere}. */
    Figure read() {
        if (isVulgar(text.peek())) {
            return vulgar();
        }
        int start = text.position();
        StringBuilder digits = new StringBuilder();
        boolean grouped = wholePart(digits);
        int wholeDigits = digits.length();
        if (markHere(wholeDigits)) {
            return decimals(start, digits, wholeDigits);
        }
        if (text.peek() == '/' && Typed.isDigit(text.peekNext())) {
            if (grouped) {
                throw fault(TEXTS.phrase("problem.thousandsInFraction"), TEXTS.phrase("remedy.fraction"), start);
            }
            text.moveTo(start);
            return fraction();
        }
        Figure whole = new Figure(Exact.of(new BigDecimal(digits.toString())), Exact.ONE);
        return withFraction(whole, start);
    }

    /** Digits, with a fixed space between groups of three; tells whether there was one. */
    private boolean wholePart(StringBuilder digits) {
        boolean grouped = false;
        int run = digitsInto(digits);
        while (text.peek() == Typed.GROUP_SPACE && (grouped ? run == 3 : run >= 1 && run <= 3) && threeDigitsNext()) {
            grouped = true;
            text.skip();
            run = digitsInto(digits);
        }
        return grouped;
    }

    private boolean threeDigitsNext() {
        int at = text.position();
        return Typed.isDigit(text.at(at + 1)) && Typed.isDigit(text.at(at + 2)) && Typed.isDigit(text.at(at + 3))
                && !Typed.isDigit(text.at(at + 4));
    }

    private int digitsInto(StringBuilder digits) {
        int start = text.position();
        while (Typed.isDigit(text.peek())) {
            digits.append(text.peek());
            text.skip();
        }
        if (digits.length() > MOST_DIGITS) {
            throw fault(TEXTS.phrase("problem.digits", digits.length()), TEXTS.phrase("remedy.atMost", MOST_DIGITS), start);
        }
        return text.position() - start;
    }

    private boolean markHere(int wholeDigits) {
        char c = text.peek();
        return Typed.isMark(c) && (Typed.isDigit(text.peekNext()) || wholeDigits > 0 && (c == '.' || !inLine));
    }

    private Figure decimals(int start, StringBuilder digits, int wholeDigits) {
        char mark = text.peek();
        text.skip();
        int count = digitsInto(digits);
        if (Typed.isMark(text.peek()) && Typed.isDigit(text.peekNext())) {
            throw severalMarks(start);
        }
        boolean mayBeThousands = mark != ownMark.character() && count == 3 && wholeDigits >= 1 && wholeDigits <= 3
                && digits.charAt(0) != '0';
        if (mayBeThousands) {
            throw fault(TEXTS.phrase("problem.thousands", text.shown(start, text.position())), TEXTS.phrase("remedy.type",
                    TEXTS.phrase("list.or", digits, digits.substring(0, wholeDigits) + ownMark.character() + digits.substring(wholeDigits))), start);
        }
        BigDecimal value = new BigDecimal(digits.toString()).movePointLeft(count);
        return new Figure(Exact.of(value), Exact.of(BigDecimal.ONE.movePointLeft(count)));
    }

    private QuantityFormatException severalMarks(int start) {
        int second = text.position();
        while (Typed.isMark(text.peek()) || Typed.isDigit(text.peek())) {
            text.skip();
        }
        return fault(TEXTS.phrase("problem.marks", text.shown(start, text.position())),
                TEXTS.phrase(inLine ? "remedy.spaceInLine" : "remedy.decimalOnly"), second);
    }

    private Figure withFraction(Figure whole, int start) {
        int afterWhole = text.position();
        if (text.peek() == '-') {
            text.skip();
        } else {
            text.skipSpaces();
        }
        Figure part = null;
        if (isVulgar(text.peek())) {
            part = vulgar();
        } else if (text.position() > afterWhole && fractionHere()) {
            part = fraction();
        }
        if (part == null) {
            text.moveTo(afterWhole);
            return whole;
        }
        if (!part.value().isLessThan(Exact.ONE)) {
            throw fault(TEXTS.phrase("problem.fractionNotLess", text.shown(start, text.position())),
                    TEXTS.phrase("remedy.fraction"), start);
        }
        return new Figure(whole.value().plus(part.value()), part.step());
    }

    private boolean fractionHere() {
        int at = text.position();
        while (Typed.isDigit(text.at(at))) {
            at++;
        }
        return at > text.position() && text.at(at) == '/' && Typed.isDigit(text.at(at + 1));
    }

    private Figure vulgar() {
        int[] value = VULGAR_VALUES[VULGAR.indexOf(text.peek())];
        text.skip();
        return new Figure(Exact.of(value[0], value[1]), Exact.of(1, value[1]));
    }

    private Figure fraction() {
        int start = text.position();
        int numerator = smallInteger();
        text.skip();
        int denominator = smallInteger();
        if (denominator == 0) {
            throw fault(TEXTS.phrase("problem.zero"), TEXTS.phrase("remedy.simpleFraction"), start);
        }
        return new Figure(Exact.of(numerator, denominator), Exact.of(1, denominator));
    }

    private int smallInteger() {
        int start = text.position();
        StringBuilder digits = new StringBuilder();
        if (digitsInto(digits) > MOST_FRACTION_DIGITS) {
            throw fault(TEXTS.phrase("problem.fractionDigits"), TEXTS.phrase("remedy.simpleFraction"), start);
        }
        return Integer.parseInt(digits.toString());
    }

    private static QuantityFormatException fault(Phrase problem, Phrase remedy, int position) {
        return new QuantityFormatException(problem, remedy, position);
    }
}
