package quoin.quantities;

/** The mark between the whole part and the decimals. */
public enum DecimalMark {
    POINT('.'),
    COMMA(',');

    private final char character;

    DecimalMark(char character) {
        this.character = character;
    }

    public char character() {
        return character;
    }
}
