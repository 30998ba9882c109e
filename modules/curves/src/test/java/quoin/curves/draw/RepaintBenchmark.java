package quoin.curves.draw;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import quoin.curves.SampleCurves;
import quoin.curves.set.AxleGeometry;
import quoin.curves.set.AxlePose;
import quoin.curves.set.CurveSet;
import quoin.curves.set.Sweep;
import quoin.suspension.CurveOutput;

/**
 * What one step of a drag costs: every curve of both wheels and of the turned one solved anew (243 positions, all outputs),
 * the geometry solved, the chart and the three views painted. Each step has another amount and another place.
 */
final class RepaintBenchmark {

    private static final int WARM = 150;
    private static final int STEPS = 400;
    private static final int WIDTH = 640;
    private static final int HEIGHT = 430;

    private final AxleGeometry axle = SampleCurves.axle();
    private final CurveChart chart = new CurveChart(Ink.print());
    private final AxlePose frame = AxlePose.of(axle, Map.of(), Sweep.TRAVEL.at(0));
    private final BufferedImage chartImage = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    private final BufferedImage viewImage = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);

    public static void main(String[] args) {
        new RepaintBenchmark().run(System.out);
    }

    private void run(PrintStream out) {
        for (int i = 0; i < WARM; i++) {
            step(i);
        }
        double[][] ms = new double[3][STEPS];
        for (int i = 0; i < STEPS; i++) {
            double[] step = step(i);
            for (int k = 0; k < 2; k++) {
                ms[k][i] = step[k];
            }
            ms[2][i] = step[0] + step[1];
        }
        String[] names = {"solve, off the event thread", "paint", "together"};
        for (int k = 0; k < names.length; k++) {
            Arrays.sort(ms[k]);
            out.printf(Locale.ROOT, "%-28s median %5.2f ms, 95 %% %5.2f ms, largest %5.2f ms%n", names[k], ms[k][STEPS / 2],
                    ms[k][STEPS * 95 / 100], ms[k][STEPS - 1]);
        }
        out.println("one frame is 16 ms");
    }

    /** Time of this thread on a core, ns: other work on the machine does not count. */
    private static long clock() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private double[] step(int i) {
        long begin = clock();
        double mm = i % 81 - 40;
        CurveSet set = SampleCurves.turned(axle, (i % 37 - 18) / 6.0);
        AxlePose pose = AxlePose.of(axle, set.after(), Sweep.TRAVEL.at(mm));
        long solved = clock();
        chart.show(set, CurveOutput.values()[i % 2], List.of(), "Camber");
        chart.place(mm);
        Graphics2D g = chartImage.createGraphics();
        chart.chart().draw(g, new Rectangle2D.Double(0, 0, WIDTH, HEIGHT));
        g.dispose();
        Graphics2D v = viewImage.createGraphics();
        GeometryView.paint(v, Ink.print(), WIDTH, HEIGHT, frame, pose);
        v.dispose();
        return new double[] {(solved - begin) / 1e6, (clock() - solved) / 1e6};
    }
}
