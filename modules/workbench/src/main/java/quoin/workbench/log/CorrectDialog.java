package quoin.workbench.log;

import java.awt.Font;
import java.awt.GridBagLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import org.openide.DialogDescriptor;
import org.openide.DialogDisplayer;
import org.openide.NotifyDescriptor;
import org.openide.util.NbBundle.Messages;
import quoin.logbook.Entry;
import quoin.workbench.DaySnapshot;
import quoin.workbench.Looks;
import quoin.workbench.WrapText;

/** Asks for the right figures of an entry; the old ones stay in the log, struck through. */
@Messages({
    "# {0} - number", "correct.title=Correct entry {0}",
    "correct.why=Why",
    "correct.hint=The old figures stay in the log, struck through."})
final class CorrectDialog {

    private static final int COLUMNS = 16;

    /**
     * What was typed.
     *
     * @param replacement what holds instead
     * @param why         the reason, or empty
     */
    record Answer(Entry replacement, String why) {
    }

    private final EditedEntry edited;
    private final DaySnapshot day;
    private final List<JTextField> fields = new ArrayList<>();
    private final JTextField why = new JTextField(COLUMNS);
    private final WrapText message = new WrapText(Bundle.correct_hint());

    CorrectDialog(EditedEntry edited, DaySnapshot day) {
        this.edited = edited;
        this.day = day;
    }

    /** Asks until it can be read or is cancelled. */
    Optional<Answer> ask() {
        JComponent form = form();
        while (true) {
            DialogDescriptor dialog = new DialogDescriptor(form, Bundle.correct_title(edited.entry().number()));
            if (DialogDisplayer.getDefault().notify(dialog) != NotifyDescriptor.OK_OPTION) {
                return Optional.empty();
            }
            try {
                Entry entry = edited.with(fields.stream().map(JTextField::getText).toList(), day);
                return Optional.of(new Answer(entry, why.getText().strip()));
            } catch (IllegalArgumentException e) {
                message.setText(e.getLocalizedMessage());
            }
        }
    }

    private JComponent form() {
        JPanel form = new JPanel(new GridBagLayout());
        form.setBorder(Looks.padding(0.8, 1));
        int row = 0;
        for (EditedEntry.Field field : edited.fields()) {
            JTextField text = new JTextField(field.text(), COLUMNS);
            fields.add(text);
            addLine(form, field.name(), text, row++);
        }
        addLine(form, Bundle.correct_why(), why, row++);
        var cell = Looks.cell(0, row, 1);
        cell.gridwidth = 2;
        form.add(message, cell);
        return form;
    }

    private static void addLine(JPanel form, String name, JTextField text, int row) {
        JLabel label = Looks.label(name, 1, Font.BOLD);
        label.setLabelFor(text);
        text.setFont(Looks.font(1.2, Font.PLAIN));
        text.getAccessibleContext().setAccessibleName(name);
        form.add(label, Looks.cell(0, row, 0));
        form.add(text, Looks.cell(1, row, 1));
    }
}
