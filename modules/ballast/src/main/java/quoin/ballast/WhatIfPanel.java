package quoin.ballast;

import java.awt.BorderLayout;
import java.awt.Font;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.openide.util.NbBundle.Messages;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.PerAxle;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.mechanics.CarChange;
import quoin.mechanics.Equilibrium;
import quoin.mechanics.InvalidInputException;
import quoin.mechanics.NoEquilibriumException;
import quoin.quantities.Dimension;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.DisplayUnits;
import quoin.workbench.Looks;
import quoin.workbench.WidthOfTheWindow;
import quoin.workbench.WrapText;

/** What the scales and heights would read with another driver, other fuel, a bar joined or other tyres. */
@Messages({
    "whatif.change=What changes", "whatif.result=Readings then, springs and perches untouched", "whatif.worth=What small things are worth on this car",
    "whatif.driver=Driver heavier by", "whatif.lean=Driver leans left by", "whatif.fuel=More fuel",
    "whatif.driverRemark=minus = lighter", "whatif.leanRemark=minus = to the right", "whatif.fuelRemark=minus = less",
    "whatif.front=Front bar joined, off by", "whatif.rear=Rear bar joined, off by",
    "whatif.barRemark=blank = stays off",
    "whatif.circumference=Tyre longer round by", "whatif.soft=Tyre softer by",
    "whatif.clear=Clea&r",
    "whatif.barNote=A bar is off by so much at the wheel when its bolt does not slide in; plus loads the left wheel.",
    "whatif.weighFirst=Weigh all four corners first: every answer starts from the readings.",
    "whatif.noDriver=Driver: the car states no driver's mass with its place; add it under masses in the car form (Ctrl+E)",
    "whatif.noFuel=Fuel: the car states no fuel with its place; add it under masses in the car form (Ctrl+E)",
    "# {0} - axle", "whatif.noBar={0} bar: the car states no bar with a rate there; add it in the car form (Ctrl+E)",
    "# {0} - axle", "whatif.joined={0} bar: it is joined already in the readings; take a link off and weigh first",
    "whatif.frontAxle=Front", "whatif.rearAxle=Rear",
    "# {0} - reason", "whatif.impossible=The car does not stand like this: {0}; type smaller changes",
    "# {0} - reasons", "whatif.stale=The weights or heights no longer hold: {0}. The differences are still good.",
    "# {0} - cross", "whatif.worthTyre=10 mm of circumference at one front tyre = {0} of cross weight",
    "# {0} - cross", "whatif.worthSoft=One front tyre 15 % soft = {0} of cross weight",
    "# {0} - load", "whatif.worthLean=Driver leaning 60 mm = {0} from one side to the other",
    "# {0} - share", "whatif.worthFuel=10 kg less fuel = {0} of front share",
    "# {0} - cross", "whatif.worthBar=Front bar joined with its link 2 mm off at the wheel = {0} of cross weight"})
final class WhatIfPanel extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final double PERCENT_LEFT = 95;

    private final transient CurrentDay current;
    private final Form form = new Form(this::update);
    private final transient Form.Figure driver = form.add(Bundle.whatif_driver(), Dimension.MASS, Bundle.whatif_driverRemark());
    private final transient Form.Figure lean = form.add(Bundle.whatif_lean(), Dimension.LENGTH, Bundle.whatif_leanRemark());
    private final transient Form.Figure fuel = form.add(Bundle.whatif_fuel(), Dimension.MASS, Bundle.whatif_fuelRemark());
    private final transient Form.Figure front = form.add(Bundle.whatif_front(), Dimension.LENGTH, Bundle.whatif_barRemark());
    private final transient Form.Figure rear = form.add(Bundle.whatif_rear(), Dimension.LENGTH, Bundle.whatif_barRemark());
    private final transient List<Form.Figure> longer = form.addRow(Bundle.whatif_circumference(), Dimension.LENGTH, corners());
    private final transient List<Form.Figure> softer = form.addRow(Bundle.whatif_soft(), Dimension.PERCENT, corners());
    private final WrapText doubt = new WrapText("", 1, Font.BOLD);
    private final WrapText worth = new WrapText("");
    private final ChangeTable table = new ChangeTable();
    private final JPanel result = new JPanel(new BorderLayout(0, Looks.em(0.4)));

    WhatIfPanel(CurrentDay current) {
        super(new BorderLayout());
        this.current = current;
        JPanel clear = new JPanel(new java.awt.FlowLayout(java.awt.FlowLayout.LEADING, 0, Looks.em(0.4)));
        clear.add(Looks.button(Bundle.whatif_clear(), form::clear));
        JComponent left = Looks.column(Looks.section(Bundle.whatif_change(), Looks.column(form, new WrapText(Bundle.whatif_barNote()), clear)),
                Looks.section(Bundle.whatif_worth(), worth));
        result.add(doubt, BorderLayout.NORTH);
        result.add(table, BorderLayout.CENTER);
        add(WidthOfTheWindow.scrolledFromTheTop(Looks.twoColumns(left, Looks.section(Bundle.whatif_result(), result), 0.44)), BorderLayout.CENTER);
    }

    static List<String> corners() {
        return Stream.of(Corner.values()).map(Corner::words).toList();
    }

    void toFirst() {
        form.toFirst();
    }

    /** Answers the question that stands in the form. */
    void update() {
        current.snapshot().ifPresent(this::show);
    }

    private void show(DaySnapshot day) {
        form.begin(day.units());
        Optional<Standing> standing = Standing.of(day);
        table.setVisible(standing.isPresent());
        if (standing.isEmpty()) {
            doubt.setText(Bundle.whatif_weighFirst());
            worth.setText(Bundle.whatif_weighFirst());
            return;
        }
        Standing car = standing.get();
        doubt.setText(car.doubts().isEmpty() ? "" : Bundle.whatif_stale(String.join("; ", car.doubts())));
        worth.setText(String.join("\n", worth(day, car)));
        WhatIf asked = asked(day, car);
        try {
            Equilibrium then = car.after(asked.on(car.car()));
            table.show(day, Standing.readings(car.car(), car.now()), Standing.readings(car.car(), then));
        } catch (NoEquilibriumException | InvalidInputException e) {
            form.problem(Bundle.whatif_impossible(e.getLocalizedMessage()));
        }
    }

    private WhatIf asked(DaySnapshot day, Standing car) {
        DisplayUnits units = day.units();
        WhatIf asked = new WhatIf(driver.valueOr(0, units), lean.valueOr(0, units), fuel.valueOr(0, units),
                new PerAxle<>(bar(Axle.FRONT, front, day, car), bar(Axle.REAR, rear, day, car)),
                PerCorner.of(c -> longer.get(c.ordinal()).valueOr(0, units)),
                PerCorner.of(c -> Math.min(PERCENT_LEFT, softer.get(c.ordinal()).valueOr(0, units))));
        if (asked.lacksDriver(car.car())) {
            form.problem(Bundle.whatif_noDriver());
        }
        if (asked.lacksFuel(car.car())) {
            form.problem(Bundle.whatif_noFuel());
        }
        return asked;
    }

    private OptionalDouble bar(Axle axle, Form.Figure field, DaySnapshot day, Standing car) {
        OptionalDouble error = field.value(day.units());
        String end = axle == Axle.FRONT ? Bundle.whatif_frontAxle() : Bundle.whatif_rearAxle();
        if (error.isPresent() && car.barRate(axle) == 0) {
            form.problem(Bundle.whatif_noBar(end));
            return OptionalDouble.empty();
        }
        if (error.isPresent() && day.day().condition(quoin.logbook.Conditions.bar(axle)).equals(Optional.of(quoin.logbook.Conditions.CONNECTED))) {
            form.problem(Bundle.whatif_joined(end));
            return OptionalDouble.empty();
        }
        return error;
    }

    /** What is often overlooked, told in the figures of this car. */
    static List<String> worth(DaySnapshot day, Standing car) {
        List<String> lines = new java.util.ArrayList<>();
        lines.add(Bundle.whatif_worthTyre(cross(day, car, c -> c.withCircumference(Corner.RF, 10))));
        lines.add(Bundle.whatif_worthSoft(cross(day, car, c -> c.withTyreRate(Corner.RF, 0.85))));
        if (car.barRate(Axle.FRONT) > 0) {
            lines.add(Bundle.whatif_worthBar(cross(day, car, c -> c.withBar(Axle.FRONT, 2))));
        }
        WhatIf lean = new WhatIf(0, 60, 0, WhatIf.NOTHING.barLinkErrorMm(), PerCorner.all(0.0), PerCorner.all(0.0));
        if (!lean.lacksDriver(car.car())) {
            Equilibrium then = car.after(lean.on(car.car()));
            double moved = Math.abs(then.loadsKgf().lf() + then.loadsKgf().lr() - car.now().loadsKgf().lf() - car.now().loadsKgf().lr());
            lines.add(Bundle.whatif_worthLean(day.format().text(ReadingId.of(ReadingKind.LOAD, Corner.LF), moved)));
        }
        WhatIf less = new WhatIf(0, 0, -10, WhatIf.NOTHING.barLinkErrorMm(), PerCorner.all(0.0), PerCorner.all(0.0));
        if (!less.lacksFuel(car.car())) {
            double share = car.after(less.on(car.car())).shares().frontPercent() - car.now().shares().frontPercent();
            lines.add(Bundle.whatif_worthFuel(day.format().change(ReadingId.ofCar(ReadingKind.FRONT_SHARE), share)));
        }
        return lines;
    }

    private static String cross(DaySnapshot day, Standing car, UnaryOperator<CarChange> change) {
        double moved = car.after(change.apply(CarChange.NONE)).shares().crossPercent() - car.now().shares().crossPercent();
        return day.format().text(ReadingId.ofCar(ReadingKind.CROSS), Math.abs(moved));
    }
}
