package quoin.cornerweights;

import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.openide.util.NbBundle.Messages;
import quoin.car.Corner;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Target;
import quoin.mechanics.CentreOfGravity;
import quoin.mechanics.PlanPoint;
import quoin.mechanics.Shares;
import quoin.quantities.Dimension;
import quoin.quantities.QuantityFormat;
import quoin.quantities.Unit;
import quoin.quantities.UnitPreferences;
import quoin.workbench.BuiltFrom;
import quoin.workbench.CornerBlock;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.FigureTable;
import quoin.workbench.Looks;
import quoin.workbench.Mark;
import quoin.workbench.RoundView;
import quoin.workbench.VerdictWords;
import quoin.workbench.WrapText;
import quoin.workflow.ReadingState;

/** The four loads as they stand, the diagonals, the kinds of target, the plan and what it did. */
@Messages({
    "view.read=Read the weights and heights", "view.stands=How it stands", "view.targets=Kinds of cross target on this car",
    "view.history=Cross weight of every weighing today",
    "# {0} - share", "view.ofTotal={0} of the total",
    "view.total=Total", "view.front=Front share", "view.left=Left share",
    "view.cgBehind=CG behind the front axle", "view.cgLeft=CG left of the middle", "view.cgRight=CG right of the middle",
    "view.noHistory=No weighing of all four corners yet."})
final class CornerWeightsView extends RoundView {

    private static final String STAGE = CornerWeightsWindow.STAGE;

    private final CrossTargetsPanel targets;
    private final CornerBlock block = new CornerBlock();
    private final FigureTable figures = new FigureTable();
    private final FigureTable centre = new FigureTable();
    private final JPanel history = new JPanel(new BorderLayout());
    private final JPanel component;
    private final CrossChart chart = new CrossChart();
    private final WrapText noHistory = new WrapText(Bundle.view_noHistory());
    private final BuiltFrom charted = new BuiltFrom();

    /** What the chart is made of. */
    private record Charted(List<CrossHistory.Weighing> weighings, Optional<Target> target) {
    }

    CornerWeightsView(CurrentDay current) {
        super(current, STAGE);
        targets = new CrossTargetsPanel(current);
        history.add(noHistory, BorderLayout.NORTH);
        history.add(chart.component(), BorderLayout.CENTER);
        JPanel right = Looks.column(Looks.section(Bundle.view_stands(), Looks.column(block, figures, centre)),
                Looks.section(Bundle.view_targets(), targets), findingsPart(), lastPart(),
                Looks.section(Bundle.view_history(), history), conditionsPart());
        component = Looks.twoColumns(workPart(Bundle.view_read()), right);
    }

    @Override
    public JComponent component() {
        return component;
    }

    @Override
    public void show(DaySnapshot day) {
        super.show(day);
        Optional<PerCorner<Double>> loads = loads(day);
        block.show(corner -> cell(day, corner, loads));
        figures.show(lines(day, loads));
        centre.show(loads.map(l -> cg(day, l)).orElse(List.of()));
        targets.show(day, loads);
        showHistory(day);
    }

    /** The four loads last read; empty where one is missing. */
    static Optional<PerCorner<Double>> loads(DaySnapshot day) {
        PerCorner<OptionalDouble> read = PerCorner.of(c -> day.last(ReadingId.of(ReadingKind.LOAD, c)));
        boolean all = Stream.of(Corner.values()).allMatch(c -> read.get(c).isPresent());
        return all && Stream.of(Corner.values()).mapToDouble(c -> read.get(c).getAsDouble()).sum() > 0
                ? Optional.of(read.map(OptionalDouble::getAsDouble)) : Optional.empty();
    }

    private static CornerBlock.Cell cell(DaySnapshot day, Corner corner, Optional<PerCorner<Double>> loads) {
        ReadingId id = ReadingId.of(ReadingKind.LOAD, corner);
        OptionalDouble value = day.last(id);
        String share = loads.map(l -> Bundle.view_ofTotal(day.format().text(ReadingId.ofCar(ReadingKind.FRONT_SHARE),
                100 * l.get(corner) / Shares.of(l).totalKgf()))).orElse("");
        Optional<ReadingState> state = day.reading(STAGE, id);
        VerdictWords words = state.isEmpty() || state.get().target().isEmpty() && state.get().reasons().isEmpty()
                ? new VerdictWords(Mark.NONE, "") : VerdictWords.of(state, day.format());
        return new CornerBlock.Cell(value.isPresent() ? day.format().number(id, value.getAsDouble()) : "–", share, words);
    }

    private static List<FigureTable.Line> lines(DaySnapshot day, Optional<PerCorner<Double>> loads) {
        List<FigureTable.Line> lines = new ArrayList<>();
        addLine(lines, day, Corner.crossWords(), ReadingKind.CROSS);
        loads.ifPresent(l -> lines.add(FigureTable.Line.plain(Corner.otherCrossWords(),
                day.format().text(ReadingId.ofCar(ReadingKind.CROSS), Shares.of(l).otherDiagonalPercent()))));
        addLine(lines, day, Bundle.view_total(), ReadingKind.TOTAL);
        addLine(lines, day, Bundle.view_front(), ReadingKind.FRONT_SHARE);
        addLine(lines, day, Bundle.view_left(), ReadingKind.LEFT_SHARE);
        return lines;
    }

    private static void addLine(List<FigureTable.Line> lines, DaySnapshot day, String name, ReadingKind kind) {
        day.reading(STAGE, ReadingId.ofCar(kind)).ifPresent(r -> lines.add(FigureTable.Line.of(name, r, day.format())));
    }

    /** Whole millimetres: the scales do not know it better. */
    private static List<FigureTable.Line> cg(DaySnapshot day, PerCorner<Double> loads) {
        PlanPoint cg = CentreOfGravity.inPlan(loads, CrossTargetsPanel.contactPoints(day.car()));
        UnitPreferences units = day.units().preferences();
        int decimals = units.unit(Dimension.LENGTH) == Unit.IN ? 1 : 0;
        QuantityFormat format = QuantityFormat.of(units.withDecimals(Dimension.LENGTH, decimals));
        return List.of(FigureTable.Line.plain(Bundle.view_cgBehind(), format.text(-cg.xMm(), Dimension.LENGTH)),
                FigureTable.Line.plain(cg.yMm() >= 0 ? Bundle.view_cgLeft() : Bundle.view_cgRight(),
                        format.text(Math.abs(cg.yMm()), Dimension.LENGTH)));
    }

    private void showHistory(DaySnapshot day) {
        List<CrossHistory.Weighing> weighings = CrossHistory.of(day.day());
        Optional<Target> target = day.reading(STAGE, ReadingId.ofCar(ReadingKind.CROSS)).flatMap(ReadingState::target);
        if (charted.isNew(new Charted(weighings, target))) {
            chart.show(weighings, target);
            chart.component().setVisible(!weighings.isEmpty());
            noHistory.setVisible(weighings.isEmpty());
        }
    }
}
