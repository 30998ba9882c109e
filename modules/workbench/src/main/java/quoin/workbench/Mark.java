package quoin.workbench;

import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import javax.swing.Icon;

/**
 * The shape that stands beside a word, so that no meaning hangs on a colour. All are drawn in the text's own colour and differ
 * in outline, also in black and white.
 */
public enum Mark {
    /** Inside tolerance, done: a filled disc. */
    INSIDE,
    /** Above the band: a filled triangle pointing up. */
    ABOVE,
    /** Below the band: a filled triangle pointing down. */
    BELOW,
    /** Too close to call: a diamond, half filled. */
    CLOSE,
    /** Nothing to judge: a short dash. */
    NONE,
    /** Still waiting for something before it: an empty ring. */
    WAITING,
    /** Being worked on: an arrow head to the right. */
    OPEN,
    /** Ready to be signed: an empty square. */
    READY,
    /** Signed: a square with a tick. */
    SIGNED,
    /** Has to be looked at again: an exclamation in a triangle. */
    AGAIN;

    private static final double UNIT = 16;

    /** The shape at the size of the normal font. */
    public Icon icon() {
        return icon(1);
    }

    /** The shape at a multiple of the normal font's size. */
    public Icon icon(double factor) {
        return new MarkIcon(this, Looks.em(factor));
    }

    private void paint(Graphics2D g) {
        g.setStroke(new BasicStroke(1.8f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        switch (this) {
            case INSIDE -> g.fill(new Ellipse2D.Double(2, 2, 12, 12));
            case ABOVE -> g.fill(polygon(8, 2, 14, 14, 2, 14));
            case BELOW -> g.fill(polygon(2, 2, 14, 2, 8, 14));
            case CLOSE -> {
                g.draw(polygon(8, 1.5, 14.5, 8, 8, 14.5, 1.5, 8));
                g.fill(polygon(8, 1.5, 8, 14.5, 1.5, 8));
            }
            case NONE -> g.draw(new Line2D.Double(5, 8, 11, 8));
            case WAITING -> g.draw(new Ellipse2D.Double(2, 2, 12, 12));
            case OPEN -> g.fill(polygon(3, 2, 14, 8, 3, 14));
            case READY -> g.draw(new Rectangle2D.Double(2, 2, 12, 12));
            case SIGNED -> {
                g.draw(new Rectangle2D.Double(2, 2, 12, 12));
                Path2D tick = new Path2D.Double();
                tick.moveTo(4.5, 8.5);
                tick.lineTo(7, 11);
                tick.lineTo(11.5, 5);
                g.draw(tick);
            }
            case AGAIN -> {
                g.draw(polygon(8, 1.5, 15, 14, 1, 14));
                g.draw(new Line2D.Double(8, 6, 8, 9.5));
                g.fill(new Ellipse2D.Double(7, 11, 2, 2));
            }
        }
    }

    private static Shape polygon(double... points) {
        Path2D path = new Path2D.Double();
        path.moveTo(points[0], points[1]);
        for (int i = 2; i < points.length; i += 2) {
            path.lineTo(points[i], points[i + 1]);
        }
        path.closePath();
        return path;
    }

    private record MarkIcon(Mark mark, int size) implements Icon {
        @Override
        public void paintIcon(Component c, Graphics graphics, int x, int y) {
            Graphics2D g = (Graphics2D) graphics.create();
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            g.setColor(c.getForeground());
            g.translate(x, y);
            g.scale(size / UNIT, size / UNIT);
            mark.paint(g);
            g.dispose();
        }

        @Override
        public int getIconWidth() {
            return size;
        }

        @Override
        public int getIconHeight() {
            return size;
        }
    }
}
