package quoin.garage.form;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Frame;
import java.awt.Rectangle;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JDialog;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.WindowConstants;
import org.openide.DialogDisplayer;
import org.openide.NotifyDescriptor;
import org.openide.util.NbBundle.Messages;
import quoin.car.Car;
import quoin.garage.draft.CarDraft;
import quoin.logbook.JournalException;
import quoin.workbench.Looks;
import quoin.workbench.Say;

/** The car form in a window of its own. It closes when the car is on the disk, or when the racer says to drop what he typed. */
@Messages({
    "dialog.save=&Save the car",
    "dialog.cancel=Cancel",
    "dialog.dropTitle=Car not saved",
    "dialog.drop=What you typed has not been saved. Drop it?"})
public final class CarFormDialog extends JDialog {

    private static final long serialVersionUID = 1L;

    private final CarForm form;
    private final transient Consumer<Car> save;

    private CarFormDialog(Frame parent, String title, CarDraft draft, Consumer<Car> save) {
        super(parent, title, true);
        this.form = new CarForm(draft);
        this.save = save;
        setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        WindowAdapter events = new WindowAdapter() {
            private boolean begun;

            @Override
            public void windowClosing(WindowEvent e) {
                cancel();
            }

            @Override
            public void windowGainedFocus(WindowEvent e) {
                // Some window managers give the focus well after the window opened; without an owner every key would be lost.
                SwingUtilities.invokeLater(() -> {
                    if (!begun || getMostRecentFocusOwner() == null || getFocusOwner() == null) {
                        begun = true;
                        form.toFirstField();
                    }
                });
            }
        };
        addWindowListener(events);
        addWindowFocusListener(events);
        JPanel buttons = new JPanel(new FlowLayout(FlowLayout.TRAILING, Looks.em(0.7), Looks.em(0.6)));
        buttons.add(Looks.button(Bundle.dialog_save(), this::save));
        buttons.add(Looks.button(Bundle.dialog_cancel(), this::cancel));
        JPanel all = new JPanel(new BorderLayout());
        all.add(form, BorderLayout.CENTER);
        all.add(buttons, BorderLayout.SOUTH);
        Looks.onKey(all, KeyStroke.getKeyStroke(KeyEvent.VK_S, InputEvent.CTRL_DOWN_MASK), "save", this::save);
        Looks.onKey(all, KeyStroke.getKeyStroke(KeyEvent.VK_ESCAPE, 0), "cancel", this::cancel);
        setContentPane(all);
        Rectangle screen = parent.getGraphicsConfiguration().getBounds();
        setSize(new Dimension(Math.min(Looks.em(100), screen.width * 19 / 20), Math.min(Looks.em(68), screen.height * 9 / 10)));
        setLocationRelativeTo(parent);
    }

    /**
     * Shows the form and waits until it is closed.
     *
     * @param save saves the car; may throw {@link JournalException}, the form then stays open
     */
    public static void show(Frame parent, String title, CarDraft draft, Consumer<Car> save) {
        CarFormDialog dialog = new CarFormDialog(parent, title, draft, save);
        dialog.setVisible(true);
        dialog.dispose();
    }

    private void save() {
        Optional<Car> car = form.carOrFirstProblem();
        if (car.isEmpty()) {
            return;
        }
        try {
            save.accept(car.get());
            setVisible(false);
        } catch (JournalException e) {
            Say.message(e.getLocalizedMessage(), NotifyDescriptor.ERROR_MESSAGE);
        }
    }

    private void cancel() {
        if (form.isChanged()) {
            NotifyDescriptor ask = new NotifyDescriptor.Confirmation(Bundle.dialog_drop(), Bundle.dialog_dropTitle(),
                    NotifyDescriptor.YES_NO_OPTION);
            if (DialogDisplayer.getDefault().notify(ask) != NotifyDescriptor.YES_OPTION) {
                return;
            }
        }
        setVisible(false);
    }
}
