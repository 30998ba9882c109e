package quoin.help.firstday;

import java.awt.BorderLayout;
import java.awt.Font;
import java.util.Arrays;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JPanel;
import org.openide.util.NbBundle.Messages;
import org.openide.windows.TopComponent;
import org.openide.windows.WindowManager;
import quoin.workbench.CurrentDay;
import quoin.workbench.DayWindow;
import quoin.workbench.InertText;
import quoin.workbench.Looks;
import quoin.workbench.WidthOfTheWindow;
import quoin.workbench.WrapText;
import quoin.workflow.NextStep;

/** The strip under the stage windows that leads through the first day. It may be left at any time; the day goes on without it. */
@TopComponent.Description(preferredID = FirstDayWindow.ID, iconBase = "quoin/workbench/icons/mortarboard.svg",
        persistenceType = TopComponent.PERSISTENCE_ONLY_OPENED)
@TopComponent.Registration(mode = "quoin-log", openAtStartup = false, position = 900)
@Messages({
    "first.name=First day",
    "# {0} - number", "# {1} - of how many", "# {2} - title", "first.chapter={0} of {1}: {2}",
    "first.noDay=The guide goes with a rehearsal: Alt+6, Rehearse with the practice car.",
    "first.leave=Leave the guide",
    "# {0} - titles", "first.all=The day: {0}"})
public final class FirstDayWindow extends DayWindow {

    static final String ID = "first-day";

    private static final long serialVersionUID = 1L;
    /** Share of the width for what is to be done; the rest says why. */
    private static final double TOLD = 0.56;

    private final transient CurrentDay current;
    private final WrapText chapter = new WrapText("", 1.15, Font.BOLD);
    private final WrapText hint = new WrapText("", 1, Font.BOLD);
    private final WrapText why = new WrapText("");

    public FirstDayWindow() {
        this(CurrentDay.inUse());
    }

    FirstDayWindow(CurrentDay current) {
        super(Bundle.first_name(), current, Stay.UNTIL_CLOSED);
        this.current = current;
        JButton leave = Looks.button(Bundle.first_leave(), this::close);
        leave.setName("first.leave");
        JPanel side = new JPanel(new BorderLayout());
        side.add(leave, BorderLayout.NORTH);
        JPanel strip = new JPanel(new BorderLayout(Looks.em(1), 0));
        strip.setBorder(Looks.padding(0.4, 0.9));
        JPanel reason = new JPanel(new BorderLayout());
        reason.setBorder(Looks.padding(0, 1));
        reason.add(why, BorderLayout.NORTH);
        // Beside each other, since the strip is low; scrolled where a language or a big font needs more.
        strip.add(Looks.twoColumns(Looks.column(chapter, hint), reason, TOLD), BorderLayout.CENTER);
        strip.add(side, BorderLayout.LINE_END);
        strip.setToolTipText(InertText.plain(Bundle.first_all(Arrays.stream(Chapter.values()).map(Chapter::title).collect(Collectors.joining(" > ")))));
        fill(WidthOfTheWindow.scrolledFromTheTop(strip));
    }

    /** Opens the strip without taking the keyboard from the stage. */
    static void open(boolean shown) {
        TopComponent window = WindowManager.getDefault().findTopComponent(ID);
        if (window == null) {
            return;
        }
        if (shown) {
            window.open();
            window.requestVisible();
        } else {
            window.close();
        }
    }

    static boolean isOpen() {
        TopComponent window = WindowManager.getDefault().findTopComponent(ID);
        return window != null && window.isOpened();
    }

    @Override
    protected void dayChanged() {
        boolean led = current.isRehearsal() && current.snapshot().isPresent();
        hint.setVisible(led);
        why.setVisible(led);
        if (!led) {
            chapter.setText(Bundle.first_noDay());
            return;
        }
        NextStep step = current.nextStep().orElse(current.snapshot().get().status().next());
        Chapter now = Chapter.of(step);
        chapter.setText(Bundle.first_chapter(now.number(), Chapter.values().length, now.title()));
        hint.setText(Hint.of(step.kind()));
        why.setText(now.why());
        getAccessibleContext().setAccessibleDescription(chapter.getText() + ". " + hint.getText() + " " + why.getText());
        revalidate();
    }

    @Override
    protected void plansChanged() {
        dayChanged();
    }
}
