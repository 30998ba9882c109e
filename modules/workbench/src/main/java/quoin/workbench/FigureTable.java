package quoin.workbench;

import java.awt.BorderLayout;
import java.awt.Font;
import java.awt.GridBagLayout;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
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

    private final transient BuiltFrom built = new BuiltFrom();

    public FigureTable() {
        super(new BorderLayout());
        setOpaque(false);
    }

    /** Shows some readings of a stage under their own names; those the stage does not name are left out. */
    public void show(DaySnapshot day, String stageId, List<ReadingId> readings, Function<ReadingId, String> name) {
        ReadingFormat format = day.format();
        show(readings.stream().map(id -> day.reading(stageId, id)).flatMap(Optional::stream)
                .map(s -> Line.of(name.apply(s.reading()), s, format)).toList());
    }

    public void show(List<Line> lines) {
        if (!built.isNew(List.copyOf(lines))) {
            return;
        }
        removeAll();
        JPanel table = new JPanel(new GridBagLayout());
        table.setOpaque(false);
        if (lines.stream().anyMatch(l -> !l.target().isEmpty())) {
            String[] heads = {Bundle.figures_name(), Bundle.figures_value(), Bundle.figures_target(), Bundle.figures_verdict()};
            for (int i = 0; i < heads.length; i++) {
                table.add(Looks.label(heads[i], 1, Font.BOLD), Looks.cell(i, 0, 0));
            }
        }
        int row = 1;
        for (Line line : lines) {
            table.add(Looks.label(line.name(), 1.1, Font.PLAIN), Looks.cell(0, row, 0));
            table.add(Looks.label(line.value(), 1.25, Font.BOLD), Looks.cell(1, row, 0));
            table.add(Looks.label(line.target(), 1.1, Font.PLAIN), Looks.cell(2, row, 0));
            VerdictLabel verdict = new VerdictLabel();
            verdict.show(line.verdict());
            table.add(verdict, Looks.cell(3, row, 1));
            row++;
        }
        add(table, BorderLayout.NORTH);
        revalidate();
        repaint();
    }
}
