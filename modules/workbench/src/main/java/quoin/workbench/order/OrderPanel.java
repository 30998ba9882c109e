package quoin.workbench.order;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Font;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.DefaultListModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.UIManager;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.WindowManager;
import quoin.logbook.Journal;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.Looks;
import quoin.workbench.NextStepCard;
import quoin.workbench.StageWindow;
import quoin.workbench.VerdictWords;
import quoin.workbench.WrapText;
import quoin.workflow.StageState;
import quoin.workflow.StageStatus;

/** The one next thing, and below it the stages in their order with where each stands and why. */
@Messages({
    "order.stages=Order of work",
    "# {0} - what the day is for", "# {1} - number", "order.part=This day: {0}. It leaves {1} {1,choice,0#points|1#point|1<points} unproved (Ctrl+J).",
    "# {0} - number", "# {1} - title", "order.title={0}  {1}",
    "# {0} - title", "# {1} - state", "# {2} - reasons", "order.spoken={0}, {1}. {2}",
    "order.lookOnly=Open to look at only: nothing is recorded.",
    "# {0} - number", "order.more=and {0} more"})
final class OrderPanel extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int MOST_REASONS = 3;

    private final transient CurrentDay current;
    private final NextStepCard card;
    private final WrapText part = new WrapText("", 1, Font.BOLD);
    private final DefaultListModel<StageStatus> model = new DefaultListModel<>();
    private final JList<StageStatus> list = new JList<>(model);
    private transient Optional<Journal> shownFile = Optional.empty();

    OrderPanel(CurrentDay current) {
        super(new BorderLayout(0, Looks.em(0.6)));
        this.current = current;
        this.card = new NextStepCard(current, StageWindow::bringToFront);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new StageLine());
        list.setName("order.stages");
        list.getAccessibleContext().setAccessibleName(Bundle.order_stages());
        Looks.onKey(list, KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), "toStage", this::toStage);
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                toStage();
            }
        });
        Looks.measureLinesWithWidth(list);
        JScrollPane scroll = new JScrollPane(list, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        scroll.setBorder(null);
        part.setBorder(Looks.padding(0, 0.8));
        add(Looks.column(card, part), BorderLayout.NORTH);
        add(scroll, BorderLayout.CENTER);
    }

    private void toStage() {
        StageStatus selected = list.getSelectedValue();
        if (selected != null) {
            StageWindow.bringToFront(selected.stage().id());
        }
    }

    /** Does what the card's button does. */
    void doNext() {
        card.press();
    }

    void dayChanged() {
        int selected = list.getSelectedIndex();
        model.clear();
        current.snapshot().ifPresentOrElse(this::show, card::showNothing);
        Optional<Journal> file = current.journal();
        if (!file.equals(shownFile)) {
            shownFile = file;
            current.snapshot().ifPresent(s -> WindowManager.getDefault()
                    .invokeWhenUIReady(() -> StageWindow.bringToFront(current.nextStep().orElse(s.status().next()))));
        }
        if (selected >= 0 && selected < model.size()) {
            list.setSelectedIndex(selected);
        }
    }

    void plansChanged() {
        current.snapshot().ifPresent(card::show);
    }

    private void show(DaySnapshot day) {
        card.show(day);
        part.setText(Stream.of(current.journal().filter(Journal::isReadOnly).map(j -> Bundle.order_lookOnly()),
                current.partDay().map(p -> Bundle.order_part(p.words(), p.notProved().size())))
                .flatMap(Optional::stream).collect(Collectors.joining("\n")));
        part.setVisible(!part.getText().isEmpty());
        day.status().stages().forEach(model::addElement);
    }

    void focusList() {
        list.requestFocusInWindow();
    }

    /** The reasons shown under a stage: none where it is signed, the first few otherwise. */
    static String reasons(StageStatus stage) {
        List<String> all = stage.reasons();
        if (stage.state() == StageState.SIGNED || all.isEmpty()) {
            return "";
        }
        if (stage.state() == StageState.WAITING) {
            return all.get(0);
        }
        List<String> first = all.subList(0, Math.min(MOST_REASONS, all.size()));
        return String.join("\n", first) + (all.size() > MOST_REASONS ? "\n" + Bundle.order_more(all.size() - MOST_REASONS) : "");
    }

    private final class StageLine implements ListCellRenderer<StageStatus> {
        private final JLabel title = Looks.label("", 1.15, Font.BOLD);
        private final JLabel state = Looks.label("", 1, Font.PLAIN);
        private final WrapText reasons = new WrapText("");
        private final JPanel line = new JPanel(new BorderLayout(Looks.em(0.5), Looks.em(0.1)));

        StageLine() {
            line.setBorder(Looks.padding(0.5, 0.8));
            JPanel head = new JPanel(new BorderLayout(Looks.em(0.5), 0));
            head.setOpaque(false);
            head.add(title, BorderLayout.CENTER);
            state.setHorizontalTextPosition(SwingConstants.TRAILING);
            line.add(head, BorderLayout.NORTH);
            line.add(Looks.column(state, reasons), BorderLayout.CENTER);
            words().setOpaque(false);
        }

        private JPanel words() {
            return (JPanel) line.getComponent(1);
        }

        @Override
        public Component getListCellRendererComponent(JList<? extends StageStatus> in, StageStatus stage, int index, boolean selected,
                boolean focused) {
            VerdictWords verdict = VerdictWords.of(stage.state());
            title.setText(Bundle.order_title(index + 1, stage.stage().title()));
            state.setIcon(verdict.mark().icon());
            state.setText(verdict.word());
            String why = reasons(stage);
            reasons.setText(why);
            reasons.setVisible(!why.isEmpty());
            line.setBackground(UIManager.getColor(selected ? "List.selectionBackground" : "List.background"));
            var foreground = UIManager.getColor(selected ? "List.selectionForeground" : "List.foreground");
            for (Component part : new Component[] {title, state, reasons}) {
                part.setForeground(foreground);
            }
            int width = Math.max(Looks.em(10), in.getWidth() - Looks.em(1.6));
            reasons.setSize(width, Short.MAX_VALUE);
            // Measured without ever being laid out: what the layouts remember of the line before has to go.
            words().invalidate();
            line.getAccessibleContext().setAccessibleName(Bundle.order_spoken(stage.stage().title(), verdict.word(), why));
            return line;
        }
    }
}
