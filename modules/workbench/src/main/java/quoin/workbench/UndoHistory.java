package quoin.workbench;

import java.util.List;
import java.util.Optional;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Derivation;
import quoin.logbook.Entry;

/**
 * What can be undone and redone, worked out from the entries alone, so that it is the same after reopening the day. Undo
 * withdraws the last entry by a correction; redo withdraws that correction. What opened the day stays: the first entry, and the one
 * that makes the day a rehearsal.
 */
public final class UndoHistory {

    /** Words of a correction that undoes. */
    public static final String UNDO = "undo";
    /** Words of a correction that redoes. */
    public static final String REDO = "redo";

    private record Undone(Entry entry, long by) {
    }

    /** A stack that shares what lies under its top with the ones before it; null = empty. */
    private record Stack<T>(T top, Stack<T> below) {
    }

    private record OfDay() implements Derivation<UndoHistory> {
        @Override
        public UndoHistory of(Day day) {
            return UndoHistory.of(day.written());
        }

        @Override
        public UndoHistory onward(Day earlier, UndoHistory known, Day day) {
            UndoHistory history = known;
            for (Entry entry : day.written().subList(earlier.written().size(), day.written().size())) {
                history = history.after(entry);
            }
            return history;
        }
    }

    private final Stack<Entry> undoable;
    private final Stack<Undone> redoable;

    private UndoHistory(Stack<Entry> undoable, Stack<Undone> redoable) {
        this.undoable = undoable;
        this.redoable = redoable;
    }

    static UndoHistory of(Day day) {
        return day.derive(new OfDay());
    }

    public static UndoHistory of(List<Entry> written) {
        UndoHistory history = new UndoHistory(null, null);
        for (Entry entry : written.subList(Math.min(1, written.size()), written.size())) {
            history = history.after(entry);
        }
        return history;
    }

    private UndoHistory after(Entry entry) {
        if (entry instanceof Entry.Correction correction) {
            if (isUndo(correction)) {
                return new UndoHistory(undoable.below(), new Stack<>(new Undone(undoable.top(), correction.number()), redoable));
            }
            if (isRedo(correction)) {
                return new UndoHistory(new Stack<>(redoable.top().entry(), undoable), redoable.below());
            }
        }
        return opensTheDay(entry) ? this : new UndoHistory(new Stack<>(entry, undoable), null);
    }

    /** True for an entry that can be neither undone nor withdrawn, because the rest of the day rests on it. */
    public static boolean opensTheDay(Entry entry) {
        return entry.number() == 1 || entry instanceof Entry.Condition condition && condition.key().equals(Conditions.REHEARSAL);
    }

    private boolean isUndo(Entry.Correction correction) {
        return correction.words().equals(UNDO) && undoable != null && undoable.top().number() == correction.corrects();
    }

    private boolean isRedo(Entry.Correction correction) {
        return correction.words().equals(REDO) && redoable != null && redoable.top().by() == correction.corrects();
    }

    /** The entry that undo would withdraw. */
    public Optional<Entry> toUndo() {
        return Optional.ofNullable(undoable).map(Stack::top);
    }

    /** The entry that redo would bring back. */
    public Optional<Entry> toRedo() {
        return Optional.ofNullable(redoable).map(r -> r.top().entry());
    }

    /** Number of the correction that redo has to withdraw. */
    public Optional<Long> undoneBy() {
        return Optional.ofNullable(redoable).map(r -> r.top().by());
    }
}
