package quoin.setupsheet.layout;

import java.util.ArrayList;
import java.util.List;
import org.openide.util.NbBundle.Messages;
import quoin.car.Corner;
import quoin.setupsheet.content.SheetContent;
import quoin.setupsheet.content.SheetContent.Position;
import quoin.setupsheet.content.SheetContent.Section;
import quoin.setupsheet.page.Face;
import quoin.setupsheet.page.Ink;
import quoin.setupsheet.page.Page;
import quoin.setupsheet.page.Paper;

/**
 * Puts a sheet on paper: on one page where it fits, with letters a little smaller if need be, else on as many pages as it
 * takes. Nothing is left out, and every page says how many there are.
 */
@Messages({
    "sheet.title=Set-up sheet", "sheet.blankTitle=Set-up sheet to fill in", "# {0} - car", "# {1} - page", "# {2} - pages",
    "sheet.foot={0}   page {1} of {2}", "# {0} - car", "sheet.continued={0}, continued", "sheet.whole=Whole car",
    "sheet.adjusters=Adjusters: length at the start > now, and what was turned today",
    "sheet.adjustersBlank=Adjusters: length now, mm", "sheet.goesOn=goes on on the next page"})
public final class SheetLayout {

    private static final double MARGIN_MM = 11;
    private static final double FOOT_MM = 5;
    /** Letters never get smaller than 0.84 of 8 pt. */
    private static final double[] SCALES = {1, 0.94, 0.89, 0.84};
    private static final double TITLE_PT = 15;
    private static final int RULED_LINES = 4;

    private final Face face;
    private final SheetContent content;
    private final Paper paper;
    private final double widthMm;

    private SheetLayout(Face face, SheetContent content, Paper paper) {
        this.face = face;
        this.content = content;
        this.paper = paper;
        this.widthMm = paper.widthMm() - 2 * MARGIN_MM;
    }

    public static List<Page> pages(Face face, SheetContent content, Paper paper) {
        return new SheetLayout(face, content, paper).run();
    }

    private List<Page> run() {
        for (double scale : SCALES) {
            Pen measure = new Pen(face, scale);
            List<Block> blocks = blocks(measure);
            if (blocks.stream().mapToDouble(Block::heightMm).sum() <= roomMm()) {
                return paginate(blocks, scale);
            }
        }
        return paginate(blocks(new Pen(face, 1)), 1);
    }

    private double roomMm() {
        return paper.heightMm() - 2 * MARGIN_MM - FOOT_MM;
    }

    private List<Block> blocks(Pen pen) {
        Lines lines = new Lines(pen, MARGIN_MM, widthMm);
        List<Block> all = new ArrayList<>(head(pen));
        all.add(new PlanBlock(content, pen, MARGIN_MM, widthMm));
        if (!content.whole().isEmpty()) {
            all.add(lines.heading(Bundle.sheet_whole()));
            all.addAll(halves(pen, content.whole().size(), (p, top, x, width, i) ->
                    new FigureBox(List.of(content.whole().get(i)), content.blank(), true).draw(p, x, top, width),
                    new FigureBox(List.of(), content.blank(), true).rowMm(pen)));
        }
        all.addAll(adjusters(pen, lines));
        for (Section section : content.sections()) {
            all.add(lines.heading(section.title()));
            all.addAll(section.lines().isEmpty() ? lines.ruled(RULED_LINES) : lines.columns(section.lines().stream()
                    .map(l -> new Lines.Cell(0, 0, l.label(), l.words())).toList(), section.columns()));
        }
        return all;
    }

    private List<Block> head(Pen pen) {
        List<Block> all = new ArrayList<>();
        String title = content.blank() ? Bundle.sheet_blankTitle() : Bundle.sheet_title();
        double titleMm = pen.widthMm(title, false, Pen.HEADING_PT) + 3;
        List<String> name = pen.wrap(content.car(), true, TITLE_PT, widthMm - titleMm);
        all.add(new Lines.Drawn(name.size() * pen.lineMm(TITLE_PT), true, (p, top) -> {
            for (int i = 0; i < name.size(); i++) {
                p.text(MARGIN_MM, top + i * p.lineMm(TITLE_PT), widthMm, true, TITLE_PT, name.get(i));
            }
            p.right(MARGIN_MM + widthMm, top + p.mm(1.5), titleMm, false, Pen.HEADING_PT, title);
        }));
        List<String> under = new ArrayList<>();
        if (!content.warning().isEmpty()) {
            under.addAll(pen.wrap(content.warning(), true, Pen.HEADING_PT, widthMm));
        }
        int bold = under.size();
        content.head().forEach(h -> under.addAll(pen.wrap(h, false, Pen.TEXT_PT, widthMm)));
        for (int i = 0; i < under.size(); i++) {
            boolean warning = i < bold;
            String words = under.get(i);
            double points = warning ? Pen.HEADING_PT : Pen.TEXT_PT;
            all.add(new Lines.Drawn(pen.lineMm(points), true, (p, top) -> p.text(MARGIN_MM, top, widthMm, warning, points, words)));
        }
        all.add(new Lines.Drawn(pen.mm(1.5), true, (p, top) -> p.line(MARGIN_MM, top + p.mm(0.6), MARGIN_MM + widthMm,
                top + p.mm(0.6), Pen.THICK_MM)));
        return all;
    }

    /** Draws the i-th thing into half of the width. */
    private interface HalfRow {
        void draw(Pen pen, double top, double x, double width, int index);
    }

    private List<Block> halves(Pen pen, int count, HalfRow row, double rowMm) {
        List<Block> rows = new ArrayList<>();
        double half = widthMm / 2 - 1.5;
        for (int i = 0; i < count; i += 2) {
            int first = i;
            rows.add(new Lines.Drawn(rowMm, false, (p, top) -> {
                row.draw(p, top, MARGIN_MM, half, first);
                if (first + 1 < count) {
                    row.draw(p, top, MARGIN_MM + half + 3, half, first + 1);
                }
            }));
        }
        return rows;
    }

    private List<Block> adjusters(Pen pen, Lines lines) {
        List<Position> ordered = new ArrayList<>();
        for (Corner left : List.of(Corner.LF, Corner.LR)) {
            List<Position> one = at(left);
            List<Position> two = at(left.acrossAxle());
            for (int i = 0; i < Math.max(one.size(), two.size()); i++) {
                ordered.add(i < one.size() ? one.get(i) : new Position(left, "", "", "", false));
                ordered.add(i < two.size() ? two.get(i) : new Position(left.acrossAxle(), "", "", "", false));
            }
        }
        if (ordered.isEmpty()) {
            return List.of();
        }
        List<Block> all = new ArrayList<>();
        all.add(lines.heading(content.blank() ? Bundle.sheet_adjustersBlank() : Bundle.sheet_adjusters()));
        double rowMm = content.blank() ? pen.mm(5.5) : pen.lineMm(Pen.TEXT_PT);
        all.addAll(halves(pen, ordered.size(), (p, top, x, width, i) -> position(p, top + rowMm - p.lineMm(Pen.TEXT_PT), x, width,
                ordered.get(i)), rowMm));
        return all;
    }

    private List<Position> at(Corner corner) {
        return content.adjusters().stream().filter(p -> p.corner() == corner).toList();
    }

    private void position(Pen pen, double top, double x, double width, Position position) {
        pen.text(x, top, 0.26 * width, false, Pen.TEXT_PT, position.name());
        if (content.blank()) {
            double y = top + pen.lineMm(Pen.TEXT_PT) - pen.mm(0.4);
            if (!position.name().isEmpty()) {
                pen.line(x + 0.27 * width, y, x + 0.6 * width, y, Pen.THIN_MM);
            }
            return;
        }
        pen.text(x + 0.27 * width, top, 0.31 * width, false, Pen.TEXT_PT, position.length());
        pen.text(x + 0.59 * width, top, 0.41 * width, position.isMoved(), Pen.SMALL_PT, position.turned());
    }

    private List<Page> paginate(List<Block> blocks, double scale) {
        List<Pen> pens = new ArrayList<>();
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
                    pen.text(MARGIN_MM, y, widthMm, true, Pen.HEADING_PT, Bundle.sheet_continued(content.car()));
                    y += pen.lineMm(Pen.HEADING_PT) + 1;
                }
            }
            block.draw(pen, y);
            y += block.heightMm();
        }
        List<Page> pages = new ArrayList<>();
        for (int i = 0; i < pens.size(); i++) {
            pens.get(i).text(MARGIN_MM, bottom + pens.get(i).mm(1.5), widthMm / 2, false, Pen.SMALL_PT,
                    Bundle.sheet_foot(content.car(), Integer.toString(i + 1), Integer.toString(pens.size())));
            pages.add(new Page(paper, List.<Ink>copyOf(pens.get(i).ink())));
        }
        return pages;
    }
}
