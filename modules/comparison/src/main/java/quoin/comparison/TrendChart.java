package quoin.comparison;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.geom.Ellipse2D;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.swing.JComponent;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.DeviationRenderer;
import org.jfree.chart.renderer.xy.XYErrorRenderer;
import org.jfree.data.xy.XYIntervalSeries;
import org.jfree.data.xy.XYIntervalSeriesCollection;
import org.jfree.data.xy.YIntervalSeries;
import org.jfree.data.xy.YIntervalSeriesCollection;
import org.openide.util.NbBundle.Messages;
import quoin.car.ReadingId;
import quoin.workbench.Looks;
import quoin.workbench.ReadingFormat;

/** One reading over the days of a car: dots with their noise, the tolerance of each day as a grey strip behind them. */
@Messages({"# {0} - reading", "# {1} - list", "trend.spoken={0} by day: {1}", "trend.day=Day"})
final class TrendChart {

    private static final int MOST_NAMES = 14;
    /** As many dates stand side by side in a narrow window. */
    private static final int SIDE_BY_SIDE = 8;
    private static final double HIGH_EM = 18;

    private final Charts charts;

    private TrendChart(Charts charts) {
        this.charts = charts;
    }

    /** The chart for the window, with what it shows in words. */
    static JComponent of(List<CarHistory.Point> points, ReadingId reading, ReadingFormat format) {
        return Charts.panel(chart(points, reading, format, Charts.screen(), null), Bundle.trend_spoken(reading.words(), points.stream()
                .map(p -> ComparisonWords.date(p.begun()) + " " + format.number(reading, p.value().value())).collect(Collectors.joining(", "))), HIGH_EM);
    }

    /**
     * The chart by itself.
     *
     * @param title null = none
     */
    static JFreeChart chart(List<CarHistory.Point> points, ReadingId reading, ReadingFormat format, Charts charts, String title) {
        return charts.chart(new TrendChart(charts).plot(points, reading, format), title);
    }

    private XYPlot plot(List<CarHistory.Point> points, ReadingId reading, ReadingFormat format) {
        XYIntervalSeries dots = new XYIntervalSeries("values", false, true);
        YIntervalSeries band = new YIntervalSeries("target", false, true);
        for (int i = 0; i < points.size(); i++) {
            CarHistory.Point p = points.get(i);
            double noise = shown(format, reading, 2 * p.value().uncertainty());
            double value = shown(format, reading, p.value().value());
            dots.add(i, i, i, value, value - noise, value + noise);
            int at = i;
            p.target().ifPresent(t -> band.add(at, shown(format, reading, t.value()), shown(format, reading, t.value() - t.tolerance()),
                    shown(format, reading, t.value() + t.tolerance())));
        }
        XYIntervalSeriesCollection values = new XYIntervalSeriesCollection();
        values.addSeries(dots);
        YIntervalSeriesCollection targets = new YIntervalSeriesCollection();
        targets.addSeries(band);
        NumberAxis y = charts.dressed(new NumberAxis(), format.nameWithUnit(reading));
        y.setAutoRangeIncludesZero(false);
        String[] names = points.size() > MOST_NAMES ? IntStream.range(0, points.size()).mapToObj(i -> String.valueOf(i + 1)).toArray(String[]::new)
                : points.stream().map(p -> ComparisonWords.date(p.begun())).toArray(String[]::new);
        SymbolAxis x = charts.dressed(new SymbolAxis("", names), names.length > MOST_NAMES ? Bundle.trend_day() : "");
        x.setGridBandsVisible(false);
        x.setRange(-0.6, Math.max(0.6, names.length - 0.4));
        x.setVerticalTickLabels(names.length > SIDE_BY_SIDE && points.size() <= MOST_NAMES);
        XYPlot plot = new XYPlot(values, x, y, dots());
        plot.setDataset(1, targets);
        plot.setRenderer(1, strip());
        plot.setDomainGridlinesVisible(false);
        return plot;
    }

    /** The figure as it is shown, so that the axis has the racer's unit. */
    private static double shown(ReadingFormat format, ReadingId reading, double value) {
        return format.shownValue(reading, value);
    }

    private XYErrorRenderer dots() {
        XYErrorRenderer renderer = new XYErrorRenderer();
        double size = Looks.em(0.6);
        renderer.setSeriesShape(0, new Ellipse2D.Double(-size / 2, -size / 2, size, size));
        renderer.setSeriesPaint(0, charts.ink());
        renderer.setErrorPaint(charts.ink());
        renderer.setErrorStroke(new BasicStroke(Looks.em(0.1)));
        renderer.setDrawXError(false);
        renderer.setSeriesLinesVisible(0, true);
        renderer.setSeriesStroke(0, new BasicStroke(1));
        return renderer;
    }

    private DeviationRenderer strip() {
        DeviationRenderer renderer = new DeviationRenderer(true, false);
        Color veil = charts.veil();
        renderer.setSeriesFillPaint(0, new Color(veil.getRed(), veil.getGreen(), veil.getBlue()));
        renderer.setAlpha(veil.getAlpha() / 255f);
        renderer.setSeriesPaint(0, charts.ink());
        renderer.setSeriesStroke(0, Charts.dashes());
        return renderer;
    }
}
