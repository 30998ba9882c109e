package quoin.workbench;

import java.util.Optional;
import javax.swing.event.ChangeListener;
import javax.swing.undo.CannotRedoException;
import javax.swing.undo.CannotUndoException;
import org.openide.awt.UndoRedo;
import org.openide.util.ChangeSupport;
import org.openide.util.NbBundle.Messages;
import quoin.logbook.Entry;

/** Undo and redo on the platform's actions: each is one more entry in the logbook, nothing is erased. */
@Messages({"# {0} - entry", "undo.name=Undo: {0}", "# {0} - entry", "redo.name=Redo: {0}"})
public final class DayUndoRedo implements UndoRedo {

    private static final int LONGEST_NAME = 60;

    private final CurrentDay current;
    private final ChangeSupport changes = new ChangeSupport(this);

    DayUndoRedo(CurrentDay current) {
        this.current = current;
    }

    private Optional<UndoHistory> history() {
        return current.snapshot().map(s -> UndoHistory.of(s.day()));
    }

    void changed() {
        changes.fireChange();
    }

    @Override
    public boolean canUndo() {
        return history().flatMap(UndoHistory::toUndo).isPresent();
    }

    @Override
    public boolean canRedo() {
        return history().flatMap(UndoHistory::toRedo).isPresent();
    }

    @Override
    public void undo() {
        Entry entry = history().flatMap(UndoHistory::toUndo).orElseThrow(CannotUndoException::new);
        current.record(entry.header().stage(), h -> new Entry.Correction(h, entry.number(), Optional.empty(), UndoHistory.UNDO));
    }

    @Override
    public void redo() {
        long by = history().flatMap(UndoHistory::undoneBy).orElseThrow(CannotRedoException::new);
        String stage = history().flatMap(UndoHistory::toRedo).map(e -> e.header().stage()).orElse("");
        current.record(stage, h -> new Entry.Correction(h, by, Optional.empty(), UndoHistory.REDO));
    }

    @Override
    public String getUndoPresentationName() {
        return history().flatMap(UndoHistory::toUndo).map(e -> Bundle.undo_name(words(e))).orElse("");
    }

    @Override
    public String getRedoPresentationName() {
        return history().flatMap(UndoHistory::toRedo).map(e -> Bundle.redo_name(words(e))).orElse("");
    }

    private String words(Entry entry) {
        String words = current.snapshot().map(s -> s.entryWords().of(entry)).orElse("");
        return words.length() <= LONGEST_NAME ? words : words.substring(0, LONGEST_NAME - 1) + "…";
    }

    @Override
    public void addChangeListener(ChangeListener listener) {
        changes.addChangeListener(listener);
    }

    @Override
    public void removeChangeListener(ChangeListener listener) {
        changes.removeChangeListener(listener);
    }
}
