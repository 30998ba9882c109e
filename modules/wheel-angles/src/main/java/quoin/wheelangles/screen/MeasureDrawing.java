package quoin.wheelangles.screen;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.Optional;
import java.util.Set;
import javax.swing.JPanel;
import quoin.wheelangles.measure.Method;
import quoin.wheelangles.measure.Outcome;
import quoin.workbench.Looks;

/** Shows where to measure and which way is plus; for bump steer also the curve as far as it is measured. */
final class MeasureDrawing extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final double WIDTH_EM = 27;
    /** Drawn with the left front wheel for all. */
    private static final Set<String> ONE_WHEEL = Set.of("plumb-camber", "caster-sweep");

    private transient Method method;
    private String focus = "";
    private transient Optional<Outcome.Curve> curve = Optional.empty();

    MeasureDrawing() {
        setOpaque(false);
    }

    void show(Method shown) {
        method = shown;
        getAccessibleContext().setAccessibleName(shown.title());
        getAccessibleContext().setAccessibleDescription(shown.signs());
        curve = Optional.empty();
        repaint();
    }

    /** Draws what belongs to a field bold. */
    void focus(String key) {
        String first = key.endsWith("2") ? key.substring(0, key.length() - 1) : key;
        focus = ONE_WHEEL.contains(method.id()) ? first.replaceFirst("^(RF|LR|RR)\\.", "LF.") : first;
        repaint();
    }

    void curve(Optional<Outcome.Curve> measured) {
        curve = measured;
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        int width = Looks.em(WIDTH_EM);
        return new Dimension(width, (int) (width * Sketch.HEIGHT / Sketch.WIDTH));
    }

    @Override
    public Dimension getMaximumSize() {
        return new Dimension(Integer.MAX_VALUE, getPreferredSize().height);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        if (method == null) {
            return;
        }
        Graphics2D g = (Graphics2D) graphics.create();
        try {
            Sketch sketch = new Sketch(g, getWidth(), getHeight(), focus);
            Drawings.of(method.id()).accept(sketch);
            if (method.id().equals("bump-steer")) {
                TravelChart.draw(sketch, curve);
            }
        } finally {
            g.dispose();
        }
    }
}
