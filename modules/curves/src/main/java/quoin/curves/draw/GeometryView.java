package quoin.curves.draw;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Arrays;
import java.util.function.Supplier;
import javax.swing.JPanel;
import org.openide.util.NbBundle.Messages;
import quoin.curves.set.AxlePose;

/** The axle from ahead, from the left and from above, at one position. */
@Messages("geometry.name=The axle from ahead, from the left and from above")
public final class GeometryView extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Supplier<Ink> inks;
    private transient AxlePose frame;
    private transient AxlePose pose;

    /** @param inks asked at each painting, as the theme may change */
    public GeometryView(Supplier<Ink> inks) {
        this.inks = inks;
        double em = inks.get().em();
        setPreferredSize(new Dimension((int) (30 * em), (int) (30 * em)));
        setMinimumSize(new Dimension((int) (16 * em), (int) (16 * em)));
        getAccessibleContext().setAccessibleName(Bundle.geometry_name());
    }

    /** Shows a pose. @param frame the pose at ride height, which sets the scale */
    public void show(AxlePose atRideHeight, AxlePose now) {
        frame = atRideHeight;
        pose = now;
        repaint();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Ink ink = inks.get();
        Color ground = ink.ground();
        graphics.setColor(ground);
        graphics.fillRect(0, 0, getWidth(), getHeight());
        if (pose != null) {
            Graphics2D g = (Graphics2D) graphics.create();
            paint(g, ink, getWidth(), getHeight(), frame, pose);
            g.dispose();
        }
    }

    /** All three views: ahead at the top, then the side beside the plan. */
    static void paint(Graphics2D g, Ink ink, double width, double height, AxlePose frame, AxlePose pose) {
        double upper = height * 0.46;
        Rectangle2D[] areas = {new Rectangle2D.Double(0, 0, width, upper),
            new Rectangle2D.Double(0, upper, width * 0.42, height - upper),
            new Rectangle2D.Double(width * 0.42, upper, width * 0.58, height - upper)};
        Arrays.stream(View.values()).forEach(view -> {
            Graphics2D own = (Graphics2D) g.create();
            own.clip(areas[view.ordinal()]);
            new GeometryPainter(ink, view).paint(own, areas[view.ordinal()], frame, pose);
            own.dispose();
        });
    }
}
