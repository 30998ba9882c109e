package quoin.curves;

import java.awt.BorderLayout;
import java.awt.Font;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JPanel;
import org.openide.util.NbBundle.Messages;
import quoin.curves.draw.MeasuredToe;
import quoin.curves.set.AxleGeometry;
import quoin.workbench.Looks;
import quoin.workbench.WrapText;

/** What stands in place of the curves where there are none: why, and what to do. */
@Messages({
    "missing.none=No day is open", "missing.none.do=Open a day or begin one (Ctrl+O, Ctrl+N); its car's curves are drawn here.",
    "# {0} - type", "missing.hardPoints=No curves: \"{0}\" has no hard points",
    "missing.hardPoints.do=What one turn and one mm do is known of this axle, not where its joints are, so there is nothing to draw."
        + " Measure the joints from the wheel centre line and the ground, then edit the car (Ctrl+E), page Suspension: choose the"
        + " type it is built as and type the points. Plans go on with what was measured until then.",
    "# {0} - type", "missing.type=No curves: the suspension type \"{0}\" is not installed",
    "missing.type.do=Its figures are kept in the file as they are. Install its plug-in by Tools, Plugins, or choose another type in"
        + " the car form (Ctrl+E), page Suspension.",
    "missing.incomplete=No curves: the hard points are not complete",
    "# {0} - fields", "missing.incomplete.do={0}. Edit the car (Ctrl+E), page Suspension, and type what is missing.",
    "missing.impossible=No curves: these hard points make no suspension",
    "# {0} - why", "missing.impossible.do={0}. Check the point in the car form (Ctrl+E), page Suspension.",
    "# {0} - corners", "missing.measured=Bump steer of {0} was measured and is kept; it is drawn here once there is a curve to lay it over.",
    "missing.example=Show an e&xample"})
final class MissingCurves extends JPanel {

    private static final long serialVersionUID = 1L;

    private final WrapText heading = new WrapText("", Looks.HEADING, Font.BOLD);
    private final WrapText remedy = new WrapText("");
    private final WrapText measured = new WrapText("");
    private final JButton example;

    /** @param showExample shows curves of made-up hard points */
    MissingCurves(Runnable showExample) {
        super(new BorderLayout());
        example = Looks.button(Bundle.missing_example(), showExample);
        JPanel buttons = new JPanel(new BorderLayout());
        buttons.add(example, BorderLayout.LINE_START);
        buttons.setBorder(Looks.padding(0.8, 0));
        JPanel words = Looks.column(heading, remedy, measured, buttons);
        words.setBorder(Looks.padding(1.5, 1.5));
        add(words, BorderLayout.NORTH);
    }

    void showNoDay() {
        heading.setText(Bundle.missing_none());
        remedy.setText(Bundle.missing_none_do());
        measured.setText("");
        example.setVisible(false);
    }

    void show(AxleGeometry.Missing missing, List<MeasuredToe> points) {
        heading.setText(switch (missing.reason()) {
            case NO_HARD_POINTS -> Bundle.missing_hardPoints(missing.words());
            case NOT_INSTALLED -> Bundle.missing_type(missing.words());
            case INCOMPLETE -> Bundle.missing_incomplete();
            case IMPOSSIBLE -> Bundle.missing_impossible();
        });
        remedy.setText(switch (missing.reason()) {
            case NO_HARD_POINTS -> Bundle.missing_hardPoints_do();
            case NOT_INSTALLED -> Bundle.missing_type_do();
            case INCOMPLETE -> Bundle.missing_incomplete_do(missing.words());
            case IMPOSSIBLE -> Bundle.missing_impossible_do(missing.words());
        });
        measured.setText(points.isEmpty() ? "" : Bundle.missing_measured(String.join(", ",
                points.stream().map(p -> p.corner().words()).toList())));
        example.setVisible(true);
    }
}
