package quoin.workbench;

import java.awt.BorderLayout;
import java.awt.Font;
import java.awt.GridBagLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.openide.util.NbBundle.Messages;
import quoin.car.ReadingId;
import quoin.workflow.ReadingState;

/** A table of figures with target and verdict, one line each. */
@Messages({"figures.name=Figure", "figures.value=Value", "figures.target=Target", "figures.verdict=Verdict"})
public final class FigureTable extends JPanel {

    /**
     * One line.
     *
     * @param name    what it is
     * @param value   the figure with its unit
     * @param target  what it should be, or a dash
     * @param verdict shape and word
     */
    public record Line(String name, String value, String target, VerdictWords verdict) {

        /** A figure that has no target. */
        public static Line plain(String name, String value) {
            return new Line(name, value, "", new VerdictWords(Mark.NONE, ""));
        }

        /** A reading as it stands in a stage. */
        public static Line of(String name, ReadingState state, ReadingFormat format) {
            String value = state.value().isPresent() ? format.text(state.reading(), state.value().getAsDouble()) : "–";
            String target = state.target().map(t -> format.bandNumber(state.reading(), t.value(), t.tolerance())).orElse("");
            return new Line(name, value, target, VerdictWords.of(state, format));
        }
    }

    private static final long serialVersionUID = 1L;

    private final transient List<Row> rows = new ArrayList<>();
    private final JPanel table = new JPanel(new GridBagLayout());
    private boolean headed;

    public FigureTable() {
        super(new BorderLayout());
        setOpaque(false);
        table.setOpaque(false);
        add(table, BorderLayout.NORTH);
    }

    /** Shows some readings of a stage under their own names; those the stage does not name are left out. */
    public void show(DaySnapshot day, String stageId, List<ReadingId> readings, Function<ReadingId, String> name) {
        ReadingFormat format = day.format();
        show(readings.stream().map(id -> day.reading(stageId, id)).flatMap(Optional::stream)
                .map(s -> Line.of(name.apply(s.reading()), s, format)).toList());
    }

    /** Shows these lines; where there are as many as before, only what they say changes. */
    public void show(List<Line> lines) {
        boolean wantsHeads = lines.stream().anyMatch(l -> !l.target().isEmpty());
        if (lines.size() != rows.size() || wantsHeads != headed) {
            headed = wantsHeads;
            build(lines.size());
        }
        for (int i = 0; i < lines.size(); i++) {
            rows.get(i).show(lines.get(i));
        }
    }

    private void build(int count) {
        table.removeAll();
        rows.clear();
        if (headed) {
            String[] heads = {Bundle.figures_name(), Bundle.figures_value(), Bundle.figures_target(), Bundle.figures_verdict()};
            for (int i = 0; i < heads.length; i++) {
                table.add(Looks.label(heads[i], 1, Font.BOLD), Looks.cell(i, 0, 0));
            }
        }
        for (int i = 0; i < count; i++) {
            Row row = new Row();
            row.addTo(table, i + 1);
            rows.add(row);
        }
        revalidate();
        repaint();
    }

    private record Row(JLabel name, JLabel value, JLabel target, VerdictLabel verdict) {

        Row() {
            this(Looks.label("", 1.1, Font.PLAIN), Looks.label("", 1.25, Font.BOLD), Looks.label("", 1.1, Font.PLAIN), new VerdictLabel());
        }

        void addTo(JPanel table, int line) {
            table.add(name, Looks.cell(0, line, 0));
            table.add(value, Looks.cell(1, line, 0));
            table.add(target, Looks.cell(2, line, 0));
            table.add(verdict, Looks.cell(3, line, 1));
        }

        void show(Line line) {
            name.setText(line.name());
            value.setText(line.value());
            target.setText(line.target());
            verdict.show(line.verdict());
        }
    }
}
