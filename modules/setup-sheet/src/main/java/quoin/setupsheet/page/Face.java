package quoin.setupsheet.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * The typeface of the sheet, DejaVu Sans Condensed, regular and bold, measured from the font files themselves, so that lines
 * break alike in the PDF, in print and on the screen. Not for several threads at a time.
 */
public final class Face {

    /** Stands for a character the typeface does not have. */
    static final char MISSING = '\uFFFD';
    private static final String REGULAR = "DejaVuSansCondensed.ttf";
    private static final String BOLD = "DejaVuSansCondensed-Bold.ttf";

    private final Widths regular = new Widths(REGULAR);
    private final Widths bold = new Widths(BOLD);

    /** One weight: advance widths in thousandths of the size. */
    private static final class Widths {
        private final TrueTypeFont font;
        private final CmapLookup glyphs;
        private final double perUnit;
        private final Map<Integer, Double> known = new HashMap<>();

        Widths(String file) {
            try (InputStream in = open(file)) {
                font = new TTFParser().parse(new RandomAccessReadBuffer(in));
                glyphs = font.getUnicodeCmapLookup();
                perUnit = 1.0 / font.getUnitsPerEm();
            } catch (IOException e) {
                throw new UncheckedIOException("the typeface of the sheet cannot be read", e);
            }
        }

        boolean has(int character) {
            return glyphs.getGlyphId(character) != 0;
        }

        double width(int character) {
            return known.computeIfAbsent(character, c -> {
                try {
                    return font.getAdvanceWidth(glyphs.getGlyphId(c)) * perUnit;
                } catch (IOException e) {
                    throw new UncheckedIOException("the typeface of the sheet cannot be read", e);
                }
            });
        }
    }

    static InputStream open(boolean bold) {
        return open(bold ? BOLD : REGULAR);
    }

    private static InputStream open(String file) {
        InputStream in = Face.class.getResourceAsStream(file);
        if (in == null) {
            throw new IllegalStateException("the typeface " + file + " is missing from this build");
        }
        return in;
    }

    /** The text with what cannot be drawn replaced: line ends and tabs by a blank, unknown characters by a mark. */
    public String printable(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> {
            if (Character.isISOControl(c) || Character.isWhitespace(c)) {
                out.append(' ');
            } else if (Character.getType(c) == Character.FORMAT) {
                // marks that turn the direction of writing could make a name read as another one
                return;
            } else if (regular.has(c) && bold.has(c)) {
                out.appendCodePoint(c);
            } else {
                out.append(MISSING);
            }
        });
        return out.toString();
    }

    /** Width of a text in mm. */
    public double widthMm(String text, boolean inBold, double sizePt) {
        Widths widths = inBold ? bold : regular;
        return text.codePoints().mapToDouble(widths::width).sum() * sizePt * Ink.MM_PER_POINT;
    }

    /** Breaks a text into lines no wider than given; a word that is too long by itself is broken inside. */
    public List<String> wrap(String text, boolean inBold, double sizePt, double mostMm) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : printable(text).strip().split(" +")) {
            String rest = word;
            String joined = line.length() == 0 ? rest : line + " " + rest;
            if (widthMm(joined, inBold, sizePt) <= mostMm) {
                line.setLength(0);
                line.append(joined);
                continue;
            }
            if (line.length() > 0) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (widthMm(rest, inBold, sizePt) > mostMm) {
                int end = fitting(rest, inBold, sizePt, mostMm);
                lines.add(rest.substring(0, end));
                rest = rest.substring(end);
            }
            line.append(rest);
        }
        if (line.length() > 0) {
            lines.add(line.toString());
        }
        return lines;
    }

    private int fitting(String word, boolean inBold, double sizePt, double mostMm) {
        int end = word.offsetByCodePoints(0, 1);
        while (end < word.length()) {
            int next = word.offsetByCodePoints(end, 1);
            if (widthMm(word.substring(0, next), inBold, sizePt) > mostMm) {
                break;
            }
            end = next;
        }
        return end;
    }

    /** The text, or as much of it as fits with an ellipsis. */
    public String cut(String text, boolean inBold, double sizePt, double mostMm) {
        String whole = printable(text).strip();
        if (widthMm(whole, inBold, sizePt) <= mostMm) {
            return whole;
        }
        return whole.substring(0, fitting(whole, inBold, sizePt, mostMm - widthMm("…", inBold, sizePt))) + "…";
    }
}
