package quoin.setupsheet.page;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.print.PageFormat;
import java.awt.print.Printable;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;

/** Draws pages on the screen and on a printer, with the letters of the PDF. */
public final class Painter {

    private final Font regular = font(false);
    private final Font bold = font(true);

    private static Font font(boolean bold) {
        try (InputStream in = Face.open(bold)) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (IOException | FontFormatException e) {
            throw new IllegalStateException("the typeface of the sheet cannot be read", e);
        }
    }

    /**
     * Draws a page with its left top corner at the origin.
     *
     * @param scale device units per mm
     */
    public void draw(Graphics graphics, Page page, double scale) {
        Graphics2D g = (Graphics2D) graphics.create();
        try {
            g.scale(scale, scale);
            g.setColor(Color.BLACK);
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
            g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            page.ink().forEach(ink -> draw(g, ink));
        } finally {
            g.dispose();
        }
    }

    private void draw(Graphics2D g, Ink ink) {
        if (ink instanceof Ink.Text text) {
            g.setFont((text.bold() ? bold : regular).deriveFont((float) (text.sizePt() * Ink.MM_PER_POINT)));
            g.drawString(text.words(), (float) text.xMm(), (float) text.baselineMm());
        } else if (ink instanceof Ink.Line line) {
            g.setStroke(new BasicStroke((float) line.widthMm()));
            g.draw(new Line2D.Double(line.x1Mm(), line.y1Mm(), line.x2Mm(), line.y2Mm()));
        } else if (ink instanceof Ink.Box box) {
            g.setStroke(new BasicStroke((float) box.widthMm()));
            g.draw(new Rectangle2D.Double(box.xMm(), box.yMm(), box.acrossMm(), box.downMm()));
        }
    }

    /** The pages for the print service; on other paper they are drawn smaller, never larger. */
    public Printable printable(List<Page> pages) {
        return (graphics, format, index) -> {
            if (index >= pages.size()) {
                return Printable.NO_SUCH_PAGE;
            }
            Page page = pages.get(index);
            Graphics2D g = (Graphics2D) graphics.create();
            try {
                double fit = Math.min(1 / Ink.MM_PER_POINT, Math.min(format.getWidth() / page.paper().widthMm(),
                        format.getHeight() / page.paper().heightMm()));
                draw(g, page, fit);
            } finally {
                g.dispose();
            }
            return Printable.PAGE_EXISTS;
        };
    }

    /** A page format without margins of its own: the pages bring theirs. */
    public static PageFormat format(java.awt.print.PrinterJob job, Paper size) {
        java.awt.print.Paper paper = new java.awt.print.Paper();
        paper.setSize(size.widthMm() / Ink.MM_PER_POINT, size.heightMm() / Ink.MM_PER_POINT);
        paper.setImageableArea(0, 0, paper.getWidth(), paper.getHeight());
        PageFormat format = job.defaultPage();
        format.setPaper(paper);
        return format;
    }
}
