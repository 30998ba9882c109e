package quoin.logbook.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import quoin.quantities.Texts;

/**
 * What stands in a file of JSON lines.
 *
 * @param lines      the lines without their ends, damaged ones included
 * @param torn       bytes after them that were cut off while being written; empty where the file ends well
 * @param endMissing true where the last line is whole and only its line end is missing
 * @param goodLength length of the file up to the torn bytes
 */
public record LineContents(List<byte[]> lines, byte[] torn, boolean endMissing, long goodLength) {
    private static final Texts TEXTS = Texts.of(LineContents.class);

    /** Far more than a day can hold; a larger file is refused instead of filling the memory. */
    private static final long MOST_BYTES = 256L << 20;

    /** The last line that counts, with its end where it has one; empty in an empty file. */
    byte[] goodEnd() {
        if (lines.isEmpty()) {
            return new byte[0];
        }
        byte[] last = lines.get(lines.size() - 1);
        byte[] whole = Arrays.copyOf(last, last.length + (endMissing ? 0 : 1));
        if (!endMissing) {
            whole[last.length] = '\n';
        }
        return whole;
    }

    public static LineContents read(Path file) throws IOException {
        if (Files.size(file) > MOST_BYTES) {
            throw new DiskException(TEXTS.phrase("largerThanMbWhich", file.getFileName(), MOST_BYTES >> 20));
        }
        return of(Files.readAllBytes(file));
    }

    /** Takes bytes apart. A last line that is no JSON object counts as torn; the first line never does. */
    public static LineContents of(byte[] bytes) {
        List<byte[]> lines = new ArrayList<>();
        int start = 0;
        int lastStart = 0;
        for (int i = 0; i < bytes.length; i++) {
            if (bytes[i] == '\n') {
                lines.add(Arrays.copyOfRange(bytes, start, i));
                lastStart = start;
                start = i + 1;
            }
        }
        byte[] tail = Arrays.copyOfRange(bytes, start, bytes.length);
        if (tail.length > 0) {
            if (isObject(tail)) {
                lines.add(tail);
                return new LineContents(List.copyOf(lines), new byte[0], true, bytes.length);
            }
            return new LineContents(List.copyOf(lines), tail, false, start);
        }
        if (lines.size() > 1 && isTorn(lines.get(lines.size() - 1))) {
            return new LineContents(List.copyOf(lines.subList(0, lines.size() - 1)),
                    Arrays.copyOfRange(bytes, lastStart, bytes.length), false, lastStart);
        }
        return new LineContents(List.copyOf(lines), tail, false, bytes.length);
    }

    private static boolean isTorn(byte[] line) {
        return line.length <= StrictJson.MAX_BYTES && !isObject(line);
    }

    private static boolean isObject(byte[] text) {
        try {
            StrictJson.read(text);
            return true;
        } catch (FormatException e) {
            return false;
        }
    }
}
