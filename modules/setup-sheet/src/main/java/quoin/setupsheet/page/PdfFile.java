package quoin.setupsheet.page;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.List;
import java.util.TimeZone;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** Pages as a PDF with the letters it uses embedded. */
public final class PdfFile {

    private PdfFile() {
    }

    /**
     * Writes pages.
     *
     * @param title title in the file's properties
     * @param time  time of the day's last entry, so that the same day gives the same file
     */
    public static byte[] of(List<Page> pages, String title, Instant time) {
        try (PDDocument document = new PDDocument(); InputStream regular = Face.open(false); InputStream bold = Face.open(true)) {
            PDFont regularFont = PDType0Font.load(document, regular, true);
            PDFont boldFont = PDType0Font.load(document, bold, true);
            PDDocumentInformation properties = document.getDocumentInformation();
            properties.setTitle(title);
            properties.setCreator("Quoin");
            Calendar calendar = new GregorianCalendar(TimeZone.getTimeZone("UTC"));
            calendar.setTimeInMillis(time.toEpochMilli());
            properties.setCreationDate(calendar);
            for (Page page : pages) {
                PDPage sheet = new PDPage(new PDRectangle(points(page.paper().widthMm()), points(page.paper().heightMm())));
                document.addPage(sheet);
                try (PDPageContentStream out = new PDPageContentStream(document, sheet)) {
                    for (Ink ink : page.ink()) {
                        draw(out, ink, page.paper().heightMm(), regularFont, boldFont);
                    }
                }
            }
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void draw(PDPageContentStream out, Ink ink, double heightMm, PDFont regular, PDFont bold) throws IOException {
        if (ink instanceof Ink.Text text) {
            if (text.words().isEmpty()) {
                return;
            }
            out.beginText();
            out.setFont(text.bold() ? bold : regular, (float) text.sizePt());
            out.newLineAtOffset(points(text.xMm()), points(heightMm - text.baselineMm()));
            out.showText(text.words());
            out.endText();
        } else if (ink instanceof Ink.Line line) {
            out.setLineWidth(points(line.widthMm()));
            out.moveTo(points(line.x1Mm()), points(heightMm - line.y1Mm()));
            out.lineTo(points(line.x2Mm()), points(heightMm - line.y2Mm()));
            out.stroke();
        } else if (ink instanceof Ink.Box box) {
            out.setLineWidth(points(box.widthMm()));
            out.addRect(points(box.xMm()), points(heightMm - box.yMm() - box.downMm()), points(box.acrossMm()), points(box.downMm()));
            out.stroke();
        }
    }

    private static float points(double mm) {
        return (float) (mm / Ink.MM_PER_POINT);
    }
}
