package quoin.preparation.scales;

import java.awt.FlowLayout;
import java.awt.Font;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.openide.util.NbBundle.Messages;
import quoin.car.Corner;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Entry;
import quoin.logbook.Measurement;
import quoin.mechanics.InvalidInputException;
import quoin.mechanics.ScaleFactors;
import quoin.preparation.sheet.Cell;
import quoin.preparation.sheet.Choices;
import quoin.preparation.sheet.Figures;
import quoin.preparation.sheet.Lines;
import quoin.preparation.sheet.Page;
import quoin.preparation.sheet.Sheet;
import quoin.preparation.standing.CarOnPads;
import quoin.quantities.Dimension;
import quoin.quantities.QuantityFormat;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.FigureTable;
import quoin.workbench.Looks;
import quoin.workbench.ReadingGrid;
import quoin.workbench.WrapText;
import quoin.workflow.ScaleCorrection;

/** Tests the scales, says how far they may be off, and weighs with fewer than four of them. */
@Messages({
    "page.scales=S&cales tested", "scales.how=Test, or weigh with fewer", "scales.result=What it says", "scales.what=Way (&V)", "scales.pair=Exchanged",
    "scales.class=Marked accuracy", "scales.record=Record in the logboo&k", "scales.step=Step of the display", "scales.settling=Car settles to",
    "scales.missing=Type all the readings first.", "scales.zeros=Zero, nothing on: before and after", "scales.today=Today",
    "scales.recorded=Recorded. Weights typed from now on are corrected by it; what the scale showed stays beside them.",
    "scales.weighed=Recorded as weights.", "# {0} - load", "scales.positive={0}: a weight must be more than nothing; look at what was typed."})
public final class ScalesPage implements Page {

    private static final String STEP = "step";
    private static final String SETTLING = "settling";
    private static final double SETTLING_KG = 0.5;
    private static final double DRIFT_KG = 0.3;
    private static final double USUAL_LOAD_KG = 100;

    private final CurrentDay current;
    private final String stage;
    private final JComboBox<Object> way = new JComboBox<>(Stream.concat(Stream.of(ScaleTest.values()), Stream.of(FewerScales.values())).toArray());
    private final JComboBox<ScaleTest.Pair> pair = new JComboBox<>(ScaleTest.Pair.all().toArray(ScaleTest.Pair[]::new));
    private final JComboBox<Accuracy> accuracy = new JComboBox<>(Accuracy.values());
    private final Sheet readings = new Sheet(this::evaluate, this::record);
    private final Sheet limits = new Sheet(this::evaluate, this::record);
    private final WrapText steps = new WrapText("");
    private final WrapText caution = new WrapText("");
    private final FigureTable table = new FigureTable();
    private final WrapText says = new WrapText("", 1.05, Font.BOLD);
    private final WrapText limitWords = new WrapText("");
    private final WrapText today = new WrapText("");
    private final WrapText message = new WrapText("", 1.05, Font.BOLD);
    private final ReadingGrid zeros;
    private final JPanel component;
    private DaySnapshot day;
    private CarOnPads car;
    private Optional<ScaleFactors> factors = Optional.empty();
    private Optional<PerCorner<Double>> loads = Optional.empty();

    /** @param stage stage the tests are recorded in */
    public ScalesPage(CurrentDay current, String stage) {
        this.current = current;
        this.stage = stage;
        zeros = ReadingGrid.compact(current, stage, c -> c.cornerReadings(ReadingKind.SCALE_ZERO));
        way.addActionListener(e -> chosen());
        pair.addActionListener(e -> evaluate());
        accuracy.addActionListener(e -> evaluate());
        JPanel buttons = new JPanel(new FlowLayout(FlowLayout.LEADING, Looks.em(0.5), Looks.em(0.3)));
        buttons.add(Looks.button(Bundle.scales_record(), this::record));
        JComponent left = Looks.column(Choices.grid(new String[] {Bundle.scales_what(), Bundle.scales_pair(), Bundle.scales_class()},
                way, pair, accuracy), steps, caution, readings, limits, buttons);
        JComponent right = Looks.column(Looks.section(Bundle.scales_result(), Looks.column(message, table, says, limitWords)),
                Looks.section(Bundle.scales_today(), today), Looks.section(Bundle.scales_zeros(), zeros));
        component = Looks.twoColumns(Looks.section(Bundle.scales_how(), left), right, 0.52);
    }

    @Override
    public String title() {
        return Bundle.page_scales();
    }

    @Override
    public JComponent component() {
        return component;
    }

    @Override
    public void show(DaySnapshot shown) {
        day = shown;
        car = CarOnPads.of(shown.day());
        zeros.show(shown);
        chosen();
    }

    private void chosen() {
        if (day == null) {
            return;
        }
        steps.setText(test().map(ScaleTest::steps).orElseGet(() -> fewer().steps()));
        caution.setText(test().isPresent() ? "" : Bundle.fewer_caution());
        caution.setVisible(test().isEmpty());
        pair.setEnabled(test().filter(t -> t == ScaleTest.SWAP).isPresent());
        accuracy.setEnabled(test().isPresent());
        readings.show(test().map(ScaleTest::lines).orElseGet(() -> fewer().lines()), day.units().preferences());
        Cell step = Cell.of(STEP, Bundle.scales_step(), Dimension.MASS, text(day.car().instruments().scaleResolutionKg()));
        Lines.Line settling = Lines.Line.of(Bundle.scales_settling(), Cell.of(SETTLING, Bundle.scales_settling(), Dimension.MASS, text(SETTLING_KG)));
        limits.show(new Lines(List.of(), test().isPresent() ? List.of(Lines.Line.of(Bundle.scales_step(), step), settling)
                : List.of(Lines.Line.of(Bundle.scales_step(), step))), day.units().preferences());
        evaluate();
    }

    private String text(double kg) {
        return QuantityFormat.of(day.units().preferences()).withResolution(0.1).number(kg, Dimension.MASS);
    }

    private Optional<ScaleTest> test() {
        return way.getSelectedItem() instanceof ScaleTest chosen ? Optional.of(chosen) : Optional.empty();
    }

    private FewerScales fewer() {
        return (FewerScales) way.getSelectedItem();
    }

    private static double positive(Figures figures, String key, double usual) {
        double value = figures.or(key, usual);
        return value > 0 ? value : usual;
    }

    private void evaluate() {
        if (day == null) {
            return;
        }
        Figures typed = readings.figures();
        Figures limit = limits.figures();
        factors = Optional.empty();
        loads = Optional.empty();
        String problem = typed.problem().or(limit::problem).orElse("");
        double stepKg = positive(limit, STEP, day.car().instruments().scaleResolutionKg());
        double atKg = typed.values().values().stream().filter(v -> v > 0).collect(Collectors.averagingDouble(v -> v));
        double load = atKg > 1 ? atKg : USUAL_LOAD_KG;
        Accuracy marked = (Accuracy) accuracy.getSelectedItem();
        double prior = marked.relative(load, stepKg);
        List<String> needed = test().map(ScaleTest::needed).orElseGet(() -> fewer().needed());
        if (problem.isEmpty() && typed.hasAll(needed)) {
            try {
                if (test().isPresent()) {
                    factors = Optional.of(test().get().solve(typed, (ScaleTest.Pair) pair.getSelectedItem(), prior, stepKg,
                            positive(limit, SETTLING, SETTLING_KG)));
                } else {
                    loads = Optional.of(positive(fewer().loadsKg(typed, car)));
                }
            } catch (InvalidInputException e) {
                problem = Bundle.scales_positive(Stream.of(Corner.values()).filter(c -> c.name().equals(e.field())).map(Corner::words)
                        .findFirst().orElse(e.field()));
            }
        }
        message.setText(problem);
        say(prior, load, stepKg);
    }

    private static PerCorner<Double> positive(PerCorner<Double> loadsKg) {
        for (Corner corner : Corner.values()) {
            if (!(loadsKg.get(corner) > 0)) {
                throw InvalidInputException.notPositive(corner.name(), loadsKg.get(corner));
            }
        }
        return loadsKg;
    }

    private void say(double prior, double atKg, double stepKg) {
        ScaleWords words = new ScaleWords(day.units().preferences());
        table.show(factors.map(f -> words.factors(f, prior, atKg)).or(() -> loads.map(words::loads)).orElse(List.of()));
        says.setText(factors.map(words::agreement).orElse(""));
        limitWords.setText(test().isPresent() ? words.limit((Accuracy) accuracy.getSelectedItem(), atKg, stepKg) : "");
        today.setText(words.today(day.day(), DRIFT_KG));
    }

    private void record() {
        if (factors.isEmpty() && loads.isEmpty()) {
            message.setText(message.getText().isEmpty() ? Bundle.scales_missing() : message.getText());
            return;
        }
        Map<String, String> raw = new LinkedHashMap<>(readings.figures().typed());
        raw.putAll(limits.figures().typed());
        if (factors.isPresent()) {
            recordTest(factors.get(), raw);
        } else {
            recordLoads(loads.get(), raw);
        }
    }

    private void recordTest(ScaleFactors found, Map<String, String> raw) {
        ScaleTest test = test().orElseThrow();
        raw.put("class", ((Accuracy) accuracy.getSelectedItem()).name());
        if (test == ScaleTest.SWAP) {
            raw.put("exchanged", ((ScaleTest.Pair) pair.getSelectedItem()).one() + " " + ((ScaleTest.Pair) pair.getSelectedItem()).two());
        }
        Map<String, Double> results = new LinkedHashMap<>();
        for (Corner corner : Corner.values()) {
            results.put(ScaleCorrection.factorKey(corner), found.factors().get(corner.ordinal()));
            results.put(ScaleCorrection.uncertaintyKey(corner), found.standard().get(corner.ordinal()));
        }
        for (Corner one : Corner.values()) {
            for (Corner other : Corner.values()) {
                if (one.ordinal() < other.ordinal()) {
                    results.put(ScaleCorrection.correlationKey(one, other), found.correlation(one.ordinal(), other.ordinal()));
                }
            }
        }
        Measurement measured = new Measurement(test.id(), raw, new ScaleWords(day.units().preferences()).summary(found), Map.of());
        if (current.record(stage, h -> new Entry.Check(h, ScaleCorrection.SUBJECT, results, measured))) {
            message.setText(Bundle.scales_recorded());
        }
    }

    private void recordLoads(PerCorner<Double> found, Map<String, String> raw) {
        double stepKg = positive(limits.figures(), STEP, day.car().instruments().scaleResolutionKg());
        Map<Corner, Double> u = fewer().uncertaintyKg(stepKg);
        Map<ReadingId, Double> values = new TreeMap<>();
        Map<ReadingId, Double> uncertainty = new TreeMap<>();
        for (Corner corner : Corner.values()) {
            values.put(ReadingId.of(ReadingKind.LOAD, corner), found.get(corner));
            uncertainty.put(ReadingId.of(ReadingKind.LOAD, corner), u.get(corner));
        }
        Measurement measured = new Measurement(fewer().id(), raw, fewer().toString(), uncertainty);
        if (current.record(stage, h -> new Entry.Reading(h, values, Map.of(), Entry.Source.RACER, Optional.of(measured)))) {
            readings.clear(fewer().needed());
            message.setText(Bundle.scales_weighed());
        }
    }

    @Override
    public void toFirst() {
        readings.toFirst();
    }
}
