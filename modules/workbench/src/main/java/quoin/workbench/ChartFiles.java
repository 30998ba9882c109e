package quoin.workbench;

import java.awt.Dimension;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGraphics2D;
import org.jfree.chart.ChartUtils;
import org.jfree.chart.JFreeChart;
import org.w3c.dom.Document;

/** A chart as a file. */
public final class ChartFiles {

    private static final int WIDTH = 1000;
    private static final int HEIGHT = 650;
    private static final String SVG = "http://www.w3.org/2000/svg";

    private ChartFiles() {
    }

    /** Scalable Vector Graphics 1.1, UTF-8. */
    public static byte[] svg(JFreeChart chart) {
        try {
            Document document = DocumentBuilderFactory.newInstance().newDocumentBuilder().getDOMImplementation()
                    .createDocument(SVG, "svg", null);
            SVGGraphics2D graphics = new SVGGraphics2D(document);
            graphics.setSVGCanvasSize(new Dimension(WIDTH, HEIGHT));
            chart.draw(graphics, new Rectangle2D.Double(0, 0, WIDTH, HEIGHT));
            StringWriter text = new StringWriter();
            graphics.stream(text, true);
            return text.toString().getBytes(StandardCharsets.UTF_8);
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException(e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Portable Network Graphics, at twice the size for print. */
    public static byte[] png(JFreeChart chart) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ChartUtils.writeScaledChartAsPNG(out, chart, WIDTH, HEIGHT, 2, 2);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }
}
