package quoin.setupsheet.content;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.openide.util.NbBundle.Messages;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.logbook.Day;
import quoin.quantities.Dimension;
import quoin.quantities.QuantityFormat;
import quoin.setupsheet.content.SheetContent.Figure;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;

/** Puts the content of a sheet together from the open day. */
@Messages({
    "# {0} - begun", "# {1} - last entry", "# {2} - number of the last entry", "head.times=Begun {0}, last entry {1} (entry {2})",
    "# {0} - title", "head.title=Day: {0}",
    "head.closed=Day closed", "head.open=DAY NOT CLOSED: the figures may still change",
    "head.part=Day closed as PART OF THE JOB: what it leaves open stands under Not proved",
    "# {0} - why", "head.outOfOrder=DAY CLOSED OUT OF ORDER: {0}",
    "head.rehearsal=REHEARSAL: read on the practice car, not on a real one",
    "head.blank=To be filled in by hand. Date, place and who:",
    "# {0} - length", "plan.wheelbase=wheelbase {0}", "# {0} - length", "plan.trackFront=front track {0}",
    "# {0} - length", "plan.trackRear=rear track {0}"})
public final class ContentOfDay {

    private final DaySnapshot snapshot;
    private final Day day;
    private final String title;
    private final ZoneId zone;

    private ContentOfDay(DaySnapshot snapshot, String title, ZoneId zone) {
        this.snapshot = snapshot;
        this.day = snapshot.day();
        this.title = title.strip();
        this.zone = zone;
    }

    /**
     * The day as it stands.
     *
     * @param title what the racer calls the day; may be empty
     */
    public static SheetContent filled(DaySnapshot snapshot, String title, ZoneId zone) {
        return new ContentOfDay(snapshot, title, zone).content(false);
    }

    /** The same sheet with the figures left out, for the car and the targets of the day. */
    public static SheetContent blank(DaySnapshot snapshot, ZoneId zone) {
        return new ContentOfDay(snapshot, "", zone).content(true);
    }

    private SheetContent content(boolean blank) {
        FigureWords figures = new FigureWords(snapshot, blank);
        Map<Corner, List<Figure>> corners = new EnumMap<>(Corner.class);
        for (Corner corner : Corner.values()) {
            corners.put(corner, figures.at(corner));
        }
        DaySections sections = new DaySections(snapshot, zone);
        String warning = !blank && day.condition(CurrentDay.REHEARSAL).isPresent() ? Bundle.head_rehearsal() : "";
        return new SheetContent(day.car().name(), blank ? List.of(Bundle.head_blank()) : head(), warning, plan(), corners,
                figures.whole(), new Positions(snapshot).all(blank), blank ? sections.blank() : sections.filled(), blank);
    }

    private List<String> head() {
        List<String> lines = new ArrayList<>();
        if (!title.isEmpty()) {
            lines.add(Bundle.head_title(title));
        }
        Instant first = day.written().get(0).header().time();
        Instant last = day.written().get(day.written().size() - 1).header().time();
        lines.add(Bundle.head_times(time(first), time(last), Long.toString(day.revision())));
        lines.add(day.closed().map(c -> c.outOfOrder().map(Bundle::head_outOfOrder)
                .orElseGet(() -> c.notProved().isEmpty() ? Bundle.head_closed() : Bundle.head_part()))
                .orElseGet(Bundle::head_open));
        return lines;
    }

    private String time(Instant instant) {
        return DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT).withLocale(Locale.getDefault())
                .withZone(zone).format(instant);
    }

    private List<String> plan() {
        Car car = day.car();
        return List.of(Bundle.plan_trackFront(length(car.trackMm(Axle.FRONT))), Bundle.plan_wheelbase(length(car.wheelbaseMm())),
                Bundle.plan_trackRear(length(car.trackMm(Axle.REAR))));
    }

    private String length(double mm) {
        return QuantityFormat.of(snapshot.units().preferences().withDecimals(Dimension.LENGTH, 0)).text(mm, Dimension.LENGTH);
    }
}
