package quoin.setupsheet.content;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.openide.util.NbBundle.Messages;
import quoin.car.Adjuster;
import quoin.car.AdjusterId;
import quoin.car.Axle;
import quoin.car.ReadingId;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.quantities.Dimension;
import quoin.quantities.QuantityFormat;
import quoin.quantities.Texts;
import quoin.setupsheet.content.ChangeContent.Change;
import quoin.setupsheet.content.ChangeContent.Effect;
import quoin.workbench.AdjusterWords;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.EntryWords;
import quoin.workbench.ReadingFormat;
import quoin.workflow.CarState;
import quoin.workflow.Difference;
import quoin.workflow.ObservedTurns;
import quoin.workflow.StateComparison;

/** Puts the page of last time, now and the change together. */
@Messages({
    "# {0} - date", "# {1} - title", "change.last=Last time: {0}   {1}", "# {0} - date", "# {1} - title", "change.now=Now: {0}   {1}",
    "change.driver=Driver", "change.fuel=Fuel wanted", "change.front=Front pressure, hot", "change.rear=Rear pressure, hot",
    "change.tyres=Tyres", "change.goal=Cross weight wanted", "change.same=the same", "change.other=different",
    "change.noChange=no change", "change.up=higher", "change.down=lower", "change.notNow=not read today", "change.notThen=not read last time",
    "change.stands=where it stood", "change.unknown=not known",
    "# {0} - noise", "change.band=± {0}", "# {0} - adjuster", "# {1} - reading", "change.effect={0}: {1}",
    "# {0} - value", "# {1} - band", "change.withBand={0} ± {1}"})
public final class ContentOfChange {

    private static final double NOTHING_MM = 1e-6;

    private final DaySnapshot snapshot;
    private final Day now;
    private final LastTime last;
    private final ReadingFormat format;
    private final ZoneId zone;

    private ContentOfChange(DaySnapshot snapshot, LastTime last, ZoneId zone) {
        this.snapshot = snapshot;
        this.now = snapshot.day();
        this.last = last;
        this.format = snapshot.format();
        this.zone = zone;
    }

    /**
     * The page of a day.
     *
     * @param title what the racer calls the day; may be empty
     */
    public static ChangeContent of(DaySnapshot snapshot, String title, LastTime last, ZoneId zone) {
        return new ContentOfChange(snapshot, last, zone).content(title);
    }

    private ChangeContent content(String title) {
        CarState before = CarState.at(last.info().id(), last.day(), last.day().revision());
        // another id even where two days of two libraries share one: they are never one and the same reading
        CarState after = CarState.at(last.info().id() + " now", now, now.revision());
        StateComparison compared = StateComparison.of(before, after, StateComparison.Part.ALL);
        List<String> head = List.of(Bundle.change_last(date(last.info().created()), last.info().title()).strip(),
                Bundle.change_now(date(now.written().get(0).header().time()), title.strip()).strip());
        boolean rehearsal = now.condition(CurrentDay.REHEARSAL).isPresent() || last.day().condition(CurrentDay.REHEARSAL).isPresent();
        return new ChangeContent(now.car().name(), head, rehearsal ? Bundle.head_rehearsal() : "", conditions(),
                compared.lines().stream().map(this::reading).toList(), positions(before, after), last.turns().stream().map(this::effect).toList());
    }

    private String date(Instant instant) {
        return DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM).withLocale(Locale.getDefault()).withZone(zone).format(instant);
    }

    private List<Change> conditions() {
        List<Change> lines = new ArrayList<>();
        lines.add(condition(Bundle.change_driver(), Day::driver));
        lines.add(condition(Bundle.change_fuel(), d -> or(d.car().loadCase().fuelKg(), Dimension.MASS)));
        lines.add(condition(Bundle.change_front(), d -> or(d.car().loadCase().pressureBar().get(Axle.FRONT), Dimension.PRESSURE)));
        lines.add(condition(Bundle.change_rear(), d -> or(d.car().loadCase().pressureBar().get(Axle.REAR), Dimension.PRESSURE)));
        lines.add(condition(Bundle.change_tyres(), d -> d.condition(Conditions.TYRES).orElse("")));
        lines.add(condition(Bundle.change_goal(), d -> EntryWords.goal(d.targets().crossGoal())));
        return lines;
    }

    private Change condition(String name, Function<Day, String> of) {
        String before = of.apply(last.day());
        String after = of.apply(now);
        String word = before.isEmpty() || after.isEmpty() ? "" : before.equals(after) ? Bundle.change_same() : Bundle.change_other();
        return new Change(name, before, after, "", "", word, OptionalDouble.empty());
    }

    private String or(OptionalDouble value, Dimension dimension) {
        return value.isPresent() ? QuantityFormat.formatWithUnit(value.getAsDouble(), dimension, snapshot.units().preferences()) : "";
    }

    private Change reading(StateComparison.Line line) {
        ReadingId id = line.reading();
        String before = line.from().map(m -> format.number(id, m.value())).orElse("");
        String after = line.to().map(m -> format.number(id, m.value())).orElse("");
        if (line.difference().isEmpty()) {
            return new Change(Texts.sentence(format.nameWithUnit(id)), before, after, "", "", line.to().isEmpty() ? Bundle.change_notNow()
                    : Bundle.change_notThen(), OptionalDouble.empty());
        }
        Difference difference = line.difference().get();
        String word = difference.isNoise() ? Bundle.change_noChange() : difference.amount() > 0 ? Bundle.change_up() : Bundle.change_down();
        OptionalDouble bands = difference.band() > 0 ? OptionalDouble.of(difference.amount() / difference.band()) : OptionalDouble.empty();
        return new Change(Texts.sentence(format.nameWithUnit(id)), before, after, format.changeNumber(id, difference.amount()),
                Bundle.change_band(format.number(id, difference.band())), word, bands);
    }

    private List<Change> positions(CarState before, CarState after) {
        AdjusterWords words = snapshot.adjusterWords();
        List<Change> lines = new ArrayList<>();
        for (Adjuster adjuster : now.car().adjusters()) {
            AdjusterId id = adjuster.id();
            Double then = before.positions().get(id);
            Double here = after.positions().get(id);
            String change = "";
            String word = Bundle.change_unknown();
            if (then != null && here != null) {
                boolean still = Math.abs(here - then) < NOTHING_MM;
                change = still ? "" : words.amount(id, (here - then) / adjuster.setting().mmPerUnit());
                word = still ? Bundle.change_stands() : change;
            }
            lines.add(new Change(id.words(), then == null ? "" : words.length(then), here == null ? "" : words.length(here), change, "", word,
                    OptionalDouble.empty()));
        }
        return lines;
    }

    private Effect effect(ObservedTurns turn) {
        ReadingId id = turn.reading();
        String expected = turn.expected().map(e -> format.changeNumber(id, e.amount())).orElse("");
        return new Effect(Bundle.change_effect(turn.adjuster().words(), format.nameWithUnit(id)),
                Bundle.change_withBand(format.changeNumber(id, turn.observed().amount()), format.number(id, Difference.COVERAGE
                        * turn.observed().uncertainty())), expected);
    }
}
