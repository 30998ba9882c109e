package quoin.workbench.units;

import java.awt.Font;
import java.awt.GridBagLayout;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.openide.awt.Mnemonics;
import org.openide.util.NbBundle.Messages;
import quoin.car.Corner;
import quoin.car.CornerNames;
import quoin.quantities.AngleStyle;
import quoin.quantities.DecimalMark;
import quoin.quantities.Dimension;
import quoin.quantities.QuantityFormat;
import quoin.quantities.Texts;
import quoin.quantities.Unit;
import quoin.quantities.UnitPreferences;
import quoin.workbench.DisplayUnits;
import quoin.workbench.Looks;
import quoin.workbench.WrapText;

/** One choice per quantity, and a line that shows the figures of a car as they will be written. */
@Messages({
    "units.weight=&Weights", "units.length=&Lengths and heights", "units.rate=&Spring rates", "units.pressure=&Pressures",
    "units.torque=T&orques", "units.volume=&Fuel", "units.angle=&Angles", "units.toe=&Toe", "units.mark=Decimal &mark",
    "units.degrees=degrees: -1.55°", "units.minutes=degrees and minutes: -1°33'", "units.toeLength=length at the rim chord",
    "units.toeAngle=angle", "units.point=point: 107.9", "units.comma=comma: 107,9",
    "# {0} - weight", "# {1} - height", "# {2} - rate", "# {3} - pressure", "# {4} - camber",
    "units.example=A car then reads {0}, {1}, {2}, {3}, camber {4}.",
    "units.language=Lan&guage", "units.asComputer=as the computer", "units.corners=&Names of the corners",
    "units.asLanguage=as the language", "# {0} - four names", "units.inWords=in words: {0}",
    "units.nextStart=Language and names of corners change when Quoin is started again.",
    "units.hint=Any unit may be typed behind a figure, whatever is chosen here: 238 lb, 3/16in, -1°30'."})
final class UnitsForm extends JPanel {

    private static final long serialVersionUID = 1L;

    private static final Map<Dimension, List<Unit>> CHOICES = choices();
    private static final int COLUMNS = 36;

    private final transient Map<Dimension, JComboBox<String>> units = new LinkedHashMap<>();
    private final JComboBox<String> angle = new JComboBox<>(new String[] {Bundle.units_degrees(), Bundle.units_minutes()});
    private final JComboBox<String> toe = new JComboBox<>(new String[] {Bundle.units_toeLength(), Bundle.units_toeAngle()});
    private final JComboBox<String> mark = new JComboBox<>(new String[] {Bundle.units_point(), Bundle.units_comma()});
    private final transient List<Optional<String>> languages = Stream.concat(Stream.of(Optional.<String>empty()),
            Texts.languages().stream().map(Optional::of)).toList();
    private final transient List<Optional<CornerNames>> corners = Stream.concat(Stream.of(Optional.<CornerNames>empty()),
            Stream.of(CornerNames.values()).map(Optional::of)).toList();
    private final JComboBox<String> language = new JComboBox<>(languages.stream().map(UnitsForm::words).toArray(String[]::new));
    private final JComboBox<String> cornerNames = new JComboBox<>(corners.stream().map(UnitsForm::cornerWords).toArray(String[]::new));
    private final WrapText example = new WrapText("", 1.1, Font.BOLD);
    private final transient DisplayUnits before;

    UnitsForm(DisplayUnits before, LanguageChoice chosen) {
        this.before = before;
        setLayout(new GridBagLayout());
        setBorder(Looks.padding(0.8, 0.8));
        UnitPreferences now = before.preferences();
        row(Bundle.units_weight(), combo(Dimension.MASS, now));
        row(Bundle.units_length(), combo(Dimension.LENGTH, now));
        row(Bundle.units_rate(), combo(Dimension.STIFFNESS, now));
        row(Bundle.units_pressure(), combo(Dimension.PRESSURE, now));
        row(Bundle.units_torque(), combo(Dimension.TORQUE, now));
        row(Bundle.units_volume(), combo(Dimension.VOLUME, now));
        angle.setSelectedIndex(now.angleStyle() == AngleStyle.DEGREES_MINUTES ? 1 : 0);
        row(Bundle.units_angle(), angle);
        toe.setSelectedIndex(before.toeInMm() ? 0 : 1);
        row(Bundle.units_toe(), toe);
        mark.setSelectedIndex(now.decimalMark() == DecimalMark.COMMA ? 1 : 0);
        row(Bundle.units_mark(), mark);
        language.setSelectedIndex(languages.indexOf(chosen.language()));
        row(Bundle.units_language(), language);
        cornerNames.setSelectedIndex(corners.indexOf(chosen.corners()));
        row(Bundle.units_corners(), cornerNames);
        showExample();
        below(example.wide(COLUMNS));
        below(new WrapText(Bundle.units_nextStart()).wide(COLUMNS));
        below(new WrapText(Bundle.units_hint()).wide(COLUMNS));
    }

    /** A language by its own name, so that whoever cannot read this one finds his. */
    private static String words(Optional<String> code) {
        return code.map(Locale::forLanguageTag).map(l -> Texts.sentence(l.getDisplayLanguage(l))).orElseGet(Bundle::units_asComputer);
    }

    private static String cornerWords(Optional<CornerNames> names) {
        return names.map(n -> {
            String all = Stream.of(Corner.values()).map(n::of).collect(Collectors.joining(", "));
            return n == CornerNames.WORDS ? Bundle.units_inWords(n.of(Corner.LF) + " ...") : all;
        }).orElseGet(Bundle::units_asLanguage);
    }

    /** Language and names of corners as they stand in the form, for the next start. */
    LanguageChoice language() {
        return new LanguageChoice(languages.get(language.getSelectedIndex()), corners.get(cornerNames.getSelectedIndex()));
    }

    private static Map<Dimension, List<Unit>> choices() {
        Map<Dimension, List<Unit>> choices = new LinkedHashMap<>();
        choices.put(Dimension.MASS, List.of(Unit.KG, Unit.LB));
        choices.put(Dimension.LENGTH, List.of(Unit.MM, Unit.IN));
        choices.put(Dimension.STIFFNESS, List.of(Unit.N_PER_MM, Unit.LBF_PER_IN, Unit.KGF_PER_MM));
        choices.put(Dimension.PRESSURE, List.of(Unit.BAR, Unit.PSI, Unit.KPA));
        choices.put(Dimension.TORQUE, List.of(Unit.N_M, Unit.LBF_FT));
        choices.put(Dimension.VOLUME, List.of(Unit.LITRE, Unit.GAL_US, Unit.GAL_IMP));
        return choices;
    }

    private JComboBox<String> combo(Dimension dimension, UnitPreferences now) {
        JComboBox<String> combo = new JComboBox<>(CHOICES.get(dimension).stream().map(Unit::symbol).toArray(String[]::new));
        combo.setSelectedIndex(Math.max(0, CHOICES.get(dimension).indexOf(now.unit(dimension))));
        units.put(dimension, combo);
        return combo;
    }

    private void row(String words, JComboBox<String> combo) {
        JLabel label = new JLabel();
        Mnemonics.setLocalizedText(label, words);
        label.setLabelFor(combo);
        int row = getComponentCount() / 2;
        add(label, Looks.cell(0, row, 0));
        add(combo, Looks.cell(1, row, 1));
        combo.addActionListener(e -> showExample());
    }

    private void below(WrapText text) {
        var cell = Looks.cell(0, getComponentCount(), 1);
        cell.gridwidth = 2;
        add(text, cell);
    }

    /** The choice as it stands in the form. */
    DisplayUnits chosen() {
        UnitPreferences changed = before.preferences();
        for (Map.Entry<Dimension, JComboBox<String>> entry : units.entrySet()) {
            changed = changed.withUnit(CHOICES.get(entry.getKey()).get(entry.getValue().getSelectedIndex()));
        }
        // A load is a weight to whoever reads a scale.
        UnitPreferences preferences = changed.withUnit(changed.unit(Dimension.MASS) == Unit.LB ? Unit.LBF : Unit.KGF)
                .withAngleStyle(angle.getSelectedIndex() == 1 ? AngleStyle.DEGREES_MINUTES : AngleStyle.DECIMAL)
                .withDecimalMark(mark.getSelectedIndex() == 1 ? DecimalMark.COMMA : DecimalMark.POINT);
        return new DisplayUnits(preferences, toe.getSelectedIndex() == 0);
    }

    private void showExample() {
        QuantityFormat format = QuantityFormat.of(chosen().preferences());
        example.setText(Bundle.units_example(format.text(161.8, Dimension.MASS), format.text(62, Dimension.LENGTH),
                format.text(61.3, Dimension.STIFFNESS), format.text(1.65, Dimension.PRESSURE), format.text(-1.55, Dimension.ANGLE)));
    }
}
