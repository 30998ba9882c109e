package quoin.curves.draw;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/**
 * One ink for everything, so that a print in black says the same: the left wheel is a full line, the right one dashed;
 * with the adjuster turned the line is heavy and carries rings or squares; measured points are crosses.
 *
 * @param text   lines and words
 * @param faint  grid and what stands behind
 * @param ground paper
 * @param font   normal font
 * @param em     size of the normal font, px
 */
public record Ink(Color text, Color faint, Color ground, Font font, double em) {

    /** Black on white, for files. */
    public static Ink print() {
        return new Ink(Color.BLACK, new Color(0x808080), Color.WHITE, new Font(Font.SANS_SERIF, Font.PLAIN, 13), 13);
    }

    Stroke line(boolean left, boolean after) {
        float width = (float) (em * (after ? 0.24 : 0.13));
        float[] dashes = left ? null : new float[] {(float) (em * 0.75), (float) (em * 0.45)};
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, dashes, 0);
    }

    /** Ring on the left, square on the right. */
    Shape mark(boolean left) {
        double size = em * 0.6;
        return left ? new Ellipse2D.Double(-size / 2, -size / 2, size, size) : new Rectangle2D.Double(-size / 2, -size / 2, size, size);
    }

    /** An upright cross on the left, a slanting one on the right. */
    Shape measured(boolean left) {
        double size = em * 0.45;
        Path2D cross = new Path2D.Double();
        cross.moveTo(-size, 0);
        cross.lineTo(size, 0);
        cross.moveTo(0, -size);
        cross.lineTo(0, size);
        return left ? cross : AffineTransform.getRotateInstance(Math.PI / 4).createTransformedShape(cross);
    }

    Stroke hair() {
        return new BasicStroke((float) (em * 0.08));
    }

    Stroke dots() {
        return new BasicStroke((float) (em * 0.1), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1,
                new float[] {(float) (em * 0.15), (float) (em * 0.25)}, 0);
    }

    Stroke chain() {
        return new BasicStroke((float) (em * 0.1), BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1,
                new float[] {(float) em, (float) (em * 0.3), (float) (em * 0.2), (float) (em * 0.3)}, 0);
    }

    Stroke heavy() {
        return new BasicStroke((float) (em * 0.22), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }

    Font bold() {
        return font.deriveFont(Font.BOLD);
    }
}
