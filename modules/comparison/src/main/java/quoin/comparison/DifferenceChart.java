package quoin.comparison;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import javax.swing.JComponent;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.plot.IntervalMarker;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.openide.util.NbBundle.Messages;
import quoin.workbench.Looks;
import quoin.workbench.ReadingFormat;
import quoin.workflow.StateComparison;

/**
 * Differences of every reading in one picture, each measured by its own noise band: inside the grey strip nothing can be said
 * to have changed. A filled dot with its figure changed, a ring did not.
 */
@Messages({
    "chart.axis=Noise bands; inside ±1: no change",
    "# {0} - list", "chart.changed=Changed beyond the noise: {0}", "chart.nothing=Nothing changed beyond the noise"})
final class DifferenceChart {

    /** Differences beyond this are drawn here with their figure: one slip would hide all others. */
    private static final double MOST = 8;
    private static final double LEAST = 2.5;
    /** Half the picture beside the farthest dot, in its distance: its figure stands there. */
    private static final double ROOM_FOR_FIGURE = 1.9;

    /** Height of a row in which its name can be read, of the axis below, and of a chart of few rows, em. */
    private static final double ROW_EM = 1.5;
    private static final double AXIS_EM = 5;
    private static final double LEAST_HIGH_EM = 18;

    private final Charts charts;

    private DifferenceChart(Charts charts) {
        this.charts = charts;
    }

    /** The chart for the window, with what it shows in words. */
    static JComponent of(StateComparison comparison, ReadingFormat format) {
        List<StateComparison.Line> lines = drawn(comparison);
        String changed = lines.stream().filter(DifferenceChart::isBeyond).map(l -> l.reading().words() + " "
                + format.change(l.reading(), l.difference().orElseThrow().amount())).collect(Collectors.joining(", "));
        return Charts.panel(chart(comparison, format, Charts.screen(), null), changed.isEmpty() ? Bundle.chart_nothing()
                : Bundle.chart_changed(changed), Math.max(LEAST_HIGH_EM, AXIS_EM + ROW_EM * lines.size()));
    }

    /**
     * The chart by itself.
     *
     * @param title null = none
     */
    static JFreeChart chart(StateComparison comparison, ReadingFormat format, Charts charts, String title) {
        return charts.chart(new DifferenceChart(charts).plot(drawn(comparison), format), title);
    }

    /** The lines that have a noise band to be measured by, the last one first. */
    private static List<StateComparison.Line> drawn(StateComparison comparison) {
        List<StateComparison.Line> lines = new ArrayList<>(comparison.lines().stream()
                .filter(l -> l.difference().filter(d -> d.uncertainty() > 0).isPresent()).toList());
        Collections.reverse(lines);
        return lines;
    }

    private static boolean isBeyond(StateComparison.Line line) {
        return !line.difference().orElseThrow().isNoise();
    }

    /** Difference in noise bands, cut off where it would leave the picture. */
    static double inBands(StateComparison.Line line) {
        double bands = line.difference().orElseThrow().amount() / line.difference().orElseThrow().band();
        return Math.max(-MOST, Math.min(MOST, bands));
    }

    private XYPlot plot(List<StateComparison.Line> lines, ReadingFormat format) {
        XYSeries moved = new XYSeries("moved", false, true);
        XYSeries still = new XYSeries("still", false, true);
        double widest = LEAST;
        for (int i = 0; i < lines.size(); i++) {
            double bands = inBands(lines.get(i));
            (isBeyond(lines.get(i)) ? moved : still).add(bands, i);
            widest = Math.max(widest, Math.abs(bands) * ROOM_FOR_FIGURE);
        }
        XYSeriesCollection data = new XYSeriesCollection(moved);
        data.addSeries(still);
        NumberAxis x = charts.dressed(new NumberAxis(), Bundle.chart_axis());
        x.setRange(-widest, widest);
        String[] names = lines.stream().map(l -> l.reading().words()).toArray(String[]::new);
        SymbolAxis y = charts.dressed(new SymbolAxis("", names), "");
        y.setGridBandsVisible(false);
        y.setRange(-0.6, Math.max(0.6, names.length - 0.4));
        XYPlot plot = new XYPlot(data, x, y, dots());
        plot.addDomainMarker(new IntervalMarker(-1, 1, charts.veil()), Layer.BACKGROUND);
        for (double limit : new double[] {-1, 1}) {
            plot.addDomainMarker(new ValueMarker(limit, charts.ink(), Charts.dashes()), Layer.BACKGROUND);
        }
        plot.addDomainMarker(new ValueMarker(0, charts.ink(), new BasicStroke(1)), Layer.BACKGROUND);
        plot.setDomainGridlinesVisible(false);
        for (int i = 0; i < lines.size(); i++) {
            if (isBeyond(lines.get(i))) {
                plot.addAnnotation(figure(lines.get(i), i, widest, format));
            }
        }
        return plot;
    }

    private XYTextAnnotation figure(StateComparison.Line line, int row, double widest, ReadingFormat format) {
        double bands = inBands(line);
        boolean right = bands > 0;
        XYTextAnnotation text = new XYTextAnnotation(format.change(line.reading(), line.difference().orElseThrow().amount()),
                bands + (right ? 1 : -1) * widest * 0.06, row);
        text.setTextAnchor(right ? TextAnchor.CENTER_LEFT : TextAnchor.CENTER_RIGHT);
        text.setFont(Looks.font(0.9, Font.PLAIN));
        text.setPaint(charts.ink());
        return text;
    }

    private XYLineAndShapeRenderer dots() {
        double size = Looks.em(0.6);
        Shape dot = new Ellipse2D.Double(-size / 2, -size / 2, size, size);
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
        for (int series = 0; series < 2; series++) {
            renderer.setSeriesShape(series, dot);
            renderer.setSeriesPaint(series, charts.ink());
        }
        renderer.setSeriesShapesFilled(0, true);
        renderer.setSeriesShapesFilled(1, false);
        return renderer;
    }
}
