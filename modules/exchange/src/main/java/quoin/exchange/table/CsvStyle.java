package quoin.exchange.table;

/** How numbers and cells are told apart: a decimal comma needs another separator. */
public enum CsvStyle {
    /** 160.2 and a comma between cells. */
    POINT('.', ','),
    /** 160,2 and a semicolon between cells, as spreadsheets expect it where a comma is the decimal mark. */
    COMMA(',', ';');

    private final char decimalMark;
    private final char separator;

    CsvStyle(char decimalMark, char separator) {
        this.decimalMark = decimalMark;
        this.separator = separator;
    }

    public char decimalMark() {
        return decimalMark;
    }

    public char separator() {
        return separator;
    }
}
