package quoin.ballast;

import java.awt.BorderLayout;
import java.awt.Font;
import java.awt.GridBagLayout;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import org.openide.awt.Mnemonics;
import org.openide.util.NbBundle.Messages;
import quoin.ballast.Aims.Aim;
import quoin.ballast.Aims.Cost;
import quoin.car.Corner;
import quoin.car.CrossGoal;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Target;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.quantities.Texts;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.LongWork;
import quoin.workbench.LongWorkBar;
import quoin.workbench.Looks;
import quoin.workbench.ReadingFormat;
import quoin.workbench.WrapText;

/** The kinds of cross weight side by side: the loads each gives and what it costs to get there. */
@Messages({
    "aims.kind=Aim for", "# {0} - diagonal", "aims.cross={0}, %", "aims.cost=Costs from here",
    "aims.diagonals=e&qual diagonals", "aims.fronts=equal fronts (&J)", "aims.share=same front share (&Y)", "aims.wanted=typed value (&Z)",
    "aims.weighFirst=The loads and the cost of each aim are shown once all four corners have been weighed.",
    "aims.working=working it out...", "aims.planning=Working out what each aim costs", "aims.stopped=not worked out", "aims.unknown=no plan yet: weigh with the bars off, driver in",
    "# {0} - corners", "# {1} - turns", "aims.turns={0,choice,0#nothing to turn|1#1 corner, {1} turns|1<{0} corners, {1} turns}",
    "# {0} - cost", "# {1} - percent", "aims.likely={0}, {1} % likely inside"})
final class AimsPanel extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final double USUAL_TOLERANCE_PERCENT = 0.5;

    private final transient CurrentDay current;
    private final transient Map<CrossGoal, JLabel> costs = new LinkedHashMap<>();
    private final transient LongWork<Map<CrossGoal, Cost>> work = new LongWork<>("quoin aims", this::showCosts, this::progress);
    private final LongWorkBar working = new LongWorkBar(Bundle.aims_planning(), work::stop);

    AimsPanel(CurrentDay current) {
        super(new BorderLayout());
        this.current = current;
    }

    private void progress(double share) {
        working.progress(share);
    }

    void show(DaySnapshot day) {
        removeAll();
        costs.clear();
        Optional<Standing> standing = Standing.of(day);
        if (standing.isEmpty()) {
            add(new WrapText(Bundle.aims_weighFirst()), BorderLayout.NORTH);
        } else {
            Optional<Target> typed = day.day().targets().of(Aims.CROSS);
            List<Aim> aims = Aims.all(day.car(), standing.get().now().loadsKgf(),
                    typed.isPresent() ? OptionalDouble.of(typed.get().value()) : OptionalDouble.empty());
            add(table(aims, day), BorderLayout.NORTH);
            add(working, BorderLayout.CENTER);
            workOut(aims, day.day(), typed.map(Target::tolerance).orElse(USUAL_TOLERANCE_PERCENT));
        }
        revalidate();
        repaint();
    }

    private JPanel table(List<Aim> aims, DaySnapshot day) {
        JPanel table = new JPanel(new GridBagLayout());
        List<String> heads = new ArrayList<>(List.of(Bundle.aims_kind(), Bundle.aims_cross(Corner.crossWords())));
        heads.addAll(WhatIfPanel.corners());
        for (int i = 0; i < heads.size(); i++) {
            table.add(Looks.label(heads.get(i), 1, Font.BOLD), Looks.closeCell(i, 0, i == heads.size() - 1 ? 1 : 0));
        }
        int row = 1;
        for (Aim aim : aims) {
            row = addAim(table, aim, row, day);
        }
        return table;
    }

    /** Two lines: the figures, and below them the cost. */
    private int addAim(JPanel table, Aim aim, int row, DaySnapshot day) {
        boolean chosen = day.day().targets().crossGoal() == aim.goal();
        int style = chosen ? Font.BOLD : Font.PLAIN;
        ReadingFormat format = day.format();
        table.add(button(aim.goal(), chosen), Looks.closeCell(0, row, 0));
        table.add(Looks.label(format.number(Aims.CROSS, aim.crossPercent()), 1, style), Looks.closeCell(1, row, 0));
        PerCorner<Double> loads = aim.loadsKg();
        for (Corner corner : Corner.values()) {
            table.add(Looks.label(format.number(ReadingId.of(ReadingKind.LOAD, corner), loads.get(corner)), 1, style),
                    Looks.closeCell(2 + corner.ordinal(), row, corner == Corner.RR ? 1 : 0));
        }
        JLabel cost = Looks.label(Bundle.aims_working(), 1, Font.PLAIN);
        var cell = Looks.closeCell(0, row + 1, 1);
        cell.gridwidth = 6;
        cell.insets.left = Looks.em(1.8);
        cell.insets.bottom = Looks.em(0.5);
        table.add(cost, cell);
        costs.put(aim.goal(), cost);
        return row + 2;
    }

    private JRadioButton button(CrossGoal goal, boolean chosen) {
        JRadioButton button = new JRadioButton();
        Mnemonics.setLocalizedText(button, switch (goal) {
            case EQUAL_DIAGONALS -> Bundle.aims_diagonals();
            case EQUAL_FRONTS -> Bundle.aims_fronts();
            case SAME_FRONT_SHARE -> Bundle.aims_share();
            case WANTED -> Bundle.aims_wanted();
        });
        button.setSelected(chosen);
        button.addActionListener(e -> {
            if (chosen) {
                button.setSelected(true);
            } else if (!current.record("", h -> new Entry.GoalSet(h, goal))) {
                button.setSelected(false);
            }
        });
        return button;
    }

    /** What the plans are made from. */
    private record Question(long revision, List<Aim> aims, double tolerance) {
    }

    /** Plans take a second or more each; the last day asked for wins. */
    private void workOut(List<Aim> aims, Day day, double tolerance) {
        work.ask(new Question(day.revision(), aims, tolerance), watch -> {
            Map<CrossGoal, Cost> found = new LinkedHashMap<>();
            for (int i = 0; i < aims.size(); i++) {
                double share = (double) i / aims.size();
                watch.orGiveUp(share);
                Aim aim = aims.get(i);
                Aims.cost(day, aim, tolerance, () -> !watch.goesOn(share)).ifPresent(c -> found.put(aim.goal(), c));
            }
            return found;
        }).ifPresent(found -> showCosts(Optional.of(found)));
        working.show(work);
    }

    private void showCosts(Optional<Map<CrossGoal, Cost>> found) {
        working.show(work);
        for (Map.Entry<CrossGoal, JLabel> line : costs.entrySet()) {
            Cost cost = found.map(f -> f.get(line.getKey())).orElse(null);
            line.getValue().setText(cost != null ? words(cost) : found.isPresent() ? Bundle.aims_unknown() : Bundle.aims_stopped());
        }
    }

    static String words(Cost cost) {
        String turns = Bundle.aims_turns(cost.corners(), Texts.figure("%.2f", cost.turns()));
        return cost.likely().isPresent() ? Bundle.aims_likely(turns, Math.round(100 * cost.likely().getAsDouble())) : turns;
    }

    /** Gives up plans that are still being made. */
    void stop() {
        work.forget();
        working.show(work);
    }
}
