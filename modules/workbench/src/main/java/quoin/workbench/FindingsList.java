package quoin.workbench;

import java.awt.BorderLayout;
import java.awt.Font;
import java.util.List;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingConstants;
import org.openide.util.NbBundle.Messages;
import quoin.workflow.spi.Finding;

/** What the checks of a stage found, the gravest first. */
@Messages({
    "finding.none=Nothing found.",
    "finding.error=Wrong", "finding.warning=Look again", "finding.info=Good to know",
    "# {0} - level", "# {1} - words", "finding.line={0}: {1}",
    "# {0} - words", "# {1} - value", "finding.suggested={0} Did you mean {1}?"})
public final class FindingsList extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient BuiltFrom built = new BuiltFrom();

    /** One line: how grave, and the whole words. */
    private record Line(Finding.Level level, String words) {
    }

    public FindingsList() {
        super(new BorderLayout());
        setOpaque(false);
    }

    public void show(List<Finding> findings, ReadingFormat format) {
        List<Line> lines = findings.stream().sorted((a, b) -> b.level().compareTo(a.level()))
                .map(f -> new Line(f.level(), words(f, format))).toList();
        if (!built.isNew(lines)) {
            return;
        }
        removeAll();
        if (lines.isEmpty()) {
            add(new WrapText(Bundle.finding_none()));
        } else {
            add(Looks.column(lines.stream().map(FindingsList::line).toArray(JPanel[]::new)));
        }
        revalidate();
        repaint();
    }

    private static JPanel line(Line finding) {
        JPanel line = new JPanel(new BorderLayout(Looks.em(0.4), 0));
        line.setBorder(Looks.padding(0.1, 0));
        JLabel mark = new JLabel();
        mark.setIcon(finding.level() == Finding.Level.INFO ? Mark.OPEN.icon() : Mark.AGAIN.icon());
        mark.setVerticalAlignment(SwingConstants.TOP);
        line.add(mark, BorderLayout.LINE_START);
        int style = finding.level() == Finding.Level.ERROR ? Font.BOLD : Font.PLAIN;
        line.add(new WrapText(finding.words(), 1, style), BorderLayout.CENTER);
        return line;
    }

    /** "Look again: RF height does not fit the other three. Did you mean 62.5 mm?" */
    static String words(Finding finding, ReadingFormat format) {
        String level = switch (finding.level()) {
            case ERROR -> Bundle.finding_error();
            case WARNING -> Bundle.finding_warning();
            case INFO -> Bundle.finding_info();
        };
        String line = Bundle.finding_line(level, finding.words());
        if (finding.about().isPresent() && finding.suggested().isPresent()) {
            return Bundle.finding_suggested(line, format.text(finding.about().get(), finding.suggested().getAsDouble()));
        }
        return line;
    }
}
