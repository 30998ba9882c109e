package quoin.wheelangles.screen;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.RoundRectangle2D;
import quoin.workbench.Looks;

/**
 * A line drawing on a sheet {@link #WIDTH} by {@link #HEIGHT}, x to the right and y down, in one colour and its paler shade, so that
 * it holds in black and white and in a dark theme. What belongs to the field being typed is drawn bold.
 */
final class Sketch {

    static final double WIDTH = 100;
    static final double HEIGHT = 62;

    /** Where a text stands to its point. */
    enum Place { LEFT, RIGHT, ABOVE, BELOW, ON }

    private static final double ARROW_EM = 0.55;
    private static final double GAP_EM = 0.3;

    private final Graphics2D g;
    private final AffineTransform toPixels;
    private final String focus;
    private final Color ink;
    private final Color paper;
    private final Color pale;

    /**
     * @param focus key of the field being typed, without its mark of a later reading; empty = none
     */
    Sketch(Graphics2D graphics, int width, int height, String focus) {
        g = graphics;
        this.focus = focus;
        ink = Looks.text();
        paper = Looks.ground();
        pale = Looks.pale();
        double scale = Math.min(width / WIDTH, height / HEIGHT);
        toPixels = AffineTransform.getTranslateInstance((width - scale * WIDTH) / 2, (height - scale * HEIGHT) / 2);
        toPixels.scale(scale, scale);
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    }

    /** True where the field being typed has this key, or one that begins with it and a point. */
    boolean isFocused(String key) {
        return !key.isEmpty() && (focus.equals(key) || focus.startsWith(key + "."));
    }

    private void pen(Color color, double weight, boolean dashed) {
        float width = (float) (Looks.em(1) / 10.0 * weight);
        g.setColor(color);
        g.setStroke(dashed ? new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {4 * width, 3 * width}, 0)
                : new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    }

    private void draw(Shape shape) {
        g.draw(toPixels.createTransformedShape(shape));
    }

    private Point2D at(double x, double y) {
        return toPixels.transform(new Point2D.Double(x, y), null);
    }

    Sketch line(double x1, double y1, double x2, double y2) {
        pen(ink, 1, false);
        draw(new Line2D.Double(x1, y1, x2, y2));
        return this;
    }

    Sketch thick(double x1, double y1, double x2, double y2) {
        pen(ink, 2.4, false);
        draw(new Line2D.Double(x1, y1, x2, y2));
        return this;
    }

    /** A line that only guides the eye. */
    Sketch guide(double x1, double y1, double x2, double y2) {
        pen(pale, 1, true);
        draw(new Line2D.Double(x1, y1, x2, y2));
        return this;
    }

    /** A box turned about its middle, clockwise; a wheel from above or from behind. */
    Sketch box(double x, double y, double width, double height, double turnedDeg, boolean solid) {
        AffineTransform turn = AffineTransform.getRotateInstance(Math.toRadians(turnedDeg), x, y);
        Shape shape = turn.createTransformedShape(new RoundRectangle2D.Double(x - width / 2, y - height / 2, width, height, 2, 2));
        pen(solid ? ink : pale, solid ? 1.4 : 1, !solid);
        draw(shape);
        return this;
    }

    Sketch circle(double x, double y, double radius) {
        pen(ink, 1, false);
        draw(new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius));
        return this;
    }

    Sketch dot(double x, double y) {
        g.setColor(ink);
        Point2D p = at(x, y);
        double r = Looks.em(0.25);
        g.fill(new Ellipse2D.Double(p.getX() - r, p.getY() - r, 2 * r, 2 * r));
        return this;
    }

    /** A measured length with an arrow at both ends. */
    Sketch measure(String key, double x1, double y1, double x2, double y2, String label, Place place) {
        boolean bold = isFocused(key);
        pen(ink, bold ? 2.6 : 1, false);
        draw(new Line2D.Double(x1, y1, x2, y2));
        head(x2, y2, x1, y1);
        head(x1, y1, x2, y2);
        return text((x1 + x2) / 2, (y1 + y2) / 2, label, place, bold);
    }

    /** An arrow from the first point to the second. */
    Sketch arrow(double x1, double y1, double x2, double y2) {
        pen(ink, 1.4, false);
        draw(new Line2D.Double(x1, y1, x2, y2));
        head(x1, y1, x2, y2);
        return this;
    }

    private void head(double fromX, double fromY, double toX, double toY) {
        Point2D from = at(fromX, fromY);
        Point2D to = at(toX, toY);
        double angle = Math.atan2(to.getY() - from.getY(), to.getX() - from.getX());
        double size = Math.min(Looks.em(ARROW_EM), 0.45 * from.distance(to));
        Path2D head = new Path2D.Double();
        head.moveTo(to.getX(), to.getY());
        head.lineTo(to.getX() - size * Math.cos(angle - 0.4), to.getY() - size * Math.sin(angle - 0.4));
        head.lineTo(to.getX() - size * Math.cos(angle + 0.4), to.getY() - size * Math.sin(angle + 0.4));
        head.closePath();
        g.fill(head);
    }

    /**
     * An angle with an arrow at its end.
     *
     * @param fromDeg where it begins, counted from upward, clockwise
     * @param sweepDeg how far it goes, clockwise
     */
    Sketch angle(String key, double x, double y, double radius, double fromDeg, double sweepDeg, String label, Place place) {
        boolean bold = isFocused(key);
        pen(ink, bold ? 2.6 : 1.2, false);
        draw(new Arc2D.Double(x - radius, y - radius, 2 * radius, 2 * radius, 90 - fromDeg, -sweepDeg, Arc2D.OPEN));
        double end = Math.toRadians(fromDeg + sweepDeg);
        double before = Math.toRadians(fromDeg + sweepDeg * 0.7);
        head(x + radius * Math.sin(before), y - radius * Math.cos(before), x + radius * Math.sin(end), y - radius * Math.cos(end));
        double middle = Math.toRadians(fromDeg + sweepDeg / 2);
        return text(x + radius * Math.sin(middle), y - radius * Math.cos(middle), label, place, bold);
    }

    Sketch text(double x, double y, String words, Place place) {
        return text(x, y, words, place, false);
    }

    /** A text on the paper's own ground, so that no line runs through it. */
    private Sketch text(double x, double y, String words, Place place, boolean bold) {
        if (words.isEmpty()) {
            return this;
        }
        g.setFont(Looks.font(1, bold ? Font.BOLD : Font.PLAIN));
        FontMetrics metrics = g.getFontMetrics();
        int width = metrics.stringWidth(words);
        double gap = Looks.em(GAP_EM);
        Point2D p = at(x, y);
        double left = switch (place) {
            case LEFT -> p.getX() - width - gap;
            case RIGHT -> p.getX() + gap;
            default -> p.getX() - width / 2.0;
        };
        double middle = switch (place) {
            case ABOVE -> p.getY() - gap - metrics.getHeight() / 2.0;
            case BELOW -> p.getY() + gap + metrics.getHeight() / 2.0;
            default -> p.getY();
        };
        if (place == Place.ON) {
            g.setColor(paper);
            g.fill(new RoundRectangle2D.Double(left - gap / 2, middle - metrics.getHeight() / 2.0, width + gap, metrics.getHeight(), gap, gap));
        }
        g.setColor(ink);
        g.drawString(words, (float) left, (float) (middle + (metrics.getAscent() - metrics.getDescent()) / 2.0));
        return this;
    }

    /** A floor with hatching under it. */
    Sketch floor(double x1, double y1, double x2, double y2) {
        line(x1, y1, x2, y2);
        pen(pale, 1, false);
        for (double t = 0; t < 0.99; t += 3.5 / (x2 - x1)) {
            double x = x1 + t * (x2 - x1);
            double y = y1 + t * (y2 - y1);
            draw(new Line2D.Double(x + 2, y, x, y + 2.2));
        }
        return this;
    }
}
