package quoin.curves;

import java.awt.Component;
import java.awt.FlowLayout;
import java.awt.Font;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JSlider;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;
import org.openide.awt.Mnemonics;
import org.openide.util.NbBundle.Messages;
import quoin.car.Adjuster;
import quoin.car.AdjusterId;
import quoin.car.Axle;
import quoin.car.Setting;
import quoin.curves.draw.OutputNames;
import quoin.curves.set.AxleGeometry;
import quoin.curves.set.CurveRequest;
import quoin.curves.set.Sweep;
import quoin.curves.set.Turned;
import quoin.suspension.CurveOutput;
import quoin.workbench.AdjusterWords;
import quoin.workbench.Looks;
import quoin.workbench.PlainListRenderer;
import quoin.workbench.WrapLayout;

/** What is chosen over the curves: axle, output, what runs along, how far, and an adjuster to turn. */
@Messages({
    "choose.axle=Ax&le:", "choose.output=&Output:", "choose.sweep=&Against:", "choose.range=&Range, mm:", "choose.turn=T&urn:",
    "choose.front=Front", "choose.rear=Rear", "choose.travel=Wheel travel", "choose.rack=Rack travel", "choose.noTurn=Nothing",
    "choose.amount=Amount of the turn, by steps of the adjuster"})
final class Controls {

    private static final int MOST_TURNS = 3;
    private static final double SHIM_STEP_MM = 0.25;
    private static final int MOST_SHIM_STEPS = 16;

    private final JComboBox<Axle> axle = combo(Axle.values(), a -> a == Axle.FRONT ? Bundle.choose_front() : Bundle.choose_rear());
    private final JComboBox<CurveOutput> output = combo(new CurveOutput[0], OutputNames::of);
    private final JComboBox<Sweep> sweep = combo(new Sweep[] {Sweep.TRAVEL},
            s -> s == Sweep.TRAVEL ? Bundle.choose_travel() : Bundle.choose_rack());
    private final JSpinner range = new JSpinner(new SpinnerNumberModel(40, 5, 150, 5));
    private final JComboBox<Optional<AdjusterId>> adjuster = combo(List.of(Optional.<AdjusterId>empty()),
            a -> a.map(AdjusterId::words).orElse(Bundle.choose_noTurn()));
    private final JSlider amount = new JSlider(-MOST_SHIM_STEPS, MOST_SHIM_STEPS, 0);
    private final JLabel amountWords = Looks.label(" ", 1, Font.BOLD);
    private final JPanel panel = new JPanel(new WrapLayout());
    private final JPanel turn = new JPanel(new WrapLayout());
    private final Runnable onChange;
    private boolean filling;
    private AdjusterWords words;

    /** @param onChange called when anything was chosen */
    Controls(Runnable onChange) {
        this.onChange = onChange;
        add(Bundle.choose_axle(), axle);
        add(Bundle.choose_output(), output);
        add(Bundle.choose_sweep(), sweep);
        add(Bundle.choose_range(), range);
        amount.getAccessibleContext().setAccessibleName(Bundle.choose_amount());
        turn.add(pair(Bundle.choose_turn(), adjuster));
        turn.add(amount);
        turn.add(amountWords);
        axle.addActionListener(e -> changed());
        output.addActionListener(e -> changed());
        sweep.addActionListener(e -> changed());
        range.addChangeListener(e -> changed());
        adjuster.addActionListener(e -> {
            amount.setValue(0);
            scale();
            changed();
        });
        amount.addChangeListener(e -> changed());
    }

    private static <T> JComboBox<T> combo(T[] items, Function<T, String> name) {
        return combo(List.of(items), name);
    }

    private static <T> JComboBox<T> combo(List<T> items, Function<T, String> name) {
        JComboBox<T> combo = new JComboBox<>();
        items.forEach(combo::addItem);
        combo.setRenderer(new PlainListRenderer() {
            private static final long serialVersionUID = 1L;

            @Override
            @SuppressWarnings("unchecked")
            public Component getListCellRendererComponent(JList<?> list, Object value, int index, boolean selected, boolean focused) {
                return super.getListCellRendererComponent(list, value == null ? "" : name.apply((T) value), index, selected, focused);
            }
        });
        return combo;
    }

    private void add(String text, Component field) {
        panel.add(pair(text, field));
    }

    private static JPanel pair(String text, Component field) {
        JLabel label = new JLabel();
        Mnemonics.setLocalizedText(label, text);
        label.setLabelFor(field);
        JPanel pair = new JPanel(new FlowLayout(FlowLayout.LEADING, Looks.em(0.3), 0));
        pair.add(label);
        pair.add(field);
        return pair;
    }

    JPanel component() {
        return Looks.column(panel, turn);
    }

    private void changed() {
        if (!filling) {
            amountWords.setText(turned().map(t -> words.amount(t.adjuster(), t.amount())).orElse(" "));
            onChange.run();
        }
    }

    Axle axle() {
        return (Axle) axle.getSelectedItem();
    }

    Optional<CurveOutput> output() {
        return Optional.ofNullable((CurveOutput) output.getSelectedItem());
    }

    CurveRequest request() {
        return new CurveRequest((Sweep) sweep.getSelectedItem(), ((Number) range.getValue()).doubleValue(), turned());
    }

    /** The adjuster chosen, as it is fitted. */
    Optional<Adjuster> adjuster() {
        return chosen().map(words::adjuster);
    }

    @SuppressWarnings("unchecked")
    private Optional<AdjusterId> chosen() {
        Object item = adjuster.getSelectedItem();
        return item == null ? Optional.empty() : (Optional<AdjusterId>) item;
    }

    private Optional<Turned> turned() {
        return chosen().map(id -> new Turned(id, amount.getValue() * step(words.adjuster(id))));
    }

    private static double step(Adjuster fitted) {
        return fitted.setting() instanceof Setting.Thread thread ? 1.0 / thread.stepsPerTurn() : SHIM_STEP_MM;
    }

    private void scale() {
        int most = adjuster().map(a -> a.setting() instanceof Setting.Thread thread ? MOST_TURNS * thread.stepsPerTurn()
                : MOST_SHIM_STEPS).orElse(MOST_SHIM_STEPS);
        amount.setMaximum(most);
        amount.setMinimum(-most);
        amount.setEnabled(chosen().isPresent());
    }

    /** Offers what this axle has, and keeps what was chosen where it is still there. */
    void offer(AxleGeometry geometry, List<AdjusterId> adjusters, AdjusterWords adjusterWords) {
        filling = true;
        words = adjusterWords;
        fill(output, geometry.outputs(), CurveOutput.TOE);
        fill(sweep, geometry.isSteered() ? List.of(Sweep.values()) : List.of(Sweep.TRAVEL), Sweep.TRAVEL);
        List<Optional<AdjusterId>> turns = new ArrayList<>(List.of(Optional.empty()));
        adjusters.forEach(id -> turns.add(Optional.of(id)));
        fill(adjuster, turns, Optional.empty());
        scale();
        boolean drawn = geometry.missing().isEmpty();
        List.of(output, sweep, range, adjuster).forEach(field -> field.setEnabled(drawn));
        amount.setEnabled(drawn && chosen().isPresent());
        filling = false;
    }

    private static <T> void fill(JComboBox<T> combo, List<T> items, T usual) {
        Object chosen = combo.getSelectedItem();
        DefaultComboBoxModel<T> model = new DefaultComboBoxModel<>();
        items.forEach(model::addElement);
        model.setSelectedItem(items.contains(chosen) ? chosen : items.contains(usual) ? usual : items.isEmpty() ? null : items.get(0));
        combo.setModel(model);
    }
}
