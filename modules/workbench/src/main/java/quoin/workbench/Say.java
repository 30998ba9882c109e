package quoin.workbench;

import org.openide.DialogDisplayer;
import org.openide.NotifyDescriptor;

/** Messages to the racer in a window of their own. Whatever they name, such as a file or a car, is shown as text; see {@link InertText}. */
public final class Say {

    private Say() {
    }

    /**
     * Says it and waits until it has been read.
     *
     * @param type one of {@link NotifyDescriptor}, such as {@link NotifyDescriptor#WARNING_MESSAGE}
     */
    public static void message(String words, int type) {
        DialogDisplayer.getDefault().notify(described(words, type));
    }

    /** The same from any thread, without waiting. */
    public static void later(String words, int type) {
        DialogDisplayer.getDefault().notifyLater(described(words, type));
    }

    private static NotifyDescriptor described(String words, int type) {
        return new NotifyDescriptor.Message(InertText.plain(words), type);
    }
}
