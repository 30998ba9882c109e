package quoin.setupsheet.layout;

import java.util.ArrayList;
import java.util.List;
import quoin.setupsheet.page.Face;
import quoin.setupsheet.page.Ink;

/** Collects the ink of one page. Sizes of letters and lines follow the scale; places are mm on the paper. */
final class Pen {

    /** Size of the sheet's letters at full scale, points. */
    static final double TEXT_PT = 8;
    static final double SMALL_PT = 7;
    static final double HEADING_PT = 9;
    static final double THIN_MM = 0.15;
    static final double THICK_MM = 0.4;
    /** From baseline to baseline, as a multiple of the size of the letters. */
    private static final double LEADING = 1.22;
    /** From the top of a line to its baseline, as a multiple of the size of the letters. */
    private static final double ASCENT = 0.93;

    private final Face face;
    private final double scale;
    private final List<Ink> ink = new ArrayList<>();

    Pen(Face face, double scale) {
        this.face = face;
        this.scale = scale;
    }

    Face face() {
        return face;
    }

    List<Ink> ink() {
        return ink;
    }

    double size(double points) {
        return points * scale;
    }

    /** Height of a line of text, mm. */
    double lineMm(double points) {
        return size(points) * LEADING * Ink.MM_PER_POINT;
    }

    double mm(double atFullScale) {
        return atFullScale * scale;
    }

    double widthMm(String words, boolean bold, double points) {
        return face.widthMm(face.printable(words), bold, size(points));
    }

    List<String> wrap(String words, boolean bold, double points, double widthMm) {
        return face.wrap(words, bold, size(points), widthMm);
    }

    /** Writes a line; what does not fit ends in an ellipsis. */
    void text(double xMm, double topMm, double mostMm, boolean bold, double points, String words) {
        ink.add(new Ink.Text(xMm, topMm + size(points) * ASCENT * Ink.MM_PER_POINT, size(points), bold,
                face.cut(words, bold, size(points), mostMm)));
    }

    /** As {@link #text}, ending at the right. */
    void right(double rightMm, double topMm, double mostMm, boolean bold, double points, String words) {
        String fitting = face.cut(words, bold, size(points), mostMm);
        text(rightMm - face.widthMm(fitting, bold, size(points)), topMm, mostMm + 1, bold, points, fitting);
    }

    /** As {@link #text}, about a middle. */
    void centred(double middleMm, double topMm, double mostMm, boolean bold, double points, String words) {
        String fitting = face.cut(words, bold, size(points), mostMm);
        text(middleMm - face.widthMm(fitting, bold, size(points)) / 2, topMm, mostMm + 1, bold, points, fitting);
    }

    void line(double x1, double y1, double x2, double y2, double widthMm) {
        ink.add(new Ink.Line(x1, y1, x2, y2, widthMm));
    }

    void box(double x, double y, double across, double down, double widthMm) {
        ink.add(new Ink.Box(x, y, across, down, widthMm));
    }
}
