package quoin.ballast;

import java.awt.BorderLayout;
import java.awt.Font;
import java.awt.GridBagLayout;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import org.openide.awt.Mnemonics;
import org.openide.util.NbBundle.Messages;
import quoin.ballast.MoveChoices.Way;
import quoin.car.KnownMass;
import quoin.mechanics.SpacePoint;
import quoin.quantities.Dimension;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.Looks;
import quoin.workbench.PlainListRenderer;
import quoin.workbench.WrapText;

/** The form of a move of the racer's own: something from the list, or anything else by its mass and places. */
@Messages({
    "own.what=Thing (&O)", "own.spoken=Thing to move", "own.other=something else", "# {0} - name", "# {1} - mass", "own.item={0}, {1}", "own.name=Its name", "own.mass=Its mass",
    "own.from=Is now at", "own.to=Goes to", "own.ahead=ahead", "own.left=left", "own.high=high", "own.off=Taken off the car (&Q)", "# {0} - place", "own.isAt=Is now {0}.",
    "own.axes=Ahead of the front axle (behind = minus), left of the middle (right = minus), above the pads. Where it goes: blank = as before.",
    "own.onBoard=Blank in all three = it is not on board yet.",
    "own.thing=thing",
    "# {0} - field", "own.missing={0}: nothing is typed; type the figure, or pick a thing from the list",
    "# {0} - field", "own.noMass={0}: a mass must be more than nothing; type what it weighs",
    "# {0} - field", "own.half={0}: type all three figures, or none of them"})
final class OwnMove extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int NAME_COLUMNS = 14;

    /** A thing to choose, by what the list shows of it. */
    private record Thing(KnownMass mass, String words) {
        @Override
        public String toString() {
            return words;
        }
    }

    private final transient CurrentDay current;
    private final transient Runnable changed;
    private final JComboBox<Object> what = new JComboBox<>();
    private final JTextField name = Looks.field(NAME_COLUMNS, 1.1, Font.PLAIN);
    private final Form other = new Form(this::typed);
    private final transient Form.Figure mass = other.add(Bundle.own_mass(), Dimension.MASS, "");
    private final transient List<Form.Figure> from = other.addRow(Bundle.own_from(), Dimension.LENGTH, heads());
    private final Form form = new Form(this::typed);
    private final transient List<Form.Figure> to = form.addRow(Bundle.own_to(), Dimension.LENGTH, heads());
    private final WrapText isAt = new WrapText("");
    private final JPanel unlisted;
    private final JCheckBox off = new JCheckBox();
    private transient List<Thing> things = List.of();
    private boolean filling;

    /** @param changed what follows whenever something was typed or chosen */
    OwnMove(CurrentDay current, Runnable changed) {
        super(new BorderLayout());
        this.current = current;
        this.changed = changed;
        JPanel first = line(what, Bundle.own_what());
        unlisted = Looks.column(line(name, Bundle.own_name()), other, new WrapText(Bundle.own_onBoard()));
        what.setRenderer(new PlainListRenderer());
        what.getAccessibleContext().setAccessibleName(Bundle.own_spoken());
        what.addActionListener(e -> chosen());
        name.getAccessibleContext().setAccessibleName(Bundle.own_name());
        Mnemonics.setLocalizedText(off, Bundle.own_off());
        off.addActionListener(e -> typed());
        add(Looks.column(first, isAt, unlisted, form, new WrapText(Bundle.own_axes()), off), BorderLayout.CENTER);
    }

    private static List<String> heads() {
        return List.of(Bundle.own_ahead(), Bundle.own_left(), Bundle.own_high());
    }

    private static JPanel line(JComponent field, String label) {
        JPanel line = new JPanel(new GridBagLayout());
        JLabel words = Looks.label("", 1, Font.PLAIN);
        Mnemonics.setLocalizedText(words, label);
        words.setLabelFor(field);
        line.add(words, Looks.closeCell(0, 0, 0));
        line.add(field, Looks.closeCell(1, 0, 0));
        line.add(Looks.label("", 1, Font.PLAIN), Looks.closeCell(2, 0, 1));
        return line;
    }

    /** Shows the things of the day's car; what is being typed stays. */
    void show(DaySnapshot day) {
        form.begin(day.units());
        other.begin(day.units());
        List<Thing> all = MoveChoices.movable(day.car()).stream()
                .map(m -> new Thing(m, Bundle.own_item(m.name(), MoveChoices.mass(day, m.massKg())))).toList();
        if (!all.equals(things) || what.getItemCount() == 0) {
            things = all;
            DefaultComboBoxModel<Object> model = new DefaultComboBoxModel<>(all.toArray());
            model.addElement(Bundle.own_other());
            filling = true;
            what.setModel(model);
            filling = false;
            fill(day);
        }
    }

    private Optional<KnownMass> listed() {
        return what.getSelectedItem() instanceof Thing thing ? Optional.of(thing.mass()) : Optional.empty();
    }

    private void chosen() {
        if (!filling) {
            current.snapshot().ifPresent(this::fill);
            changed.run();
        }
    }

    /** A thing from the list brings its mass and place with it; of anything else they are typed. */
    private void fill(DaySnapshot day) {
        Optional<KnownMass> listed = listed();
        filling = true;
        form.clear();
        off.setSelected(false);
        filling = false;
        isAt.setText(listed.map(m -> Bundle.own_isAt(MoveChoices.place(day, place(m)))).orElse(""));
        isAt.setVisible(listed.isPresent());
        unlisted.setVisible(listed.isEmpty());
        revalidate();
    }

    private void typed() {
        if (!filling) {
            to.forEach(t -> t.field().setEnabled(!off.isSelected()));
            changed.run();
        }
    }

    /** True where nothing was said yet of where the thing goes. */
    private boolean isUntouched() {
        return !off.isSelected() && to.stream().allMatch(Form.Figure::isBlank);
    }

    /** The move as typed; empty where something is missing or cannot be read, which is then named under the form. */
    Optional<Way> way(DaySnapshot day) {
        form.begin(day.units());
        other.begin(day.units());
        if (isUntouched()) {
            return Optional.empty();
        }
        Optional<KnownMass> listed = listed();
        double kg = listed.map(KnownMass::massKg).orElseGet(() -> mass.valueOr(0, day.units()));
        if (!(kg > 0) && !other.hasProblems()) {
            other.problem(mass.isBlank() ? Bundle.own_missing(Bundle.own_mass()) : Bundle.own_noMass(Bundle.own_mass()));
        }
        Optional<SpacePoint> is = listed.isPresent() ? listed.map(OwnMove::place)
                : place(other, from, Bundle.own_from(), Optional.empty(), day);
        if (listed.isEmpty() && off.isSelected() && is.isEmpty() && !other.hasProblems()) {
            other.problem(Bundle.own_missing(Bundle.own_from()));
        }
        Optional<SpacePoint> goes = off.isSelected() ? Optional.empty() : place(form, to, Bundle.own_to(), is, day);
        if (form.hasProblems() || other.hasProblems()) {
            return Optional.empty();
        }
        String called = listed.map(KnownMass::name).orElse(name.getText().isBlank() ? Bundle.own_thing() : name.getText().strip());
        return Optional.of(MoveChoices.own(day, listed, called, kg, is, goes));
    }

    private static SpacePoint place(KnownMass mass) {
        return new SpacePoint(mass.xMm(), mass.yMm(), mass.zMm());
    }

    /** Three figures, a blank one as before; empty where all are blank and there is no before. */
    private static Optional<SpacePoint> place(Form in, List<Form.Figure> fields, String field, Optional<SpacePoint> before, DaySnapshot day) {
        long blank = fields.stream().filter(Form.Figure::isBlank).count();
        if (before.isEmpty() && blank > 0) {
            if (blank < fields.size()) {
                in.problem(Bundle.own_half(field));
            }
            return Optional.empty();
        }
        List<Double> old = before.map(b -> List.of(b.xMm(), b.yMm(), b.zMm())).orElse(List.of(0.0, 0.0, 0.0));
        OptionalDouble[] mm = new OptionalDouble[fields.size()];
        for (int i = 0; i < mm.length; i++) {
            mm[i] = fields.get(i).isBlank() ? OptionalDouble.of(old.get(i)) : fields.get(i).value(day.units());
        }
        return Optional.of(new SpacePoint(mm[0].orElse(0), mm[1].orElse(0), mm[2].orElse(0)));
    }
}
