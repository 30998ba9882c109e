package quoin.workbench;

import java.awt.BorderLayout;
import java.awt.CardLayout;
import java.awt.Component;
import java.awt.Font;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.time.Clock;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.KeyStroke;
import javax.swing.SwingConstants;
import org.openide.awt.UndoRedo;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.TopComponent;
import org.openide.windows.WindowManager;
import quoin.workflow.NextStep;
import quoin.workflow.StageStatus;

/**
 * The window of one stage. Its preferred id is {@code "stage-"} and the stage's id, so that the order of work finds it. The
 * content is made when the window is first shown and brought up to date whenever the day changes while it is in front.
 */
@Messages({
    "window.noDay=No day is open.",
    "window.noDayRemedy=Choose File > Rehearse with the practice car to walk a day without a car, or New day for your own, or open one.",
    "# {0} - state", "window.state=Stage: {0}"})
public abstract class StageWindow extends TopComponent {

    private static final long serialVersionUID = 1L;
    private static final String PREFIX = "stage-";
    private static final String EMPTY = "empty";
    private static final String DAY = "day";

    private final String stageId;
    private final transient CurrentDay current = CurrentDay.inUse();
    private final transient Runnable onChange = this::dayChanged;
    private final transient Runnable onPlans = this::plansChanged;
    private final JPanel cards = new JPanel(new CardLayout());
    private final JLabel title = Looks.label("", 1.5, Font.BOLD);
    private final JLabel state = Looks.label("", 1.1, Font.BOLD);
    private final WrapText purpose = new WrapText("");
    private transient StageView view;
    private transient SignOffBar signOff;
    private transient AfterBreak afterBreak;
    /** The kind of step this window is being brought to the front for; null where it comes by itself. */
    private transient NextStep.Kind comingTo;
    private long shownRevision = -1;

    /**
     * @param stageId id of the stage
     * @param name    as shown on the window's tab
     */
    protected StageWindow(String stageId, String name) {
        this.stageId = stageId;
        setName(name);
        setDisplayName(name);
        putClientProperty(PROP_CLOSING_DISABLED, true);
        putClientProperty(PROP_UNDOCKING_DISABLED, true);
        putClientProperty(PROP_DRAGGING_DISABLED, true);
        getAccessibleContext().setAccessibleName(name);
        setLayout(new BorderLayout());
    }

    /** Makes the content, once. */
    protected abstract StageView createView(CurrentDay currentDay);

    /** The window of a stage, opened and in front; nothing where the stage has none. */
    public static void bringToFront(String stage) {
        if (WindowManager.getDefault().findTopComponent(PREFIX + stage) instanceof StageWindow window) {
            window.open();
            window.requestActive();
        }
    }

    /** Brings the window where a step is done to the front, with the caret where it is done. */
    public static void bringToFront(NextStep step) {
        if (WindowManager.getDefault().findTopComponent(PREFIX + step.stageId()) instanceof StageWindow window) {
            window.open();
            window.comingTo = TopComponent.getRegistry().getActivated() == window ? null : step.kind();
            window.requestActive();
            window.toWork(step.kind());
        }
    }

    private void toWork(NextStep.Kind kind) {
        build();
        dayChanged();
        if (kind == NextStep.Kind.TURN) {
            view.toTurns();
        } else {
            view.toEntry();
        }
    }

    private void build() {
        if (view != null) {
            return;
        }
        view = createView(current);
        signOff = new SignOffBar(current, stageId);
        JPanel day = new JPanel(new BorderLayout());
        afterBreak = new AfterBreak(current, Clock.systemUTC());
        JPanel heading = Looks.column(heading(), afterBreak);
        day.add(view.head().map(head -> Looks.column(heading, head)).orElse(heading), BorderLayout.NORTH);
        day.add(WidthOfTheWindow.scrolled(view.component()), BorderLayout.CENTER);
        day.add(signOff, BorderLayout.SOUTH);
        cards.add(DayWindow.empty(Bundle.window_noDay(), Bundle.window_noDayRemedy()), EMPTY);
        cards.add(day, DAY);
        add(cards, BorderLayout.CENTER);
        Looks.onKey(this, KeyStroke.getKeyStroke(KeyEvent.VK_F3, 0), "toEntry", view::toEntry);
        Looks.onKey(this, KeyStroke.getKeyStroke(KeyEvent.VK_F4, 0), "toTurns", view::toTurns);
    }

    private JPanel heading() {
        JPanel line = new JPanel(new BorderLayout(Looks.em(1), 0));
        line.add(title, BorderLayout.LINE_START);
        state.setHorizontalAlignment(SwingConstants.LEADING);
        line.add(state, BorderLayout.CENTER);
        JPanel heading = Looks.column(line, purpose);
        heading.setBorder(Looks.padding(0.5, 0.9));
        return heading;
    }

    @Override
    protected void componentOpened() {
        current.addListener(onChange);
        current.addPlanListener(onPlans);
    }

    @Override
    protected void componentClosed() {
        current.removeListener(onChange);
        current.removePlanListener(onPlans);
    }

    @Override
    protected void componentShowing() {
        build();
        shownRevision = -1;
        dayChanged();
    }

    @Override
    protected void componentActivated() {
        if (view != null && current.snapshot().isPresent() && comingTo != null) {
            toWork(comingTo);
        } else if (view != null && current.snapshot().isPresent() && !isAncestorOf(focusOwner())) {
            view.toEntry();
        }
        comingTo = null;
    }

    private static Component focusOwner() {
        return KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    }

    private void plansChanged() {
        if (view != null && isShowing()) {
            current.snapshot().filter(s -> s.stage(stageId).isPresent()).ifPresent(view::showPlans);
        }
    }

    private void dayChanged() {
        if (view == null || !isShowing() && shownRevision >= 0) {
            return;
        }
        var snapshot = current.snapshot();
        boolean usable = snapshot.flatMap(s -> s.stage(stageId)).isPresent();
        ((CardLayout) cards.getLayout()).show(cards, usable ? DAY : EMPTY);
        if (!usable) {
            shownRevision = -1;
            return;
        }
        StageStatus stage = snapshot.get().stage(stageId).get();
        title.setText(stage.stage().title());
        VerdictWords words = VerdictWords.of(stage.state());
        state.setIcon(words.mark().icon(1.1));
        state.setText(words.word());
        state.getAccessibleContext().setAccessibleName(Bundle.window_state(words.word()));
        purpose.setText(stage.stage().purpose());
        afterBreak.show(snapshot.get());
        view.show(snapshot.get());
        signOff.show(stage);
        shownRevision = snapshot.get().day().revision();
    }

    @Override
    public UndoRedo getUndoRedo() {
        return current.undoRedo();
    }
}
