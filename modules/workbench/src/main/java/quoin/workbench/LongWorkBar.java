package quoin.workbench;

import java.awt.BorderLayout;
import java.awt.Font;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import javax.swing.Timer;
import org.openide.util.NbBundle.Messages;

/** Shows that something is being worked out, how far it is, and a button that stops it; only where it takes longer than a blink. */
@Messages("work.stop=Stop")
public final class LongWorkBar extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int BLINK_MS = 300;
    private static final int STEPS = 1000;

    private final JProgressBar bar = new JProgressBar(0, STEPS);
    private final Timer late = new Timer(BLINK_MS, e -> setVisible(true));

    /**
     * @param words what is being worked out
     * @param stop  what the button does
     */
    public LongWorkBar(String words, Runnable stop) {
        super(new BorderLayout(Looks.em(0.5), 0));
        late.setRepeats(false);
        JLabel name = Looks.label(words, 1, Font.PLAIN);
        name.setLabelFor(bar);
        bar.getAccessibleContext().setAccessibleName(words);
        JButton button = Looks.button(Bundle.work_stop(), stop);
        add(name, BorderLayout.LINE_START);
        add(bar, BorderLayout.CENTER);
        add(button, BorderLayout.LINE_END);
        setBorder(Looks.padding(0.2, 0));
        setVisible(false);
    }

    /** Shows or hides the bar. */
    public void show(LongWork<?> work) {
        if (!work.isBusy()) {
            late.stop();
            bar.setValue(0);
            setVisible(false);
        } else if (!isVisible()) {
            late.start();
        }
    }

    /** @param share done so far, 0 to 1 */
    public void progress(double share) {
        bar.setValue((int) Math.round(STEPS * share));
    }
}
