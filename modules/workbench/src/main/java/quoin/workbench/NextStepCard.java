package quoin.workbench;

import java.awt.BorderLayout;
import java.awt.Font;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.SwingConstants;
import org.openide.awt.Mnemonics;
import org.openide.util.NbBundle.Messages;
import quoin.workflow.NextStep;

/** The one next thing to do, in large type, with its caution and one button. */
@Messages({
    "card.heading=Next",
    "# {0} - stage", "card.headingIn=Next, in {0}",
    "card.noDay=No day is open.",
    "card.noDayRemedy=Choose File > Rehearse with the practice car, or New day, or open a day."})
public final class NextStepCard extends JPanel {

    private final CurrentDay current;
    private final Consumer<NextStep> goTo;
    private final JLabel heading = Looks.label(Bundle.card_heading(), 1, Font.BOLD);
    private final WrapText words = new WrapText("", 1.35, Font.BOLD);
    private final JLabel cautionMark = new JLabel(Mark.AGAIN.icon(1.2));
    private final WrapText caution = new WrapText("", 1.05, Font.PLAIN);
    private final JPanel cautionLine = new JPanel(new BorderLayout(Looks.em(0.4), 0));
    private final JButton button = Looks.button(Bundle.next_done(), this::press);
    private DaySnapshot shown;
    private NextStep step;

    /**
     * @param goTo brings the window of a step to the front and puts the caret where the step is done
     */
    public NextStepCard(CurrentDay current, Consumer<NextStep> goTo) {
        super(new BorderLayout(0, Looks.em(0.5)));
        this.current = current;
        this.goTo = goTo;
        setBorder(BorderFactory.createCompoundBorder(BorderFactory.createMatteBorder(0, Looks.em(0.3), 0, 0, Looks.text()),
                Looks.padding(0.7, 0.8)));
        button.setName("next.button");
        cautionMark.setVerticalAlignment(SwingConstants.TOP);
        cautionLine.add(cautionMark, BorderLayout.LINE_START);
        cautionLine.add(caution, BorderLayout.CENTER);
        add(heading, BorderLayout.NORTH);
        add(Looks.column(words, cautionLine), BorderLayout.CENTER);
        add(button, BorderLayout.SOUTH);
        showNothing();
    }

    /** Says what to do where no day is open. */
    public void showNothing() {
        shown = null;
        heading.setText(Bundle.card_heading());
        words.setText(Bundle.card_noDay());
        caution.setText(Bundle.card_noDayRemedy());
        cautionMark.setVisible(false);
        cautionLine.setVisible(true);
        button.setVisible(false);
    }

    public void show(DaySnapshot day) {
        shown = day;
        NextStep next = current.nextStep().orElse(day.status().next());
        step = next;
        heading.setText(Bundle.card_headingIn(day.stageTitle(next.stageId())));
        words.setText(next.words());
        caution.setText(next.caution().orElse(""));
        cautionMark.setVisible(next.caution().isPresent());
        cautionLine.setVisible(next.caution().isPresent());
        button.setVisible(next.kind() != NextStep.Kind.DONE);
        Mnemonics.setLocalizedText(button, NextAction.of(day, next).button());
        revalidate();
    }

    /** Does what the button does. */
    public void press() {
        if (shown == null) {
            return;
        }
        if (NextAction.of(shown, step).perform(current, step)) {
            goTo.accept(step);
        }
    }
}
