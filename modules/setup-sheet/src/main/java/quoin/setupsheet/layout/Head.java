package quoin.setupsheet.layout;

import java.util.ArrayList;
import java.util.List;

/** The head of a page: the car, what the page is, what must be seen first, and a thick line under it. */
final class Head {

    private static final double TITLE_PT = 15;

    private Head() {
    }

    /**
     * The blocks of the head.
     *
     * @param title   what the page is
     * @param warning in bold; may be empty
     * @param lines   under it
     */
    static List<Block> of(Pen pen, double leftMm, double widthMm, String car, String title, String warning, List<String> lines) {
        List<Block> all = new ArrayList<>();
        double titleMm = pen.widthMm(title, false, Pen.HEADING_PT) + 3;
        List<String> name = pen.wrap(car, true, TITLE_PT, widthMm - titleMm);
        all.add(new Lines.Drawn(name.size() * pen.lineMm(TITLE_PT), true, (p, top) -> {
            for (int i = 0; i < name.size(); i++) {
                p.text(leftMm, top + i * p.lineMm(TITLE_PT), widthMm, true, TITLE_PT, name.get(i));
            }
            p.right(leftMm + widthMm, top + p.mm(1.5), titleMm, false, Pen.HEADING_PT, title);
        }));
        List<String> under = new ArrayList<>();
        if (!warning.isEmpty()) {
            under.addAll(pen.wrap(warning, true, Pen.HEADING_PT, widthMm));
        }
        int bold = under.size();
        lines.forEach(h -> under.addAll(pen.wrap(h, false, Pen.TEXT_PT, widthMm)));
        for (int i = 0; i < under.size(); i++) {
            boolean isWarning = i < bold;
            String words = under.get(i);
            double points = isWarning ? Pen.HEADING_PT : Pen.TEXT_PT;
            all.add(new Lines.Drawn(pen.lineMm(points), true, (p, top) -> p.text(leftMm, top, widthMm, isWarning, points, words)));
        }
        all.add(new Lines.Drawn(pen.mm(1.5), true, (p, top) -> p.line(leftMm, top + p.mm(0.6), leftMm + widthMm, top + p.mm(0.6),
                Pen.THICK_MM)));
        return all;
    }
}
