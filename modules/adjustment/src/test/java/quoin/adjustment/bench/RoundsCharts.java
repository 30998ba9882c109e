package quoin.adjustment.bench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.jfree.chart.ChartFactory;
import org.jfree.chart.ChartUtils;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.category.DefaultCategoryDataset;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/** Charts of the benchmark, written as PNG. */
final class RoundsCharts {

    private RoundsCharts() {
    }

    static void write(Path folder, List<RoundsTable.Row> rows, List<Frontier.Curve> curves, List<Calibration.Bin> stops,
            List<Calibration.Bin> points) throws IOException {
        System.setProperty("java.awt.headless", "true");
        DefaultCategoryDataset bars = new DefaultCategoryDataset();
        for (RoundsTable.Row row : rows) {
            bars.addValue(row.within2(), "stopped within 2 rounds, %", row.strategy());
            bars.addValue(row.within3(), "stopped within 3 rounds, %", row.strategy());
            bars.addValue(row.inside(), "truly inside at the stop, %", row.strategy());
        }
        save(folder, "strategies.png", ChartFactory.createBarChart("Rounds until the stop, simulated cars", "", "%", bars,
                PlotOrientation.HORIZONTAL, true, false, false), 1200, 1000);
        XYSeriesCollection frontier = new XYSeriesCollection();
        for (Frontier.Curve curve : curves) {
            frontier.addSeries(series(curve.name() + ", stop probability varied", curve.threshold()));
            frontier.addSeries(series(curve.name() + ", least gain varied", curve.gain()));
        }
        save(folder, "frontier.png", lines("Stop rule: rounds against truth", "stopped within 3 rounds, %",
                "truly inside at the stop, %", frontier), 1200, 900);
        XYSeriesCollection calibration = new XYSeriesCollection();
        XYSeries ideal = new XYSeries("honest");
        ideal.add(0, 0);
        ideal.add(100, 100);
        calibration.addSeries(ideal);
        calibration.addSeries(series("claimed at the stop", stops, 0));
        calibration.addSeries(series("claimed after any reading", points, 0));
        save(folder, "calibration.png", lines("Claimed probability against truth", "claimed, %", "truly inside, %",
                calibration), 900, 900);
    }

    private static XYSeries series(String name, List<Frontier.Knot> knots) {
        XYSeries s = new XYSeries(name, false);
        knots.forEach(k -> s.add(k.row().within3(), k.row().inside()));
        return s;
    }

    private static XYSeries series(String name, List<Calibration.Bin> bins, int leastCount) {
        XYSeries s = new XYSeries(name, false);
        bins.stream().filter(b -> b.count() > leastCount).forEach(b -> s.add(100 * b.claimed(), 100 * b.inside()));
        return s;
    }

    private static JFreeChart lines(String title, String x, String y, XYSeriesCollection data) {
        JFreeChart chart = ChartFactory.createXYLineChart(title, x, y, data);
        ((XYPlot) chart.getPlot()).setRenderer(new XYLineAndShapeRenderer(true, true));
        if (((XYPlot) chart.getPlot()).getRangeAxis() instanceof org.jfree.chart.axis.NumberAxis axis) {
            axis.setAutoRangeIncludesZero(false);
        }
        return chart;
    }

    private static void save(Path folder, String name, JFreeChart chart, int width, int height) throws IOException {
        ChartUtils.saveChartAsPNG(folder.resolve(name).toFile(), chart, width, height);
    }
}
