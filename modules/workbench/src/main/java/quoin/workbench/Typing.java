package quoin.workbench;

import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;

/** Tells of every change of a text. */
public record Typing(Runnable changed) implements DocumentListener {

    @Override
    public void insertUpdate(DocumentEvent e) {
        changed.run();
    }

    @Override
    public void removeUpdate(DocumentEvent e) {
        changed.run();
    }

    @Override
    public void changedUpdate(DocumentEvent e) {
        // of the looks of the text only
    }
}
