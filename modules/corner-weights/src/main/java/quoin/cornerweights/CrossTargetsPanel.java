package quoin.cornerweights;

import java.awt.BorderLayout;
import java.awt.Font;
import java.awt.GridBagLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import org.openide.awt.Mnemonics;
import org.openide.util.NbBundle.Messages;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.CrossGoal;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Entry;
import quoin.mechanics.CentreOfGravity;
import quoin.mechanics.CrossTarget;
import quoin.mechanics.PlanPoint;
import quoin.workbench.BuiltFrom;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.DisplayUnits;
import quoin.workbench.Looks;
import quoin.workbench.ReadingFormat;
import quoin.workbench.WrapText;

/** The kinds of cross target side by side with the loads each gives; choosing one sets the day's target. */
@Messages({
    "targets.kind=Aim for", "# {0} - diagonal", "targets.cross={0}, %",
    "targets.diagonals=e&qual diagonals", "targets.fronts=equal fronts (&J)", "targets.share=same share (&Y)",
    "targets.wanted=typed value (&Z)",
    "targets.weighFirst=The loads of each kind of target are shown once all four corners have been weighed."})
final class CrossTargetsPanel extends JPanel {

    private static final long serialVersionUID = 1L;

    /**
     * One kind of target.
     *
     * @param goal         which
     * @param crossPercent RF+LR it means on this car, %
     * @param loadsKg      the four loads it gives, kg
     */
    record Choice(CrossGoal goal, double crossPercent, PerCorner<Double> loadsKg) {
    }

    /** Everything that is shown is made of this. */
    private record Content(List<Choice> choices, CrossGoal goal, DisplayUnits units) {
    }

    private final transient CurrentDay current;
    private final transient BuiltFrom built = new BuiltFrom();

    CrossTargetsPanel(CurrentDay current) {
        super(new BorderLayout());
        this.current = current;
    }

    void show(DaySnapshot day, Optional<PerCorner<Double>> loads) {
        List<Choice> choices = loads.map(l -> choices(day, l)).orElse(List.of());
        if (!built.isNew(new Content(choices, day.day().targets().crossGoal(), day.units()))) {
            return;
        }
        removeAll();
        add(choices.isEmpty() ? new WrapText(Bundle.targets_weighFirst()) : table(choices, day), BorderLayout.CENTER);
        revalidate();
        repaint();
    }

    /** The three common kinds, and the typed value where there is one. */
    static List<Choice> choices(DaySnapshot day, PerCorner<Double> loads) {
        PerCorner<PlanPoint> wheels = contactPoints(day.car());
        List<Choice> choices = new ArrayList<>();
        for (CrossTarget target : CrossTarget.all(loads, wheels)) {
            choices.add(new Choice(CrossGoal.valueOf(target.kind().name()), target.shares().crossPercent(), target.loadsKgf()));
        }
        day.day().targets().of(ReadingId.ofCar(ReadingKind.CROSS)).ifPresent(t -> choices.add(new Choice(CrossGoal.WANTED, t.value(),
                CrossTarget.loadsAtCrossKgf(loads, wheels, t.value()))));
        return choices;
    }

    static PerCorner<PlanPoint> contactPoints(Car car) {
        return CentreOfGravity.contactPoints(car.wheelbaseMm(), car.trackMm(Axle.FRONT), car.trackMm(Axle.REAR));
    }

    private JPanel table(List<Choice> choices, DaySnapshot day) {
        JPanel table = new JPanel(new GridBagLayout());
        List<String> heads = new ArrayList<>(List.of(Bundle.targets_kind(), Bundle.targets_cross(Corner.crossWords())));
        for (Corner corner : Corner.values()) {
            heads.add(corner.words());
        }
        for (int i = 0; i < heads.size(); i++) {
            table.add(Looks.label(heads.get(i), 1, Font.BOLD), Looks.cell(i, 0, i == heads.size() - 1 ? 1 : 0));
        }
        ReadingFormat format = day.format();
        for (int row = 0; row < choices.size(); row++) {
            Choice choice = choices.get(row);
            boolean chosen = day.day().targets().crossGoal() == choice.goal();
            table.add(button(choice.goal(), chosen), Looks.cell(0, row + 1, 0));
            int style = chosen ? Font.BOLD : Font.PLAIN;
            table.add(Looks.label(format.number(ReadingId.ofCar(ReadingKind.CROSS), choice.crossPercent()), 1, style), Looks.cell(1, row + 1, 0));
            int column = 2;
            for (Corner corner : Corner.values()) {
                String load = format.number(ReadingId.of(ReadingKind.LOAD, corner), choice.loadsKg().get(corner));
                table.add(Looks.label(load, 1, style), Looks.cell(column, row + 1, column == 5 ? 1 : 0));
                column++;
            }
        }
        return table;
    }

    private JRadioButton button(CrossGoal goal, boolean chosen) {
        JRadioButton button = new JRadioButton();
        Mnemonics.setLocalizedText(button, words(goal));
        button.setSelected(chosen);
        button.setOpaque(false);
        button.addActionListener(e -> {
            if (chosen) {
                button.setSelected(true);
            } else if (!current.record(CornerWeightsWindow.STAGE, h -> new Entry.GoalSet(h, goal))) {
                button.setSelected(false);
            }
        });
        return button;
    }

    private static String words(CrossGoal goal) {
        return switch (goal) {
            case EQUAL_DIAGONALS -> Bundle.targets_diagonals();
            case EQUAL_FRONTS -> Bundle.targets_fronts();
            case SAME_FRONT_SHARE -> Bundle.targets_share();
            case WANTED -> Bundle.targets_wanted();
        };
    }
}
