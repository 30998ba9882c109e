package quoin.setupsheet.layout;

import java.util.List;
import quoin.car.Corner;
import quoin.setupsheet.content.SheetContent;

/** The car seen from above with a box of figures at each corner: left of it the left wheels, front at the top. */
final class PlanBlock implements Block {

    private static final double CAR_MM = 42;
    private static final double GAP_MM = 3;
    private static final double PADDING_MM = 1.2;

    private final SheetContent content;
    private final Pen measure;
    private final double leftMm;
    private final double widthMm;
    private final double boxMm;
    private final double frontMm;
    private final double rearMm;

    PlanBlock(SheetContent content, Pen measure, double leftMm, double widthMm) {
        this.content = content;
        this.measure = measure;
        this.leftMm = leftMm;
        this.widthMm = widthMm;
        this.boxMm = (widthMm - CAR_MM) / 2;
        this.frontMm = Math.max(boxHeight(Corner.LF), boxHeight(Corner.RF));
        this.rearMm = Math.max(boxHeight(Corner.LR), boxHeight(Corner.RR));
    }

    private FigureBox box(Corner corner) {
        return new FigureBox(content.corners().get(corner), content.blank(), false);
    }

    private double boxHeight(Corner corner) {
        return measure.lineMm(Pen.HEADING_PT) + box(corner).heightMm(measure) + 2 * PADDING_MM;
    }

    @Override
    public double heightMm() {
        return frontMm + GAP_MM + rearMm + measure.mm(1.5);
    }

    @Override
    public void draw(Pen pen, double topMm) {
        double rearTop = topMm + frontMm + GAP_MM;
        corner(pen, Corner.LF, leftMm, topMm, frontMm);
        corner(pen, Corner.RF, leftMm + widthMm - boxMm, topMm, frontMm);
        corner(pen, Corner.LR, leftMm, rearTop, rearMm);
        corner(pen, Corner.RR, leftMm + widthMm - boxMm, rearTop, rearMm);
        car(pen, topMm, topMm + frontMm * 0.55, rearTop + rearMm * 0.5, rearTop + rearMm);
    }

    private void corner(Pen pen, Corner corner, double x, double y, double height) {
        pen.box(x, y, boxMm, height, Pen.THIN_MM);
        pen.text(x + PADDING_MM, y + PADDING_MM / 2, boxMm, true, Pen.HEADING_PT, corner.words());
        box(corner).draw(pen, x + PADDING_MM, y + PADDING_MM + pen.lineMm(Pen.HEADING_PT), boxMm - 2 * PADDING_MM);
    }

    /** Plain rectangles: body, two axles, four wheels, and the way the car looks. */
    private void car(Pen pen, double top, double frontAxle, double rearAxle, double bottom) {
        double middle = leftMm + widthMm / 2;
        double half = CAR_MM / 2 - 5;
        double body = half - 7;
        double wheelAcross = 4;
        double wheelDown = Math.min(14, frontMm * 0.4);
        pen.box(middle - body, top + 3, 2 * body, bottom - top - 4, Pen.THICK_MM);
        pen.line(middle, top, middle - 2, top + 2.4, Pen.THICK_MM);
        pen.line(middle, top, middle + 2, top + 2.4, Pen.THICK_MM);
        for (double axle : new double[] {frontAxle, rearAxle}) {
            pen.box(middle - half - wheelAcross / 2, axle - wheelDown / 2, wheelAcross, wheelDown, Pen.THICK_MM);
            pen.box(middle + half - wheelAcross / 2, axle - wheelDown / 2, wheelAcross, wheelDown, Pen.THICK_MM);
            pen.line(middle - half + wheelAcross / 2, axle, middle - body, axle, Pen.THICK_MM);
            pen.line(middle + body, axle, middle + half - wheelAcross / 2, axle, Pen.THICK_MM);
        }
        words(pen, content.plan(), middle, 2 * body - 1, new double[] {frontAxle, (frontAxle + rearAxle) / 2, rearAxle});
    }

    private static void words(Pen pen, List<String> words, double middle, double width, double[] heights) {
        for (int i = 0; i < words.size() && i < heights.length; i++) {
            List<String> lines = pen.wrap(words.get(i), false, Pen.SMALL_PT, width);
            double y = heights[i] - lines.size() * pen.lineMm(Pen.SMALL_PT) / 2;
            for (String line : lines) {
                pen.centred(middle, y, width, false, Pen.SMALL_PT, line);
                y += pen.lineMm(Pen.SMALL_PT);
            }
        }
    }
}
