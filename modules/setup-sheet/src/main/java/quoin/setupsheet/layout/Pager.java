package quoin.setupsheet.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.openide.util.NbBundle.Messages;
import quoin.setupsheet.page.Face;
import quoin.setupsheet.page.Ink;
import quoin.setupsheet.page.Page;
import quoin.setupsheet.page.Paper;

/**
 * Puts blocks on paper: on one page where they fit, with letters a little smaller if need be, else on as many pages as it takes.
 * Every page says how many there are.
 */
@Messages({"# {0} - car", "# {1} - page", "# {2} - pages", "sheet.foot={0}   page {1} of {2}", "# {0} - car", "sheet.continued={0}, continued",
    "sheet.goesOn=goes on on the next page"})
final class Pager {

    static final double MARGIN_MM = 11;
    private static final double FOOT_MM = 5;
    /** Letters never get smaller than 0.84 of 8 pt. */
    private static final double[] SCALES = {1, 0.94, 0.89, 0.84};

    private final Face face;
    private final String car;
    private final Paper paper;

    Pager(Face face, String car, Paper paper) {
        this.face = face;
        this.car = car;
        this.paper = paper;
    }

    /** Width between the margins, mm. */
    static double widthMm(Paper paper) {
        return paper.widthMm() - 2 * MARGIN_MM;
    }

    private double roomMm() {
        return paper.heightMm() - 2 * MARGIN_MM - FOOT_MM;
    }

    /**
     * The finished pages.
     *
     * @param blocks everything, measured with the pen it is given
     */
    List<Page> pages(Function<Pen, List<Block>> blocks) {
        for (double scale : SCALES) {
            List<Block> measured = blocks.apply(new Pen(face, scale));
            if (measured.stream().mapToDouble(Block::heightMm).sum() <= roomMm()) {
                return paginate(measured, scale);
            }
        }
        return paginate(blocks.apply(new Pen(face, 1)), 1);
    }

    private List<Page> paginate(List<Block> blocks, double scale) {
        List<Pen> pens = new ArrayList<>();
        double widthMm = widthMm(paper);
        double bottom = MARGIN_MM + roomMm();
        Pen pen = null;
        double y = 0;
        for (int i = 0; i < blocks.size(); i++) {
            Block block = blocks.get(i);
            double need = block.heightMm() + (block.leadsOn() && i + 1 < blocks.size() ? blocks.get(i + 1).heightMm() : 0);
            if (pen == null || y + need > bottom + 1e-6) {
                if (pen != null) {
                    pen.right(MARGIN_MM + widthMm, bottom + pen.mm(1.5), widthMm / 2, true, Pen.SMALL_PT, Bundle.sheet_goesOn());
                }
                pen = new Pen(face, scale);
                pens.add(pen);
                y = MARGIN_MM;
                if (pens.size() > 1) {
                    pen.text(MARGIN_MM, y, widthMm, true, Pen.HEADING_PT, Bundle.sheet_continued(car));
                    y += pen.lineMm(Pen.HEADING_PT) + 1;
                }
            }
            block.draw(pen, y);
            y += block.heightMm();
        }
        List<Page> pages = new ArrayList<>();
        for (int i = 0; i < pens.size(); i++) {
            pens.get(i).text(MARGIN_MM, bottom + pens.get(i).mm(1.5), widthMm / 2, false, Pen.SMALL_PT,
                    Bundle.sheet_foot(car, Integer.toString(i + 1), Integer.toString(pens.size())));
            pages.add(new Page(paper, List.<Ink>copyOf(pens.get(i).ink())));
        }
        return pages;
    }
}
