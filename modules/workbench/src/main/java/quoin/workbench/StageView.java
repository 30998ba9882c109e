package quoin.workbench;

import java.util.Optional;
import javax.swing.JComponent;

/** What a stage shows in its window; the window itself brings the heading, the scrolling and the sign-off. */
public interface StageView {

    /** The content; made once. */
    JComponent component();

    /** What stays in sight above the content while that is scrolled, such as the choice of a page; empty where there is none. */
    default Optional<JComponent> head() {
        return Optional.empty();
    }

    /** Shows the day at its present revision; what is being typed stays. */
    void show(DaySnapshot day);

    /** Shows the plans of the round, which are there now; where a stage makes none, nothing changes. */
    default void showPlans(DaySnapshot day) {
        // no plans in this stage
    }

    /** Puts the caret where the next figure is typed or the next condition ticked. */
    void toEntry();

    /** Puts the caret where turns are recorded; where a stage turns nothing, the same as {@link #toEntry()}. */
    default void toTurns() {
        toEntry();
    }
}
