package quoin.ballast;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Font;
import java.awt.FlowLayout;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JPanel;
import org.openide.awt.Mnemonics;
import org.openide.util.NbBundle.Messages;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.logbook.Entry;
import quoin.mechanics.CentreOfGravity;
import quoin.mechanics.InvalidInputException;
import quoin.mechanics.LiftSeries;
import quoin.mechanics.PlanPoint;
import quoin.quantities.Dimension;
import quoin.quantities.QuantityFormat;
import quoin.quantities.Unit;
import quoin.quantities.UnitPreferences;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.Looks;
import quoin.workbench.WidthOfTheWindow;
import quoin.workbench.WrapText;

/** Where the centre of gravity is: in plan from the weights, its height by lifting the rear axle step by step. */
@Messages({
    "cg.plan=In plan, from the weights", "cg.steps=Height: lift the rear axle", "cg.form=What was read", "cg.result=Height",
    "cg.weighFirst=Weigh all four corners first.",
    "# {0} - behind", "# {1} - uncertainty", "# {2} - across", "# {3} - half width", "cg.planWords={0} ± {1} behind the front axle, {2} ± {3} (95 %, pads level, scales independent)",
    "cg.step1=1. Block the suspension solid at ride height (struts in place of dampers); fluids full or drained, nothing that can run or roll. Driver out.",
    "cg.step2=2. Front wheels on the scales, steering straight, brakes off, gearbox in neutral. Stop blocks only at the front wheels, 10 mm clear: a block that touches falsifies the load.",
    "cg.step3=3. Measure wheelbase and both wheel-centre heights level. Type the weight of the car as it is lifted and the level front load.",
    "cg.step4=4. Lift the rear by both hubs or a beam under the frame, straight up, to three heights or more; a tenth of the wheelbase at least. Measure the lift at the rear wheel centres.",
    "cg.step5=5. Read at every height on the way up and again on the way down; roll the car a hand's breadth before each reading so that nothing sticks.",
    "cg.caution=A car nose down wants to roll and the jack with it: stands under the raised axle at every height before anybody reads, rated for "
            + "the load, on hard level ground; nobody in, under or in front of the car; never on a jack alone. Local rules and a qualified "
            + "person come first.",
    "cg.total=Weight as lifted", "cg.wheelbase=Wheelbase", "cg.frontCentre=Front wheel centre height", "cg.rearCentre=Rear wheel centre height",
    "cg.lift=Lift of the rear", "cg.front=Front axle load", "cg.level=level", "# {0} - number", "cg.number={0}",
    "cg.driverOut=The driver was out: &put him in by calculation",
    "cg.record=Re&cord in the day", "cg.keep=&Keep on the car",
    "cg.more=Type the level front load and at least one lift with its load.",
    "# {0} - field", "# {1} - reason", "cg.refused={0}: {1}",
    "# {0} - lift", "cg.half=Lift {0}: its lift or its load is missing; type both or neither",
    "# {0} - height", "# {1} - uncertainty", "cg.height={0} ± {1} above the pads (95 %)",
    "# {0} - mass", "cg.withDriver=with the driver of {0} put in at his place",
    "# {0} - scatter", "# {1} - lifts", "cg.scatter=The {1} readings lie {0} about a straight line (standard deviation).",
    "# {0} - now", "cg.known=The description of the car says {0}.", "cg.assumed=The car's description states no height; 0.18 of the wheelbase is assumed.",
    "# {0} - last", "cg.recorded=Recorded today: {0}."})
final class CgPanel extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int LIFTS = 7;
    private static final double SCALE_SETTLING_KG = 0.3;

    private final transient CurrentDay current;
    private final WrapText plan = new WrapText("", 1.1, Font.BOLD);
    private final Form form = new Form(this::update);
    private final transient Form.Figure total = form.add(Bundle.cg_total(), Dimension.MASS, "");
    private final transient Form.Figure wheelbase = form.add(Bundle.cg_wheelbase(), Dimension.LENGTH, "");
    private final transient Form.Figure frontCentre = form.add(Bundle.cg_frontCentre(), Dimension.LENGTH, "");
    private final transient Form.Figure rearCentre = form.add(Bundle.cg_rearCentre(), Dimension.LENGTH, "");
    private final transient List<Form.Figure> lifts = form.addRow(Bundle.cg_lift(), Dimension.LENGTH, numbers());
    private final transient List<Form.Figure> fronts = form.addRow(Bundle.cg_front(), Dimension.MASS, numbers());
    private final JCheckBox driverOut = new JCheckBox();
    private final WrapText height = new WrapText("", Looks.HEADING, Font.BOLD);
    private final WrapText remarks = new WrapText("");
    private final JButton record = Looks.button(Bundle.cg_record(), this::record);
    private final JButton keep = Looks.button(Bundle.cg_keep(), this::keep);
    private transient Optional<Lifting> found = Optional.empty();
    private transient String filledFor = "";

    CgPanel(CurrentDay current) {
        super(new BorderLayout());
        this.current = current;
        Mnemonics.setLocalizedText(driverOut, Bundle.cg_driverOut());
        driverOut.setSelected(true);
        driverOut.addActionListener(e -> update());
        List<Component> steps = new ArrayList<>();
        steps.add(new WrapText(Bundle.cg_caution(), 1, Font.BOLD));
        for (String step : List.of(Bundle.cg_step1(), Bundle.cg_step2(), Bundle.cg_step3(), Bundle.cg_step4(), Bundle.cg_step5())) {
            WrapText text = new WrapText(step);
            text.setBorder(Looks.padding(0.25, 0));
            steps.add(text);
        }
        JPanel buttons = new JPanel(new FlowLayout(FlowLayout.LEADING, Looks.em(0.5), 0));
        buttons.add(record);
        buttons.add(keep);
        JPanel read = Looks.column(form, driverOut);
        JPanel result = Looks.column(height, remarks, buttons);
        JPanel leftSide = Looks.column(Looks.section(Bundle.cg_plan(), plan), Looks.section(Bundle.cg_form(), read),
                Looks.section(Bundle.cg_result(), result));
        add(WidthOfTheWindow.scrolledFromTheTop(Looks.twoColumns(leftSide, Looks.section(Bundle.cg_steps(), Looks.column(steps.toArray(Component[]::new))), 0.64)),
                BorderLayout.CENTER);
    }

    private static List<String> numbers() {
        List<String> numbers = new ArrayList<>(List.of(Bundle.cg_level()));
        for (int i = 1; i < LIFTS; i++) {
            numbers.add(Bundle.cg_number(i));
        }
        return numbers;
    }

    void toFirst() {
        total.field().requestFocusInWindow();
    }

    void update() {
        current.snapshot().ifPresent(this::show);
    }

    private void show(DaySnapshot day) {
        fillOnce(day);
        form.begin(day.units());
        plan.setText(Standing.of(day).map(s -> planWords(day, s)).orElse(Bundle.cg_weighFirst()));
        found = Optional.empty();
        List<LiftSeries.Lift> read = read(day);
        if (!form.hasProblems() && read.size() >= 2) {
            try {
                LiftSeries series = new LiftSeries(total.valueOr(0, day.units()), wheelbase.valueOr(0, day.units()),
                        frontCentre.valueOr(0, day.units()), rearCentre.valueOr(0, day.units()), read);
                found = Optional.of(Lifting.of(day.car(), series, driverOut.isSelected()));
            } catch (InvalidInputException e) {
                form.problem(Bundle.cg_refused(words(e.field()), e.getLocalizedMessage()));
            }
        }
        height.setText(found.map(f -> heightWords(day, f)).orElse(Bundle.cg_more()));
        remarks.setText(String.join("\n", remarks(day)));
        record.setEnabled(found.isPresent());
        keep.setEnabled(found.isPresent() || day.last(Lifting.HEIGHT).isPresent());
    }

    /** Wheelbase and lift 0 are known; they stay open to change. */
    private void fillOnce(DaySnapshot day) {
        if (!filledFor.equals(day.car().id())) {
            filledFor = day.car().id();
            form.fill(() -> {
                wheelbase.setText(QuantityFormat.of(day.units().preferences()).number(day.car().wheelbaseMm(), Dimension.LENGTH));
                lifts.get(0).setText("0");
            });
        }
    }

    private static String words(String field) {
        return switch (field) {
            case "total_kgf" -> Bundle.cg_total();
            case "wheelbase_mm" -> Bundle.cg_wheelbase();
            case "frontWheelCentreHeight_mm" -> Bundle.cg_frontCentre();
            case "rearWheelCentreHeight_mm" -> Bundle.cg_rearCentre();
            case "rearLift_mm", "lifts" -> Bundle.cg_lift();
            default -> Bundle.cg_front();
        };
    }

    private List<LiftSeries.Lift> read(DaySnapshot day) {
        List<LiftSeries.Lift> read = new ArrayList<>();
        for (int i = 0; i < LIFTS; i++) {
            OptionalDouble lift = lifts.get(i).value(day.units());
            OptionalDouble load = fronts.get(i).value(day.units());
            if (lift.isPresent() && load.isPresent()) {
                read.add(new LiftSeries.Lift(lift.getAsDouble(), load.getAsDouble()));
            } else if (i > 0 && lift.isPresent() != load.isPresent()) {
                form.problem(Bundle.cg_half(i));
            }
        }
        return read;
    }

    /** Plan position; its uncertainty from the scales by the law of propagation (JCGM 100:2008, 5.1.2). */
    private static String planWords(DaySnapshot day, Standing standing) {
        Car car = day.car();
        var loads = standing.now().loadsKgf();
        var wheels = CentreOfGravity.contactPoints(car.wheelbaseMm(), car.trackMm(Axle.FRONT), car.trackMm(Axle.REAR));
        PlanPoint at = CentreOfGravity.inPlan(loads, wheels);
        double u = Math.hypot(car.instruments().scaleResolutionKg() / Math.sqrt(12), SCALE_SETTLING_KG);
        double ux = 0;
        double uy = 0;
        for (Corner corner : Corner.values()) {
            ux += Math.pow((wheels.get(corner).xMm() - at.xMm()) * u / standing.model().totalMassKg(), 2);
            uy += Math.pow((wheels.get(corner).yMm() - at.yMm()) * u / standing.model().totalMassKg(), 2);
        }
        String across = length(day, Math.abs(at.yMm()));
        return Bundle.cg_planWords(length(day, -at.xMm()), length(day, 2 * Math.sqrt(ux)),
                at.yMm() >= 0 ? Bundle.moves_left(across) : Bundle.moves_right(across), length(day, 2 * Math.sqrt(uy)));
    }

    private static String heightWords(DaySnapshot day, Lifting lifting) {
        String words = Bundle.cg_height(length(day, lifting.cgHeightMm()), length(day, lifting.expandedMm()));
        return lifting.driverKg() > 0 ? words + ", " + Bundle.cg_withDriver(MoveChoices.mass(day, lifting.driverKg())) : words;
    }

    private List<String> remarks(DaySnapshot day) {
        List<String> lines = new ArrayList<>();
        found.ifPresent(f -> {
            f.scatterKg().ifPresent(s -> lines.add(Bundle.cg_scatter(MoveChoices.mass(day, s), f.series().lifts().size())));
            lines.addAll(f.doubts());
        });
        OptionalDouble known = day.car().masses().cgHeightMm();
        lines.add(known.isPresent() ? Bundle.cg_known(length(day, known.getAsDouble())) : Bundle.cg_assumed());
        day.last(Lifting.HEIGHT).ifPresent(mm -> lines.add(Bundle.cg_recorded(length(day, mm))));
        return lines;
    }

    private static String length(DaySnapshot day, double mm) {
        // Whole millimetres: neither scales nor lifts know it better.
        UnitPreferences units = day.units().preferences();
        return QuantityFormat.of(units.withDecimals(Dimension.LENGTH, units.unit(Dimension.LENGTH) == Unit.IN ? 1 : 0)).text(mm, Dimension.LENGTH);
    }

    private void record() {
        Optional<DaySnapshot> day = current.snapshot();
        Optional<Lifting> lifting = found;
        if (day.isEmpty() || lifting.isEmpty()) {
            return;
        }
        Map<String, String> raw = new LinkedHashMap<>();
        raw.put("total", total.text());
        raw.put("wheelbase", wheelbase.text());
        raw.put("frontWheelCentre", frontCentre.text());
        raw.put("rearWheelCentre", rearCentre.text());
        raw.put("driverOut", Boolean.toString(driverOut.isSelected()));
        for (int i = 0; i < LIFTS; i++) {
            if (!fronts.get(i).isBlank()) {
                raw.put("lift." + i, lifts.get(i).text());
                raw.put("front." + i, fronts.get(i).text());
            }
        }
        String words = heightWords(day.get(), lifting.get());
        current.record("", h -> new Entry.Reading(h, lifting.get().values(), Map.of(), Entry.Source.RACER,
                Optional.of(lifting.get().measurement(raw, words))));
    }

    /** The height just found, or the one recorded today. */
    private void keep() {
        OptionalDouble last = current.snapshot().map(d -> d.last(Lifting.HEIGHT)).orElse(OptionalDouble.empty());
        double mm = found.map(Lifting::cgHeightMm).orElseGet(() -> last.orElse(0));
        if (mm > 0) {
            current.keepOnCar(car -> car.withMasses(car.masses().withCgHeightMm(mm)));
        }
    }
}
