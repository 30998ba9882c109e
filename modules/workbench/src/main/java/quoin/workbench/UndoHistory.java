package quoin.workbench;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import quoin.logbook.Entry;

/**
 * What can be undone and redone, worked out from the entries alone, so that it is the same after reopening the day. Undo
 * withdraws the last entry by a correction; redo withdraws that correction. The entry that opened the day stays.
 */
public final class UndoHistory {

    /** Words of a correction that undoes. */
    public static final String UNDO = "undo";
    /** Words of a correction that redoes. */
    public static final String REDO = "redo";

    private record Undone(Entry entry, long by) {
    }

    private final Deque<Entry> undoable = new ArrayDeque<>();
    private final Deque<Undone> redoable = new ArrayDeque<>();

    private UndoHistory() {
    }

    public static UndoHistory of(List<Entry> written) {
        UndoHistory history = new UndoHistory();
        written.stream().skip(1).forEach(history::take);
        return history;
    }

    private void take(Entry entry) {
        if (entry instanceof Entry.Correction correction) {
            if (isUndo(correction)) {
                redoable.push(new Undone(undoable.pop(), correction.number()));
                return;
            }
            if (isRedo(correction)) {
                undoable.push(redoable.pop().entry());
                return;
            }
        }
        undoable.push(entry);
        redoable.clear();
    }

    private boolean isUndo(Entry.Correction correction) {
        return correction.words().equals(UNDO) && !undoable.isEmpty() && undoable.peek().number() == correction.corrects();
    }

    private boolean isRedo(Entry.Correction correction) {
        return correction.words().equals(REDO) && !redoable.isEmpty() && redoable.peek().by() == correction.corrects();
    }

    /** The entry that undo would withdraw. */
    public Optional<Entry> toUndo() {
        return Optional.ofNullable(undoable.peek());
    }

    /** The entry that redo would bring back. */
    public Optional<Entry> toRedo() {
        return Optional.ofNullable(redoable.peek()).map(Undone::entry);
    }

    /** Number of the correction that redo has to withdraw. */
    public Optional<Long> undoneBy() {
        return Optional.ofNullable(redoable.peek()).map(Undone::by);
    }
}
