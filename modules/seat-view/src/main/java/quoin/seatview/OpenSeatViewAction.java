package quoin.seatview;

import java.awt.GraphicsConfiguration;
import java.awt.GraphicsEnvironment;
import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import javax.swing.JFrame;
import javax.swing.WindowConstants;
import org.openide.NotifyDescriptor;
import org.openide.awt.ActionID;
import org.openide.awt.ActionReference;
import org.openide.awt.ActionReferences;
import org.openide.awt.ActionRegistration;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.WindowManager;
import quoin.workbench.CurrentDay;
import quoin.workbench.Say;

/** Opens the seat view on the whole screen the main window is on. */
@ActionID(category = "Day", id = "quoin.seatview.OpenSeatViewAction")
@ActionRegistration(displayName = "#CTL_SeatView", iconBase = "quoin/workbench/icons/fullscreen.svg")
@ActionReferences({
    @ActionReference(path = "Menu/Day", position = 150),
    @ActionReference(path = "Shortcuts", name = "F11")})
@Messages({"CTL_SeatView=Seat &View", "TITLE_SeatView=Quoin seat view"})
public final class OpenSeatViewAction implements ActionListener {

    @Override
    public void actionPerformed(ActionEvent event) {
        CurrentDay current = CurrentDay.inUse();
        if (current.snapshot().isEmpty()) {
            Say.message(Bundle.seat_noDay(), NotifyDescriptor.INFORMATION_MESSAGE);
            return;
        }
        open(current);
    }

    private static void open(CurrentDay current) {
        SeatSettings settings = new SeatSettings();
        GraphicsConfiguration screen = WindowManager.getDefault().getMainWindow().getGraphicsConfiguration();
        SeatPanel panel = new SeatPanel(settings.scale(screen));
        panel.whiteOnBlack(settings.whiteOnBlack());
        JFrame frame = new JFrame(Bundle.TITLE_SeatView(), screen);
        frame.setUndecorated(true);
        frame.setDefaultCloseOperation(WindowConstants.DISPOSE_ON_CLOSE);
        frame.setContentPane(panel);
        frame.setBounds(frame.getGraphicsConfiguration().getBounds());
        SeatView view = new SeatView(current, panel, settings.sound(), frame::dispose);
        Runnable onChange = view::dayChanged;
        KeepAwake awake = new KeepAwake();
        frame.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosed(WindowEvent e) {
                current.removeListener(onChange);
                current.removePlanListener(onChange);
                awake.stop();
                settings.save(screen, panel.scale(), panel.isWhiteOnBlack(), view.heard());
                WindowManager.getDefault().getMainWindow().toFront();
            }
        });
        current.addListener(onChange);
        current.addPlanListener(onChange);
        panel.addKeyListener(view);
        view.dayChanged();
        awake.start();
        if (GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices().length == 1
                && frame.getGraphicsConfiguration().getDevice().isFullScreenSupported()) {
            frame.setExtendedState(JFrame.MAXIMIZED_BOTH);
        }
        frame.setVisible(true);
        panel.requestFocusInWindow();
    }
}
