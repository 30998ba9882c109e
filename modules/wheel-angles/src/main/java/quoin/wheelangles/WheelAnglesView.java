package quoin.wheelangles;

import java.awt.FlowLayout;
import java.awt.Font;
import java.awt.GridBagLayout;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.openide.awt.Mnemonics;
import org.openide.util.NbBundle.Messages;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.quantities.AngleStyle;
import quoin.wheelangles.screen.MeasureWindow;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.DisplayUnits;
import quoin.workbench.FigureTable;
import quoin.workbench.Looks;
import quoin.workbench.ReadingFormat;
import quoin.workbench.RoundView;

/** Camber, caster and toe wheel by wheel; total toe and thrust angle; what was turned. */
@Messages({
    "view.read=Read the angles", "view.stands=How it stands", "view.toe=Toe of each wheel, plus is toe-in",
    "view.frontToe=Front total toe", "view.rearToe=Rear total toe", "view.thrust=Thrust angle, plus to the left",
    "view.toeInMm=Toe in &mm at the rim",
    "view.measure=Measure by cords, plates, sweep ... (Ctrl+M)",
    "view.wheel=Wheel", "view.atRim=At the rim", "view.decimal=Degrees", "view.minutes=Deg, min"})
final class WheelAnglesView extends RoundView {

    private static final String STAGE = WheelAnglesWindow.STAGE;
    private static final List<ReadingId> DERIVED = List.of(new ReadingId(ReadingKind.TOTAL_TOE, Axle.FRONT.name()),
            new ReadingId(ReadingKind.TOTAL_TOE, Axle.REAR.name()), ReadingId.ofCar(ReadingKind.THRUST_ANGLE));

    private final FigureTable figures = new FigureTable();
    private final JPanel toes = new JPanel(new GridBagLayout());
    private final JCheckBox inMm = new JCheckBox();
    private final JPanel component;

    WheelAnglesView(CurrentDay current) {
        super(current, STAGE);
        Mnemonics.setLocalizedText(inMm, Bundle.view_toeInMm());
        inMm.setOpaque(false);
        inMm.addActionListener(e -> current.setUnits(new DisplayUnits(current.units().preferences(), inMm.isSelected())));
        JButton measure = Looks.button(Bundle.view_measure(), MeasureWindow::bringToFront);
        measure.setName("measure");
        JPanel ways = new JPanel(new FlowLayout(FlowLayout.LEADING, Looks.em(0.9), Looks.em(0.5)));
        ways.add(measure);
        JPanel right = Looks.column(ways, Looks.section(Bundle.view_stands(), figures), Looks.section(Bundle.view_toe(), toes),
                findingsPart(), conditionsPart());
        component = Looks.twoColumns(workPart(Bundle.view_read(), inMm), right);
    }

    @Override
    public JComponent component() {
        return component;
    }

    @Override
    public void show(DaySnapshot day) {
        super.show(day);
        inMm.setSelected(day.units().toeInMm());
        figures.show(day, STAGE, DERIVED, WheelAnglesView::name);
        showToes(day);
    }

    private static String name(ReadingId id) {
        if (id.kind() == ReadingKind.THRUST_ANGLE) {
            return Bundle.view_thrust();
        }
        return id.place().equals(Axle.FRONT.name()) ? Bundle.view_frontToe() : Bundle.view_rearToe();
    }

    private void showToes(DaySnapshot day) {
        toes.removeAll();
        addRow(0, Font.BOLD, Bundle.view_wheel(), Bundle.view_atRim(), Bundle.view_decimal(), Bundle.view_minutes());
        int row = 1;
        for (Corner corner : day.car().walkingOrder()) {
            ReadingId id = ReadingId.of(ReadingKind.TOE, corner);
            OptionalDouble toe = day.last(id);
            List<String> texts = toe.isPresent() ? ways(day, id, toe.getAsDouble()) : List.of("–", "–", "–");
            addRow(row++, Font.PLAIN, Stream.concat(Stream.of(corner.words()), texts.stream()).toArray(String[]::new));
        }
        toes.revalidate();
        toes.repaint();
    }

    private void addRow(int row, int style, String... texts) {
        for (int i = 0; i < texts.length; i++) {
            toes.add(Looks.label(texts[i], 1.1, style), Looks.cell(i, row, i == texts.length - 1 ? 1 : 0));
        }
    }

    /** One toe as a length at the rim, in degrees, and in degrees and minutes. */
    static List<String> ways(DaySnapshot day, ReadingId id, double toeDeg) {
        var units = day.units().preferences();
        return Stream.of(new DisplayUnits(units, true), new DisplayUnits(units.withAngleStyle(AngleStyle.DECIMAL), false),
                new DisplayUnits(units.withAngleStyle(AngleStyle.DEGREES_MINUTES), false))
                .map(u -> new ReadingFormat(day.car(), u).text(id, toeDeg)).toList();
    }
}
