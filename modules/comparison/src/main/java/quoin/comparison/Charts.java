package quoin.comparison;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Stroke;
import org.jfree.chart.ChartPanel;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.XYPlot;
import quoin.workbench.Looks;

/** What the charts have in common: everything in the text's own colour, so that they print in black. */
final class Charts {

    private static final int VEIL = 36;

    private Charts() {
    }

    static <A extends ValueAxis> A dressed(A axis, String label) {
        axis.setLabel(label);
        axis.setLabelFont(Looks.font(0.95, Font.PLAIN));
        axis.setTickLabelFont(Looks.font(0.95, Font.PLAIN));
        axis.setLabelPaint(Looks.text());
        axis.setTickLabelPaint(Looks.text());
        axis.setAxisLinePaint(Looks.line());
        return axis;
    }

    static JFreeChart chart(XYPlot plot) {
        plot.setBackgroundPaint(Looks.ground());
        plot.setOutlinePaint(Looks.line());
        plot.setRangeGridlinePaint(Looks.line());
        plot.setDomainGridlinePaint(Looks.line());
        JFreeChart chart = new JFreeChart(null, Looks.font(1, Font.BOLD), plot, false);
        chart.setBackgroundPaint(Looks.ground());
        return chart;
    }

    static ChartPanel panel(JFreeChart chart, String spoken) {
        ChartPanel panel = new ChartPanel(chart);
        panel.setPopupMenu(null);
        panel.setMouseZoomable(false);
        panel.setFocusable(false);
        panel.setPreferredSize(new Dimension(Looks.em(30), Looks.em(24)));
        panel.setMinimumDrawWidth(0);
        panel.setMinimumDrawHeight(0);
        panel.setMaximumDrawWidth(Integer.MAX_VALUE);
        panel.setMaximumDrawHeight(Integer.MAX_VALUE);
        panel.getAccessibleContext().setAccessibleName(spoken);
        return panel;
    }

    /** A veil over the ground that shows on black as on white. */
    static Color veil() {
        Color text = Looks.text();
        return new Color(text.getRed(), text.getGreen(), text.getBlue(), VEIL);
    }

    static Stroke dashes() {
        return new BasicStroke(1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 1, new float[] {6, 4}, 0);
    }
}
