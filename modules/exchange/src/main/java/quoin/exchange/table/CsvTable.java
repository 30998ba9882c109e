package quoin.exchange.table;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;
import org.openide.util.NbBundle.Messages;

/**
 * Rows of cells as RFC 4180 text, UTF-8 with a byte order mark, without which spreadsheets misread umlauts. A text cell that a
 * spreadsheet would take for a formula gets an apostrophe before it; {@link #read} takes it off again.
 */
@Messages({
    "csv.noText=this is no text; save the table as CSV in the spreadsheet program, then choose that file",
    "# {0} - what went wrong", "csv.unreadable=the table cannot be read: {0}; check the quotation marks in it",
    "csv.empty=the file is empty; save the table with its first row again",
    "# {0} - number", "csv.tooWide=the table has more than {0} columns; save only those with readings",
    "# {0} - number", "csv.tooLong=the table has more than {0} rows; save only those with readings"})
public final class CsvTable {

    /** A longer file is not read: a cell takes some hundred times its bytes, and a row may be all of them. */
    public static final int MOST_BYTES = 1 << 20;
    /** Every column is shown with a choice beside it. */
    private static final int MOST_COLUMNS = 300;
    private static final int MOST_ROWS = 100_000;

    private static final char MARK = '\uFEFF';
    private static final String FORMULA_STARTS = "=+-@\t\r\n'";
    private static final List<Character> SEPARATORS = List.of(';', ',', '\t');

    private CsvTable() {
    }

    /** One cell. */
    public sealed interface Cell {

        /** A text, made inert. */
        record Text(String words) implements Cell {
        }

        /** A number. */
        record Number(double value) implements Cell {
        }
    }

    public static Cell text(String words) {
        return new Cell.Text(words);
    }

    public static Cell number(double value) {
        return new Cell.Number(value);
    }

    /** Writes rows; the first are the names of the columns. */
    public static byte[] write(List<String> columns, List<List<Cell>> rows, CsvStyle style) {
        StringWriter out = new StringWriter();
        out.append(MARK);
        CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(style.separator()).get();
        try (CSVPrinter printer = new CSVPrinter(out, format)) {
            printer.printRecord(columns);
            for (List<Cell> row : rows) {
                printer.printRecord(row.stream().map(c -> cell(c, style)).toList());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static String cell(Cell cell, CsvStyle style) {
        if (cell instanceof Cell.Number number) {
            BigDecimal exact = BigDecimal.valueOf(number.value());
            String plain = exact.signum() == 0 ? "0" : exact.stripTrailingZeros().toPlainString();
            return plain.replace('.', style.decimalMark());
        }
        return inert(((Cell.Text) cell).words());
    }

    static String inert(String words) {
        return !words.isEmpty() && FORMULA_STARTS.indexOf(words.charAt(0)) >= 0 ? "'" + words : words;
    }

    static String original(String cell) {
        return cell.length() > 1 && cell.charAt(0) == '\'' && FORMULA_STARTS.indexOf(cell.charAt(1)) >= 0 ? cell.substring(1) : cell;
    }

    /**
     * Reads any table of this kind, from a spreadsheet or from {@link #write}: the separator that occurs most in the first
     * line, UTF-8 or else the Western code page.
     *
     * @throws IllegalArgumentException in words for the racer where it is no table
     */
    public static List<List<String>> read(byte[] bytes) {
        String text = decode(bytes);
        if (text.indexOf('\u0000') >= 0) {
            throw new IllegalArgumentException(Bundle.csv_noText());
        }
        CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(separator(text)).setIgnoreEmptyLines(true).get();
        List<List<String>> rows = new ArrayList<>();
        boolean wide = false;
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
            for (CSVRecord record : parser) {
                wide |= record.size() > MOST_COLUMNS;
                if (wide || rows.size() > MOST_ROWS) {
                    break;
                }
                List<String> row = new ArrayList<>();
                record.forEach(cell -> row.add(original(cell)));
                if (row.stream().anyMatch(c -> !c.isBlank())) {
                    rows.add(List.copyOf(row));
                }
            }
        } catch (IOException | RuntimeException e) {
            throw new IllegalArgumentException(Bundle.csv_unreadable(e.getLocalizedMessage()), e);
        }
        if (wide) {
            throw new IllegalArgumentException(Bundle.csv_tooWide(Integer.toString(MOST_COLUMNS)));
        }
        if (rows.size() > MOST_ROWS) {
            throw new IllegalArgumentException(Bundle.csv_tooLong(Integer.toString(MOST_ROWS)));
        }
        if (rows.isEmpty()) {
            throw new IllegalArgumentException(Bundle.csv_empty());
        }
        return rows;
    }

    private static String decode(byte[] bytes) {
        String text;
        try {
            text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
        } catch (CharacterCodingException e) {
            text = new String(bytes, Charset.forName("windows-1252"));
        }
        return !text.isEmpty() && text.charAt(0) == MARK ? text.substring(1) : text;
    }

    private static char separator(String text) {
        char best = ',';
        long most = 0;
        String first = text.lines().filter(l -> !l.isBlank()).findFirst().orElse("").replaceAll("\"[^\"]*\"", "");
        for (char candidate : SEPARATORS) {
            long count = first.chars().filter(c -> c == candidate).count();
            if (count > most) {
                most = count;
                best = candidate;
            }
        }
        return best;
    }
}
