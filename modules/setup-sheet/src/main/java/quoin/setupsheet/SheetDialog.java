package quoin.setupsheet;

import java.awt.BorderLayout;
import java.awt.EventQueue;
import java.awt.FlowLayout;
import java.awt.Font;
import java.awt.event.ActionListener;
import java.awt.event.KeyEvent;
import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.JScrollBar;
import javax.swing.JScrollPane;
import javax.swing.KeyStroke;
import org.openide.DialogDescriptor;
import org.openide.DialogDisplayer;
import org.openide.NotifyDescriptor;
import org.openide.awt.Mnemonics;
import org.openide.util.NbBundle.Messages;
import org.openide.util.RequestProcessor;
import quoin.setupsheet.content.LastTime;
import quoin.setupsheet.page.Face;
import quoin.setupsheet.page.Painter;
import quoin.setupsheet.page.Paper;
import quoin.workbench.Looks;
import quoin.workbench.SaveFile;
import quoin.workbench.Say;

/** The sheet as it comes out of the printer, to look at, save and print. */
@Messages({"TITLE_Sheet=Set-up sheet", "BTN_SavePdf=Save as &PDF...", "BTN_SaveText=Save as &text...", "BTN_Print=P&rint...",
    "BTN_Close=&Close", "BTN_Filled=&Day as it stands", "BTN_Blank=&Blank, to fill in by hand", "BTN_A4=A&4", "BTN_Letter=&Letter",
    "BTN_LastTime=Last time, &now, change",
    "LBL_NoLastTime=This car was not read on an earlier day. Arrow keys scroll, + and - make it larger and smaller",
    "LBL_Sheet=Set-up sheet as printed", "LBL_Scroll=Arrow keys scroll, + and - make it larger and smaller",
    "FORM_Pdf=As printed (*.pdf)", "FORM_Text=Plain text (*.txt)",
    "# {0} - what went wrong",
    "MSG_NotPrinted=The sheet was not printed: {0}. Save it as PDF and print that instead."})
final class SheetDialog {

    private static final double ZOOM_STEP = 1.25;
    private static final RequestProcessor PRINTER = new RequestProcessor("set-up sheet print", 1);

    private final SetupSheet sheet;
    private final Face face;
    private final PagePanel view;
    private final JLabel note = Looks.label(Bundle.LBL_Scroll(), 1, Font.PLAIN);
    private final JRadioButton filled = radio(Bundle.BTN_Filled());
    private final JRadioButton blank = radio(Bundle.BTN_Blank());
    private final JRadioButton change = radio(Bundle.BTN_LastTime());
    private final JRadioButton a4 = radio(Bundle.BTN_A4());
    private final JRadioButton letter = radio(Bundle.BTN_Letter());

    private Optional<LastTime> last = Optional.empty();

    /** Which page is shown first. */
    enum What { DAY, LAST_TIME }

    /** What letters are laid out and drawn with; made beside the event thread, as reading a typeface takes a while. */
    record Letters(Face face, Painter painter) {

        static Letters read() {
            return new Letters(new Face(), new Painter());
        }
    }

    SheetDialog(SetupSheet sheet, Letters letters) {
        this.sheet = sheet;
        this.face = letters.face();
        this.view = new PagePanel(letters.painter());
        filled.setSelected(true);
        change.setEnabled(false);
        (Paper.usual(Locale.getDefault()) == Paper.A4 ? a4 : letter).setSelected(true);
    }

    void show(What what) {
        JPanel content = new JPanel(new BorderLayout(0, Looks.em(0.4)));
        content.add(choices(), BorderLayout.NORTH);
        JScrollPane scroll = new JScrollPane(view);
        content.add(scroll, BorderLayout.CENTER);
        content.setBorder(Looks.padding(0.5, 0.8));
        view.getAccessibleContext().setAccessibleName(Bundle.LBL_Sheet());
        keys(content, scroll);
        refresh();
        findLastTime(what == What.LAST_TIME);
        JButton pdf = button(Bundle.BTN_SavePdf());
        JButton text = button(Bundle.BTN_SaveText());
        JButton print = button(Bundle.BTN_Print());
        JButton close = button(Bundle.BTN_Close());
        pdf.addActionListener(e -> save(Bundle.FORM_Pdf(), "pdf", () -> sheet.pdf(view.pages())));
        text.addActionListener(e -> save(Bundle.FORM_Text(), "txt", sheet::text));
        print.addActionListener(e -> print());
        DialogDescriptor dialog = new DialogDescriptor(content, Bundle.TITLE_Sheet(), true, new Object[] {pdf, print, text, close}, close,
                DialogDescriptor.DEFAULT_ALIGN, null, null);
        dialog.setClosingOptions(new Object[] {close});
        DialogDisplayer.getDefault().notify(dialog);
    }

    /** Other days are read beside the event thread; the page can be chosen once they are. */
    private void findLastTime(boolean thenShow) {
        PRINTER.post(() -> {
            Optional<LastTime> found = sheet.lastTime();
            EventQueue.invokeLater(() -> {
                last = found;
                change.setEnabled(found.isPresent());
                if (found.isEmpty()) {
                    note.setText(Bundle.LBL_NoLastTime());
                } else if (thenShow) {
                    change.doClick();
                }
            });
        });
    }

    private JComponent choices() {
        JPanel panel = new JPanel(new FlowLayout(FlowLayout.LEADING, Looks.em(0.6), 0));
        group(panel, filled, blank, change);
        group(panel, a4, letter);
        return Looks.column(panel, note);
    }

    private void group(JPanel panel, JRadioButton... buttons) {
        ButtonGroup group = new ButtonGroup();
        ActionListener again = e -> refresh();
        for (JRadioButton button : buttons) {
            group.add(button);
            panel.add(button);
            button.addActionListener(again);
        }
    }

    private void keys(JComponent where, JScrollPane scroll) {
        JScrollBar bar = scroll.getVerticalScrollBar();
        scroll(where, bar, KeyEvent.VK_DOWN, 1);
        scroll(where, bar, KeyEvent.VK_UP, -1);
        scroll(where, bar, KeyEvent.VK_PAGE_DOWN, 10);
        scroll(where, bar, KeyEvent.VK_PAGE_UP, -10);
        for (char larger : new char[] {'+', '='}) {
            Looks.onKey(where, KeyStroke.getKeyStroke(larger), "larger", () -> view.zoom(ZOOM_STEP));
        }
        Looks.onKey(where, KeyStroke.getKeyStroke('-'), "smaller", () -> view.zoom(1 / ZOOM_STEP));
    }

    private static void scroll(JComponent where, JScrollBar bar, int key, int lines) {
        Looks.onKey(where, KeyStroke.getKeyStroke(key, 0), "scroll" + key, () -> bar.setValue(bar.getValue() + lines * Looks.em(3)));
    }

    private Paper paper() {
        return letter.isSelected() ? Paper.LETTER : Paper.A4;
    }

    private void refresh() {
        view.show(change.isSelected() && last.isPresent() ? sheet.changePages(face, paper(), last.get())
                : sheet.pages(face, paper(), blank.isSelected()));
    }

    private static JRadioButton radio(String words) {
        JRadioButton button = new JRadioButton();
        Mnemonics.setLocalizedText(button, words);
        return button;
    }

    private static JButton button(String words) {
        JButton button = new JButton();
        Mnemonics.setLocalizedText(button, words);
        return button;
    }

    private static void save(String words, String extension, Supplier<byte[]> contents) {
        SaveFile.ask(SheetDialog.class, Bundle.TITLE_Sheet(), List.of(new SaveFile.Form(words, extension, contents)));
    }

    private void print() {
        PrinterJob job = PrinterJob.getPrinterJob();
        job.setJobName(Bundle.TITLE_Sheet());
        job.setPrintable(view.painter().printable(view.pages()), Painter.format(job, paper()));
        try {
            if (job.printDialog()) {
                PRINTER.post(() -> send(job));
            }
        } catch (RuntimeException e) {
            Say.message(Bundle.MSG_NotPrinted(e.getLocalizedMessage()), NotifyDescriptor.ERROR_MESSAGE);
        }
    }

    private static void send(PrinterJob job) {
        try {
            job.print();
        } catch (PrinterException | RuntimeException e) {
            Say.later(Bundle.MSG_NotPrinted(e.getLocalizedMessage()), NotifyDescriptor.ERROR_MESSAGE);
        }
    }
}
