package quoin.setupsheet.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.openide.util.NbBundle.Messages;
import quoin.setupsheet.content.ChangeContent;
import quoin.setupsheet.content.ChangeContent.Change;
import quoin.setupsheet.content.ChangeContent.Effect;
import quoin.setupsheet.page.Face;
import quoin.setupsheet.page.Page;
import quoin.setupsheet.page.Paper;

/**
 * Puts the page of last time, now and the change on paper. What was not read today has a line to write on. Each change is drawn
 * against its own noise band as well: a filled dot outside the box changed, a ring inside it did not.
 */
@Messages({
    "change.title=Last time, now, change", "change.readings=Readings", "change.conditions=Load case and tyres", "change.positions=Adjusters",
    "change.turns=What a turn did last time, per turn or mm of shim", "change.expected=expected then", "change.observed=observed",
    "change.headLast=Last time", "change.headNow=Now", "change.headChange=Change", "change.headNoise=noise",
    "change.legend=± is the noise band of the change: an unchanged car reads within it 19 times in 20, and inside it nothing can be said to have "
        + "changed. The box is that band for every reading, whatever its unit: a ring inside it is no change, a dot outside it is one; "
        + "an arrow stands for a change of more than four bands."})
public final class ChangeLayout {

    /** Ends of the columns as shares of the width; the strip and the word have their beginnings too. */
    private static final double NAME = 0.30;
    private static final double LAST = 0.42;
    private static final double NOW = 0.54;
    private static final double CHANGE = 0.645;
    private static final double NOISE = 0.715;
    private static final double STRIP = 0.735;
    private static final double STRIP_END = 0.865;
    private static final double WORD = 0.88;
    /** Where texts of the load case begin. */
    private static final double TEXT_LAST = 0.24;
    private static final double TEXT_NOW = 0.56;
    /** Noise bands from the middle of the strip to its end. */
    private static final double MOST_BANDS = 4;
    private static final String DOT = "●";
    private static final String RING = "○";
    private static final String FAR_LEFT = "◀";
    private static final String FAR_RIGHT = "▶";

    private final ChangeContent content;
    private final double leftMm = Pager.MARGIN_MM;
    private final double widthMm;

    private ChangeLayout(ChangeContent content, Paper paper) {
        this.content = content;
        this.widthMm = Pager.widthMm(paper);
    }

    public static List<Page> pages(Face face, ChangeContent content, Paper paper) {
        ChangeLayout layout = new ChangeLayout(content, paper);
        return new Pager(face, content.car(), paper).pages(layout::blocks);
    }

    private List<Block> blocks(Pen pen) {
        Lines lines = new Lines(pen, leftMm, widthMm);
        List<Block> all = new ArrayList<>(Head.of(pen, leftMm, widthMm, content.car(), Bundle.change_title(), content.warning(), content.head()));
        all.add(conditionsHeading(lines));
        content.conditions().forEach(c -> all.add(condition(pen, c)));
        all.add(heading(lines, Bundle.change_readings(), true));
        content.readings().forEach(c -> all.add(reading(pen, c)));
        all.add(new Lines.Drawn(pen.mm(0.8), true, (p, top) -> { }));
        all.addAll(lines.columns(List.of(new Lines.Cell(0, 0, "", Bundle.change_legend())), 1));
        all.add(heading(lines, Bundle.change_positions(), false));
        content.positions().forEach(c -> all.add(position(pen, c)));
        if (!content.turns().isEmpty()) {
            all.addAll(turns(pen, lines));
        }
        return all;
    }

    /** The heading of a table with those of its columns on the same line. */
    private Block heading(Lines lines, String words, boolean figures) {
        Block heading = lines.heading(words);
        return new Lines.Drawn(heading.heightMm(), true, (pen, top) -> {
            heading.draw(pen, top);
            double y = top + pen.mm(1.2) + pen.lineMm(Pen.HEADING_PT) - pen.lineMm(Pen.SMALL_PT);
            headOf(pen, y, LAST, NAME, Bundle.change_headLast());
            headOf(pen, y, NOW, LAST, Bundle.change_headNow());
            if (figures) {
                headOf(pen, y, CHANGE, NOW, Bundle.change_headChange());
                headOf(pen, y, NOISE, CHANGE, Bundle.change_headNoise());
            } else {
                pen.text(leftMm + (NOW + 0.02) * widthMm, y, 0.3 * widthMm, true, Pen.SMALL_PT, Bundle.change_headChange());
            }
        });
    }

    private Block conditionsHeading(Lines lines) {
        Block heading = lines.heading(Bundle.change_conditions());
        return new Lines.Drawn(heading.heightMm(), true, (pen, top) -> {
            heading.draw(pen, top);
            double y = top + pen.mm(1.2) + pen.lineMm(Pen.HEADING_PT) - pen.lineMm(Pen.SMALL_PT);
            pen.text(leftMm + TEXT_LAST * widthMm, y, 0.2 * widthMm, true, Pen.SMALL_PT, Bundle.change_headLast());
            pen.text(leftMm + TEXT_NOW * widthMm, y, 0.2 * widthMm, true, Pen.SMALL_PT, Bundle.change_headNow());
        });
    }

    private void headOf(Pen pen, double y, double end, double start, String words) {
        pen.right(leftMm + end * widthMm, y, (end - start) * widthMm, true, Pen.SMALL_PT, words);
    }

    private Block row(Pen measure, Lines.Drawing drawing) {
        return new Lines.Drawn(measure.lineMm(Pen.TEXT_PT), false, drawing);
    }

    /** Texts such as names of tyres may be long: they stand left-aligned in wider columns. */
    private Block condition(Pen measure, Change change) {
        return row(measure, (pen, top) -> {
            pen.text(leftMm, top, 0.23 * widthMm, false, Pen.TEXT_PT, change.name());
            words(pen, top, TEXT_LAST, TEXT_NOW - TEXT_LAST - 0.015, change.before(), false);
            words(pen, top, TEXT_NOW, WORD - TEXT_NOW - 0.015, change.now(), true);
            pen.text(leftMm + WORD * widthMm, top, (1 - WORD) * widthMm, false, Pen.SMALL_PT, change.word());
        });
    }

    private void words(Pen pen, double top, double start, double width, String words, boolean toWrite) {
        if (words.isEmpty() && toWrite) {
            writeOn(pen, top, start, start + width * 0.8);
        } else {
            pen.text(leftMm + start * widthMm, top, width * widthMm, toWrite, Pen.TEXT_PT, words.isEmpty() ? "–" : words);
        }
    }

    private Block reading(Pen measure, Change change) {
        return row(measure, (pen, top) -> {
            pen.text(leftMm, top, NAME * widthMm, false, Pen.TEXT_PT, change.name());
            figures(pen, top, change);
            if (change.now().isEmpty()) {
                writeOn(pen, top, NOW + 0.015, CHANGE);
            } else {
                pen.right(leftMm + CHANGE * widthMm, top, (CHANGE - NOW) * widthMm, isBeyond(change), Pen.TEXT_PT, change.change());
                pen.right(leftMm + NOISE * widthMm, top, (NOISE - CHANGE) * widthMm, false, Pen.SMALL_PT, change.noise());
            }
            strip(pen, top, change.bands());
            pen.text(leftMm + WORD * widthMm, top, (1 - WORD) * widthMm, isBeyond(change), Pen.SMALL_PT, change.word());
        });
    }

    private static boolean isBeyond(Change change) {
        return change.bands().isPresent() && Math.abs(change.bands().getAsDouble()) > 1;
    }

    private void figures(Pen pen, double top, Change change) {
        pen.right(leftMm + LAST * widthMm, top, (LAST - NAME) * widthMm, false, Pen.TEXT_PT, change.before().isEmpty() ? "–" : change.before());
        if (change.now().isEmpty()) {
            writeOn(pen, top, LAST + 0.03, NOW);
        } else {
            pen.right(leftMm + NOW * widthMm, top, (NOW - LAST) * widthMm, true, Pen.TEXT_PT, change.now());
        }
    }

    private void writeOn(Pen pen, double top, double start, double end) {
        double y = top + pen.lineMm(Pen.TEXT_PT) - pen.mm(0.5);
        pen.line(leftMm + start * widthMm, y, leftMm + end * widthMm, y, Pen.THIN_MM);
    }

    private void strip(Pen pen, double top, OptionalDouble bands) {
        double middle = leftMm + (STRIP + STRIP_END) / 2 * widthMm;
        double perBand = (STRIP_END - STRIP) / 2 * widthMm / MOST_BANDS;
        double row = pen.lineMm(Pen.TEXT_PT);
        pen.box(middle - perBand, top, 2 * perBand, row, Pen.THIN_MM);
        if (bands.isEmpty()) {
            return;
        }
        double value = bands.getAsDouble();
        double at = middle + Math.max(-MOST_BANDS, Math.min(MOST_BANDS, value)) * perBand;
        String mark = value < -MOST_BANDS ? FAR_LEFT : value > MOST_BANDS ? FAR_RIGHT : Math.abs(value) > 1 ? DOT : RING;
        pen.centred(at, top, row * 2, false, Pen.SMALL_PT, mark);
    }

    private Block position(Pen measure, Change change) {
        return row(measure, (pen, top) -> {
            pen.text(leftMm, top, NAME * widthMm, false, Pen.TEXT_PT, change.name());
            figures(pen, top, change);
            boolean moved = !change.change().isEmpty();
            pen.text(leftMm + (NOW + 0.02) * widthMm, top, (1 - NOW - 0.02) * widthMm, moved, Pen.TEXT_PT, change.word());
        });
    }

    private List<Block> turns(Pen measure, Lines lines) {
        List<Block> all = new ArrayList<>();
        all.add(lines.heading(Bundle.change_turns()));
        double half = widthMm / 2 - 2;
        List<Effect> turns = content.turns();
        int rows = (turns.size() + 1) / 2;
        all.add(row(measure, (pen, top) -> {
            effectHead(pen, top, leftMm, half);
            if (turns.size() > 1) {
                effectHead(pen, top, leftMm + half + 4, half);
            }
        }));
        for (int i = 0; i < rows; i++) {
            Effect first = turns.get(i);
            Effect second = i + rows < turns.size() ? turns.get(i + rows) : null;
            all.add(row(measure, (pen, top) -> {
                effect(pen, top, leftMm, half, first);
                if (second != null) {
                    effect(pen, top, leftMm + half + 4, half, second);
                }
            }));
        }
        return all;
    }

    private static void effectHead(Pen pen, double top, double x, double width) {
        pen.right(x + 0.78 * width, top, 0.3 * width, true, Pen.SMALL_PT, Bundle.change_observed());
        pen.right(x + width, top, 0.22 * width, true, Pen.SMALL_PT, Bundle.change_expected());
    }

    private static void effect(Pen pen, double top, double x, double width, Effect effect) {
        pen.text(x, top, 0.54 * width, false, Pen.TEXT_PT, effect.what());
        pen.right(x + 0.78 * width, top, 0.24 * width, true, Pen.TEXT_PT, effect.observed());
        pen.right(x + width, top, 0.2 * width, false, Pen.TEXT_PT, effect.expected().isEmpty() ? "–" : effect.expected());
    }
}
