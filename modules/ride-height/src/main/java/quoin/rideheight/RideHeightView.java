package quoin.rideheight;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.openide.util.NbBundle.Messages;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.HeightPoint;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.mechanics.FrameAttitude;
import quoin.workbench.CornerBlock;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.FigureTable;
import quoin.workbench.Looks;
import quoin.workbench.Mark;
import quoin.workbench.RoundView;
import quoin.workbench.VerdictWords;

/** Heights at the named points, what they say about the frame, and the round that sets them. */
@Messages({
    "view.read=Read the heights", "view.stands=How it stands",
    "view.rake=Rake, rear above front", "view.frontSides=Front, left above right", "view.rearSides=Rear, left above right",
    "view.frontTilt=Front tilt", "view.rearTilt=Rear tilt", "# {0} - corner", "view.flatness={0} off the plane of the others",
    "# {0} - degrees", "view.degrees={0}°",
    "# {0} - point", "view.point=at {0}"})
final class RideHeightView extends RoundView {

    private static final String STAGE = RideHeightWindow.STAGE;

    private final CornerBlock block = new CornerBlock();
    private final FigureTable figures = new FigureTable();
    private final JPanel component;

    RideHeightView(CurrentDay current) {
        super(current, STAGE);
        JPanel right = Looks.column(Looks.section(Bundle.view_stands(), Looks.column(block, figures)),
                findingsPart(), conditionsPart(), lastPart());
        component = Looks.twoColumns(workPart(Bundle.view_read()), right);
    }

    @Override
    public JComponent component() {
        return component;
    }

    @Override
    public void show(DaySnapshot day) {
        super.show(day);
        block.show(corner -> cell(day, corner));
        figures.show(lines(day));
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
                FigureTable.Line.plain(Bundle.view_flatness(Corner.LF.words()), day.format().change(any, attitude.flatnessMm())));
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
}
