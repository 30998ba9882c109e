package quoin.rideheight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.openide.util.NbBundle.Messages;
import quoin.car.AdjusterKind;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.HeightPoint;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.mechanics.FrameAttitude;
import quoin.workbench.CornerBlock;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.FigureTable;
import quoin.workbench.FindingsList;
import quoin.workbench.Looks;
import quoin.workbench.Mark;
import quoin.workbench.ReadingGrid;
import quoin.workbench.RequirementsList;
import quoin.workbench.RoundSection;
import quoin.workbench.SettleBar;
import quoin.workbench.StageView;
import quoin.workbench.TurnsForm;
import quoin.workbench.VerdictWords;

/** Heights at the named points, what they say about the frame, and the round that sets them. */
@Messages({
    "view.read=Read the heights", "view.stands=How it stands", "view.conditions=Conditions while reading", "view.findings=Checks",
    "view.rake=Rake, rear above front", "view.frontSides=Front, left above right", "view.rearSides=Rear, left above right",
    "view.frontTilt=Front tilt", "view.rearTilt=Rear tilt", "view.flatness=LF off the plane of the others",
    "# {0} - degrees", "view.degrees={0}°",
    "# {0} - point", "view.point=at {0}"})
final class RideHeightView implements StageView {

    private static final String STAGE = RideHeightWindow.STAGE;

    private final ReadingGrid grid;
    private final SettleBar settle;
    private final RoundSection round;
    private final RequirementsList conditions;
    private final CornerBlock block = new CornerBlock();
    private final FigureTable figures = new FigureTable();
    private final FindingsList findings = new FindingsList();
    private final JPanel component;

    RideHeightView(CurrentDay current) {
        grid = new ReadingGrid(current, STAGE, Car::heightReadings);
        settle = new SettleBar(current, STAGE);
        round = new RoundSection(current, STAGE,
                car -> TurnsForm.adjusters(car, Set.of(AdjusterKind.PERCH, AdjusterKind.PUSHROD)));
        conditions = new RequirementsList(current, STAGE);
        settle.onSettled(grid::toFirst);
        round.onTurned(settle::toButton);
        conditions.onAllHold(grid::toFirst);
        JPanel left = Looks.column(Looks.section(Bundle.view_read(), Looks.column(grid, settle)), round.planPart(), round.turnPart());
        JPanel right = Looks.column(Looks.section(Bundle.view_stands(), Looks.column(block, figures)),
                Looks.section(Bundle.view_findings(), findings), Looks.section(Bundle.view_conditions(), conditions), round.lastPart());
        component = Looks.twoColumns(left, right);
    }

    @Override
    public JComponent component() {
        return component;
    }

    @Override
    public void show(DaySnapshot day) {
        grid.show(day);
        settle.show(day);
        block.show(corner -> cell(day, corner));
        figures.show(lines(day));
        day.stage(STAGE).ifPresent(s -> {
            findings.show(s.findings(), day.format());
            conditions.show(s.requirements());
        });
        round.show(day);
    }

    private static CornerBlock.Cell cell(DaySnapshot day, Corner corner) {
        Optional<HeightPoint> point = day.car().heightPoint(corner);
        if (point.isEmpty()) {
            return new CornerBlock.Cell("–", "", new VerdictWords(Mark.NONE, ""));
        }
        ReadingId id = point.get().reading();
        OptionalDouble value = day.last(id);
        return new CornerBlock.Cell(value.isPresent() ? day.format().number(id, value.getAsDouble()) : "–",
                Bundle.view_point(point.get().name()), VerdictWords.of(day.reading(STAGE, id), day.format()));
    }

    private static List<FigureTable.Line> lines(DaySnapshot day) {
        List<FigureTable.Line> lines = new ArrayList<>();
        day.reading(STAGE, ReadingId.ofCar(ReadingKind.RAKE))
                .ifPresent(r -> lines.add(FigureTable.Line.of(Bundle.view_rake(), r, day.format())));
        sides(day, Axle.FRONT).ifPresent(s -> lines.add(FigureTable.Line.plain(Bundle.view_frontSides(), s)));
        sides(day, Axle.REAR).ifPresent(s -> lines.add(FigureTable.Line.plain(Bundle.view_rearSides(), s)));
        Frame.attitude(day).ifPresent(a -> lines.addAll(frame(day, a)));
        return lines;
    }

    private static List<FigureTable.Line> frame(DaySnapshot day, FrameAttitude attitude) {
        ReadingId any = day.car().heightReadings().get(0);
        return List.of(FigureTable.Line.plain(Bundle.view_frontTilt(), Bundle.view_degrees(Frame.twoDecimals(attitude.tiltDeg().front()))),
                FigureTable.Line.plain(Bundle.view_rearTilt(), Bundle.view_degrees(Frame.twoDecimals(attitude.tiltDeg().rear()))),
                FigureTable.Line.plain(Bundle.view_flatness(), day.format().change(any, attitude.flatnessMm())));
    }

    private static Optional<String> sides(DaySnapshot day, Axle axle) {
        List<OptionalDouble> heights = Stream.of(axle.left(), axle.right()).map(day.car()::heightPoint).flatMap(Optional::stream)
                .map(p -> day.last(p.reading())).filter(OptionalDouble::isPresent).toList();
        if (heights.size() < 2) {
            return Optional.empty();
        }
        ReadingId any = day.car().heightReadings().get(0);
        return Optional.of(day.format().change(any, heights.get(0).getAsDouble() - heights.get(1).getAsDouble()));
    }

    @Override
    public void showPlans(DaySnapshot day) {
        round.show(day);
    }

    @Override
    public void toEntry() {
        grid.toFirst();
    }

    @Override
    public void toTurns() {
        round.toTurns();
    }
}
