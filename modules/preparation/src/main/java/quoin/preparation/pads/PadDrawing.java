package quoin.preparation.pads;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JPanel;
import org.openide.util.NbBundle.Messages;
import quoin.car.Corner;
import quoin.car.PerCorner;
import quoin.workbench.Looks;

/**
 * The four pads seen from behind and above as posts of their heights, the front ones further away, with what is to come under
 * each. Drawn in the text's own colour, so that it holds in black and white.
 */
@Messages({"drawing.empty=Type the four readings: the pads are drawn here.", "drawing.front=front", "drawing.name=The four pads, their heights above the lowest and the shims to lay"})
final class PadDrawing extends JPanel {

    private static final long serialVersionUID = 1L;

    /**
     * What is drawn.
     *
     * @param heightsMm of the tops above the lowest
     * @param shimsMm   to come under each
     * @param height    a height in words
     * @param shims     shims in words; empty = none
     */
    record Content(PerCorner<Double> heightsMm, PerCorner<Double> shimsMm, Function<Double, String> height, PerCorner<String> shims) {
    }

    private transient Optional<Content> content = Optional.empty();

    PadDrawing() {
        setOpaque(false);
        setPreferredSize(new Dimension(Looks.em(24), Looks.em(16)));
        getAccessibleContext().setAccessibleName(Bundle.drawing_name());
    }

    void show(Optional<Content> shown) {
        content = shown;
        repaint();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        super.paintComponent(graphics);
        Graphics2D g = (Graphics2D) graphics.create();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setColor(Looks.text());
        g.setFont(Looks.font(1, Font.PLAIN));
        if (content.isEmpty()) {
            inLines(g, Bundle.drawing_empty());
        } else {
            pads(g, content.get());
        }
        g.dispose();
    }

    private void pads(Graphics2D g, Content shown) {
        double most = 1;
        for (Corner corner : Corner.values()) {
            most = Math.max(most, shown.heightsMm().get(corner) + shown.shimsMm().get(corner));
        }
        double scale = Looks.em(3.2) / most;
        double width = Looks.em(4.6);
        centre(g, Bundle.drawing_front(), getWidth() / 2.0, Looks.em(1));
        for (Corner corner : Corner.values()) {
            double side = (corner.isFront() ? 0.24 : 0.34) * Math.min(getWidth(), Looks.em(34));
            double x = getWidth() / 2.0 + (corner.isLeft() ? -side : side);
            double floor = corner.isFront() ? Looks.em(7.4) : getHeight() - Looks.em(1.8);
            post(g, corner, shown, x, floor, width, scale);
        }
    }

    private void post(Graphics2D g, Corner corner, Content shown, double x, double floor, double width, double scale) {
        double shims = shown.shimsMm().get(corner) * scale;
        double own = Looks.em(0.8) + shown.heightsMm().get(corner) * scale;
        g.setStroke(new BasicStroke(1));
        g.draw(new Line2D.Double(x - width * 0.8, floor, x + width * 0.8, floor));
        Rectangle2D pad = new Rectangle2D.Double(x - width / 2, floor - shims - own, width, own);
        g.setColor(Looks.shade());
        g.fill(pad);
        g.setColor(Looks.text());
        g.setStroke(new BasicStroke(1.6f));
        g.draw(pad);
        if (shims > 0) {
            g.fill(new Rectangle2D.Double(x - width / 2 + 2, floor - shims + 1, width - 4, Math.max(2, shims - 1)));
        }
        Font plain = g.getFont();
        g.setFont(plain.deriveFont(Font.BOLD));
        centre(g, corner.words() + "  " + shown.height().apply(shown.heightsMm().get(corner)), x, floor - shims - own - Looks.em(0.8));
        g.setFont(plain);
        if (!shown.shims().get(corner).isEmpty()) {
            centre(g, shown.shims().get(corner), x, floor + Looks.em(0.8));
        }
    }

    /** Words in the middle, broken into lines where the drawing is narrower than they are. */
    private void inLines(Graphics2D g, String words) {
        FontMetrics metrics = g.getFontMetrics();
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : words.split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && metrics.stringWidth(longer) > getWidth()) {
                lines.add(line);
                longer = word;
            }
            line = longer;
        }
        lines.add(line);
        double y = (getHeight() - (lines.size() - 1) * metrics.getHeight()) / 2.0;
        for (String each : lines) {
            centre(g, each, getWidth() / 2.0, y);
            y += metrics.getHeight();
        }
    }

    private static void centre(Graphics2D g, String text, double x, double y) {
        FontMetrics metrics = g.getFontMetrics();
        g.drawString(text, (float) (x - metrics.stringWidth(text) / 2.0), (float) (y + metrics.getAscent() / 2.0 - metrics.getDescent() / 2.0));
    }
}
