package quoin.setupsheet.layout;

import java.util.List;
import quoin.setupsheet.content.SheetContent.Figure;

/** Figures one under the other: name, value, uncertainty, target, word. */
final class FigureBox {

    /** Ends of name, value and uncertainty and beginnings of target and word, as shares of the width. */
    private record Stops(double name, double value, double uncertainty, double target, double word) {
    }

    private static final Stops SHORT_NAMES = new Stops(0.18, 0.40, 0.53, 0.55, 0.79);
    private static final Stops LONG_NAMES = new Stops(0.34, 0.53, 0.63, 0.645, 0.84);
    /** Height of a line to write on, mm. */
    private static final double HAND_MM = 6;

    private final List<Figure> figures;
    private final boolean blank;
    private final Stops stops;

    /** @param longNames true where the names need more room than at a corner */
    FigureBox(List<Figure> figures, boolean blank, boolean longNames) {
        this.figures = figures;
        this.blank = blank;
        this.stops = longNames ? LONG_NAMES : SHORT_NAMES;
    }

    double rowMm(Pen pen) {
        return blank ? pen.mm(HAND_MM) : pen.lineMm(Pen.TEXT_PT);
    }

    double heightMm(Pen pen) {
        return figures.size() * rowMm(pen);
    }

    void draw(Pen pen, double leftMm, double topMm, double widthMm) {
        for (int i = 0; i < figures.size(); i++) {
            double top = topMm + i * rowMm(pen) + rowMm(pen) - pen.lineMm(Pen.TEXT_PT);
            row(pen, leftMm, top, widthMm, figures.get(i));
        }
    }

    private void row(Pen pen, double left, double top, double width, Figure figure) {
        pen.text(left, top, stops.name() * width, false, Pen.TEXT_PT, figure.name());
        if (blank && !figure.name().isEmpty()) {
            double y = top + pen.lineMm(Pen.TEXT_PT) - pen.mm(0.4);
            pen.line(left + stops.name() * width, y, left + stops.uncertainty() * width, y, Pen.THIN_MM);
            pen.text(left + stops.target() * width, top, (1 - stops.target()) * width, false, Pen.SMALL_PT,
                    figure.target().isEmpty() ? figure.value() : figure.target());
            return;
        }
        pen.right(left + stops.value() * width, top, (stops.value() - stops.name()) * width, figure.isRead(), Pen.TEXT_PT, figure.value());
        pen.right(left + stops.uncertainty() * width, top, (stops.uncertainty() - stops.value()) * width, false, Pen.SMALL_PT,
                figure.uncertainty());
        pen.text(left + stops.target() * width, top, (stops.word() - stops.target()) * width, false, Pen.SMALL_PT, figure.target());
        pen.text(left + stops.word() * width, top, (1 - stops.word()) * width, false, Pen.SMALL_PT, figure.word());
    }
}
