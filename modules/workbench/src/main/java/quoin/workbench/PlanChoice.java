package quoin.workbench;

import java.awt.Font;
import java.util.List;
import java.util.stream.Collectors;
import javax.swing.ButtonGroup;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import org.openide.awt.Mnemonics;
import org.openide.util.NbBundle.Messages;
import quoin.car.Corner;
import quoin.workflow.RoundPlan;

/** Which of the plans is shown and goes into the fields: one per number of corners to be visited. */
@Messages({
    "choice.label=Corners to visit, chance that all is inside (&B):",
    "# {0} - corners", "# {1} - percent", "choice.corners={0}  {1} %",
    "# {0} - corners", "choice.cornersOnly={0}",
    "choice.nothing=none"})
final class PlanChoice extends JPanel {

    private static final long serialVersionUID = 1L;

    private static final double LEAST_CHANCE = 0.02;

    private final transient Runnable onChoice;
    private transient List<RoundPlan> plans = List.of();
    private transient List<RoundPlan> shown = List.of();
    private int chosen;

    /**
     * @param onChoice told when the racer has chosen another plan
     */
    PlanChoice(Runnable onChoice) {
        super(new WrapLayout());
        this.onChoice = onChoice;
        setOpaque(false);
    }

    /** Shows the plans; the choice stays as long as they do. */
    void show(List<RoundPlan> offered) {
        if (shown.equals(offered)) {
            return;
        }
        shown = offered;
        plans = worthShowing(offered);
        chosen = 0;
        removeAll();
        setVisible(plans.size() > 1);
        JLabel label = Looks.label("", 1, Font.BOLD);
        Mnemonics.setLocalizedText(label, Bundle.choice_label());
        add(label);
        ButtonGroup group = new ButtonGroup();
        for (int i = 0; i < plans.size(); i++) {
            JRadioButton button = button(i);
            group.add(button);
            add(button);
            if (i == 0) {
                button.setSelected(true);
                label.setLabelFor(button);
            }
        }
        revalidate();
    }

    /** Without those that have no chance beside the one offered first. */
    static List<RoundPlan> worthShowing(List<RoundPlan> offered) {
        return offered.stream().filter(p -> p.equals(offered.get(0)) || p.probabilityInside().orElse(1) >= LEAST_CHANCE).toList();
    }

    private JRadioButton button(int index) {
        JRadioButton button = InertText.in(new JRadioButton());
        button.setText(words(plans.get(index)));
        button.setFont(Looks.font(1.1, Font.PLAIN));
        button.setOpaque(false);
        button.addActionListener(e -> {
            chosen = index;
            onChoice.run();
        });
        return button;
    }

    /** "LF RR  97 %". */
    static String words(RoundPlan plan) {
        String corners = plan.visits().isEmpty() ? Bundle.choice_nothing()
                : plan.visits().stream().map(Corner::words).collect(Collectors.joining(" "));
        return plan.probabilityInside().isPresent()
                ? Bundle.choice_corners(corners, PlanTable.percent(plan.probabilityInside().getAsDouble()))
                : Bundle.choice_cornersOnly(corners);
    }

    /** The plan chosen; only where some are shown. */
    RoundPlan chosen() {
        return plans.get(chosen);
    }
}
