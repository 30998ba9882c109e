package quoin.setupsheet.page;

import java.util.Objects;

/** One thing on a page. Places are mm from the left and the top edge of the paper; everything is black. */
public sealed interface Ink {

    /** Millimetres of one typographic point, 1/72 inch. */
    double MM_PER_POINT = 25.4 / 72;

    /**
     * A line of text.
     *
     * @param xMm       left end
     * @param baselineMm height of the baseline, from the top
     * @param sizePt    size in points
     * @param bold      bold or regular
     * @param words     the text; may be empty
     */
    record Text(double xMm, double baselineMm, double sizePt, boolean bold, String words) implements Ink {
        public Text {
            Objects.requireNonNull(words, "words");
        }
    }

    /** A straight line. */
    record Line(double x1Mm, double y1Mm, double x2Mm, double y2Mm, double widthMm) implements Ink {
    }

    /** An open rectangle. */
    record Box(double xMm, double yMm, double acrossMm, double downMm, double widthMm) implements Ink {
    }
}
