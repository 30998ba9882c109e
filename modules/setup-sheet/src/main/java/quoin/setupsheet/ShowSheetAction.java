package quoin.setupsheet;

import java.awt.Dimension;
import java.awt.Font;
import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import java.awt.print.PrinterException;
import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.ZoneId;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.UIManager;
import org.openide.DialogDescriptor;
import org.openide.DialogDisplayer;
import org.openide.NotifyDescriptor;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionRegistration;
import org.openide.awt.Mnemonics;
import org.openide.filesystems.FileChooserBuilder;
import org.openide.util.NbBundle.Messages;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;

/** Shows the sheet of the open day; saves it as a text file or prints it. */
@ActionID(category = "Day", id = "quoin.setupsheet.ShowSheetAction")
@ActionRegistration(displayName = "#CTL_ShowSheet")
@ActionReference(path = "Menu/Day", position = 900, separatorBefore = 890)
@Messages({"CTL_ShowSheet=&Set-up Sheet...", "TITLE_Sheet=Set-up sheet", "BTN_Save=&Save as Text...", "BTN_Print=&Print...",
    "BTN_Close=&Close", "MSG_NoDay=No day is open. Open or begin a day first.", "LBL_Sheet=Set-up sheet as text",
    "# {0} - file", "# {1} - what went wrong",
    "MSG_NotSaved=The sheet could not be saved as {0}: {1}. Choose another folder.",
    "# {0} - what went wrong", "MSG_NotPrinted=The sheet was not printed: {0}."})
public final class ShowSheetAction implements ActionListener {

    private static final int ROWS = 36;
    private static final int COLUMNS = 82;

    @Override
    public void actionPerformed(ActionEvent event) {
        Optional<DaySnapshot> open = CurrentDay.inUse().snapshot();
        if (open.isEmpty()) {
            say(Bundle.MSG_NoDay(), NotifyDescriptor.INFORMATION_MESSAGE);
            return;
        }
        JTextArea text = new JTextArea(SheetText.of(open.get(), ZoneId.systemDefault()), ROWS, COLUMNS);
        text.setEditable(false);
        text.setCaretPosition(0);
        text.setFont(new Font(Font.MONOSPACED, Font.PLAIN, UIManager.getFont("TextArea.font").getSize()));
        text.getAccessibleContext().setAccessibleName(Bundle.LBL_Sheet());
        JButton save = button(Bundle.BTN_Save());
        JButton print = button(Bundle.BTN_Print());
        JButton close = button(Bundle.BTN_Close());
        save.addActionListener(e -> save(text.getText()));
        print.addActionListener(e -> print(text));
        JScrollPane scroll = new JScrollPane(text);
        scroll.setMinimumSize(new Dimension(0, 0));
        DialogDescriptor dialog = new DialogDescriptor(scroll, Bundle.TITLE_Sheet(), true, new Object[] {save, print, close}, close,
                DialogDescriptor.DEFAULT_ALIGN, null, null);
        dialog.setClosingOptions(new Object[] {close});
        DialogDisplayer.getDefault().notify(dialog);
    }

    private static JButton button(String words) {
        JButton button = new JButton();
        Mnemonics.setLocalizedText(button, words);
        return button;
    }

    private static void save(String text) {
        File file = new FileChooserBuilder(ShowSheetAction.class).setTitle(Bundle.TITLE_Sheet()).showSaveDialog();
        if (file == null) {
            return;
        }
        try {
            Files.writeString(file.toPath(), text, StandardCharsets.UTF_8);
        } catch (IOException e) {
            say(Bundle.MSG_NotSaved(file, e.getMessage()), NotifyDescriptor.ERROR_MESSAGE);
        }
    }

    private static void print(JTextArea text) {
        try {
            text.print();
        } catch (PrinterException e) {
            say(Bundle.MSG_NotPrinted(e.getMessage()), NotifyDescriptor.ERROR_MESSAGE);
        }
    }

    private static void say(String words, int type) {
        DialogDisplayer.getDefault().notify(new NotifyDescriptor.Message(words, type));
    }
}
