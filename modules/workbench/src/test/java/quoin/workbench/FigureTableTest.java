package quoin.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.JLabel;
import org.junit.jupiter.api.Test;
import quoin.car.Corner;

/** A figure that has changed changes in its place; only more or fewer lines, or heads, make a new table. */
class FigureTableTest {

    private static final VerdictWords NONE = new VerdictWords(Mark.NONE, "");

    @Test
    void aChangedFigureIsSaidInItsPlace() throws Exception {
        EventQueue.invokeAndWait(() -> {
            FigureTable table = new FigureTable();
            table.show(List.of(FigureTable.Line.plain("Total", "469.0 kg")));
            JLabel figure = labels(table).get(1);
            table.show(List.of(FigureTable.Line.plain("Total", "470.0 kg")));
            assertSame(figure, labels(table).get(1));
            assertEquals(List.of("Total", "470.0 kg"), texts(table));
        });
    }

    @Test
    void moreLinesAndTargetsMakeANewTable() throws Exception {
        EventQueue.invokeAndWait(() -> {
            FigureTable table = new FigureTable();
            table.show(List.of(FigureTable.Line.plain("Total", "469.0 kg")));
            FigureTable.Line cross = new FigureTable.Line("RF+LR", "51.20 %", "50.00 \u00b1 0.30", new VerdictWords(Mark.ABOVE, "1.20 % too high"));
            table.show(List.of(cross, FigureTable.Line.plain("Total", "470.0 kg")));
            assertEquals(List.of("Figure", "Value", "Target", "Verdict", "RF+LR", "51.20 %", "50.00 \u00b1 0.30", "Total", "470.0 kg"), texts(table));
            table.show(List.of(FigureTable.Line.plain("Total", "470.0 kg")));
            assertEquals(List.of("Total", "470.0 kg"), texts(table));
        });
    }

    @Test
    void aCornerSaysItsVerdictOnlyWhereThereIsOne() throws Exception {
        EventQueue.invokeAndWait(() -> {
            CornerBlock block = new CornerBlock();
            block.show(c -> new CornerBlock.Cell("117.2", "25.0 % of the total", NONE));
            assertEquals(0, verdicts(block));
            block.show(c -> new CornerBlock.Cell("117.9", "25.1 % of the total", c == Corner.LF ? new VerdictWords(Mark.AGAIN, "stale") : NONE));
            assertEquals(1, verdicts(block));
            assertEquals(4, texts(block).stream().filter("117.9"::equals).count());
        });
    }

    private static long verdicts(Container in) {
        return all(in).filter(c -> c instanceof VerdictLabel && c.isVisible()).count();
    }

    private static List<JLabel> labels(Container in) {
        return all(in).filter(JLabel.class::isInstance).map(JLabel.class::cast).toList();
    }

    /** What the labels say, one after the other. */
    private static List<String> texts(Container in) {
        return labels(in).stream().map(JLabel::getText).filter(t -> t != null && !t.isEmpty()).toList();
    }

    private static Stream<Component> all(Container in) {
        return Stream.concat(Stream.of(in), Stream.of(in.getComponents())
                .flatMap(c -> c instanceof Container inner ? all(inner) : Stream.of(c)));
    }
}
