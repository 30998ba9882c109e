package quoin.preparation.pads;

import java.awt.BorderLayout;
import java.awt.FlowLayout;
import java.awt.Font;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTextField;
import org.openide.awt.Mnemonics;
import org.openide.util.NbBundle.Messages;
import quoin.car.Corner;
import quoin.car.PerCorner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Setting;
import quoin.logbook.Conditions;
import quoin.logbook.Entry;
import quoin.logbook.GaragePlace;
import quoin.logbook.JournalException;
import quoin.logbook.Measurement;
import quoin.mechanics.PadSurvey;
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
import quoin.workbench.Looks;
import quoin.workbench.PlainListRenderer;
import quoin.workbench.Typing;
import quoin.workbench.WrapText;

/** Surveys the pads, says what to lay under them and what the rest costs, and remembers them for the place. */
@Messages({
    "page.pads=Pads s&urveyed", "pads.how=Survey", "pads.result=What it says", "pads.place=Garage place", "pads.method=Method (&V)",
    "pads.stock=Shims at hand", "pads.stockTip=Thickness x count, parted by semicolons: 0.5 x 4; 1 x 6",
    "pads.want=Wanted", "pads.plane=one plane, fewest shims", "pads.level=level", "pads.carOn=Surveyed with the car on the &pads",
    "pads.step=Smallest step read", "pads.warpTolerance=Warp allowed", "pads.levelTolerance=Height allowed, level",
    "pads.record=Record the sur&vey", "pads.laid=Shims &laid: survey again",
    "pads.caution=Hard shims only: steel or tile, never wood or cardboard. Raised pads need end lips. Survey again with the car on: floor and ply give way.",
    "pads.recorded=Recorded.", "pads.laidNow=Recorded. Now survey again, with the car on the pads.",
    "pads.missing=Type all the readings first.", "pads.noPlace=No place: this day lies in no library, so the pads are not remembered.",
    "# {0} - shims", "pads.lying=Lying there now: {0}."})
public final class PadsPage implements Page {

    private static final String SUBJECT = "pads";
    private static final String STEP = "step";
    private static final String WARP = "warp-tolerance";
    private static final String LEVEL = "level-tolerance";
    private static final int PLACE_COLUMNS = 14;

    private final CurrentDay current;
    private final String stage;
    private final JComboBox<String> place = new JComboBox<>();
    private final JComboBox<PadMethod> method = new JComboBox<>(PadMethod.values());
    private final JComboBox<String> want = new JComboBox<>(new String[] {Bundle.pads_plane(), Bundle.pads_level()});
    private final JTextField stock = new JTextField(PLACE_COLUMNS);
    private final JCheckBox carOn = new JCheckBox();
    private final Sheet readings = new Sheet(this::evaluate, this::record);
    private final Sheet limits = new Sheet(this::evaluate, this::record);
    private final WrapText signs = new WrapText("");
    private final WrapText says = new WrapText("", 1.15, Font.BOLD);
    private final WrapText lay = new WrapText("", 1.15, Font.BOLD);
    private final WrapText since = new WrapText("");
    private final WrapText message = new WrapText("", 1.05, Font.BOLD);
    private final PadDrawing drawing = new PadDrawing();
    private final JButton laid = Looks.button(Bundle.pads_laid(), this::shimsLaid);
    private final JPanel component;
    private DaySnapshot day;
    private PlaceMemory memory;
    private CarOnPads car;
    private Optional<PadAdvice> advice = Optional.empty();
    private boolean showing;

    /** @param stage stage the survey is recorded in */
    public PadsPage(CurrentDay current, String stage) {
        this.current = current;
        this.stage = stage;
        place.setEditable(true);
        place.setRenderer(new PlainListRenderer());
        place.setPrototypeDisplayValue("Lock-up behind the mill");
        place.addActionListener(e -> placeChosen());
        method.addActionListener(e -> methodChosen());
        want.addActionListener(e -> evaluate());
        stock.setToolTipText(Bundle.pads_stockTip());
        stock.addActionListener(e -> evaluate());
        stock.getDocument().addDocumentListener(new Typing(this::evaluate));
        Mnemonics.setLocalizedText(carOn, Bundle.pads_carOn());
        carOn.setOpaque(false);
        carOn.addActionListener(e -> evaluate());
        JPanel buttons = new JPanel(new FlowLayout(FlowLayout.LEADING, Looks.em(0.5), Looks.em(0.3)));
        buttons.add(Looks.button(Bundle.pads_record(), this::record));
        buttons.add(laid);
        JComponent left = Looks.column(Choices.grid(new String[] {Bundle.pads_place(), Bundle.pads_method(), Bundle.pads_want(),
            Bundle.pads_stock()}, place, method, want, stock), signs, readings, limits, carOn, new WrapText(Bundle.pads_caution()), buttons);
        JPanel right = new JPanel(new BorderLayout(0, Looks.em(0.4)));
        right.add(drawing, BorderLayout.NORTH);
        right.add(Looks.column(message, says, lay, since), BorderLayout.CENTER);
        component = Looks.twoColumns(Looks.section(Bundle.pads_how(), left), Looks.section(Bundle.pads_result(), right), 0.5);
    }

    @Override
    public String title() {
        return Bundle.page_pads();
    }

    @Override
    public JComponent component() {
        return component;
    }

    @Override
    public void show(DaySnapshot shown) {
        boolean other = day == null || memory == null || !memory.isOf(current.journal());
        day = shown;
        car = CarOnPads.of(shown.day());
        showing = true;
        if (other) {
            memory = PlaceMemory.of(current.journal());
            place.removeAllItems();
            memory.names().forEach(place::addItem);
            place.setSelectedItem(shown.day().condition(Conditions.PLACE).orElse(memory.usualName()));
            memory.choose(String.valueOf(place.getSelectedItem()));
            stock.setText(Stock.text(memory.place().map(GaragePlace::stock).orElse(List.of()), shown.units().preferences()));
        }
        showing = false;
        layOut();
        evaluate();
    }

    private void layOut() {
        PadMethod chosen = chosenMethod();
        signs.setText(chosen.signs());
        readings.show(chosen.lines(), day.units().preferences());
        limits.show(Lines.of(Lines.Line.of(Bundle.pads_step(), Cell.of(STEP, Bundle.pads_step(), Dimension.LENGTH,
                text(day.car().instruments().heightResolutionMm()))),
                Lines.Line.of(Bundle.pads_warpTolerance(), Cell.of(WARP, Bundle.pads_warpTolerance(), Dimension.LENGTH, text(0.5))),
                Lines.Line.of(Bundle.pads_levelTolerance(), Cell.of(LEVEL, Bundle.pads_levelTolerance(), Dimension.LENGTH, text(1)))),
                day.units().preferences());
    }

    private String text(double mm) {
        return QuantityFormat.of(day.units().preferences()).withResolution(0.1).number(mm, Dimension.LENGTH);
    }

    private PadMethod chosenMethod() {
        return (PadMethod) method.getSelectedItem();
    }

    private void placeChosen() {
        if (!showing && day != null && place.getSelectedItem() != null) {
            memory.choose(String.valueOf(place.getSelectedItem()));
            memory.place().filter(p -> !p.stock().isEmpty())
                    .ifPresent(p -> stock.setText(Stock.text(p.stock(), day.units().preferences())));
            evaluate();
        }
    }

    private void methodChosen() {
        if (day != null) {
            layOut();
            evaluate();
        }
    }

    private PadAdvice.Wanted wanted(Figures figures, List<Setting.Shim> all) {
        PerCorner<List<Double>> under = memory.place().map(GaragePlace::underMm).orElse(PerCorner.all(List.of()));
        return new PadAdvice.Wanted(want.getSelectedIndex() == 1, figures.or(WARP, 0.5), figures.or(LEVEL, 1), Stock.free(all, under));
    }

    private static double readingMm(Figures limits) {
        return limits.or(STEP, 0.5) / Math.sqrt(12);
    }

    private void evaluate() {
        if (day == null || showing) {
            return;
        }
        Figures typed = readings.figures();
        Figures limit = limits.figures();
        advice = Optional.empty();
        String problem = typed.problem().or(limit::problem).orElse("");
        PadAdvice.Wanted wanted = null;
        try {
            List<Setting.Shim> all = Stock.read(stock.getText(), day.units().preferences());
            wanted = wanted(limit, all);
            if (problem.isEmpty() && typed.hasAll(chosenMethod().keys())) {
                PadSurvey survey = new PadSurvey(CarOnPads.pads(day.car()), chosenMethod().heightsMm(typed));
                advice = Optional.of(PadAdvice.of(survey, chosenMethod().warpUncertaintyMm(typed, readingMm(limit)),
                        chosenMethod().closingErrorMm(typed), wanted, car));
            }
        } catch (IllegalArgumentException e) {
            problem = e.getLocalizedMessage();
        }
        message.setText(problem);
        say(wanted, readingMm(limit));
    }

    private void say(PadAdvice.Wanted wanted, double readingMm) {
        PadWords words = new PadWords(day.units().preferences());
        says.setText(advice.map(a -> String.join(" ", words.survey(a, wanted, readingMm))).orElse(""));
        lay.setText(advice.map(a -> String.join(" ", words.plan(a, wanted))).orElse(""));
        String lying = memory.place().map(p -> words.shims(p.underMm())).filter(s -> !s.isEmpty()).map(Bundle::pads_lying).orElse("");
        String before = advice.flatMap(a -> memory.place().flatMap(GaragePlace::survey).map(s -> words.since(a, s, carOn.isSelected(), ZoneId.systemDefault()) + " "))
                .orElse("");
        since.setText(memory.isKept() ? before + lying : Bundle.pads_noPlace());
        laid.setEnabled(advice.filter(a -> a.plan().count() > 0).isPresent());
        drawing.show(advice.map(a -> new PadDrawing.Content(a.survey().heightsMm(), PerCorner.of(c -> a.plan().underMm(c)), words::length,
                a.plan().shimsMm().map(s -> s.isEmpty() ? "" : "+ " + Stock.stack(s, day.units().preferences())))));
    }

    /** Records the heights with how they were measured; pads in one plane are levelled by that. */
    private void record() {
        if (advice.isEmpty()) {
            message.setText(message.getText().isEmpty() ? Bundle.pads_missing() : message.getText());
            return;
        }
        PadAdvice now = advice.get();
        Figures typed = readings.figures();
        Map<String, String> raw = new LinkedHashMap<>(typed.typed());
        raw.putAll(limits.figures().typed());
        raw.put("car", carOn.isSelected() ? "on" : "off");
        Map<ReadingId, Double> values = new TreeMap<>();
        Map<String, Double> results = new LinkedHashMap<>();
        for (Corner corner : Corner.values()) {
            values.put(ReadingId.of(ReadingKind.PAD_HEIGHT, corner), now.survey().heightsMm().get(corner));
            results.put(corner.name(), now.survey().heightsMm().get(corner));
        }
        results.put("warp", now.warpMm());
        results.put("u.warp", now.warpStandardMm());
        results.put("cross", now.crossPercent());
        Measurement measured = new Measurement(chosenMethod().id(), raw, says.getText(), Map.of());
        boolean flat = now.isGood() || Math.abs(now.warpMm()) <= limits.figures().or(WARP, 0.5);
        if (recordPlace() && current.record(stage, h -> new Entry.Reading(h, values, Map.of(), Entry.Source.RACER, Optional.of(measured)))
                && current.record(stage, h -> new Entry.Check(h, SUBJECT, results, measured))) {
            if (flat) {
                current.record(stage, h -> new Entry.Condition(h, Conditions.PADS, Conditions.LEVELLED, measured.words()));
            }
            remember(p -> p.with(p.underMm(), Optional.of(new GaragePlace.Survey(Instant.now(), chosenMethod().id(),
                    now.survey().heightsMm(), carOn.isSelected()))));
        }
    }

    private boolean recordPlace() {
        String name = memory.place().map(GaragePlace::name).orElse("");
        boolean known = name.isEmpty() || day.day().condition(Conditions.PLACE).filter(name::equals).isPresent();
        return known || current.record(stage, h -> new Entry.Condition(h, Conditions.PLACE, name, ""));
    }

    /** Records that the planned shims lie under the pads: the pads are not what they were until they are surveyed again. */
    private void shimsLaid() {
        advice.ifPresent(a -> {
            String words = new PadWords(day.units().preferences()).shims(a.plan().shimsMm());
            if (recordPlace() && current.record(stage, h -> new Entry.Condition(h, Conditions.PADS, Conditions.MOVED, words))) {
                remember(p -> p.with(p.underMm().zip(a.plan().shimsMm(), (lying, more) -> {
                    List<Double> all = new ArrayList<>(lying);
                    all.addAll(more);
                    return all;
                }), Optional.empty()));
                readings.clear(chosenMethod().keys());
                message.setText(Bundle.pads_laidNow());
                readings.toFirst();
            }
        });
    }

    private void remember(UnaryOperator<GaragePlace> change) {
        try {
            List<Setting.Shim> all = Stock.read(stock.getText(), day.units().preferences());
            memory.save(p -> change.apply(p.withStock(all)));
            evaluate();
            message.setText(Bundle.pads_recorded());
        } catch (JournalException | IllegalArgumentException e) {
            message.setText(e.getLocalizedMessage());
        }
    }

    @Override
    public void toFirst() {
        readings.toFirst();
    }
}
