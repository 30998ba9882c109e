package quoin.curves;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Font;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.awt.Insets;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSlider;
import javax.swing.UIManager;
import org.jfree.chart.ChartPanel;
import org.openide.awt.Mnemonics;
import org.openide.util.NbBundle.Messages;
import quoin.car.Adjuster;
import quoin.car.AdjusterId;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.curves.draw.CurveChart;
import quoin.curves.draw.GeometryView;
import quoin.curves.draw.Ink;
import quoin.curves.draw.Latest;
import quoin.curves.draw.MeasuredToe;
import quoin.curves.draw.OutputNames;
import quoin.curves.set.AxleGeometry;
import quoin.curves.set.AxlePose;
import quoin.curves.set.Curve;
import quoin.curves.set.CurveRequest;
import quoin.curves.set.CurveSet;
import quoin.curves.set.CurveTable;
import quoin.curves.set.Sweep;
import quoin.logbook.Entry;
import quoin.suspension.CornerKinematics;
import quoin.suspension.CurveOutput;
import quoin.suspension.spi.SuspensionTypes;
import quoin.workbench.ChartFiles;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.Looks;
import quoin.workbench.SaveFile;
import quoin.workbench.WrapText;

/** The chart, the geometry beside it and what is chosen over them. Used on the event thread; the solving is done beside it. */
@Messages({
    "# {0} - kind", "export.title=Save the curves as {0}",
    "# {0} - car", "# {1} - axle", "# {2} - output", "title.chart={0}, {1} axle: {2}",
    "# {0} - axle", "# {1} - output", "title.example=Example, not this car; {0} axle: {1}",
    "title.front=front", "title.rear=rear",
    "place.travel=Wheel tra&vel:", "place.rack=Rac&k:", "# {0} - figure", "place.mm={0} mm",
    "# {0} - wheel", "# {1} - figure", "value.before={0} {1}", "# {0} - wheel", "# {1} - figure", "value.after={0} turned {1}",
    "save.svg=Save SV&G...", "save.png=Save &PNG...", "save.csv=Save &CSV...", "example.end=&Back to this car",
    "note.unknown=The type of this axle does not say what this adjuster does to a curve.",
    "note.lift=A perch or pushrod moves no joint: the same curve from another ride height, what it does to the other corners left out.",
    "note.alike=Left and right lie on one another.",
    "note.toe=Bump steer measured in the wheel angles window is laid over this curve as crosses.",
    "# {0} - corner", "# {1} - why", "note.stopped={0}: {1}."})
final class CurvesPanel {

    private static final String CURVES = "curves";
    private static final String MISSING = "missing";

    private final CurrentDay current;
    private final Controls controls = new Controls(this::changed);
    private final MissingCurves missing = new MissingCurves(() -> example(true));
    private final CardLayout cards = new CardLayout();
    private final JPanel middle = new JPanel(cards);
    private final ChartPanel chartPanel = new ChartPanel(null);
    private final GeometryView geometryView = new GeometryView(CurvesPanel::ink);
    private final JSlider place = new JSlider(-40, 40, 0);
    private final JLabel placeName = new JLabel();
    private final JLabel placeWords = Looks.label(" ", 1, Font.BOLD);
    private final JLabel values = new JLabel(" ");
    private final WrapText notes = new WrapText(" ");
    private final JPanel component = new JPanel(new BorderLayout());
    private final JComponent exampleEnd = Looks.button(Bundle.example_end(), () -> example(false));
    private final Latest curveWork = new Latest("curves");
    private final Latest poseWork = new Latest("geometry");
    private CurveChart chart;
    private boolean example;
    private boolean focusWanted;
    private Shown shown;

    /** What is on the screen. */
    private record Shown(AxleGeometry geometry, CurveSet set, AxlePose atRideHeight) {
    }

    CurvesPanel(CurrentDay current) {
        this.current = current;
        restyle();
        chartPanel.setPopupMenu(null);
        chartPanel.setMouseZoomable(false);
        chartPanel.setFocusable(false);
        chartPanel.setMinimumDrawWidth(0);
        chartPanel.setMinimumDrawHeight(0);
        chartPanel.setMaximumDrawWidth(Integer.MAX_VALUE);
        chartPanel.setMaximumDrawHeight(Integer.MAX_VALUE);
        placeName.setLabelFor(place);
        Mnemonics.setLocalizedText(placeName, Bundle.place_travel());
        place.addChangeListener(e -> placed());
        JPanel slider = new JPanel(new BorderLayout(Looks.em(0.6), 0));
        slider.add(placeName, BorderLayout.LINE_START);
        slider.add(place, BorderLayout.CENTER);
        slider.add(placeWords, BorderLayout.LINE_END);
        JPanel foot = Looks.column(slider, values, notes, files());
        foot.setBorder(Looks.padding(0.3, 0.9));
        JPanel drawn = new JPanel(new BorderLayout());
        drawn.add(sideBySide(chartPanel, geometryView), BorderLayout.CENTER);
        drawn.add(foot, BorderLayout.SOUTH);
        middle.add(drawn, CURVES);
        middle.add(missing, MISSING);
        component.add(controls.component(), BorderLayout.NORTH);
        component.add(middle, BorderLayout.CENTER);
        component.setMinimumSize(new Dimension(0, 0));
        UIManager.addPropertyChangeListener(e -> {
            if (e.getPropertyName().equals("lookAndFeel")) {
                restyle();
                changed();
            }
        });
    }

    private static JPanel sideBySide(JComponent left, JComponent right) {
        JPanel panel = new JPanel(new GridBagLayout());
        Dimension small = new Dimension(Looks.em(12), Looks.em(8));
        double[] share = {0.58, 0.42};
        JComponent[] parts = {left, right};
        for (int i = 0; i < parts.length; i++) {
            parts[i].setPreferredSize(small);
            parts[i].setMinimumSize(small);
            panel.add(parts[i], new GridBagConstraints(i, 0, 1, 1, share[i], 1, GridBagConstraints.CENTER, GridBagConstraints.BOTH,
                    new Insets(0, 0, 0, 0), 0, 0));
        }
        return panel;
    }

    private JPanel files() {
        JPanel buttons = new JPanel(new FlowLayout(FlowLayout.LEADING, Looks.em(0.5), Looks.em(0.2)));
        buttons.add(Looks.button(Bundle.save_svg(), () -> save("svg")));
        buttons.add(Looks.button(Bundle.save_png(), () -> save("png")));
        buttons.add(Looks.button(Bundle.save_csv(), () -> save("csv")));
        buttons.add(exampleEnd);
        return buttons;
    }

    private static Ink ink() {
        return new Ink(Looks.text(), Looks.line(), Looks.ground(), Looks.font(1, Font.PLAIN), Looks.em(1));
    }

    private void restyle() {
        chart = new CurveChart(ink());
        chartPanel.setChart(chart.chart());
    }

    JComponent component() {
        return component;
    }

    void toSlider() {
        if (shown != null) {
            place.requestFocusInWindow();
        } else {
            focusWanted = true;
        }
    }

    private void example(boolean on) {
        example = on;
        shown = null;
        focusWanted = on;
        dayChanged();
    }

    private Car car(DaySnapshot day) {
        return example ? ExampleAxle.in(day.car(), controls.axle()) : day.car();
    }

    /** The day changed, or another axle or example is wanted: what can be chosen follows. */
    void dayChanged() {
        Optional<DaySnapshot> day = current.snapshot();
        exampleEnd.setVisible(example);
        if (day.isEmpty()) {
            shown = null;
            missing.showNoDay();
            cards.show(middle, MISSING);
            return;
        }
        AxleGeometry geometry = AxleGeometry.of(car(day.get()), controls.axle(), SuspensionTypes.installed());
        controls.offer(geometry, adjusters(day.get().car(), controls.axle()), day.get().adjusterWords());
        if (geometry.missing().isPresent()) {
            shown = null;
            missing.show(geometry.missing().get(), measured(day.get()));
            cards.show(middle, MISSING);
        } else {
            cards.show(middle, CURVES);
            solve(geometry);
        }
    }

    private static List<AdjusterId> adjusters(Car car, Axle axle) {
        return AxleGeometry.corners(axle).stream().flatMap(c -> car.corners().get(c).adjusters().stream()).map(a -> a.id()).toList();
    }

    private List<MeasuredToe> measured(DaySnapshot day) {
        return example ? List.of() : AxleGeometry.corners(controls.axle()).stream()
                .flatMap(corner -> day.day().bumpSteer(corner).stream().map(curve -> measured(corner, curve))).toList();
    }

    private static MeasuredToe measured(Corner corner, Entry.BumpSteer curve) {
        return new MeasuredToe(corner, new double[][] {
            curve.points().stream().mapToDouble(Entry.BumpSteer.Point::travelMm).toArray(),
            curve.points().stream().mapToDouble(Entry.BumpSteer.Point::toeInChangeDeg).toArray()});
    }

    /** Something was chosen. */
    private void changed() {
        if (shown != null && sameAxle()) {
            solve(shown.geometry());
        } else {
            dayChanged();
        }
    }

    private boolean sameAxle() {
        return shown.geometry().corners().keySet().equals(Set.copyOf(AxleGeometry.corners(controls.axle())));
    }

    private void solve(AxleGeometry geometry) {
        CurveRequest request = controls.request();
        Optional<Adjuster> adjuster = controls.adjuster();
        curveWork.compute(() -> {
            CurveSet set = CurveSet.of(geometry, request, adjuster);
            return new Shown(geometry, set, AxlePose.of(geometry, set.after(), request.sweep().at(0)));
        }, this::show);
    }

    private void show(Shown solved) {
        Optional<DaySnapshot> day = current.snapshot();
        Optional<CurveOutput> output = controls.output();
        if (day.isEmpty() || output.isEmpty()) {
            return;
        }
        shown = solved;
        int range = (int) Math.round(solved.set().request().rangeMm());
        place.setMaximum(range);
        place.setMinimum(-range);
        boolean travel = solved.set().request().sweep() == Sweep.TRAVEL;
        Mnemonics.setLocalizedText(placeName, travel ? Bundle.place_travel() : Bundle.place_rack());
        chart.show(solved.set(), output.get(), measured(day.get()), title(day.get(), output.get()));
        notes.setText(notes(day.get(), output.get()));
        placed();
        if (focusWanted) {
            focusWanted = false;
            place.requestFocusInWindow();
        }
    }

    private String title(DaySnapshot day, CurveOutput output) {
        String axle = controls.axle() == Axle.FRONT ? Bundle.title_front() : Bundle.title_rear();
        return example ? Bundle.title_example(axle, OutputNames.of(output))
                : Bundle.title_chart(day.car().name(), axle, OutputNames.of(output));
    }

    private String notes(DaySnapshot day, CurveOutput output) {
        StringBuilder text = new StringBuilder();
        if (shown.set().unknown()) {
            text.append(Bundle.note_unknown()).append(' ');
        } else if (controls.adjuster().filter(a -> isSpringLeg(a.id())).isPresent()) {
            text.append(Bundle.note_lift()).append(' ');
        }
        if (alike(output)) {
            text.append(Bundle.note_alike()).append(' ');
        }
        if (output == CurveOutput.TOE && measured(day).isEmpty() && !example) {
            text.append(Bundle.note_toe()).append(' ');
        }
        for (Curve curve : shown.set().curves()) {
            curve.stopped().ifPresent(why -> text.append(Bundle.note_stopped(curve.corner(), why)).append(' '));
        }
        return text.isEmpty() ? " " : text.toString().strip();
    }

    private boolean alike(CurveOutput output) {
        List<double[][]> both = shown.set().curves().stream().filter(c -> !c.after()).map(c -> c.points(output)).toList();
        double[] left = both.get(0)[1];
        double[] right = both.get(1)[1];
        return left.length == right.length && IntStream.range(0, left.length).allMatch(i -> Math.abs(left[i] - right[i]) < 1e-6);
    }

    private static boolean isSpringLeg(AdjusterId id) {
        return switch (id.kind()) {
            case PERCH, PUSHROD -> true;
            default -> false;
        };
    }

    /** The slider moved: geometry and figures follow. */
    private void placed() {
        if (shown == null) {
            return;
        }
        Shown now = shown;
        double mm = place.getValue();
        chart.place(mm);
        placeWords.setText(Bundle.place_mm(place.getValue()));
        Map<Corner, CornerKinematics> after = now.set().after();
        poseWork.compute(() -> AxlePose.of(now.geometry(), after, now.set().request().sweep().at(mm)), pose -> {
            geometryView.show(now.atRideHeight(), pose);
            values.setText(pose.unreached().orElseGet(() -> figures(pose)));
            chartPanel.getAccessibleContext().setAccessibleName(values.getText());
        });
    }

    private String figures(AxlePose pose) {
        CurveOutput output = controls.output().orElse(CurveOutput.CAMBER);
        return OutputNames.of(output) + ":   " + pose.wheels().stream().filter(w -> w.position().value(output).isPresent())
                .map(w -> {
                    String figure = figure(w.position().value(output).getAsDouble(), output);
                    return w.after() ? Bundle.value_after(w.corner(), figure) : Bundle.value_before(w.corner(), figure);
                }).collect(Collectors.joining("     "));
    }

    private static String figure(double value, CurveOutput output) {
        String digits = switch (output.unit()) {
            case "deg" -> "%+.3f deg";
            case "mm" -> "%+.2f mm";
            case "deg/mm" -> "%+.5f deg/mm";
            default -> "%.4f";
        };
        return String.format(digits, value);
    }

    private void save(String kind) {
        Optional<DaySnapshot> day = current.snapshot();
        if (shown == null || day.isEmpty() || controls.output().isEmpty()) {
            return;
        }
        CurveSet set = shown.set();
        if (kind.equals("csv")) {
            List<CurveOutput> outputs = shown.geometry().outputs();
            save(kind, () -> CurveTable.text(set, outputs).getBytes(StandardCharsets.UTF_8));
            return;
        }
        CurveOutput output = controls.output().get();
        CurveChart print = new CurveChart(Ink.print());
        print.show(set, output, measured(day.get()), title(day.get(), output));
        save(kind, () -> kind.equals("svg") ? ChartFiles.svg(print.chart()) : ChartFiles.png(print.chart()));
    }

    private static void save(String kind, Supplier<byte[]> contents) {
        String shown = kind.toUpperCase(Locale.ROOT);
        SaveFile.ask(CurvesPanel.class, Bundle.export_title(shown), List.of(new SaveFile.Form(shown, kind, contents)));
    }
}
