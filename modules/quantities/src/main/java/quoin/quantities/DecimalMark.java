package quoin.quantities;

/** The mark between the whole part and the decimals. */
public enum DecimalMark {
    POINT('.'),
    COMMA(',');

    private final char character;

    DecimalMark(char character) {
        this.character = character;
    }

    /** The usual one of the language of the program. */
    public static DecimalMark usual() {
        return Texts.of(DecimalMark.class).say("decimal.mark").equals(",") ? COMMA : POINT;
    }

    public char character() {
        return character;
    }
}
