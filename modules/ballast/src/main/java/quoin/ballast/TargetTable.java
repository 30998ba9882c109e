package quoin.ballast;

import java.awt.BorderLayout;
import java.awt.Font;
import java.awt.GridBagConstraints;
import java.awt.GridBagLayout;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import org.openide.util.NbBundle.Messages;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.car.Target;
import quoin.car.Targets;
import quoin.quantities.QuantityFormatException;
import quoin.quantities.Texts;
import quoin.workbench.DaySnapshot;
import quoin.workbench.Looks;
import quoin.workbench.Mark;
import quoin.workbench.ReadingFormat;
import quoin.workbench.WrapText;

/** A line per reading: target, tolerance, and what one reading can tell. */
@Messages({
    "target.reading=Reading", "target.value=Target", "target.tolerance=± Tolerance", "target.tells=One reading tells",
    "# {0} - reading", "target.spokenValue={0}, target", "# {0} - reading", "target.spokenTolerance={0}, tolerance",
    "# {0} - half width", "target.half=± {0}",
    "# {0} - number", "target.finer=finer: mean of {0}",
    "# {0} - reading", "target.both={0}: target and tolerance belong together; type both or neither",
    "# {0} - reading", "target.positive={0}: the tolerance must be more than 0; type half the width of the band",
    "# {0} - by heights", "# {1} - wanted", "target.rake=The height targets make a rake of {0}, but {1} is wanted: both cannot be met; change one of them."})
final class TargetTable extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int COLUMNS = 5;

    private record Line(ReadingId reading, JTextField value, JTextField tolerance, JLabel tells) {
    }

    private final JPanel grid = new JPanel(new GridBagLayout());
    private final WrapText remarks = new WrapText("", 1, Font.BOLD);
    private final transient List<Line> lines = new ArrayList<>();
    private transient Targets shown;
    private transient ReadingFormat shownFormat;
    private transient List<ReadingId> shownReadings = List.of();

    TargetTable() {
        super(new BorderLayout());
        add(grid, BorderLayout.CENTER);
        add(remarks, BorderLayout.SOUTH);
    }

    /** Shows the targets of the day anew where they changed since; what is being typed stays otherwise. */
    void show(DaySnapshot day) {
        List<ReadingId> readings = Aims.readings(day.car());
        boolean same = day.day().targets().equals(shown) && readings.equals(shownReadings) && shownFormat != null
                && day.units().equals(shownFormat.units());
        shown = day.day().targets();
        shownReadings = readings;
        shownFormat = day.format();
        if (!same) {
            build(day);
        }
        lines.forEach(l -> tells(l, day));
        remarks.setText(rake(day));
    }

    private void build(DaySnapshot day) {
        grid.removeAll();
        lines.clear();
        String[] heads = {Bundle.target_reading(), Bundle.target_value(), Bundle.target_tolerance(), Bundle.target_tells()};
        for (int i = 0; i < heads.length; i++) {
            grid.add(Looks.label(heads[i], 1, Font.BOLD), Looks.cell(i, 0, i == heads.length - 1 ? 1 : 0));
        }
        int row = 1;
        for (ReadingId id : shownReadings) {
            JLabel name = Looks.label(Texts.sentence(shownFormat.nameWithUnit(id)), 1, Font.PLAIN);
            Line line = new Line(id, field(Bundle.target_spokenValue(id.words())), field(Bundle.target_spokenTolerance(id.words())), new JLabel());
            name.setLabelFor(line.value());
            day.day().targets().of(id).ifPresent(t -> {
                line.value().setText(shownFormat.exact(id, t.value()));
                line.tolerance().setText(shownFormat.exact(id, t.tolerance()));
            });
            grid.add(name, cell(0, row));
            grid.add(line.value(), cell(1, row));
            grid.add(line.tolerance(), cell(2, row));
            grid.add(line.tells(), cell(3, row));
            lines.add(line);
            row++;
        }
        grid.revalidate();
        grid.repaint();
    }

    /** Under its head, close to the line above. */
    private static GridBagConstraints cell(int column, int row) {
        GridBagConstraints cell = Looks.cell(column, row, column == 3 ? 1 : 0);
        cell.insets.top = Looks.em(0.1);
        cell.insets.bottom = Looks.em(0.1);
        return cell;
    }

    private static JTextField field(String name) {
        JTextField field = Looks.field(COLUMNS, 1, Font.PLAIN);
        field.getAccessibleContext().setAccessibleName(name);
        return field;
    }

    private void tells(Line line, DaySnapshot day) {
        double u = day.status().reading(line.reading()).uncertainty();
        String tells = u > 0 ? Bundle.target_half(shownFormat.number(line.reading(), Aims.tells(u))) : "";
        Optional<Target> target = day.day().targets().of(line.reading());
        boolean finer = u > 0 && target.isPresent() && Aims.finerThanReadings(target.get().tolerance(), u);
        line.tells().setText(finer ? tells + "  " + Bundle.target_finer(Aims.readingsFor(target.get().tolerance(), u)) : tells);
        line.tells().setIcon(finer ? Mark.CLOSE.icon() : null);
    }

    private String rake(DaySnapshot day) {
        Optional<Target> wanted = day.day().targets().of(ReadingId.ofCar(ReadingKind.RAKE));
        OptionalDouble heights = Aims.rakeOfHeights(day.car(), day.day().targets());
        boolean clash = wanted.isPresent() && heights.isPresent() && !wanted.get().contains(heights.getAsDouble());
        ReadingId rake = ReadingId.ofCar(ReadingKind.RAKE);
        return clash ? Bundle.target_rake(shownFormat.text(rake, heights.getAsDouble()), shownFormat.text(rake, wanted.get().value())) : "";
    }

    /** Targets typed that differ from those of the day; empty where something cannot be read, which is then named. */
    Optional<Map<ReadingId, Target>> changed() {
        Map<ReadingId, Target> changed = new LinkedHashMap<>();
        List<String> problems = new ArrayList<>();
        for (Line line : lines) {
            String value = line.value().getText().strip();
            String tolerance = line.tolerance().getText().strip();
            if (value.isEmpty() && tolerance.isEmpty()) {
                continue;
            }
            if (value.isEmpty() || tolerance.isEmpty()) {
                problems.add(Bundle.target_both(line.reading().words()));
                continue;
            }
            OptionalDouble wanted = figure(line.reading(), value, problems);
            OptionalDouble half = figure(line.reading(), tolerance, problems);
            if (half.isPresent() && !(half.getAsDouble() > 0)) {
                problems.add(Bundle.target_positive(line.reading().words()));
            } else if (wanted.isPresent() && half.isPresent()) {
                put(changed, line, new Target(wanted.getAsDouble(), half.getAsDouble()));
            }
        }
        remarks.setText(String.join("\n", problems));
        return problems.isEmpty() ? Optional.of(changed) : Optional.empty();
    }

    /** A text as it was shown stands for the target as it was, digits that are not shown included. */
    private void put(Map<ReadingId, Target> changed, Line line, Target typed) {
        Optional<Target> before = shown.of(line.reading());
        boolean untouched = before.isPresent() && shownFormat.exact(line.reading(), before.get().value()).equals(line.value().getText().strip())
                && shownFormat.exact(line.reading(), before.get().tolerance()).equals(line.tolerance().getText().strip());
        if (!untouched) {
            changed.put(line.reading(), typed);
        }
    }

    private OptionalDouble figure(ReadingId reading, String text, List<String> problems) {
        try {
            return OptionalDouble.of(shownFormat.parse(reading, text));
        } catch (QuantityFormatException e) {
            problems.add(Bundle.form_problem(reading.words(), e.problem(), e.remedy()));
            return OptionalDouble.empty();
        }
    }

    void toFirst() {
        if (!lines.isEmpty()) {
            lines.get(0).value().requestFocusInWindow();
        }
    }
}
