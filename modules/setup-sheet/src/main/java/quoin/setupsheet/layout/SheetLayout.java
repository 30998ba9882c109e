package quoin.setupsheet.layout;

import java.util.ArrayList;
import java.util.List;
import org.openide.util.NbBundle.Messages;
import quoin.car.Corner;
import quoin.setupsheet.content.SheetContent;
import quoin.setupsheet.content.SheetContent.Position;
import quoin.setupsheet.content.SheetContent.Section;
import quoin.setupsheet.page.Face;
import quoin.setupsheet.page.Page;
import quoin.setupsheet.page.Paper;

/**
 * Puts a sheet on paper: head, the car from above with its corners, the whole car, the adjusters, and what follows. Nothing is
 * left out; {@link Pager} finds the pages.
 */
@Messages({
    "sheet.title=Set-up sheet", "sheet.blankTitle=Set-up sheet to fill in", "sheet.whole=Whole car",
    "sheet.adjusters=Adjusters: length at the start > now, and what was turned today",
    "sheet.adjustersBlank=Adjusters: length now, mm"})
public final class SheetLayout {

    private static final double MARGIN_MM = Pager.MARGIN_MM;
    private static final int RULED_LINES = 4;
    /** Shares of a half of the page that the names of adjusters take. */
    private static final double LEAST_NAME = 0.26;
    private static final double MOST_NAME = 0.4;
    /** What lengths take of the rest. */
    private static final double LENGTHS = 0.44;

    private final SheetContent content;
    private final double widthMm;

    private SheetLayout(SheetContent content, Paper paper) {
        this.content = content;
        this.widthMm = Pager.widthMm(paper);
    }

    public static List<Page> pages(Face face, SheetContent content, Paper paper) {
        SheetLayout layout = new SheetLayout(content, paper);
        return new Pager(face, content.car(), paper).pages(layout::blocks);
    }

    private List<Block> blocks(Pen pen) {
        Lines lines = new Lines(pen, MARGIN_MM, widthMm);
        List<Block> all = new ArrayList<>(Head.of(pen, MARGIN_MM, widthMm, content.car(),
                content.blank() ? Bundle.sheet_blankTitle() : Bundle.sheet_title(), content.warning(), content.head()));
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
        double longest = content.adjusters().stream().mapToDouble(a -> pen.widthMm(a.name(), false, Pen.TEXT_PT)).max().orElse(0);
        all.addAll(halves(pen, ordered.size(), (p, top, x, width, i) -> position(p, top + rowMm - p.lineMm(Pen.TEXT_PT), x, width,
                longest, ordered.get(i)), rowMm));
        return all;
    }

    private List<Position> at(Corner corner) {
        return content.adjusters().stream().filter(p -> p.corner() == corner).toList();
    }

    /** Names take the room that the longest needs, within bounds; lengths and turns share what is left. */
    private void position(Pen pen, double top, double x, double width, double longest, Position position) {
        double name = Math.min(MOST_NAME * width, Math.max(LEAST_NAME * width, longest + pen.mm(0.2)));
        double length = name + 0.01 * width;
        double turned = length + LENGTHS * (width - length);
        pen.text(x, top, name, false, Pen.TEXT_PT, position.name());
        if (content.blank()) {
            double y = top + pen.lineMm(Pen.TEXT_PT) - pen.mm(0.4);
            if (!position.name().isEmpty()) {
                pen.line(x + length, y, x + turned + 0.01 * width, y, Pen.THIN_MM);
            }
            return;
        }
        pen.text(x + length, top, turned - length - 0.01 * width, false, Pen.TEXT_PT, position.length());
        pen.text(x + turned, top, width - turned, position.isMoved(), Pen.SMALL_PT, position.turned());
    }
}
