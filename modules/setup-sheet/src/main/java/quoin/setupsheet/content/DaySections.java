package quoin.setupsheet.content;

import java.math.BigDecimal;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.openide.util.NbBundle.Messages;
import quoin.car.Assumption;
import quoin.car.Assumptions;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.Instruments;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.quantities.Dimension;
import quoin.quantities.QuantityFormat;
import quoin.setupsheet.content.SheetContent.Line;
import quoin.setupsheet.content.SheetContent.Section;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.EntryWords;
import quoin.workflow.CarCheck;
import quoin.workflow.Loosened;
import quoin.workflow.ScaleCorrection;
import quoin.workflow.StageState;
import quoin.workflow.StageStatus;
import quoin.workflow.spi.Finding;

/** The parts of the sheet under the figures. */
@Messages({
    "section.load=Load case, tyres and condition", "section.uncertainty=Uncertainty and corrections",
    "section.signed=Signed off, and what was waived", "section.open=Not proved", "section.nuts=Loosened today, tightened to",
    "# {0} - part", "nut.open={0} STILL OPEN", "# {0} - part", "# {1} - torque", "nut.torque={0} {1}", "nut.noTorque=tight, no torque recorded",
    "section.notes=Notes", "section.cautions=Before the car moves",
    "load.driver=Driver", "load.fuel=Fuel wanted", "load.front=Front pressure, hot", "load.rear=Rear pressure, hot",
    "load.bar=Bar", "# {0} - rate", "load.frontBar=front {0} in roll", "# {0} - rate", "load.rearBar=rear {0} in roll",
    "load.barNone=none described", "load.unnamed=not named", "load.unknown=not known", "load.goal=Cross weight wanted",
    "uncertainty.meaning=A figure behind a ± sign after a reading is its expanded uncertainty, k = 2 (about 95 %): instrument step "
        + "and repeatability. An error that stays the same all day, such as a scale that reads high, is not in it. Targets are "
        + "given with their tolerance.",
    "# {0} - scale", "# {1} - height", "# {2} - angle", "# {3} - toe",
    "uncertainty.instruments=scales {0}, heights {1}, angles {2}, toe {3}", "uncertainty.steps=Smallest step read",
    "uncertainty.zero=Scales with nothing on them", "uncertainty.pads=Pad tops above the lowest", "uncertainty.none=not recorded",
    "uncertainty.factors=Scales shown over true", "uncertainty.notTested=not tested today: the figures are as the scales showed them",
    "open.check=Car check",
    "uncertainty.assumed=Assumed, not measured", "# {0} - field", "# {1} - value", "uncertainty.one={0} {1}",
    "# {0} - time", "signed.at=signed off {0}", "signed.not=NOT SIGNED OFF", "# {0} - state", "signed.again={0}; CHECK AGAIN",
    "# {0} - state", "# {1} - why", "signed.waived={0}, WAIVED: {1}",
    "signed.close=Day", "signed.closed=closed", "signed.notClosed=NOT CLOSED",
    "# {0} - first reasons", "# {1} - how many more", "open.more={0}; and {1} more", "open.nothing=Nothing: every stage is signed off and holds.",
    "caution.joined=Bars joined without preload, dampers back at their clicks, steering lock out, stop blocks away.",
    "caution.nuts=Every nut loosened today tightened to its maker's torque, marked across nut and rod, ticked off; then toe looked at once more.",
    "caution.stands=Never under a car on a jack: stands on firm ground, jack left as a second support. Nobody in the seat while it is lifted.",
    "caution.rules=Local rules and a qualified person come first; this sheet tells what was read, not that the car is safe.",
    "blank.load=Driver, fuel, tyres, pressures cold and hot, bars on or off, damper clicks, temperature",
    "blank.notes=Notes, what was waived and why"})
final class DaySections {

    private static final int FEW_REASONS = 3;

    private final DaySnapshot snapshot;
    private final Day day;
    private final Car car;
    private final ZoneId zone;

    DaySections(DaySnapshot snapshot, ZoneId zone) {
        this.snapshot = snapshot;
        this.day = snapshot.day();
        this.car = snapshot.car();
        this.zone = zone;
    }

    List<Section> filled() {
        List<Section> all = new ArrayList<>(List.of(load(), uncertainty(), signed(), open()));
        List<Loosened> loosened = Loosened.of(day);
        if (!loosened.isEmpty()) {
            all.add(new Section(Bundle.section_nuts(), List.of(new Line("", loosened.stream().map(this::nut).collect(Collectors.joining("; ")))), 1));
        }
        List<Line> notes = day.effective().stream().filter(Entry.Note.class::isInstance).map(Entry.Note.class::cast)
                .map(n -> new Line(clock(n), n.words())).toList();
        if (!notes.isEmpty()) {
            all.add(new Section(Bundle.section_notes(), notes, 1));
        }
        all.add(cautions());
        return all;
    }

    List<Section> blank() {
        return List.of(load(), new Section(Bundle.blank_load(), List.of(), 1), new Section(Bundle.blank_notes(), List.of(), 1), cautions());
    }

    private String nut(Loosened item) {
        if (!item.isTicked()) {
            return Bundle.nut_open(item.words());
        }
        return item.torqueNm().isPresent() ? Bundle.nut_torque(item.words(), text(item.torqueNm().getAsDouble(), Dimension.TORQUE))
                : Bundle.nut_torque(item.words(), item.instead().isBlank() ? Bundle.nut_noTorque() : item.instead());
    }

    private String clock(Entry entry) {
        return DateTimeFormatter.ofLocalizedTime(FormatStyle.SHORT).withLocale(Locale.getDefault()).withZone(zone)
                .format(entry.header().time());
    }

    private Section load() {
        List<Line> lines = new ArrayList<>();
        var load = car.loadCase();
        lines.add(new Line(Bundle.load_driver(), load.driver().isBlank() ? Bundle.load_unnamed() : load.driver()));
        lines.add(new Line(Bundle.load_fuel(), or(load.fuelKg(), Dimension.MASS)));
        lines.add(new Line(Bundle.load_front(), or(load.pressureBar().front(), Dimension.PRESSURE)));
        lines.add(new Line(Bundle.load_rear(), or(load.pressureBar().rear(), Dimension.PRESSURE)));
        lines.add(new Line(Bundle.load_bar(), bars()));
        lines.add(new Line(Bundle.load_goal(), EntryWords.goal(day.targets().crossGoal())));
        Map<String, Line> last = new LinkedHashMap<>();
        for (Entry entry : day.effective()) {
            if (entry instanceof Entry.Condition condition && !condition.key().equals(CurrentDay.REHEARSAL)
                    && !CarCheck.isItem(condition.key()) && !Loosened.isTick(condition.key())) {
                last.remove(condition.key());
                last.put(condition.key(), new Line("", snapshot.entryWords().of(condition)));
            }
        }
        lines.addAll(last.values());
        return new Section(Bundle.section_load(), lines, 3);
    }

    private String bars() {
        List<String> known = new ArrayList<>();
        for (Axle axle : Axle.values()) {
            car.axles().get(axle).bar().ifPresent(bar -> {
                String rate = or(bar.rollRateNPerMm(), Dimension.STIFFNESS);
                known.add(axle == Axle.FRONT ? Bundle.load_frontBar(rate) : Bundle.load_rearBar(rate));
            });
        }
        return known.isEmpty() ? Bundle.load_barNone() : String.join(", ", known);
    }

    private String or(OptionalDouble value, Dimension dimension) {
        return value.isPresent() ? text(value.getAsDouble(), dimension) : Bundle.load_unknown();
    }

    private String text(double value, Dimension dimension) {
        return QuantityFormat.formatWithUnit(value, dimension, snapshot.units().preferences());
    }

    private Section uncertainty() {
        Instruments steps = car.instruments();
        QuantityFormat fine = QuantityFormat.of(snapshot.units().preferences().withDecimals(Dimension.LENGTH, 2));
        List<Line> lines = new ArrayList<>();
        lines.add(new Line("", Bundle.uncertainty_meaning()));
        lines.add(new Line(Bundle.uncertainty_steps(), Bundle.uncertainty_instruments(text(steps.scaleResolutionKg(), Dimension.MASS),
                text(steps.heightResolutionMm(), Dimension.LENGTH), text(steps.angleResolutionDeg(), Dimension.ANGLE),
                fine.text(steps.toeResolutionMm(), Dimension.LENGTH))));
        lines.add(new Line(Bundle.uncertainty_zero(), corners(ReadingKind.SCALE_ZERO)));
        lines.add(new Line(Bundle.uncertainty_pads(), corners(ReadingKind.PAD_HEIGHT)));
        lines.add(new Line(Bundle.uncertainty_factors(), factors()));
        Map<String, Line> checks = new LinkedHashMap<>();
        for (Entry entry : day.effective()) {
            if (entry instanceof Entry.Check check) {
                checks.put(check.subject(), new Line("", snapshot.entryWords().of(check)));
            }
        }
        lines.addAll(checks.values());
        List<Assumption> assumed = Assumptions.complete(car, snapshot.status().reading(ReadingId.ofCar(ReadingKind.TOTAL)).value()).assumptions();
        if (!assumed.isEmpty()) {
            lines.add(new Line(Bundle.uncertainty_assumed(), assumed.stream().map(this::assumed).collect(Collectors.joining(", "))));
        }
        return new Section(Bundle.section_uncertainty(), lines, 1);
    }

    private String assumed(Assumption assumption) {
        String value = String.format(Locale.ROOT, "%.4g", assumption.value());
        String plain = new BigDecimal(value).stripTrailingZeros().toPlainString()
                .replace('.', snapshot.units().preferences().decimalMark().character());
        return Bundle.uncertainty_one(assumption.field(), (plain + " " + assumption.unit()).strip());
    }

    private String corners(ReadingKind kind) {
        String all = car.cornerReadings(kind).stream().filter(id -> snapshot.last(id).isPresent())
                .map(id -> id.placeWords() + " " + snapshot.format().text(id,
                        snapshot.last(id).orElseThrow())).collect(Collectors.joining(", "));
        return all.isEmpty() ? Bundle.uncertainty_none() : all;
    }

    private String factors() {
        return ScaleCorrection.of(day).map(c -> Stream.of(Corner.values()).map(k -> k.words() + " "
                + String.format(Locale.ROOT, "%.4f", c.factors().get(k)).replace('.', snapshot.units().preferences().decimalMark().character()))
                .collect(Collectors.joining(", "))).orElseGet(Bundle::uncertainty_notTested);
    }

    private Section signed() {
        List<Line> lines = new ArrayList<>();
        for (StageStatus stage : snapshot.status().stages()) {
            Optional<Entry.SignOff> signOff = day.signOff(stage.stage().id());
            String state = signOff.map(s -> Bundle.signed_at(clock(s))).orElseGet(Bundle::signed_not);
            if (stage.state() == StageState.CHECK_AGAIN) {
                state = Bundle.signed_again(state);
            }
            Optional<String> waived = signOff.flatMap(Entry.SignOff::waived);
            lines.add(new Line(stage.stage().title(), waived.isPresent() ? Bundle.signed_waived(state, waived.get()) : state));
        }
        String closed = day.closed().map(c -> c.outOfOrder().map(w -> Bundle.signed_waived(Bundle.signed_closed(), w))
                .orElseGet(Bundle::signed_closed)).orElseGet(Bundle::signed_notClosed);
        lines.add(new Line(Bundle.signed_close(), closed));
        boolean brief = lines.stream().allMatch(l -> l.words().length() < 40);
        return new Section(Bundle.section_signed(), lines, brief ? 3 : 1);
    }

    private Section open() {
        List<Line> lines = new ArrayList<>();
        CarCheck.leftOpen(day).forEach(item -> lines.add(new Line(Bundle.open_check(), item.words())));
        for (StageStatus stage : snapshot.status().stages()) {
            List<String> reasons = new ArrayList<>();
            if (stage.state() != StageState.SIGNED) {
                reasons.addAll(stage.reasons());
            }
            stage.findings().stream().filter(f -> f.level() != Finding.Level.INFO).map(Finding::words).forEach(reasons::add);
            List<String> different = reasons.stream().distinct().toList();
            if (!different.isEmpty()) {
                lines.add(new Line(stage.stage().title(), few(different)));
            }
        }
        return new Section(Bundle.section_open(), lines.isEmpty() ? List.of(new Line("", Bundle.open_nothing())) : lines, 1);
    }

    private static String few(List<String> reasons) {
        String first = String.join("; ", reasons.subList(0, Math.min(FEW_REASONS, reasons.size())));
        return reasons.size() > FEW_REASONS ? Bundle.open_more(first, reasons.size() - FEW_REASONS) : first;
    }

    private static Section cautions() {
        return new Section(Bundle.section_cautions(), List.of(new Line("", Bundle.caution_joined()), new Line("", Bundle.caution_nuts()),
                new Line("", Bundle.caution_stands()), new Line("", Bundle.caution_rules())), 1);
    }
}
