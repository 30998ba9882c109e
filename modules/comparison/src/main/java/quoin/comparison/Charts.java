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

/**
 * What the charts have in common: everything in one colour, so that they print in black.
 *
 * @param ink    letters, dots and lines
 * @param ground what they stand on
 * @param line   frame and grid
 */
record Charts(Color ink, Color ground, Color line) {

    private static final Color PALE = new Color(0x80, 0x80, 0x80);

    /** In the colours of the window. */
    static Charts screen() {
        return new Charts(Looks.text(), Looks.ground(), Looks.line());
    }

    /** Black on white, for a file. */
    static Charts print() {
        return new Charts(Color.BLACK, Color.WHITE, PALE);
    }

    <A extends ValueAxis> A dressed(A axis, String label) {
        axis.setLabel(label);
        axis.setLabelFont(Looks.font(0.95, Font.PLAIN));
        axis.setTickLabelFont(Looks.font(0.95, Font.PLAIN));
        axis.setLabelPaint(ink);
        axis.setTickLabelPaint(ink);
        axis.setAxisLinePaint(line);
        return axis;
    }

    JFreeChart chart(XYPlot plot, String title) {
        plot.setBackgroundPaint(ground);
        plot.setOutlinePaint(line);
        plot.setRangeGridlinePaint(line);
        plot.setDomainGridlinePaint(line);
        JFreeChart chart = new JFreeChart(title, Looks.font(1, Font.BOLD), plot, false);
        if (chart.getTitle() != null) {
            chart.getTitle().setPaint(ink);
        }
        chart.setBackgroundPaint(ground);
        return chart;
    }

    /** @param highEm height it wants, em */
    static ChartPanel panel(JFreeChart chart, String spoken, double highEm) {
        ChartPanel panel = new ChartPanel(chart);
        panel.setPopupMenu(null);
        panel.setMouseZoomable(false);
        panel.setFocusable(false);
        panel.setPreferredSize(new Dimension(Looks.em(30), Looks.em(highEm)));
        panel.setMinimumDrawWidth(0);
        panel.setMinimumDrawHeight(0);
        panel.setMaximumDrawWidth(Integer.MAX_VALUE);
        panel.setMaximumDrawHeight(Integer.MAX_VALUE);
        panel.getAccessibleContext().setAccessibleName(spoken);
        return panel;
    }

    /** A veil over the ground that shows on black as on white. */
    Color veil() {
        return Looks.veil(ink);
    }

    static Stroke dashes() {
        return new BasicStroke(1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 1, new float[] {6, 4}, 0);
    }
}
