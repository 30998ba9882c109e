package quoin.curves.draw;

import java.awt.geom.Line2D;
import java.util.List;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.DefaultXYDataset;
import org.openide.util.NbBundle.Messages;
import quoin.car.Corner;
import quoin.curves.set.Curve;
import quoin.curves.set.CurveSet;
import quoin.curves.set.Sweep;
import quoin.suspension.CurveOutput;

/** One output of an axle as a chart. Used on the event thread; for a file, one is made of its own in black. */
@Messages({
    "axis.travel=Wheel travel, mm, plus is bump", "axis.rack=Rack travel, mm, plus is to the left",
    "# {0} - corner", "series.before={0}", "# {0} - corner", "series.after={0} turned",
    "# {0} - corner", "series.measured={0} measured"})
public final class CurveChart {

    private static final int MARK_EVERY = 8;

    /** What a series is; its place in the renderer follows from it. */
    private record Style(boolean left, boolean after, boolean measured) {
    }

    private final Ink ink;
    private final XYPlot plot;
    private final JFreeChart chart;
    private final NumberAxis x;
    private final NumberAxis y;
    private final ValueMarker place = new ValueMarker(0);

    /** Shows nothing yet. */
    public CurveChart(Ink ink) {
        this.ink = ink;
        x = axis();
        y = axis();
        plot = new XYPlot(new DefaultXYDataset(), x, y, renderer(ink));
        plot.setBackgroundPaint(ink.ground());
        plot.setOutlinePaint(ink.faint());
        plot.setRangeGridlinePaint(ink.faint());
        plot.setDomainGridlinePaint(ink.faint());
        plot.setRangeGridlineStroke(ink.hair());
        plot.setDomainGridlineStroke(ink.hair());
        plot.setDomainZeroBaselineVisible(true);
        plot.setDomainZeroBaselinePaint(ink.faint());
        plot.setRangeZeroBaselineVisible(true);
        plot.setRangeZeroBaselinePaint(ink.text());
        plot.setRangeZeroBaselineStroke(ink.hair());
        plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
        place.setPaint(ink.text());
        place.setStroke(ink.dots());
        plot.addDomainMarker(place, Layer.BACKGROUND);
        chart = new JFreeChart("", ink.bold(), plot, false);
        chart.setBackgroundPaint(ink.ground());
        double room = ink.em() * 0.5;
        chart.setPadding(new RectangleInsets(room, room, room, 2 * ink.em()));
        chart.getTitle().setPaint(ink.text());
        LegendTitle legend = new LegendTitle(plot);
        legend.setItemFont(ink.font());
        legend.setItemPaint(ink.text());
        legend.setBackgroundPaint(ink.ground());
        legend.setPosition(RectangleEdge.BOTTOM);
        legend.setLegendItemGraphicPadding(new RectangleInsets(2, ink.em(), 2, 2));
        chart.addLegend(legend);
    }

    private NumberAxis axis() {
        NumberAxis axis = new NumberAxis();
        axis.setLabelFont(ink.font());
        axis.setTickLabelFont(ink.font());
        axis.setLabelPaint(ink.text());
        axis.setTickLabelPaint(ink.text());
        axis.setAxisLinePaint(ink.faint());
        axis.setTickMarkPaint(ink.faint());
        axis.setAutoRangeIncludesZero(false);
        return axis;
    }

    public JFreeChart chart() {
        return chart;
    }

    /** Shows one output. @param measured bump steer as it was measured; drawn over toe against travel only */
    public void show(CurveSet set, CurveOutput output, List<MeasuredToe> measured, String title) {
        chart.setNotify(false);
        DefaultXYDataset data = new DefaultXYDataset();
        XYLineAndShapeRenderer renderer = renderer(ink);
        Sweep sweep = set.request().sweep();
        for (Curve curve : set.curves()) {
            add(data, renderer, name(curve), curve.points(output), new Style(curve.corner().isLeft(), curve.after(), false));
        }
        if (output == CurveOutput.TOE && sweep == Sweep.TRAVEL) {
            for (MeasuredToe toe : measured) {
                add(data, renderer, Bundle.series_measured(toe.corner()), toe.above(atRideHeight(set, toe.corner())),
                        new Style(toe.corner().isLeft(), false, true));
            }
        }
        plot.setRenderer(renderer);
        plot.setDataset(data);
        x.setLabel(sweep == Sweep.TRAVEL ? Bundle.axis_travel() : Bundle.axis_rack());
        x.setRange(-set.request().rangeMm(), set.request().rangeMm());
        y.setLabel(OutputNames.withUnit(output));
        y.setAutoRangeMinimumSize(smallest(output));
        chart.setTitle(title);
        chart.setNotify(true);
    }

    /** Where the slider stands, mm. */
    public void place(double mm) {
        place.setValue(mm);
    }

    private static String name(Curve curve) {
        return curve.after() ? Bundle.series_after(curve.corner()) : Bundle.series_before(curve.corner());
    }

    private static double atRideHeight(CurveSet set, Corner corner) {
        return set.curves().stream().filter(c -> c.corner() == corner && !c.after()).flatMap(c -> c.positions().stream())
                .filter(p -> p.position().travelMm() == 0).findFirst()
                .map(p -> p.value(CurveOutput.TOE).orElse(0)).orElse(0.0);
    }

    /** A line that hardly changes is drawn as level, not blown up to a mountain range. */
    private static double smallest(CurveOutput output) {
        return switch (output.unit()) {
            case "deg" -> 0.1;
            case "deg/mm" -> 0.002;
            case "mm" -> 1;
            default -> 0.02;
        };
    }

    private static XYLineAndShapeRenderer renderer(Ink ink) {
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false) {
            private static final long serialVersionUID = 1L;

            @Override
            public boolean getItemShapeVisible(int series, int item) {
                return super.getItemShapeVisible(series, item) && (!getSeriesLinesVisible(series) || item % MARK_EVERY == 0);
            }
        };
        renderer.setDrawSeriesLineAsPath(true);
        renderer.setLegendLine(new Line2D.Double(-1.6 * ink.em(), 0, 1.6 * ink.em(), 0));
        renderer.setUseFillPaint(true);
        renderer.setDefaultFillPaint(ink.ground());
        return renderer;
    }

    private void add(DefaultXYDataset data, XYLineAndShapeRenderer renderer, String name, double[][] points, Style style) {
        int series = data.getSeriesCount();
        data.addSeries(name, points);
        renderer.setSeriesPaint(series, ink.text());
        renderer.setSeriesLinesVisible(series, !style.measured());
        renderer.setSeriesShapesVisible(series, style.after() || style.measured());
        renderer.setSeriesStroke(series, ink.line(style.left(), style.after()));
        renderer.setSeriesOutlineStroke(series, ink.line(true, style.measured()));
        renderer.setSeriesShape(series, style.measured() ? ink.measured(style.left()) : ink.mark(style.left()));
        renderer.setSeriesShapesFilled(series, !style.measured());
    }
}
