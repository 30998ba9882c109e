package quoin.garage.form;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.EventQueue;
import java.awt.KeyboardFocusManager;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.DefaultListModel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import org.openide.util.NbBundle.Messages;
import quoin.car.Car;
import quoin.garage.draft.Assumed;
import quoin.garage.draft.CarDraft;
import quoin.garage.draft.DraftResult;
import quoin.garage.draft.Field;
import quoin.garage.draft.Remark;
import quoin.garage.draft.Section;
import quoin.workbench.Looks;
import quoin.workbench.WrapText;

/**
 * The car form: pages at the left, the fields of one page, a line of help, and what is wrong below. Ctrl+Page Down and Up
 * turn the page, Enter goes to the next field, F8 to the next remark, and nothing typed is ever changed by the form.
 */
@Messages({
    "form.pages=Pages",
    "form.remarks=To look at",
    "form.keys=Enter: next field. Ctrl+Page Down: next page. F8: next thing to look at. Ctrl+S: save."})
public final class CarForm extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int READING_DELAY_MS = 120;

    private final DefaultListModel<PageLine> pages = new DefaultListModel<>();
    private final JList<PageLine> pageList = new JList<>(pages);
    private final RemarkList remarks = new RemarkList(this::toField);
    private final WrapText help = new WrapText(Bundle.form_keys());
    private final JScrollPane middle = new JScrollPane();
    private final Timer reading = new Timer(READING_DELAY_MS, e -> read());
    private final transient CarDraft opened;
    private transient CarDraft draft;
    private transient DraftResult result;
    private transient PagePanel page;
    private String shownPage = "";

    public CarForm(CarDraft draft) {
        super(new BorderLayout());
        this.opened = draft;
        this.draft = draft;
        reading.setRepeats(false);
        pageList.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        pageList.getAccessibleContext().setAccessibleName(Bundle.form_pages());
        pageList.setCellRenderer(new PageLine.Renderer());
        pageList.setBorder(Looks.padding(0.4, 0.3));
        pageList.addListSelectionListener(e -> show(pageList.getSelectedValue()));
        JScrollPane left = new JScrollPane(pageList);
        left.setPreferredSize(new Dimension(Looks.em(17), Looks.em(20)));
        middle.setBorder(null);
        middle.getVerticalScrollBar().setUnitIncrement(Looks.em(2));
        JPanel below = new JPanel(new BorderLayout());
        help.setBorder(Looks.padding(0.4, 0.9));
        help.setRows(2);
        below.add(help, BorderLayout.NORTH);
        below.add(remarks, BorderLayout.CENTER);
        add(left, BorderLayout.LINE_START);
        add(middle, BorderLayout.CENTER);
        add(below, BorderLayout.SOUTH);
        Looks.onKey(this, KeyStroke.getKeyStroke(KeyEvent.VK_PAGE_DOWN, InputEvent.CTRL_DOWN_MASK), "nextPage", () -> turn(1));
        Looks.onKey(this, KeyStroke.getKeyStroke(KeyEvent.VK_PAGE_UP, InputEvent.CTRL_DOWN_MASK), "lastPage", () -> turn(-1));
        Looks.onKey(this, KeyStroke.getKeyStroke(KeyEvent.VK_F8, 0), "nextRemark", remarks::next);
        read();
        pageList.setSelectedIndex(0);
    }

    /** True where something was typed that is not saved. */
    public boolean isChanged() {
        return draft.differsFrom(opened);
    }

    /** The car as typed; empty, with the caret in the first field that keeps it from being saved, where it cannot be read. */
    public Optional<Car> carOrFirstProblem() {
        read();
        if (!result.problems().isEmpty()) {
            toField(result.problems().get(0).path());
        }
        return result.car();
    }

    /** Puts the caret into the first field of the page. */
    public void toFirstField() {
        if (page != null) {
            page.toFirstField();
        }
    }

    FieldEditor editor(Field field) {
        return new FieldEditor(field, draft.text(field.path()), this::typed, f -> help.setText(helpOf(f)));
    }

    private static String helpOf(Field field) {
        return field.help().isEmpty() ? field.label() : field.label() + ": " + field.help();
    }

    private void typed(String path, String text) {
        draft = draft.with(path, text);
        reading.restart();
        String shape = shape();
        if (!shape.equals(shownPage)) {
            // rows came or went: the page is built anew around the field, once its own event is over
            EventQueue.invokeLater(() -> rebuild(path));
        }
    }

    void copyLeftToRight() {
        draft = draft.copyLeftToRight();
        refresh("");
    }

    void addPoint() {
        draft = draft.addHeightPoint();
        refresh(lastField("heightPoints."));
    }

    void addMass() {
        draft = draft.addMass();
        refresh(lastField("masses.known."));
    }

    private String lastField(String start) {
        return selected().stream().flatMap(Section::fields).map(Field::path).filter(p -> p.startsWith(start) && p.endsWith(".name"))
                .reduce("", (first, second) -> second);
    }

    void remove(boolean point, int number) {
        draft = point ? draft.removeHeightPoint(number) : draft.removeMass(number);
        refresh("");
    }

    private void refresh(String path) {
        rebuild(path);
        read();
    }

    private void rebuild(String path) {
        shownPage = "";
        show(pageList.getSelectedValue());
        if (path.isEmpty() || !page.toField(path)) {
            toFirstField();
        }
    }

    private Optional<Section> selected() {
        PageLine line = pageList.getSelectedValue();
        return line == null ? Optional.empty() : draft.sections().stream().filter(s -> s.key().equals(line.key())).findFirst();
    }

    /** Names every field of the page: another name means that it has to be built anew. */
    private String shape() {
        return selected().map(s -> s.key() + s.fields().map(Field::path).toList()).orElse("assumed");
    }

    private void show(PageLine line) {
        String shape = shape();
        if (line == null || shape.equals(shownPage)) {
            return;
        }
        shownPage = shape;
        Optional<Section> section = selected();
        if (section.isPresent()) {
            page = new PagePanel(this, section.get());
            middle.setViewportView(page);
        } else {
            page = null;
            middle.setViewportView(new AssumedPanel(result.assumed(), this::toField));
        }
        help.setText(Bundle.form_keys());
        mark();
    }

    private void read() {
        reading.stop();
        result = draft.read();
        remarks.show(result.remarks());
        List<PageLine> lines = PageLine.of(draft.sections(), result);
        if (pages.size() != lines.size()) {
            lines.forEach(pages::addElement);
        } else {
            for (int i = 0; i < lines.size(); i++) {
                if (!lines.get(i).equals(pages.get(i))) {
                    pages.set(i, lines.get(i));
                }
            }
        }
        if (page == null && pageList.getSelectedValue() != null) {
            middle.setViewportView(new AssumedPanel(result.assumed(), this::toField));
        }
        mark();
    }

    private void mark() {
        if (page == null) {
            return;
        }
        for (FieldEditor editor : page.editors()) {
            String path = editor.field().path();
            editor.mark(result.remarks().stream().filter(r -> r.path().equals(path)).findFirst(),
                    result.assumed().stream().filter(a -> a.path().equals(Optional.of(path))).map(Assumed::value).findFirst());
        }
    }

    /** Shows the page of a field and puts the caret into it. */
    private void toField(String path) {
        List<Section> sections = draft.sections();
        for (int i = 0; i < sections.size(); i++) {
            if (sections.get(i).fields().anyMatch(f -> f.path().equals(path))) {
                pageList.setSelectedIndex(i);
                page.toField(path);
                return;
            }
        }
    }

    private void toField(Remark remark) {
        toField(remark.path());
    }

    private void toField(Assumed assumed) {
        assumed.path().ifPresent(this::toField);
    }

    private void turn(int step) {
        int to = Math.floorMod(pageList.getSelectedIndex() + step, pages.size());
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        boolean inList = owner != null && SwingUtilities.isDescendingFrom(owner, pageList);
        pageList.setSelectedIndex(to);
        pageList.ensureIndexIsVisible(to);
        if (page == null || inList) {
            pageList.requestFocusInWindow();
        } else {
            page.toFirstField();
        }
    }
}
