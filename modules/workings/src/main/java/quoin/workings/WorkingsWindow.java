package quoin.workings;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.DefaultListModel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.TopComponent;
import org.openide.windows.WindowManager;
import quoin.workbench.AsideWindow;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.Looks;
import quoin.workbench.PlainListRenderer;
import quoin.workbench.WrapText;

/** The figures of the stage the racer came from, and how the chosen one is computed. Escape goes back. */
@TopComponent.Description(preferredID = "workings", iconBase = "quoin/workbench/icons/calculator.svg",
        persistenceType = TopComponent.PERSISTENCE_NEVER)
@TopComponent.Registration(mode = "editor", openAtStartup = false, position = 910)
@Messages({"workings.title=How it is computed", "workings.figures=Figures",
    "workings.none=Nothing was read in this stage yet.", "# {0} - name", "# {1} - value", "workings.line={0}: {1}"})
public final class WorkingsWindow extends AsideWindow {

    private static final long serialVersionUID = 1L;
    private static final double LIST_EM = 24;
    private static final String STAGE = "stage-";

    private final transient CurrentDay current = CurrentDay.inUse();
    private final transient Runnable onChange = this::dayChanged;
    private final DefaultListModel<Working> model = new DefaultListModel<>();
    private final JList<Working> list = new JList<>(model);
    private final JPanel detail = new JPanel(new BorderLayout());
    private String stageId = "";

    public WorkingsWindow() {
        super(Bundle.workings_title());
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setName("workings.figures");
        list.getAccessibleContext().setAccessibleName(Bundle.workings_figures());
        list.setFont(Looks.font(1.1, Font.PLAIN));
        list.setCellRenderer(new FigureLine());
        list.addListSelectionListener(e -> showSelected());
        JScrollPane left = new JScrollPane(list);
        left.setPreferredSize(new Dimension(Looks.em(LIST_EM), 0));
        detail.setBorder(Looks.padding(0.8, 1));
        add(left, BorderLayout.LINE_START);
        add(new JScrollPane(detail, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER), BorderLayout.CENTER);
    }

    /**
     * Opens the window for the stage in front, or the stage that is worked on.
     *
     * @param field name of the field the racer asks about, such as "reading.load.LF"; empty for the first figure
     */
    static void open(Optional<String> field) {
        if (!(WindowManager.getDefault().findTopComponent("workings") instanceof WorkingsWindow window)) {
            return;
        }
        Optional<TopComponent> from = window.openFromHere();
        if (from.isPresent() || window.stageId.isEmpty()) {
            window.stageId = window.stageOf(from);
        }
        window.dayChanged();
        window.select(field);
    }

    /** The stage of a window, else the stage that is worked on. */
    private String stageOf(Optional<TopComponent> window) {
        return window.map(WindowManager.getDefault()::findTopComponentID).filter(id -> id.startsWith(STAGE))
                .map(id -> id.substring(STAGE.length()))
                .orElse(current.snapshot().map(s -> s.status().next().stageId()).orElse(""));
    }

    private void select(Optional<String> field) {
        for (int i = 0; i < model.size(); i++) {
            if (field.filter(model.get(i).field()::equals).isPresent()) {
                list.setSelectedIndex(i);
                list.ensureIndexIsVisible(i);
            }
        }
    }

    private void dayChanged() {
        int selected = Math.max(0, list.getSelectedIndex());
        List<Working> all = current.snapshot().map((DaySnapshot s) -> Workings.of(s, stageId)).orElse(List.of());
        model.clear();
        all.forEach(model::addElement);
        if (selected < model.size()) {
            list.setSelectedIndex(selected);
        }
        showSelected();
    }

    private void showSelected() {
        Working chosen = list.getSelectedValue();
        detail.removeAll();
        List<Component> parts = new ArrayList<>();
        if (chosen == null) {
            parts.add(new WrapText(Bundle.workings_none(), 1.2, Font.PLAIN));
        } else {
            parts.add(new WrapText(Bundle.workings_line(chosen.title(), chosen.result()), 1.5, Font.BOLD));
            for (String line : chosen.lines()) {
                WrapText text = new WrapText(line, 1.2, Font.PLAIN);
                text.setBorder(Looks.padding(0.3, 0));
                parts.add(text);
            }
        }
        detail.add(Looks.column(parts.toArray(Component[]::new)), BorderLayout.NORTH);
        detail.revalidate();
        detail.repaint();
    }

    @Override
    protected void componentOpened() {
        current.addListener(onChange);
    }

    @Override
    protected void componentClosed() {
        current.removeListener(onChange);
    }

    @Override
    protected void componentActivated() {
        list.requestFocusInWindow();
    }

    private static final class FigureLine extends PlainListRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getListCellRendererComponent(JList<?> in, Object value, int index, boolean selected, boolean focused) {
            Working working = (Working) value;
            super.getListCellRendererComponent(in, Bundle.workings_line(working.title(), working.result()), index, selected, focused);
            setBorder(Looks.padding(0.3, 0.6));
            return this;
        }
    }
}
