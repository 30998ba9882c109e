package quoin.workbench;

/** What a part of a window was last built from, so that it is built anew only where that has changed: most entries change little. */
public final class BuiltFrom {

    private Object last;

    /** True where this is not what was asked about last; it is from now on. On the event thread only. */
    public boolean isNew(Object content) {
        boolean isNew = !content.equals(last);
        last = content;
        return isNew;
    }
}
