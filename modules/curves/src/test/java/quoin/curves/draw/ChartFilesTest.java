package quoin.curves.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.jfree.chart.JFreeChart;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.xml.sax.SAXException;
import quoin.car.Corner;
import quoin.curves.SampleCurves;
import quoin.suspension.CurveOutput;
import quoin.workbench.ChartFiles;

class ChartFilesTest {

    private static JFreeChart chart() {
        CurveChart chart = new CurveChart(Ink.print());
        MeasuredToe measured = new MeasuredToe(Corner.LF, new double[][] {{-30, 0, 30}, {0.05, 0, -0.04}});
        chart.show(SampleCurves.turned(SampleCurves.axle(), 1), CurveOutput.TOE, List.of(measured), "Ouzel 23, front: Toe");
        return chart.chart();
    }

    @Test
    void theVectorFileIsWellFormedAndHasDashesAndWords() throws ParserConfigurationException, SAXException, IOException {
        byte[] svg = ChartFiles.svg(chart());
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        Document document = factory.newDocumentBuilder().parse(new ByteArrayInputStream(svg));
        assertEquals("svg", document.getDocumentElement().getTagName());
        assertTrue(document.getElementsByTagName("path").getLength() + document.getElementsByTagName("line").getLength() > 10);
        String text = new String(svg, StandardCharsets.UTF_8);
        assertTrue(text.contains("stroke-dasharray"), "the right wheel is dashed");
        for (String words : List.of("LF", "RF", "LF turned", "LF measured", "Ouzel 23, front: Toe")) {
            assertTrue(document.getDocumentElement().getTextContent().contains(words), words);
        }
    }

    @Test
    void nothingIsToldByColour() {
        String text = new String(ChartFiles.svg(chart()), StandardCharsets.UTF_8);
        Set<String> coloured = new TreeSet<>();
        Matcher paints = Pattern.compile("rgb\\((\\d+),(\\d+),(\\d+)\\)").matcher(text.replace(" ", ""));
        while (paints.find()) {
            if (!paints.group(1).equals(paints.group(2)) || !paints.group(2).equals(paints.group(3))) {
                coloured.add(paints.group());
            }
        }
        assertEquals(Set.of(), coloured);
        for (String name : List.of("red", "green", "blue", "yellow", "orange", "magenta", "cyan")) {
            assertTrue(!text.toLowerCase(Locale.ROOT).contains(":" + name), name);
        }
    }

    @Test
    void thePictureIsLargeEnoughToPrint() throws IOException {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(ChartFiles.png(chart())));
        assertEquals(2000, image.getWidth());
        assertEquals(1300, image.getHeight());
    }
}
