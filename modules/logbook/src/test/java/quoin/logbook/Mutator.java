package quoin.logbook;

import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Damages text files in the ways disks, editors and ill will do; the same seed gives the same damage. */
public final class Mutator {

    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");
    private static final Pattern TEXT = Pattern.compile("\"[^\"\\\\]{0,40}\"");
    private static final List<String> NUMBERS = List.of("NaN", "Infinity", "-Infinity", "1e999", "-1e999", "1e-999", "9223372036854775808",
            "-9223372036854775809", "1" + "0".repeat(5000), "0." + "3".repeat(5000), "1e2147483648", "00", "+1", "0x10", "1_000", ".5",
            "1073741824", "-0", "1e308", "5e-324", "null", "true", "\"1\"", "[1]", "{}");
    private static final List<String> TEXTS = List.of("\"\"", "\"../../../etc/passwd\"", "\"<html><img src='http://127.0.0.1:9/x'>\"",
            "\"\\u0000\"", "\"\\ud800\"", "\"=1+1\"", "\"com.sun.rowset.JdbcRowSetImpl\"", "\"\u202e\"", "\"" + "x".repeat(20_000) + "\"",
            "null", "7", "[]", "{\"@class\":\"java.lang.Runtime\"}", "\"\\x\"");
    private static final List<Charset> ENCODINGS = List.of(StandardCharsets.UTF_16, StandardCharsets.UTF_16LE, StandardCharsets.ISO_8859_1,
            Charset.forName("windows-1252"));

    private final Random random;

    public Mutator(long seed) {
        this.random = new Random(seed);
    }

    /** The file with one to three kinds of damage. */
    public byte[] damage(byte[] file) {
        byte[] damaged = file;
        for (int n = random.nextInt(3); n >= 0; n--) {
            damaged = once(damaged);
        }
        return damaged;
    }

    private byte[] once(byte[] file) {
        if (file.length == 0) {
            return new byte[] {(byte) random.nextInt()};
        }
        return switch (random.nextInt(15)) {
            case 0 -> flipped(file, 1);
            case 1 -> flipped(file, 20);
            case 2 -> Arrays.copyOf(file, random.nextInt(file.length));
            case 3 -> without(file);
            case 4 -> zeroed(file);
            case 5, 6 -> replaced(file, NUMBER, NUMBERS);
            case 7, 8 -> replaced(file, TEXT, TEXTS);
            case 9 -> inserted(file, "[".repeat(1 + random.nextInt(20_000)));
            case 10 -> inserted(file, "{\"a\":".repeat(1 + random.nextInt(20_000)));
            case 11 -> doubledKey(file);
            case 12 -> new String(file, StandardCharsets.UTF_8).getBytes(ENCODINGS.get(random.nextInt(ENCODINGS.size())));
            case 13 -> swappedLines(file);
            default -> inserted(file, List.of("\ufeff", "\0", "\r", "\n", "\u2028", "}", "]", "\"", ",", "\\", "\uffff").get(random.nextInt(11)));
        };
    }

    private byte[] flipped(byte[] file, int bits) {
        byte[] changed = file.clone();
        for (int n = 0; n < bits; n++) {
            changed[random.nextInt(changed.length)] ^= (byte) (1 << random.nextInt(8));
        }
        return changed;
    }

    private byte[] without(byte[] file) {
        int from = random.nextInt(file.length);
        int to = from + random.nextInt(Math.min(400, file.length - from));
        return joined(Arrays.copyOf(file, from), new byte[0], Arrays.copyOfRange(file, to, file.length));
    }

    private byte[] zeroed(byte[] file) {
        byte[] changed = file.clone();
        int from = random.nextInt(file.length);
        Arrays.fill(changed, from, from + random.nextInt(Math.min(4096, file.length - from)), (byte) 0);
        return changed;
    }

    private byte[] inserted(byte[] file, String text) {
        int at = random.nextInt(file.length);
        return joined(Arrays.copyOf(file, at), text.getBytes(StandardCharsets.UTF_8), Arrays.copyOfRange(file, at, file.length));
    }

    private byte[] replaced(byte[] file, Pattern what, List<String> by) {
        String text = new String(file, StandardCharsets.UTF_8);
        List<int[]> places = what.matcher(text).results().map(m -> new int[] {m.start(), m.end()}).toList();
        if (places.isEmpty()) {
            return file;
        }
        int[] place = places.get(random.nextInt(places.size()));
        return (text.substring(0, place[0]) + by.get(random.nextInt(by.size())) + text.substring(place[1])).getBytes(StandardCharsets.UTF_8);
    }

    private byte[] doubledKey(byte[] file) {
        String text = new String(file, StandardCharsets.UTF_8);
        List<String> pairs = Pattern.compile("\"\\w+\" ?: ?[^,{}\\[\\]\\n]+").matcher(text).results().map(MatchResult::group)
                .toList();
        if (pairs.isEmpty()) {
            return file;
        }
        String pair = pairs.get(random.nextInt(pairs.size()));
        int at = text.indexOf(pair);
        return (text.substring(0, at) + pair + "," + text.substring(at)).getBytes(StandardCharsets.UTF_8);
    }

    private byte[] swappedLines(byte[] file) {
        String[] lines = new String(file, StandardCharsets.UTF_8).split("\n", -1);
        int a = random.nextInt(lines.length);
        int b = random.nextInt(lines.length);
        String kept = lines[a];
        lines[a] = lines[b];
        lines[b] = random.nextBoolean() ? kept : lines[b];
        return String.join("\n", lines).getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] joined(byte[]... parts) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            all.writeBytes(part);
        }
        return all.toByteArray();
    }
}
