package quoin.seatview;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.font.FontRenderContext;
import java.awt.font.LineBreakMeasurer;
import java.awt.font.TextAttribute;
import java.awt.font.TextLayout;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.text.AttributedString;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JPanel;
import org.openide.util.NbBundle.Messages;
import quoin.car.Corner;
import quoin.workbench.Looks;
import quoin.workbench.Mark;

/**
 * Draws a page in black on white or white on black: the corners as they stand round the car, the cross weight under them, the
 * next thing at the bottom. What does not fit at the wanted size is drawn as large as it fits.
 */
@Messages({
    "# {0} - height", "# {1} - distance", "seat.size=figures {0} mm high, lines readable from {1,number,0.0} m",
    "seat.keys=Enter next   − back   * as last time   / black or white   + sound   Page up, Page down size   F6 measure the screen   . more   Esc leave",
    "seat.rule=Hold a rule to the bar: 1 or Page up longer, 2 or Page down shorter, until it is 100 mm long. Enter ends it."})
final class SeatPanel extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int MEASURED_AT = 1000;
    private static final double PLAIN_ONE = heightOfOne(Font.PLAIN);
    private static final double BOLD_ONE = heightOfOne(Font.BOLD);
    private static final double GAP = 0.2;
    private final String cross = Corner.crossWords() + " %";
    private static final int NEXT_LINES = 2;
    /** Something longer is typed wrong, and is drawn smaller than the rest. */
    private static final String USUAL_FIGURE = "8888.8";

    private transient Optional<SeatPage> page = Optional.empty();
    private transient SeatScale scale;
    private boolean whiteOnBlack;
    private boolean ruling;

    SeatPanel(SeatScale scale) {
        this.scale = scale;
        setOpaque(true);
        setFocusable(true);
    }

    void show(SeatPage shown) {
        page = Optional.of(shown);
        getAccessibleContext().setAccessibleName(cross + " " + shown.cross() + " " + shown.verdict().word() + ". " + shown.next());
        repaint();
    }

    SeatScale scale() {
        return scale;
    }

    void scale(SeatScale changed) {
        scale = changed;
        repaint();
    }

    boolean isWhiteOnBlack() {
        return whiteOnBlack;
    }

    void whiteOnBlack(boolean white) {
        whiteOnBlack = white;
        repaint();
    }

    boolean isRuling() {
        return ruling;
    }

    void ruling(boolean shown) {
        ruling = shown;
        repaint();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        Color ink = whiteOnBlack ? Color.WHITE : Color.BLACK;
        Color paper = whiteOnBlack ? Color.BLACK : Color.WHITE;
        g.setColor(paper);
        g.fillRect(0, 0, getWidth(), getHeight());
        g.setColor(ink);
        setForeground(ink);
        if (ruling) {
            drawRule(g);
        } else {
            page.ifPresent(p -> draw(g, p));
        }
        g.dispose();
    }

    private void drawRule(Graphics2D g) {
        double length = SeatScale.RULE_MM * scale.pixelsPerMm();
        double left = (getWidth() - length) / 2;
        double middle = getHeight() / 2.0;
        g.setStroke(new BasicStroke(3));
        g.draw(new Line2D.Double(left, middle, left + length, middle));
        g.draw(new Line2D.Double(left, middle - 20, left, middle + 20));
        g.draw(new Line2D.Double(left + length, middle - 20, left + length, middle + 20));
        g.setFont(Looks.font(1.5, Font.BOLD));
        int width = g.getFontMetrics().stringWidth(Bundle.seat_rule());
        g.drawString(Bundle.seat_rule(), (getWidth() - width) / 2, (int) middle + 80);
    }

    /** Two rows of corners, the cross weight, the next thing, the keys; all shrunk alike where the screen is too small. */
    private void draw(Graphics2D g, SeatPage p) {
        double keys = Looks.em(1.6);
        double wanted = 3 * scale.figurePx() * (1 + 2 * GAP) + NEXT_LINES * scale.linePx() * (1 + 2 * GAP) + keys;
        double fit = Math.min(1, (getHeight() - keys) / (wanted - keys));
        fit = Math.min(fit, widthFit(g, p));
        double figure = scale.figurePx() * fit;
        double line = scale.linePx() * fit;
        double row = (getHeight() - keys - NEXT_LINES * line * (1 + 2 * GAP)) / 3;
        for (Corner corner : Corner.values()) {
            double x = corner.isLeft() ? 0 : getWidth() / 2.0;
            drawCorner(g, corner, p.corners().get(corner), new Rectangle2D.Double(x, corner.isFront() ? 0 : row, getWidth() / 2.0, row), figure);
        }
        drawCross(g, p, 2 * row, row, figure, line);
        drawNext(g, p, 3 * row, getHeight() - keys - 3 * row, line);
        drawKeys(g, figure, line);
    }

    private double widthFit(Graphics2D g, SeatPage p) {
        Font figures = font(scale.figurePx(), Font.BOLD);
        FontMetrics metrics = g.getFontMetrics(figures);
        int widest = metrics.stringWidth("8888");
        for (Corner corner : Corner.values()) {
            String figure = p.corners().get(corner).figure();
            widest = Math.max(widest, metrics.stringWidth(figure.length() <= USUAL_FIGURE.length() ? figure : USUAL_FIGURE));
        }
        double name = g.getFontMetrics(font(scale.linePx(), Font.PLAIN)).stringWidth("RR ");
        double cell = (widest + name) * 1.1;
        return getWidth() / 2.0 / cell;
    }

    /**
     * A font whose figures are so high: what the system's plain font is, and how high its figures are in it, differs.
     *
     * @param height of a "1", which unlike a round figure does not stand over the line
     */
    private static Font font(double height, int style) {
        return new Font(Font.SANS_SERIF, style, 1).deriveFont((float) (height / (style == Font.BOLD ? BOLD_ONE : PLAIN_ONE)));
    }

    /** Height of a "1" in a font of size 1. */
    private static double heightOfOne(int style) {
        Font large = new Font(Font.SANS_SERIF, style, MEASURED_AT);
        return large.createGlyphVector(new FontRenderContext(null, true, true), "1").getVisualBounds().getHeight() / MEASURED_AT;
    }

    private void drawCorner(Graphics2D g, Corner corner, SeatPage.Cell cell, Rectangle2D at, double figure) {
        double base = at.getCenterY() + figure / 2;
        double name = figure * SeatScale.LINE_MM / SeatScale.FIGURE_MM;
        g.setFont(font(name, Font.PLAIN));
        double left = at.getX() + name;
        g.drawString(corner.words(), (float) left, (float) (at.getCenterY() - figure / 2 + name));
        Font full = font(figure, cell.typed() ? Font.PLAIN : Font.BOLD);
        double right = at.getMaxX() - name / 2;
        double room = right - left - name * 1.6;
        double fit = Math.min(1, room / Math.max(1, g.getFontMetrics(full).stringWidth(cell.figure())));
        g.setFont(full.deriveFont((float) (full.getSize2D() * fit)));
        double width = g.getFontMetrics().stringWidth(cell.figure());
        g.drawString(cell.figure(), (float) (right - width), (float) base);
        if (cell.here()) {
            g.setStroke(new BasicStroke((float) (figure / 12)));
            double under = base + figure * GAP * 0.6;
            g.draw(new Line2D.Double(left, under, right, under));
        }
    }

    /** The figure, and beside it what it is and the verdict on it, one above the other: in one line the word would shrink to nothing. */
    private void drawCross(Graphics2D g, SeatPage p, double top, double height, double figure, double line) {
        double base = top + height / 2 + figure / 2;
        g.setStroke(new BasicStroke(2));
        g.draw(new Line2D.Double(0, top, getWidth(), top));
        g.setFont(font(figure, Font.BOLD));
        g.drawString(p.cross(), (float) line, (float) base);
        double x = 1.8 * line + g.getFontMetrics().stringWidth(p.cross());
        String word = p.verdict().word();
        double size = Math.min(line, (height - 3 * GAP * line) / 2);
        g.setFont(font(size, Font.PLAIN));
        g.drawString(cross, (float) x, (float) (word.isEmpty() ? base : top + height / 2 - GAP * size));
        if (!word.isEmpty()) {
            double below = top + height / 2 + (1 + GAP * 1.5) * size;
            if (p.verdict().mark() != Mark.NONE) {
                p.verdict().mark().icon(size * 1.2 / Looks.em(1)).paintIcon(this, g, (int) x, (int) (below - size * 1.1));
                x += size * 1.6;
            }
            g.setFont(font(size, Font.BOLD));
            double fit = Math.min(1, (getWidth() - x - line / 2) / g.getFontMetrics().stringWidth(word));
            g.setFont(font(size * fit, Font.BOLD));
            g.drawString(word, (float) x, (float) below);
        }
    }

    /** The words in as many lines as there is room for, smaller where they are many. */
    private void drawNext(Graphics2D g, SeatPage p, double top, double height, double line) {
        g.setStroke(new BasicStroke(2));
        g.draw(new Line2D.Double(0, top, getWidth(), top));
        double size = line;
        List<TextLayout> lines = lines(g, p, size);
        while (lines.size() * size * (1 + 2 * GAP) > height && size > Looks.em(1)) {
            size *= 0.94;
            lines = lines(g, p, size);
        }
        double y = top + size * (1 + GAP);
        for (TextLayout layout : lines) {
            layout.draw(g, (float) line, (float) y);
            y += size * (1 + 2 * GAP);
        }
    }

    private List<TextLayout> lines(Graphics2D g, SeatPage p, double size) {
        String text = (p.warning() ? "! " : "") + p.next();
        AttributedString styled = new AttributedString(text.isEmpty() ? " " : text, Map.of(TextAttribute.FONT, font(size, Font.BOLD)));
        FontRenderContext context = g.getFontRenderContext();
        LineBreakMeasurer measurer = new LineBreakMeasurer(styled.getIterator(), context);
        List<TextLayout> lines = new ArrayList<>();
        while (measurer.getPosition() < Math.max(1, text.length())) {
            lines.add(measurer.nextLayout((float) Math.max(size, getWidth() - 2 * scale.linePx())));
        }
        return lines;
    }

    private void drawKeys(Graphics2D g, double figure, double line) {
        g.setFont(Looks.font(1, Font.PLAIN));
        String size = Bundle.seat_size(Math.round(figure / scale.pixelsPerMm()),
                line / scale.pixelsPerMm() * SeatScale.METRES_PER_MM);
        int base = getHeight() - Looks.em(0.5);
        g.drawString(Bundle.seat_keys(), Looks.em(1), base);
        g.drawString(size, getWidth() - Looks.em(1) - g.getFontMetrics().stringWidth(size), base);
    }
}
