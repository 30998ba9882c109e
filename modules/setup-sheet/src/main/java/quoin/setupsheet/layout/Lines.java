package quoin.setupsheet.layout;

import java.util.ArrayList;
import java.util.List;

/** Headings, wrapped lines and rows of cells. */
final class Lines {

    private static final double GAP_MM = 1.6;
    private static final double SECTION_GAP_MM = 1.2;

    private final Pen measure;
    private final double leftMm;
    private final double widthMm;

    /** @param measure a pen of the scale the lines are drawn in */
    Lines(Pen measure, double leftMm, double widthMm) {
        this.measure = measure;
        this.leftMm = leftMm;
        this.widthMm = widthMm;
    }

    /** A fixed height with what is drawn in it. */
    record Drawn(double heightMm, boolean leadsOn, Drawing drawing) implements Block {
        @Override
        public void draw(Pen pen, double topMm) {
            drawing.draw(pen, topMm);
        }
    }

    /** Draws at a height. */
    interface Drawing {
        void draw(Pen pen, double topMm);
    }

    /** One text of a row. */
    record Cell(double xMm, double widthMm, String label, String words) {
    }

    Block heading(String words) {
        double gap = measure.mm(SECTION_GAP_MM);
        double height = gap + measure.lineMm(Pen.HEADING_PT) + measure.mm(0.6);
        return new Drawn(height, true, (pen, top) -> {
            pen.text(leftMm, top + gap, widthMm, true, Pen.HEADING_PT, words);
            double y = top + height - pen.mm(0.5);
            pen.line(leftMm, y, leftMm + widthMm, y, Pen.THIN_MM);
        });
    }

    /** Texts in columns, each with its label in bold before it and wrapped in its own column; read line by line. */
    List<Block> columns(List<Cell> texts, int columns) {
        double width = (widthMm - (columns - 1) * GAP_MM) / columns;
        List<Block> rows = new ArrayList<>();
        for (int i = 0; i < texts.size(); i += columns) {
            List<Cell> row = new ArrayList<>();
            for (int c = 0; c < columns && i + c < texts.size(); c++) {
                Cell text = texts.get(i + c);
                row.add(new Cell(leftMm + c * (width + GAP_MM), width, text.label(), text.words()));
            }
            rows.addAll(row(row));
        }
        return rows;
    }

    /** One row; a text of very many lines is cut into blocks of a line each, so that it may go on on the next page. */
    private List<Block> row(List<Cell> cells) {
        if (cells.size() > 1) {
            return List.of(block(cells));
        }
        Cell cell = cells.get(0);
        List<String> lines = wrapped(cell);
        List<Block> blocks = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            String words = lines.get(i);
            String label = i == 0 ? cell.label() : "";
            blocks.add(new Drawn(measure.lineMm(Pen.TEXT_PT), false, (pen, top) -> line(pen, top, cell, label, words)));
        }
        return blocks;
    }

    private Block block(List<Cell> cells) {
        List<List<String>> all = cells.stream().map(this::wrapped).toList();
        int most = all.stream().mapToInt(List::size).max().orElse(1);
        return new Drawn(most * measure.lineMm(Pen.TEXT_PT), false, (pen, top) -> {
            for (int c = 0; c < cells.size(); c++) {
                List<String> lines = all.get(c);
                for (int i = 0; i < lines.size(); i++) {
                    line(pen, top + i * pen.lineMm(Pen.TEXT_PT), cells.get(c), i == 0 ? cells.get(c).label() : "", lines.get(i));
                }
            }
        });
    }

    private List<String> wrapped(Cell cell) {
        double label = labelMm(cell.label());
        // The first line is shorter by its label: a run of blanks of that width would not wrap alike, so it is wrapped apart.
        List<String> first = measure.wrap(cell.words(), false, Pen.TEXT_PT, cell.widthMm() - label);
        if (first.size() <= 1 || label == 0) {
            return first.isEmpty() ? List.of("") : first;
        }
        String rest = String.join(" ", first.subList(1, first.size()));
        List<String> lines = new ArrayList<>(List.of(first.get(0)));
        lines.addAll(measure.wrap(rest, false, Pen.TEXT_PT, cell.widthMm() - measure.mm(2)));
        return lines;
    }

    private double labelMm(String label) {
        return label.isEmpty() ? 0 : measure.widthMm(label, true, Pen.TEXT_PT) + measure.mm(1.2);
    }

    private void line(Pen pen, double top, Cell cell, String label, String words) {
        double x = cell.xMm();
        if (!label.isEmpty()) {
            pen.text(x, top, cell.widthMm(), true, Pen.TEXT_PT, label);
            x += labelMm(label);
        } else if (!cell.label().isEmpty()) {
            x += pen.mm(2);
        }
        pen.text(x, top, cell.xMm() + cell.widthMm() - x + 0.5, false, Pen.TEXT_PT, words);
    }

    /** Empty lines to write on. */
    List<Block> ruled(int count) {
        List<Block> lines = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double height = measure.mm(6.5);
            lines.add(new Drawn(height, false, (pen, top) -> pen.line(leftMm, top + height, leftMm + widthMm, top + height, Pen.THIN_MM)));
        }
        return lines;
    }
}
