package quoin.quantities;

/** Typed text with a cursor. Look-alikes are mapped one to one, so positions stay those of the original text. */
final class Typed {
    /** Stands for every space that may group thousands. */
    static final char GROUP_SPACE = '\u00A0';
    private static final Texts TEXTS = Texts.of(Typed.class);
    private static final char END = '\0';
    private static final int SHOWN = 24;

    private final String original;
    private final char[] chars;
    private int position;

    Typed(String text, int longest) {
        if (text.length() > longest) {
            throw new QuantityFormatException(TEXTS.phrase("problem.tooLong", text.length()),
                    TEXTS.phrase("remedy.atMost", longest), longest);
        }
        original = text;
        chars = new char[text.length()];
        for (int i = 0; i < chars.length; i++) {
            chars[i] = normal(text.charAt(i));
        }
    }

    private static char normal(char c) {
        return switch (c) {
            case '\u2010', '\u2011', '\u2012', '\u2013', '\u2014', '\u2212', '\uFE63', '\uFF0D' -> '-';
            case '\uFF0B' -> '+';
            case '\u00A0', '\u2007', '\u2009', '\u202F' -> GROUP_SPACE;
            case '\u200B', '\u200E', '\u200F', '\uFEFF' -> ' ';
            case '\u2018', '\u2019', '\u201B', '\u2032', '\u00B4', '`' -> '\'';
            case '\u201C', '\u201D', '\u2033', '\u02BA' -> '"';
            case '\u00BA', '\u02DA' -> '°';
            case '\u2044', '\u2215' -> '/';
            // a NUL must not be taken for the end
            case END -> '\uFFFD';
            default -> Character.isWhitespace(c) || Character.isSpaceChar(c) ? ' ' : c;
        };
    }

    int position() {
        return position;
    }

    void moveTo(int newPosition) {
        position = newPosition;
    }

    void skip() {
        position++;
    }

    int length() {
        return chars.length;
    }

    boolean atEnd() {
        return position >= chars.length;
    }

    char peek() {
        return at(position);
    }

    char peekNext() {
        return at(position + 1);
    }

    /** The mapped character there; a NUL beyond either end. */
    char at(int index) {
        return index >= 0 && index < chars.length ? chars[index] : END;
    }

    boolean skipSpaces() {
        int start = position;
        position = afterSpaces(position);
        return position > start;
    }

    int afterSpaces(int from) {
        int index = from;
        while (isSpace(at(index))) {
            index++;
        }
        return index;
    }

    String mapped(int from, int to) {
        return new String(chars, from, to - from);
    }

    /** The original text from there to the next space, in quotes, for messages. */
    String shown(int from) {
        int to = from;
        while (to < chars.length && !isSpace(chars[to])) {
            to++;
        }
        return shown(from, to);
    }

    /** The original text between, in quotes, cut where it is long, without control characters. */
    String shown(int from, int to) {
        StringBuilder shown = new StringBuilder("\"");
        for (int i = from; i < Math.min(to, from + SHOWN); i++) {
            char c = original.charAt(i);
            shown.append(Character.isISOControl(c) || Character.isSurrogate(c) ? '\uFFFD' : c);
        }
        return shown.append(to - from > SHOWN ? "…\"" : "\"").toString();
    }

    static boolean isSpace(char c) {
        return c == ' ' || c == GROUP_SPACE;
    }

    static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    static boolean isMark(char c) {
        return c == '.' || c == ',';
    }
}
