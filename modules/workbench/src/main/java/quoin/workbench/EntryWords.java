package quoin.workbench;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.openide.util.NbBundle;
import org.openide.util.NbBundle.Messages;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.CrossGoal;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Measurement;
import quoin.quantities.Dimension;
import quoin.quantities.QuantityFormat;
import quoin.quantities.Texts;
import quoin.workflow.Loosened;
import quoin.workflow.TakenOver;

/** Says in plain words what an entry of the logbook tells. */
@Messages({
    "# {0} - car", "entry.car=Car: {0}",
    "# {0} - figures", "entry.practice={0} (practice car)",
    "# {0} - turns", "entry.turned=Turned {0}",
    "# {0} - key", "# {1} - value", "entry.condition={0}: {1}",
    "# {0} - part", "# {1} - torque", "entry.nutTorque=Nut of {0} tightened to {1}",
    "# {0} - part", "entry.nutTight=Nut of {0} tight", "# {0} - part", "entry.nutOpen=Nut of {0} still open",
    "# {0} - part", "entry.nutLoose=Loosened: {0}",
    "# {0} - reading", "# {1} - band", "entry.target=Target for {0}: {1}",
    "# {0} - goal", "entry.goal=Cross weight target: {0}",
    "# {0} - words", "entry.note=Note: {0}",
    "# {0} - stage", "entry.signed={0} signed off",
    "# {0} - stage", "# {1} - reason", "entry.signedWithReason={0} signed off with a reason: {1}",
    "# {0} - stage", "# {1} - words", "entry.reopened={0} opened again: {1}",
    "entry.closed=Day closed",
    "# {0} - reason", "entry.closedWithReason=Day closed out of order: {0}",
    "# {0} - closed", "# {1} - open points", "entry.closedPart={0} as part of the job. Not proved: {1}",
    "# {0} - entry", "entry.undone=Undone: {0}",
    "# {0} - entry", "entry.redone=Done again: {0}",
    "# {0} - number", "entry.number=entry {0}",
    "# {0} - number", "# {1} - why", "# {2} - entry", "entry.withdrawn=Entry {0} withdrawn{1}: {2}",
    "# {0} - number", "# {1} - words", "# {2} - why", "entry.corrected=Entry {0} corrected, now: {1}{2}",
    "entry.front=front", "entry.rear=rear",
    "# {0} - wheel", "# {1} - how many", "entry.bumpSteer=Bump steer of {0}: {1} points",
    "# {0} - method", "# {1} - what it says", "entry.measured={0}: {1}",
    "method.cg-axle-lift=by lifting the rear axle", "method.string-toe=by strings", "method.plate-toe=by toe plates", "method.angle-toe=by an angle gauge",
    "method.gauge-camber=by a camber gauge", "method.plumb-camber=by plumb line and rule", "method.caster-sweep=by a camber sweep",
    "method.diagonals=by diagonals", "method.bump-steer=by two dials", "method.turn-toe-out=by turn plates",
    "check.pads=Pads surveyed", "check.scales=Scales tested", "check.springs.FRONT=Front springs pressed",
    "check.springs.REAR=Rear springs pressed", "check.rod-end=Rod end engagement",
    "method.water-level=by water level", "method.rule=by laser and rule", "method.level-between=by level from pad to pad",
    "method.known-person=one person on each scale", "method.swap-test=two scales exchanged", "method.half-turn=car turned by 180 degrees",
    "method.scale-factors=corrected for the scales", "method.moved-scales=scales moved round",
    "method.two-under-a-wheel=two scales under a wheel", "method.press-over-scale=by a press over a scale", "method.witness-hole=by thread and witness hole",
    "# {0} - day", "# {1} - age in days", "# {2} - number",
    "entry.takenOver=Response taken over from the day {0}, learnt {1} days before: {2} figures",
    "# {0} - kind", "entry.unknown=Entry of a kind not known here: {0}",
    "# {0} - diagonal", "goal.equalDiagonals={0} is half of the total",
    "# {0} - corner", "entry.pressure={0} pressure, bar",
    "# {0} - first corner", "# {1} - second corner", "goal.equalFronts={0} and {1} alike",
    "goal.sameFrontShare=same front share on each side",
    "goal.wanted=the value typed"})
public final class EntryWords {

    private final Car car;
    private final DisplayUnits units;
    private final ReadingFormat format;
    private final AdjusterWords adjusters;
    private final UnaryOperator<String> stageTitle;
    private final Day day;

    /**
     * @param day        the day the entries are of
     * @param stageTitle title of a stage by its id
     */
    public EntryWords(Day day, DisplayUnits units, UnaryOperator<String> stageTitle) {
        this.car = day.car();
        this.day = day;
        this.units = units;
        this.format = new ReadingFormat(car, units);
        this.adjusters = new AdjusterWords(car, units);
        this.stageTitle = stageTitle;
    }

    public String of(Entry entry) {
        if (entry instanceof Entry.CarDescribed described) {
            return carBefore(described.number()).map(b -> new DescribedChange(b, described.car()).words())
                    .orElseGet(() -> Bundle.entry_car(described.car().name()));
        } else if (entry instanceof Entry.Reading reading) {
            String figures = withWords(figures(reading), reading.measured().map(EntryWords::measured).orElse(""));
            return reading.source() == Entry.Source.PRACTICE_CAR ? Bundle.entry_practice(figures) : figures;
        } else if (entry instanceof Entry.BumpSteer curve) {
            return withWords(Bundle.entry_bumpSteer(curve.corner(), curve.points().size()), measured(curve.measured()));
        } else if (entry instanceof Entry.Check check) {
            return withWords(keyed("check.", check.subject()), measured(check.measured()));
        } else if (entry instanceof Entry.Adjustment adjustment) {
            return turned(adjustment);
        } else if (entry instanceof Entry.Condition condition) {
            return Loosened.isTick(condition.key()) ? nut(condition)
                    : withWords(condition(condition.key(), condition.value()), condition.words());
        } else if (entry instanceof Entry.TargetSet set) {
            return Bundle.entry_target(set.reading().words(), format.band(set.reading(), set.target().value(), set.target().tolerance()));
        } else if (entry instanceof Entry.GoalSet set) {
            return Bundle.entry_goal(goal(set.goal()));
        } else if (entry instanceof Entry.ResponseTakenOver before) {
            return Bundle.entry_takenOver(before.fromDay(),
                    Math.round(TakenOver.ageDays(before.learntOn(), before.header().time())), before.effects().size());
        } else if (entry instanceof Entry.Note note) {
            return Bundle.entry_note(note.words());
        }
        return ofOrder(entry);
    }

    /** The car as it was described before an entry; empty for the first description. */
    private Optional<Car> carBefore(long number) {
        List<Entry> written = day.written();
        for (int i = written.size() - 1; i >= 0; i--) {
            Entry entry = written.get(i);
            if (entry.number() < number && entry instanceof Entry.CarDescribed described && day.counting(entry.number()).isPresent()) {
                return Optional.of(described.car());
            }
        }
        return Optional.empty();
    }

    private String nut(Entry.Condition condition) {
        String subject = Loosened.subject(condition.key());
        OptionalDouble torque = Loosened.torque(condition.value());
        if (torque.isPresent()) {
            return Bundle.entry_nutTorque(subject, QuantityFormat.formatWithUnit(torque.getAsDouble(), Dimension.TORQUE, units.preferences()));
        }
        if (condition.value().equals(Loosened.LOOSE)) {
            return Bundle.entry_nutLoose(subject);
        }
        return condition.value().equals(Conditions.NO) ? Bundle.entry_nutOpen(subject) : withWords(Bundle.entry_nutTight(subject), condition.words());
    }

    private String ofOrder(Entry entry) {
        String stage = stageTitle.apply(entry.header().stage());
        if (entry instanceof Entry.SignOff signOff) {
            return signOff.waived().map(r -> Bundle.entry_signedWithReason(stage, r)).orElseGet(() -> Bundle.entry_signed(stage));
        } else if (entry instanceof Entry.Reopened reopened) {
            return Bundle.entry_reopened(stage, reopened.words());
        } else if (entry instanceof Entry.DayClosed closed) {
            String words = closed.outOfOrder().map(Bundle::entry_closedWithReason).orElseGet(Bundle::entry_closed);
            return closed.notProved().isEmpty() ? words : Bundle.entry_closedPart(words, String.join("; ", closed.notProved()));
        } else if (entry instanceof Entry.Correction correction) {
            return correction(correction);
        } else if (entry instanceof Entry.Unknown unknown) {
            return Bundle.entry_unknown(unknown.kind());
        }
        throw new IllegalArgumentException("no words for " + entry.getClass().getSimpleName());
    }

    /** How it was measured and what that said: "by strings: right cord skew 0.07°". */
    private static String measured(Measurement measured) {
        String method = method(measured.method());
        return measured.words().isEmpty() ? method : Bundle.entry_measured(method, measured.words());
    }

    /** A way of measuring as the racer says it; one not known here is shown as it is. */
    public static String method(String id) {
        try {
            return NbBundle.getMessage(EntryWords.class, "method." + id);
        } catch (MissingResourceException e) {
            return id.replace('-', ' ');
        }
    }

    private String correction(Entry.Correction correction) {
        String number = Long.toString(correction.corrects());
        if (correction.words().equals(UndoHistory.UNDO)) {
            return Bundle.entry_undone(written(correction.corrects()).map(this::of).orElseGet(() -> Bundle.entry_number(number)));
        }
        if (correction.words().equals(UndoHistory.REDO)) {
            Optional<Entry> undone = written(correction.corrects()).filter(Entry.Correction.class::isInstance)
                    .flatMap(u -> written(((Entry.Correction) u).corrects()));
            return Bundle.entry_redone(undone.map(this::of).orElseGet(() -> Bundle.entry_number(number)));
        }
        String why = correction.words().isBlank() ? "" : " (" + correction.words() + ")";
        Optional<Entry> replacement = correction.replacement();
        return replacement.map(r -> Bundle.entry_corrected(number, of(r), why)).orElseGet(() -> Bundle.entry_withdrawn(number, why,
                written(correction.corrects()).map(this::of).orElse("")));
    }

    /** An entry by its number. A correction names only earlier ones, so words of corrections of corrections come to an end. */
    private Optional<Entry> written(long number) {
        List<Entry> written = day.written();
        return number < 1 || number > written.size() ? Optional.empty()
                : Optional.of(written.get((int) number - 1)).filter(e -> e.number() == number);
    }

    private String figures(Entry.Reading reading) {
        Map<ReadingKind, List<ReadingId>> byKind = reading.values().keySet().stream()
                .collect(Collectors.groupingBy(ReadingId::kind, LinkedHashMap::new, Collectors.toList()));
        return byKind.entrySet().stream().map(e -> {
            String figures = walking(e.getValue()).stream()
                    .map(id -> placeWords(id) + " " + format.number(id, reading.values().get(id))).collect(Collectors.joining(", "));
            return Texts.sentence(e.getKey().words()) + ": " + figures + " " + format.unit(e.getValue().get(0));
        }).collect(Collectors.joining("; ")).strip();
    }

    /** Corners and points by their names, axles in words. */
    private static String placeWords(ReadingId id) {
        return id.place().equals(Axle.FRONT.name()) ? Bundle.entry_front() : id.place().equals(Axle.REAR.name()) ? Bundle.entry_rear() : id.placeWords();
    }

    private List<ReadingId> walking(List<ReadingId> readings) {
        return readings.stream().sorted((a, b) -> Integer.compare(place(a), place(b))).toList();
    }

    private int place(ReadingId reading) {
        for (Corner corner : car.walkingOrder()) {
            if (corner.name().equals(reading.place())
                    || car.heightPoint(corner).filter(p -> p.name().equals(reading.place())).isPresent()) {
                return car.walkingOrder().indexOf(corner);
            }
        }
        return Integer.MAX_VALUE;
    }

    private String turned(Entry.Adjustment adjustment) {
        String turns = adjustment.turns().stream().map(t -> adjusters.sentence(t.adjuster(), t.amount())
                + t.lengthMm().stream().mapToObj(l -> " (" + adjusters.length(l) + ")").collect(Collectors.joining()))
                .collect(Collectors.joining("; "));
        return withWords(Bundle.entry_turned(turns), adjustment.words());
    }

    /** A condition as the racer says it: "Front bar disconnected". Keys not known here are shown as they are. */
    public static String condition(String key, String value) {
        try {
            return NbBundle.getMessage(EntryWords.class, "condition." + key + "." + value);
        } catch (MissingResourceException e) {
            return Bundle.entry_condition(conditionName(key), value);
        }
    }

    /** What was checked as the racer says it; a subject not known here is shown as it is. */
    private static String keyed(String prefix, String subject) {
        try {
            return NbBundle.getMessage(EntryWords.class, prefix + subject);
        } catch (MissingResourceException e) {
            return Texts.sentence(subject.replace('-', ' ').replace('.', ' '));
        }
    }

    /** The name of a condition that holds a value: "Fuel, kg". */
    public static String conditionName(String key) {
        Optional<Corner> pressure = Conditions.cornerOfPressure(key);
        if (pressure.isPresent()) {
            return Bundle.entry_pressure(pressure.get().words());
        }
        try {
            return NbBundle.getMessage(EntryWords.class, "condition." + key);
        } catch (MissingResourceException e) {
            return Texts.sentence(key.replace('-', ' '));
        }
    }

    /** The kind of cross target in words. */
    public static String goal(CrossGoal goal) {
        return switch (goal) {
            case EQUAL_DIAGONALS -> Bundle.goal_equalDiagonals(Corner.crossWords());
            case EQUAL_FRONTS -> Bundle.goal_equalFronts(Corner.LF.words(), Corner.RF.words());
            case SAME_FRONT_SHARE -> Bundle.goal_sameFrontShare();
            case WANTED -> Bundle.goal_wanted();
        };
    }

    private static String withWords(String text, String words) {
        return words.isBlank() ? text : text + " (" + words + ")";
    }
}
