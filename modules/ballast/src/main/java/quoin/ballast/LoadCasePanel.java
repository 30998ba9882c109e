package quoin.ballast;

import java.awt.BorderLayout;
import java.awt.Font;
import java.awt.FlowLayout;
import java.awt.GridBagLayout;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JPanel;
import javax.swing.JTextField;
import org.openide.util.NbBundle.Messages;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.KnownMass;
import quoin.car.LoadCase;
import quoin.car.PerAxle;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Entry;
import quoin.mechanics.CarChange;
import quoin.quantities.Dimension;
import quoin.quantities.QuantityFormat;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.Looks;
import quoin.workbench.WidthOfTheWindow;
import quoin.workbench.WrapText;
import quoin.workflow.LoadCaseCheck;
import quoin.workflow.spi.Finding;

/** The load case every figure of the day belongs to: recorded once, checked against every reading. */
@Messages({
    "load.now=On the car today", "load.car=Load case of the car", "load.checks=Readings against the load case", "load.tyres=Tyres as cross weight",
    "load.driver=Driver in the seat, or what stands in for him", "load.fuel=Fuel on board", "load.circumference=Tyre circumference by tape",
    "load.record=&Record in the day", "load.keep=&Keep as the load case of the car",
    "load.wantedDriver=Driver", "load.wantedFuel=Fuel", "load.frontPressure=Front pressure, hot", "load.rearPressure=Rear pressure, hot",
    "load.seat=Driver on the seat scale", "load.feet=Driver on the feet scale",
    "load.split=Ballast for a driver goes in two places: weigh yourself sitting with the seat on one scale and the feet on another. A seated man has "
            + "about 8 kg at the feet (training notes, not measured here). Strap it down before the car is moved.",
    "load.fuelNote=Half the race distance, or what just makes the minimum weight at the flag; weigh it or count 0.75 kg a litre.",
    "load.none=Every reading was taken in the load case, as far as driver, fuel and pressures are recorded.",
    "load.noTyres=Measure the four circumferences with a tape to 1 mm; what they cost in cross weight is told here.",
    "# {0} - cross", "load.worth=With four tyres alike round, the cross weight would read {0} against now.",
    "# {0} - difference", "load.spread=Longest against shortest of one axle: {0}. Put an odd pair on one axle and note the stagger.",
    "load.recorded=Recorded.", "load.kept=Kept on the car.",
    "load.noSplit=Seat and feet: the car states no two places for the driver; add them under masses in the car form (Ctrl+E), role driver"})
final class LoadCasePanel extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int WORD_COLUMNS = 16;

    private final transient CurrentDay current;
    private final JTextField driver = words(Bundle.load_driver());
    private final JTextField wantedDriver = words(Bundle.load_wantedDriver());
    private final Form now = new Form(this::readNow);
    private final transient Form.Figure fuel = now.add(Bundle.load_fuel(), Dimension.MASS, "");
    private final transient List<Form.Figure> round = now.addRow(Bundle.load_circumference(), Dimension.LENGTH, WhatIfPanel.corners());
    private final Form wanted = new Form(this::readNow);
    private final transient Form.Figure wantedFuel = wanted.add(Bundle.load_wantedFuel(), Dimension.MASS, "");
    private final transient Form.Figure front = wanted.add(Bundle.load_frontPressure(), Dimension.PRESSURE, "");
    private final transient Form.Figure rear = wanted.add(Bundle.load_rearPressure(), Dimension.PRESSURE, "");
    private final transient Form.Figure seat = wanted.add(Bundle.load_seat(), Dimension.MASS, "");
    private final transient Form.Figure feet = wanted.add(Bundle.load_feet(), Dimension.MASS, "");
    private final WrapText answer = new WrapText("", 1, Font.BOLD);
    private final WrapText checks = new WrapText("");
    private final WrapText tyres = new WrapText("");
    private transient String filledFor = "";

    LoadCasePanel(CurrentDay current) {
        super(new BorderLayout());
        this.current = current;
        JPanel left = Looks.column(Looks.section(Bundle.load_now(), Looks.column(line(Bundle.load_driver(), driver), now,
                new WrapText(Bundle.load_fuelNote()), buttons(Bundle.load_record(), this::record), answer)),
                Looks.section(Bundle.load_checks(), checks), Looks.section(Bundle.load_tyres(), tyres));
        JPanel right = Looks.section(Bundle.load_car(), Looks.column(line(Bundle.load_wantedDriver(), wantedDriver), wanted,
                new WrapText(Bundle.load_split()), buttons(Bundle.load_keep(), this::keep)));
        add(WidthOfTheWindow.scrolledFromTheTop(Looks.twoColumns(left, right, 0.55)), BorderLayout.CENTER);
    }

    private static JTextField words(String name) {
        JTextField field = Looks.field(WORD_COLUMNS, 1.1, Font.PLAIN);
        field.getAccessibleContext().setAccessibleName(name);
        return field;
    }

    private static JPanel line(String label, JTextField field) {
        JPanel line = new JPanel(new GridBagLayout());
        var name = Looks.label(label, 1, Font.PLAIN);
        name.setLabelFor(field);
        line.add(name, Looks.closeCell(0, 0, 0));
        line.add(field, Looks.closeCell(1, 0, 0));
        line.add(Looks.label("", 1, Font.PLAIN), Looks.closeCell(2, 0, 1));
        return line;
    }

    private static JPanel buttons(String words, Runnable action) {
        JPanel line = new JPanel(new FlowLayout(FlowLayout.LEADING, 0, Looks.em(0.4)));
        line.add(Looks.button(words, action));
        return line;
    }

    void toFirst() {
        driver.requestFocusInWindow();
    }

    void update() {
        current.snapshot().ifPresent(day -> {
            fillOnce(day);
            show(day);
        });
    }

    /** Each change of a field only forgets the answer to the last press. */
    private void readNow() {
        answer.setText("");
    }

    private void show(DaySnapshot day) {
        now.begin(day.units());
        wanted.begin(day.units());
        List<ReadingId> typed = new ArrayList<>();
        day.stages().forEach(s -> s.readings(day.car()).stream().filter(id -> !typed.contains(id)).forEach(typed::add));
        List<String> found = LoadCaseCheck.of(day.day(), typed).stream().map(Finding::words).toList();
        checks.setText(found.isEmpty() ? Bundle.load_none() : String.join("\n", found));
        tyres.setText(tyreWords(day));
    }

    private void fillOnce(DaySnapshot day) {
        if (filledFor.equals(day.car().id())) {
            return;
        }
        filledFor = day.car().id();
        Car car = day.car();
        driver.setText(day.day().condition(Conditions.DRIVER_NAME).orElse(car.loadCase().driver()));
        wantedDriver.setText(car.loadCase().driver());
        List<KnownMass> drivers = drivers(car);
        wanted.fill(() -> {
            text(day, wantedFuel, car.loadCase().fuelKg(), Dimension.MASS);
            text(day, front, car.loadCase().pressureBar().front(), Dimension.PRESSURE);
            text(day, rear, car.loadCase().pressureBar().rear(), Dimension.PRESSURE);
            if (drivers.size() == 2) {
                text(day, seat, OptionalDouble.of(drivers.get(0).massKg()), Dimension.MASS);
                text(day, feet, OptionalDouble.of(drivers.get(1).massKg()), Dimension.MASS);
            }
        });
        now.fill(() -> {
            day.day().condition(Conditions.FUEL).ifPresent(fuel::setText);
            for (Corner corner : Corner.values()) {
                text(day, round.get(corner.ordinal()), day.last(ReadingId.of(ReadingKind.CIRCUMFERENCE, corner)), Dimension.LENGTH);
            }
        });
    }

    private static void text(DaySnapshot day, Form.Figure field, OptionalDouble value, Dimension dimension) {
        value.ifPresent(v -> field.setText(QuantityFormat.of(day.units().preferences()).number(v, dimension)));
    }

    /** The driver's masses, the heaviest (the seat) first. */
    private static List<KnownMass> drivers(Car car) {
        return car.masses().known().stream().filter(m -> m.role() == KnownMass.Role.DRIVER)
                .sorted(java.util.Comparator.comparingDouble(KnownMass::massKg).reversed()).toList();
    }

    private static String tyreWords(DaySnapshot day) {
        Map<Corner, Double> read = new LinkedHashMap<>();
        for (Corner corner : Corner.values()) {
            day.last(ReadingId.of(ReadingKind.CIRCUMFERENCE, corner)).ifPresent(mm -> read.put(corner, mm));
        }
        if (read.size() < Corner.values().length) {
            return Bundle.load_noTyres();
        }
        double spread = 0;
        for (Axle axle : Axle.values()) {
            spread = Math.max(spread, Math.abs(read.get(axle.left()) - read.get(axle.right())));
        }
        String words = Bundle.load_spread(QuantityFormat.of(day.units().preferences()).text(spread, Dimension.LENGTH));
        return Standing.of(day).map(s -> Bundle.load_worth(day.format().change(Aims.CROSS, crossIfAlike(s, read))) + "\n" + words).orElse(words);
    }

    /** Change of the cross weight if each axle had two tyres of its mean circumference, %. */
    static double crossIfAlike(Standing standing, Map<Corner, Double> roundMm) {
        PerCorner<Double> change = PerCorner.of(c -> (roundMm.get(c.acrossAxle()) - roundMm.get(c)) / 2);
        CarChange alike = CarChange.NONE;
        for (Corner corner : Corner.values()) {
            alike = alike.withCircumference(corner, change.get(corner));
        }
        return standing.after(alike).shares().crossPercent() - standing.now().shares().crossPercent();
    }

    private void record() {
        Optional<DaySnapshot> day = current.snapshot();
        if (day.isEmpty()) {
            return;
        }
        now.begin(day.get().units());
        OptionalDouble kg = fuel.value(day.get().units());
        Map<ReadingId, Double> tape = new LinkedHashMap<>();
        for (Corner corner : Corner.values()) {
            round.get(corner.ordinal()).value(day.get().units()).ifPresent(mm -> tape.put(ReadingId.of(ReadingKind.CIRCUMFERENCE, corner), mm));
        }
        if (now.hasProblems()) {
            return;
        }
        String name = driver.getText().strip();
        boolean kept = name.isEmpty() || condition(day.get(), Conditions.DRIVER_NAME, name);
        kept &= kg.isEmpty() || condition(day.get(), Conditions.FUEL, Double.toString(kg.getAsDouble()));
        boolean news = tape.entrySet().stream().anyMatch(e -> day.get().last(e.getKey()).isEmpty()
                || day.get().last(e.getKey()).getAsDouble() != e.getValue());
        kept &= !news || current.record("", h -> new Entry.Reading(h, tape, Map.of(), Entry.Source.RACER));
        answer.setText(kept ? Bundle.load_recorded() : "");
    }

    /** Records a condition unless it holds already. */
    private boolean condition(DaySnapshot day, String key, String value) {
        return day.day().condition(key).filter(value::equals).isPresent() || current.record("", h -> new Entry.Condition(h, key, value, ""));
    }

    private void keep() {
        Optional<DaySnapshot> day = current.snapshot();
        if (day.isEmpty()) {
            return;
        }
        wanted.begin(day.get().units());
        LoadCase loadCase = new LoadCase(wantedDriver.getText().strip(), wantedFuel.value(day.get().units()),
                new PerAxle<>(front.value(day.get().units()), rear.value(day.get().units())));
        OptionalDouble onSeat = seat.value(day.get().units());
        OptionalDouble atFeet = feet.value(day.get().units());
        if ((onSeat.isPresent() || atFeet.isPresent()) && drivers(day.get().car()).size() != 2) {
            wanted.problem(Bundle.load_noSplit());
        }
        if (!wanted.hasProblems()) {
            boolean done = current.keepOnCar(car -> split(car.withLoadCase(loadCase), onSeat, atFeet));
            answer.setText(done ? Bundle.load_kept() : "");
        }
    }

    /** The car with the driver's two masses as weighed. */
    static Car split(Car car, OptionalDouble seatKg, OptionalDouble feetKg) {
        List<KnownMass> drivers = drivers(car);
        if (drivers.size() != 2 || seatKg.isEmpty() || feetKg.isEmpty()) {
            return car;
        }
        List<KnownMass> known = new ArrayList<>(car.masses().known());
        replace(known, drivers.get(0), seatKg.getAsDouble());
        replace(known, drivers.get(1), feetKg.getAsDouble());
        return car.withMasses(car.masses().with(known, car.masses().zones()));
    }

    private static void replace(List<KnownMass> known, KnownMass old, double kg) {
        known.set(known.indexOf(old), new KnownMass(old.name(), old.role(), kg, old.xMm(), old.yMm(), old.zMm()));
    }
}
