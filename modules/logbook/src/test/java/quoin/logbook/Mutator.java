package quoin.logbook;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Damages files in the ways disks, editors and ill will do; the same seed gives the same damage. */
public final class Mutator {

    /** What can be done to a file. */
    public enum Kind {
        BIT_FLIPPED, BITS_FLIPPED, CUT_SHORT, PART_MISSING, PART_ZEROED, HUGE_NUMBER, NO_NUMBER, GIGABYTE_CLAIMED, HOSTILE_TEXT, NEVER_CLOSED,
        NESTED_DEEP, KEY_TWICE, WRONG_ENCODING, NO_UTF8, LINES_SWAPPED, STRAY_SIGN
    }

    private static final Kind[] KINDS = Kind.values();
    private static final int DEEPEST = 20_000;
    private static final int GIGABYTE = 1 << 30;
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");
    private static final Pattern TEXT = Pattern.compile("\"[^\"\\\\]{0,40}\"");
    private static final Pattern VALUE = Pattern.compile("(?<=:)\\s?(-?\\d+(\\.\\d+)?|\"[^\"\\\\]{0,40}\")");
    private static final Pattern PAIR = Pattern.compile("\"\\w+\" ?: ?[^,{}\\[\\]\\n]+");
    private static final List<String> HUGE = List.of("1e999", "-1e999", "1e-999", "9223372036854775808", "-9223372036854775809",
            "1" + "0".repeat(5000), "0." + "3".repeat(5000), "1e2147483648", "1e308", "-1e308", "5e-324");
    private static final List<String> NO_NUMBERS = List.of("NaN", "\"NaN\"", "Infinity", "-Infinity", "\"Infinity\"", "00", "+1", "0x10", "1_000",
            ".5", "-0", "null", "true", "\"1\"", "[1]", "{}", "");
    private static final List<String> CLAIMS = List.of("1073741824", "1073741823", "2147483647", "2147483648", "4294967296", "-1073741824");
    private static final List<String> TEXTS = List.of("\"\"", "\"../../../etc/passwd\"", "\"C:\\\\Windows\\\\x\"", "\"a/../b\"", "\"CON\"",
            "\"<html><img src='http://127.0.0.1:9/x'>\"", "\"\\u0000\"", "\"\\ud800\"", "\"=1+1\"", "\"com.sun.rowset.JdbcRowSetImpl\"",
            "\"\u202e\"", "\"&x;\"", "\"" + "x".repeat(20_000) + "\"", "null", "7", "[]", "{\"@class\":\"java.lang.Runtime\"}", "\"\\x\"");
    private static final List<String> STRAY = List.of("\ufeff", "\0", "\r", "\n", "\u2028", "}", "]", "\"", ",", ";", "\\", "\uffff");
    private static final List<Charset> ENCODINGS = List.of(StandardCharsets.UTF_16, StandardCharsets.UTF_16LE, Charset.forName("UTF-32"),
            StandardCharsets.ISO_8859_1, Charset.forName("windows-1252"), Charset.forName("IBM037"));
    /** An overlong slash, a lone middle and a lone first byte, half of a pair of UTF-16, and beyond the last sign. */
    private static final List<byte[]> NO_SIGNS = List.of(new byte[] {(byte) 0xc0, (byte) 0xaf}, new byte[] {(byte) 0x80},
            new byte[] {(byte) 0xe2, (byte) 0x82}, new byte[] {(byte) 0xed, (byte) 0xa0, (byte) 0x80},
            new byte[] {(byte) 0xf4, (byte) 0x90, (byte) 0x80, (byte) 0x80}, new byte[] {(byte) 0xff, (byte) 0xfe});

    private final Random random;
    private final Set<Kind> made = EnumSet.noneOf(Kind.class);

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

    /** What was really done: a kind that found nothing to change is not among them. */
    public Set<Kind> made() {
        return EnumSet.copyOf(made);
    }

    private byte[] once(byte[] file) {
        if (file.length == 0) {
            return new byte[] {(byte) random.nextInt()};
        }
        byte[] changed = file;
        while (Arrays.equals(changed, file)) {
            Kind kind = KINDS[random.nextInt(KINDS.length)];
            changed = by(kind, file);
            if (!Arrays.equals(changed, file)) {
                made.add(kind);
            }
        }
        return changed;
    }

    private byte[] by(Kind kind, byte[] file) {
        return switch (kind) {
            case BIT_FLIPPED -> flipped(file, 1);
            case BITS_FLIPPED -> flipped(file, 20);
            case CUT_SHORT -> Arrays.copyOf(file, random.nextInt(file.length));
            case PART_MISSING -> without(file);
            case PART_ZEROED -> zeroed(file);
            case HUGE_NUMBER -> replaced(file, NUMBER, one(HUGE));
            case NO_NUMBER -> replaced(file, NUMBER, one(NO_NUMBERS));
            case GIGABYTE_CLAIMED -> isZip(file) ? zipClaiming(file) : replaced(file, NUMBER, one(CLAIMS));
            case HOSTILE_TEXT -> replaced(file, TEXT, one(TEXTS));
            case NEVER_CLOSED -> inserted(file, one(List.of("[", "{\"a\":")).repeat(1 + random.nextInt(DEEPEST)).getBytes(StandardCharsets.UTF_8));
            case NESTED_DEEP -> replaced(file, VALUE, nested(1 + random.nextInt(random.nextBoolean() ? 40 : DEEPEST)));
            case KEY_TWICE -> doubledKey(file);
            case WRONG_ENCODING -> new String(file, StandardCharsets.UTF_8).getBytes(one(ENCODINGS));
            case NO_UTF8 -> inserted(file, one(NO_SIGNS));
            case LINES_SWAPPED -> swappedLines(file);
            case STRAY_SIGN -> inserted(file, one(STRAY).getBytes(StandardCharsets.UTF_8));
        };
    }

    private <T> T one(List<T> of) {
        return of.get(random.nextInt(of.size()));
    }

    private String nested(int deep) {
        return random.nextBoolean() ? "[".repeat(deep) + "]".repeat(deep) : "{\"a\":".repeat(deep) + "1" + "}".repeat(deep);
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

    private byte[] inserted(byte[] file, byte[] bytes) {
        int at = random.nextInt(file.length);
        return joined(Arrays.copyOf(file, at), bytes, Arrays.copyOfRange(file, at, file.length));
    }

    private byte[] replaced(byte[] file, Pattern what, String by) {
        String text = new String(file, StandardCharsets.UTF_8);
        List<int[]> places = what.matcher(text).results().map(m -> new int[] {m.start(), m.end()}).toList();
        if (places.isEmpty()) {
            return file;
        }
        int[] place = one(places);
        return (text.substring(0, place[0]) + by + text.substring(place[1])).getBytes(StandardCharsets.UTF_8);
    }

    /** The same key again, with the same or with another value. */
    private byte[] doubledKey(byte[] file) {
        String text = new String(file, StandardCharsets.UTF_8);
        List<String> pairs = PAIR.matcher(text).results().map(MatchResult::group).toList();
        if (pairs.isEmpty()) {
            return file;
        }
        String pair = one(pairs);
        int at = text.indexOf(pair);
        String again = random.nextBoolean() ? pair : pair.substring(0, pair.indexOf(':') + 1) + one(TEXTS);
        return (text.substring(0, at) + again + "," + text.substring(at)).getBytes(StandardCharsets.UTF_8);
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

    private static boolean isZip(byte[] file) {
        return file.length > 3 && file[0] == 'P' && file[1] == 'K' && file[2] == 3 && file[3] == 4;
    }

    /** A size, a place or a number of files in one of the headers of a zip says a gigabyte or more (APPNOTE 6.3, 4.3.7, 4.3.12, 4.3.16). */
    private byte[] zipClaiming(byte[] file) {
        List<Integer> fields = new ArrayList<>();
        for (int i = 0; i + 46 < file.length; i++) {
            if (file[i] == 'P' && file[i + 1] == 'K') {
                int header = file[i + 2] << 8 | file[i + 3];
                fields.addAll(header == 0x0304 ? List.of(i + 18, i + 22) : header == 0x0102 ? List.of(i + 20, i + 24, i + 42) : List.of());
            }
        }
        int end = file.length - 22;
        if (end > 0 && file[end] == 'P' && file[end + 1] == 'K') {
            fields.addAll(List.of(end + 8, end + 12, end + 16));
        }
        byte[] changed = file.clone();
        int claim = one(List.of(GIGABYTE, GIGABYTE - 1, Integer.MAX_VALUE, -1, -2));
        if (!fields.isEmpty()) {
            ByteBuffer.wrap(changed).order(ByteOrder.LITTLE_ENDIAN).putInt(one(fields), claim);
        }
        return changed;
    }

    private static byte[] joined(byte[]... parts) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            all.writeBytes(part);
        }
        return all.toByteArray();
    }
}
