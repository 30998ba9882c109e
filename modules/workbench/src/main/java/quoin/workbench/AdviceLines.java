package quoin.workbench;

import java.awt.BorderLayout;
import java.awt.Font;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JPanel;
import org.openide.util.NbBundle.Messages;
import quoin.workflow.RoundAdvice;

/** What the rounds so far say: where the car stands with how much certainty, whether to go on, and a corner that answers oddly. */
@Messages({
    "# {0} - percent", "advice.inside=Inside: {0} % likely that every target is met.",
    "# {0} - percent", "advice.outside=Outside: {0} % likely that every target is met.",
    "# {0} - percent", "advice.tooClose=Too close to call: {0} % likely that every target is met."})
final class AdviceLines extends JPanel {

    private static final long serialVersionUID = 1L;

    /** One line: a shape, words, and whether they matter most. */
    record Line(Mark mark, String words, boolean strong) {
    }

    private final transient BuiltFrom built = new BuiltFrom();

    AdviceLines() {
        super(new BorderLayout());
        setOpaque(false);
    }

    void show(Optional<RoundAdvice> advice) {
        List<Line> lines = advice.map(AdviceLines::lines).orElse(List.of());
        if (!built.isNew(lines)) {
            return;
        }
        removeAll();
        if (!lines.isEmpty()) {
            add(Looks.column(lines.stream().map(AdviceLines::line).toArray(JPanel[]::new)));
        }
        setVisible(advice.isPresent());
        revalidate();
        repaint();
    }

    /** What is said, the verdict first. */
    static List<Line> lines(RoundAdvice advice) {
        String percent = PlanTable.percent(advice.all().probabilityInside());
        List<Line> lines = new ArrayList<>();
        lines.add(switch (advice.all().answer()) {
            case INSIDE -> new Line(Mark.INSIDE, Bundle.advice_inside(percent), false);
            case OUTSIDE -> new Line(Mark.AGAIN, Bundle.advice_outside(percent), false);
            case TOO_CLOSE -> new Line(Mark.CLOSE, Bundle.advice_tooClose(percent), false);
        });
        lines.add(new Line(Mark.OPEN, advice.nextWords(), advice.stops() || advice.readAgainWords().isPresent()));
        advice.oddCornerWords().ifPresent(words -> lines.add(new Line(Mark.AGAIN, words, false)));
        return lines;
    }

    private static JPanel line(Line line) {
        VerdictLabel label = new VerdictLabel(line.strong() ? Font.BOLD : Font.PLAIN);
        label.show(new VerdictWords(line.mark(), line.words()));
        label.setBorder(Looks.padding(0.1, 0));
        return label;
    }
}
