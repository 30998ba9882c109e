package quoin.cornerweights;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.geom.Ellipse2D;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import org.jfree.chart.ChartPanel;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.openide.util.NbBundle.Messages;
import quoin.car.Corner;
import quoin.car.Target;
import quoin.workbench.Looks;

/** Cross weight over the weighings of the day with the target's band; one line in the text's colour, so it prints in black. */
@Messages({
    "chart.weighing=Weighing of the day", "# {0} - diagonal", "chart.cross={0}, % of the total",
    "# {0} - list", "chart.spoken=Cross weight per weighing: {0}"})
final class CrossChart {

    private static final double ROOM_PERCENT = 0.5;

    private final ChartPanel panel = new ChartPanel(null);

    CrossChart() {
        panel.setPopupMenu(null);
        panel.setMouseZoomable(false);
        panel.setFocusable(false);
        panel.setPreferredSize(new Dimension(Looks.em(30), Looks.em(16)));
        panel.setMinimumDrawWidth(0);
        panel.setMinimumDrawHeight(0);
        panel.setMaximumDrawWidth(Integer.MAX_VALUE);
        panel.setMaximumDrawHeight(Integer.MAX_VALUE);
    }

    JComponent component() {
        return panel;
    }

    void show(List<CrossHistory.Weighing> weighings, Optional<Target> target) {
        panel.setChart(chart(weighings, target));
        panel.getAccessibleContext().setAccessibleName(Bundle.chart_spoken(weighings.stream()
                .map(w -> String.format("%.2f", w.crossPercent())).toList()));
    }

    private static JFreeChart chart(List<CrossHistory.Weighing> weighings, Optional<Target> target) {
        XYSeries series = new XYSeries(Bundle.chart_cross(Corner.crossWords()));
        weighings.forEach(w -> series.add(w.number(), w.crossPercent()));
        NumberAxis x = axis(Bundle.chart_weighing());
        x.setStandardTickUnits(NumberAxis.createIntegerTickUnits());
        x.setRange(0.5, Math.max(weighings.size(), 1) + 0.5);
        NumberAxis y = axis(Bundle.chart_cross(Corner.crossWords()));
        XYLineAndShapeRenderer line = new XYLineAndShapeRenderer(true, true);
        line.setSeriesPaint(0, Looks.text());
        line.setSeriesStroke(0, new BasicStroke(Looks.em(0.15)));
        double dot = Looks.em(0.6);
        line.setSeriesShape(0, new Ellipse2D.Double(-dot / 2, -dot / 2, dot, dot));
        XYPlot plot = new XYPlot(new XYSeriesCollection(series), x, y, line);
        plot.setBackgroundPaint(Looks.ground());
        plot.setOutlinePaint(Looks.line());
        plot.setRangeGridlinePaint(Looks.line());
        plot.setDomainGridlinesVisible(false);
        range(y, weighings, target);
        target.ifPresent(t -> band(plot, t));
        JFreeChart chart = new JFreeChart(null, Looks.font(1, Font.BOLD), plot, false);
        chart.setBackgroundPaint(Looks.ground());
        return chart;
    }

    private static NumberAxis axis(String label) {
        NumberAxis axis = new NumberAxis(label);
        axis.setLabelFont(Looks.font(0.95, Font.PLAIN));
        axis.setTickLabelFont(Looks.font(0.95, Font.PLAIN));
        axis.setLabelPaint(Looks.text());
        axis.setTickLabelPaint(Looks.text());
        axis.setAxisLinePaint(Looks.line());
        axis.setAutoRangeIncludesZero(false);
        return axis;
    }

    private static void range(NumberAxis y, List<CrossHistory.Weighing> weighings, Optional<Target> target) {
        double low = weighings.stream().mapToDouble(CrossHistory.Weighing::crossPercent).min().orElse(50);
        double high = weighings.stream().mapToDouble(CrossHistory.Weighing::crossPercent).max().orElse(50);
        if (target.isPresent()) {
            low = Math.min(low, target.get().value() - target.get().tolerance());
            high = Math.max(high, target.get().value() + target.get().tolerance());
        }
        y.setRange(low - ROOM_PERCENT, high + ROOM_PERCENT);
    }

    private static void band(XYPlot plot, Target target) {
        Color text = Looks.text();
        plot.addRangeMarker(new IntervalMarker(target.value() - target.tolerance(), target.value() + target.tolerance(), Looks.veil()), Layer.BACKGROUND);
        BasicStroke dashes = new BasicStroke(1, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 1, new float[] {6, 4}, 0);
        for (double limit : new double[] {target.value() - target.tolerance(), target.value() + target.tolerance()}) {
            plot.addRangeMarker(new ValueMarker(limit, text, dashes), Layer.BACKGROUND);
        }
    }
}
