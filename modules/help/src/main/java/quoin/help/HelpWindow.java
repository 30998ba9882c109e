package quoin.help;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.event.KeyEvent;
import java.util.Locale;
import javax.swing.DefaultListModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import org.openide.awt.Mnemonics;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.TopComponent;
import org.openide.windows.WindowManager;
import quoin.workbench.AsideWindow;
import quoin.workbench.Looks;
import quoin.workbench.PlainListRenderer;
import quoin.workbench.Typing;

/** The pages of help beside a field to look for words. Escape goes back to where the racer was. */
@TopComponent.Description(preferredID = "help", iconBase = "quoin/workbench/icons/question-circle.svg",
        persistenceType = TopComponent.PERSISTENCE_NEVER)
@TopComponent.Registration(mode = "editor", openAtStartup = false, position = 900)
@Messages({"help.title=Help", "help.search=&Look for:", "help.none=No page holds these words.",
    "help.pages=Pages of help"})
public final class HelpWindow extends AsideWindow {

    private static final long serialVersionUID = 1L;
    private static final double LIST_EM = 16;

    private final transient HelpLibrary library = HelpLibrary.installed(Locale.getDefault());
    private final DefaultListModel<HelpPage> model = new DefaultListModel<>();
    private final JList<HelpPage> list = new JList<>(model);
    private final JTextField query = new JTextField();
    private final HelpPane pane = new HelpPane(this::show);
    private final JLabel none = Looks.label(Bundle.help_none(), 1, Font.PLAIN);
    private transient String mark = "";

    public HelpWindow() {
        super(Bundle.help_title());
        add(side(), BorderLayout.LINE_START);
        add(new JScrollPane(pane), BorderLayout.CENTER);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setName("help.pages");
        list.getAccessibleContext().setAccessibleName(Bundle.help_pages());
        list.setFont(Looks.font(1.1, Font.PLAIN));
        list.setCellRenderer(new TitleLine());
        list.addListSelectionListener(e -> showSelected());
        query.getDocument().addDocumentListener(new Typing(this::fill));
        query.addActionListener(e -> list.requestFocusInWindow());
        query.setName("help.query");
        Looks.onKey(query, KeyStroke.getKeyStroke(KeyEvent.VK_DOWN, 0), "toPages", list::requestFocusInWindow);
        fill();
    }

    private JPanel side() {
        JLabel label = Looks.label("", 1, Font.BOLD);
        Mnemonics.setLocalizedText(label, Bundle.help_search());
        label.setLabelFor(query);
        JPanel top = Looks.column(label, query, none);
        top.setBorder(Looks.padding(0.6, 0.6));
        JPanel side = new JPanel(new BorderLayout());
        side.add(top, BorderLayout.NORTH);
        side.add(new JScrollPane(list), BorderLayout.CENTER);
        side.setPreferredSize(new Dimension(Looks.em(LIST_EM), 0));
        return side;
    }

    /** Opens the window at a topic; a topic without a page of its own opens the first page. */
    static void open(HelpTopic topic) {
        if (WindowManager.getDefault().findTopComponent("help") instanceof HelpWindow window) {
            window.openFromHere();
            window.show(topic);
        }
    }

    private void show(HelpTopic topic) {
        query.setText("");
        HelpPage page = library.page(topic.page()).orElse(library.pages().get(0));
        mark = topic.mark();
        if (page.equals(list.getSelectedValue())) {
            showSelected();
        } else {
            list.setSelectedValue(page, true);
        }
    }

    private void fill() {
        model.clear();
        library.find(query.getText()).forEach(model::addElement);
        none.setVisible(model.isEmpty());
        if (!model.isEmpty()) {
            list.setSelectedIndex(0);
        }
    }

    private void showSelected() {
        if (list.getSelectedValue() != null) {
            pane.show(list.getSelectedValue(), mark);
            mark = "";
        }
    }

    @Override
    protected void componentActivated() {
        query.requestFocusInWindow();
    }

    private static final class TitleLine extends PlainListRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getListCellRendererComponent(JList<?> in, Object value, int index, boolean selected, boolean focused) {
            super.getListCellRendererComponent(in, ((HelpPage) value).title(), index, selected, focused);
            setBorder(Looks.padding(0.35, 0.6));
            return this;
        }
    }
}
