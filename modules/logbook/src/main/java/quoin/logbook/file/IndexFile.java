package quoin.logbook.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.CRC32;

/**
 * Rows of texts by a key, each line with its CRC-32, for what can be made again at any time. What is damaged or missing is simply
 * not there when it is read.
 */
public final class IndexFile {

    private static final String FIRST = "quoin-index 1";
    private static final char SEPARATOR = '\t';

    private IndexFile() {
    }

    /**
     * Reads the rows that are whole.
     *
     * @param columns how many texts a row has, the key included
     */
    public static Map<String, List<String>> read(Path file, int columns) {
        Map<String, List<String>> rows = new LinkedHashMap<>();
        String text;
        try {
            text = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
        } catch (IOException e) {
            return rows;
        }
        if (!text.startsWith(FIRST + "\n")) {
            return rows;
        }
        List<String> lines = new ArrayList<>();
        int start = FIRST.length() + 1;
        for (int end = text.indexOf('\n', start); end >= 0; end = text.indexOf('\n', start)) {
            lines.add(text.substring(start, end));
            start = end + 1;
        }
        // Checking the sums of a large library's lines is most of the work.
        lines.parallelStream().map(IndexFile::row).filter(row -> row.size() == columns).toList().forEach(row -> rows.put(row.get(0), row));
        return rows;
    }

    private static List<String> row(String line) {
        int first = line.indexOf(SEPARATOR);
        if (first < 0 || !line.substring(0, first).equals(crc(line.substring(first + 1)))) {
            return List.of();
        }
        List<String> cells = new ArrayList<>();
        int start = first + 1;
        for (int end = line.indexOf(SEPARATOR, start); end >= 0; end = line.indexOf(SEPARATOR, start)) {
            cells.add(plain(line.substring(start, end)));
            start = end + 1;
        }
        cells.add(plain(line.substring(start)));
        return cells;
    }

    /** Writes all rows anew; either the old or the new file is there afterwards. */
    public static void write(Path file, Collection<List<String>> rows) throws IOException {
        StringBuilder text = new StringBuilder(FIRST).append('\n');
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (String cell : row) {
                line.append(line.length() == 0 ? "" : SEPARATOR).append(escaped(cell));
            }
            text.append(crc(line.toString())).append(SEPARATOR).append(line).append('\n');
        }
        Disk.replace(file, text.toString().getBytes(StandardCharsets.UTF_8));
    }

    private static String crc(String line) {
        CRC32 crc = new CRC32();
        crc.update(line.getBytes(StandardCharsets.UTF_8));
        return Long.toHexString(crc.getValue());
    }

    private static String escaped(String cell) {
        return cell.replace("\\", "\\\\").replace("\t", "\\t").replace("\n", "\\n").replace("\r", "\\r");
    }

    private static String plain(String cell) {
        if (cell.indexOf('\\') < 0) {
            return cell;
        }
        StringBuilder out = new StringBuilder(cell.length());
        for (int i = 0; i < cell.length(); i++) {
            char c = cell.charAt(i);
            if (c == '\\' && i + 1 < cell.length()) {
                i++;
                c = switch (cell.charAt(i)) {
                    case 't' -> '\t';
                    case 'n' -> '\n';
                    case 'r' -> '\r';
                    default -> cell.charAt(i);
                };
            }
            out.append(c);
        }
        return out.toString();
    }
}
