package quoin.garage.form;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.DefaultListModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import org.openide.util.NbBundle.Messages;
import quoin.garage.draft.Remark;
import quoin.workbench.InertText;
import quoin.workbench.Looks;
import quoin.workbench.PlainListRenderer;

/** What is wrong or doubtful; Enter or a click goes to the field. */
@Messages({
    "remarks.none=No remarks: the car can be saved.",
    "# {0} - number", "remarks.problems={0,choice,1#One thing keeps|1<{0} things keep} the car from being saved.",
    "# {0} - number", "remarks.warnings=The car can be saved; {0,choice,1#one figure asks|1<{0} figures ask} for a second look.",
    "# {0} - sentence", "remarks.problem=\u2715 {0}",
    "# {0} - sentence", "remarks.warning=? {0}"})
final class RemarkList extends JPanel {

    private static final long serialVersionUID = 1L;

    private final DefaultListModel<Remark> model = new DefaultListModel<>();
    private final JList<Remark> list = new JList<>(model);
    private final JLabel heading = Looks.label("", 1, Font.BOLD);
    private final transient Consumer<Remark> jump;

    RemarkList(Consumer<Remark> jump) {
        super(new BorderLayout());
        this.jump = jump;
        heading.setBorder(Looks.padding(0.3, 0.9));
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.getAccessibleContext().setAccessibleName(Bundle.form_remarks());
        list.setCellRenderer(new Renderer());
        Looks.onKey(list, KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), "jump", this::jump);
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                jump();
            }
        });
        JScrollPane scroll = new JScrollPane(list);
        scroll.setPreferredSize(new Dimension(Looks.em(30), Looks.em(7.5)));
        add(heading, BorderLayout.NORTH);
        add(scroll, BorderLayout.CENTER);
    }

    void show(List<Remark> remarks) {
        List<Remark> sorted = remarks.stream().sorted(Comparator.comparing(Remark::level)).toList();
        long problems = remarks.stream().filter(r -> r.level() == Remark.Level.PROBLEM).count();
        heading.setText(problems > 0 ? Bundle.remarks_problems(problems)
                : remarks.isEmpty() ? Bundle.remarks_none() : Bundle.remarks_warnings(remarks.size()));
        if (!sorted.equals(Collections.list(model.elements()))) {
            model.clear();
            sorted.forEach(model::addElement);
        }
    }

    private void jump() {
        if (list.getSelectedValue() != null) {
            jump.accept(list.getSelectedValue());
        }
    }

    /** Goes to the remark after the selected one. */
    void next() {
        if (!model.isEmpty()) {
            int index = (list.getSelectedIndex() + 1) % model.size();
            list.setSelectedIndex(index);
            list.ensureIndexIsVisible(index);
            jump();
        }
    }

    private static final class Renderer extends PlainListRenderer {

        private static final long serialVersionUID = 1L;

        @Override
        public Component getListCellRendererComponent(JList<?> in, Object value, int index, boolean selected, boolean focused) {
            Remark remark = (Remark) value;
            String words = remark.level() == Remark.Level.PROBLEM ? Bundle.remarks_problem(remark.sentence())
                    : Bundle.remarks_warning(remark.sentence());
            super.getListCellRendererComponent(in, words, index, selected, focused);
            setBorder(Looks.padding(0.2, 0.9));
            setToolTipText(InertText.plain(words));
            return this;
        }
    }
}
