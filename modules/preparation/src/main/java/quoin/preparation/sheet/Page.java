package quoin.preparation.sheet;

import javax.swing.JComponent;
import quoin.workbench.DaySnapshot;

/** One page of the preparation window. */
public interface Page {

    /** On its button, with an ampersand before the letter that opens it with Alt. */
    String title();

    JComponent component();

    /** Shows the day; what is being typed stays. */
    void show(DaySnapshot day);

    /** Puts the caret where the work begins. */
    void toFirst();
}
