package quoin.workbench;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Font;
import java.awt.GridBagLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.openide.util.NbBundle.Messages;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.workflow.CornerMove;
import quoin.workflow.Predicted;
import quoin.workflow.RoundPlan;

/** The plan of a round: one card per corner in walking order, and what every reading will become. */
@Messages({
    "plan.nothing=Nothing to turn.",
    "plan.old=This plan was made before the last entry; a new one follows.",
    "# {0} - adjuster", "# {1} - words", "plan.move={0}: {1}",
    "# {0} - length", "plan.length=thread then {0}",
    "plan.lengthUnknown=thread not measured at the start",
    "plan.reading=Reading", "plan.now=Now", "plan.predicted=After it", "plan.change=Change", "plan.target=Target",
    "plan.inside=Then",
    "plan.notReachable=Not reachable by turning",
    "plan.assumed=Assumed",
    "# {0} - then", "# {1} - now", "plan.probability=All targets met afterwards: {0} % likely; as it stands: {1} %."})
public final class PlanTable extends JPanel {

    /** Letters that fit the last column of a table of many columns at any size of the window. */
    static final int SHORT = 14;

    private static final long serialVersionUID = 1L;

    private final transient BuiltFrom built = new BuiltFrom();

    /** Everything that is shown is made of this. */
    private record Content(RoundPlan plan, boolean old, boolean withChance, Car car, DisplayUnits units) {
    }

    public PlanTable() {
        super(new BorderLayout(0, Looks.em(0.6)));
        setOpaque(false);
    }

    /**
     * Shows a plan.
     *
     * @param withChance whether to say how likely everything is inside now and afterwards, where nothing beside it says so
     */
    public void show(RoundPlan plan, DaySnapshot day, boolean withChance) {
        if (!built.isNew(new Content(plan, plan.revision() != day.day().revision(), withChance, day.car(), day.units()))) {
            return;
        }
        removeAll();
        fill(plan, day, withChance);
        revalidate();
        repaint();
    }

    private void fill(RoundPlan plan, DaySnapshot day, boolean withChance) {
        List<Component> parts = new ArrayList<>();
        if (plan.revision() != day.day().revision()) {
            parts.add(new WrapText(Bundle.plan_old(), 1, Font.BOLD));
        }
        if (plan.moves().isEmpty()) {
            parts.add(new WrapText(Bundle.plan_nothing(), Looks.HEADING, Font.BOLD));
        }
        for (Corner corner : plan.visits()) {
            parts.add(card(corner, plan, day.adjusterWords()));
        }
        parts.add(padded(plan.why()));
        probability(plan).filter(p -> withChance).ifPresent(p -> parts.add(padded(p)));
        list(Bundle.plan_notReachable(), plan.notReachable(), parts);
        list(Bundle.plan_assumed(), plan.assumed(), parts);
        add(Looks.column(parts.toArray(Component[]::new)), BorderLayout.NORTH);
        add(predictions(plan.predicted(), day.format()), BorderLayout.CENTER);
    }

    private static WrapText padded(String words) {
        WrapText text = new WrapText(words);
        text.setBorder(Looks.padding(0.2, 0));
        return text;
    }

    private static Optional<String> probability(RoundPlan plan) {
        OptionalDouble then = plan.probabilityInside();
        OptionalDouble now = plan.probabilityNow();
        return then.isPresent() && now.isPresent()
                ? Optional.of(Bundle.plan_probability(percent(then.getAsDouble()), percent(now.getAsDouble()))) : Optional.empty();
    }

    static String percent(double probability) {
        return Long.toString(Math.round(100 * probability));
    }

    private static void list(String heading, List<String> lines, List<Component> parts) {
        if (!lines.isEmpty()) {
            parts.add(Looks.label(heading, 1, Font.BOLD));
            lines.forEach(l -> parts.add(padded(l)));
        }
    }

    private static JPanel card(Corner corner, RoundPlan plan, AdjusterWords words) {
        List<Component> lines = new ArrayList<>();
        for (CornerMove move : plan.moves()) {
            if (move.adjuster().corner() == corner) {
                lines.add(new WrapText(moveWords(move), Looks.HEADING, Font.BOLD));
                lines.add(new WrapText(lengthWords(move, words)));
            }
        }
        JPanel card = new JPanel(new BorderLayout(Looks.em(0.8), 0));
        card.setBorder(BorderFactory.createCompoundBorder(Looks.padding(0.2, 0), Looks.frame(0.5)));
        card.add(Looks.figure(corner.words()), BorderLayout.LINE_START);
        card.add(Looks.column(lines.toArray(Component[]::new)), BorderLayout.CENTER);
        return card;
    }

    /** "perch: 2 turns + 3 notches down". */
    static String moveWords(CornerMove move) {
        return Bundle.plan_move(move.adjuster().kind().words(), move.words());
    }

    static String lengthWords(CornerMove move, AdjusterWords words) {
        return move.newLengthMm().isPresent() ? Bundle.plan_length(words.length(move.newLengthMm().getAsDouble()))
                : Bundle.plan_lengthUnknown();
    }

    private static JPanel predictions(Map<ReadingId, Predicted> predicted, ReadingFormat format) {
        JPanel table = new JPanel(new GridBagLayout());
        String[] heads = {Bundle.plan_reading(), Bundle.plan_now(), Bundle.plan_predicted(), Bundle.plan_change(), Bundle.plan_target(),
            Bundle.plan_inside()};
        for (int i = 0; i < heads.length; i++) {
            table.add(Looks.label(heads[i], 1, Font.BOLD), Looks.closeCell(i, 0, i == heads.length - 1 ? 1 : 0));
        }
        int row = 1;
        for (Map.Entry<ReadingId, Predicted> entry : predicted.entrySet()) {
            String[] texts = row(entry.getKey(), entry.getValue(), format);
            for (int i = 0; i < texts.length; i++) {
                table.add(Looks.label(texts[i], 1, i == 2 ? Font.BOLD : Font.PLAIN), Looks.closeCell(i, row, 0));
            }
            table.add(verdict(then(entry.getKey(), entry.getValue(), format)), Looks.closeCell(texts.length, row, 1));
            row++;
        }
        return table;
    }

    /** A word or two in a label, which is drawn sooner; what may be longer than the column is left wraps. */
    private static JComponent verdict(VerdictWords words) {
        if (words.word().length() > SHORT) {
            VerdictLabel wrapping = new VerdictLabel();
            wrapping.show(words);
            return wrapping;
        }
        JLabel label = Looks.label(words.word(), 1, Font.PLAIN);
        label.setIcon(words.word().isEmpty() ? null : words.mark().icon());
        return label;
    }

    private static String[] row(ReadingId reading, Predicted predicted, ReadingFormat format) {
        String target = predicted.target().map(t -> format.bandNumber(reading, t.value(), t.tolerance())).orElse("–");
        String then = predicted.uncertainty() > 0 ? format.bandNumber(reading, predicted.predicted(), 2 * predicted.uncertainty())
                : format.number(reading, predicted.predicted());
        return new String[] {format.nameWithUnit(reading), format.number(reading, predicted.now()), then,
            format.changeNumber(reading, predicted.change()), target};
    }

    /** Where the prediction itself would lie against its target. */
    static VerdictWords then(ReadingId reading, Predicted predicted, ReadingFormat format) {
        if (predicted.target().isEmpty()) {
            return new VerdictWords(Mark.NONE, "");
        }
        double off = predicted.predicted() - predicted.target().get().value();
        if (predicted.target().get().contains(predicted.predicted())) {
            return new VerdictWords(Mark.INSIDE, Bundle.verdict_inside());
        }
        String by = format.text(reading, Math.abs(off));
        return VerdictWords.outside(reading, off, by);
    }
}
