package quoin.workbench;

import java.awt.BorderLayout;
import java.awt.Dialog;
import java.awt.EventQueue;
import java.awt.Font;
import java.lang.reflect.InvocationTargetException;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Function;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JProgressBar;
import org.openide.DialogDescriptor;
import org.openide.DialogDisplayer;
import org.openide.util.NbBundle.Messages;
import org.openide.util.RequestProcessor;
import quoin.mechanics.SearchWatch;

/**
 * Work the racer waits for, such as writing a file, done beside the event thread. Quick work is not seen; for longer work a small
 * window says what is being done and how far it is, and Stop, or Escape, gives it up. {@link LongWork} is for what he need not wait for.
 *
 * @param <T> what the work gives
 */
@Messages({"waiting.title=Please wait", "waiting.stop=Stop"})
public final class Waiting<T> {

    /** Nobody sees that the event thread stood still for so long. */
    private static final int UNSEEN_MS = 60;
    private static final int STEPS = 1000;
    private static final RequestProcessor WORKER = new RequestProcessor("quoin waiting", 4);

    /** The window that is shown meanwhile. */
    interface Shown {

        /** Shows it and returns when it has gone; events are dispatched until then. */
        void untilGone();

        void close();
    }

    private final String words;
    private final Function<JComponent, Shown> windows;
    private final JProgressBar bar = new JProgressBar(0, STEPS);
    private final FutureTask<T> task;
    private volatile boolean stopped;
    /** On the event thread only; null while no window is needed. */
    private Shown window;

    private Waiting(String words, Function<SearchWatch, T> work, Function<JComponent, Shown> windows) {
        this.words = words;
        this.windows = windows;
        this.task = new FutureTask<>(() -> work.apply(this::goesOn));
    }

    /**
     * Does the work and waits for it; events go on being dispatched meanwhile. Called on the event thread.
     *
     * @param words what is being done, said where it takes long
     * @param work  done on another thread; tells how far it is, 0 to 1, and ends with a {@link CancellationException} where the answer
     *              is false
     * @return what it gave; empty where it was stopped
     * @throws RuntimeException what the work ended with
     */
    public static <T> Optional<T> until(String words, Function<SearchWatch, T> work) {
        return until(words, work, ModalWindow::new);
    }

    static <T> Optional<T> until(String words, Function<SearchWatch, T> work, Function<JComponent, Shown> windows) {
        return new Waiting<>(words, work, windows).answer();
    }

    /** From within the work: does something on the event thread and waits for it. */
    public static void onEventThread(Runnable step) {
        try {
            EventQueue.invokeAndWait(step);
        } catch (InterruptedException e) {
            throw interrupted(e);
        } catch (InvocationTargetException e) {
            throw new CompletionException(e.getCause());
        }
    }

    private boolean goesOn(double share) {
        EventQueue.invokeLater(() -> {
            bar.setIndeterminate(false);
            bar.setValue((int) Math.round(STEPS * share));
        });
        return !stopped;
    }

    private Optional<T> answer() {
        WORKER.post(() -> {
            task.run();
            EventQueue.invokeLater(this::close);
        });
        try {
            return Optional.of(task.get(UNSEEN_MS, TimeUnit.MILLISECONDS));
        } catch (TimeoutException e) {
            return afterWindow();
        } catch (ExecutionException e) {
            return failed(e);
        } catch (InterruptedException e) {
            throw interrupted(e);
        }
    }

    private Optional<T> afterWindow() {
        bar.setIndeterminate(true);
        window = windows.apply(content());
        window.untilGone();
        window = null;
        if (!task.isDone()) {
            stopped = true;
            return Optional.empty();
        }
        try {
            return Optional.of(task.get());
        } catch (ExecutionException e) {
            return failed(e);
        } catch (InterruptedException e) {
            throw interrupted(e);
        }
    }

    private JComponent content() {
        JLabel name = Looks.label(words, 1, Font.PLAIN);
        name.setLabelFor(bar);
        bar.getAccessibleContext().setAccessibleName(words);
        JPanel panel = new JPanel(new BorderLayout(0, Looks.em(0.4)));
        panel.setBorder(Looks.padding(0.8, 1));
        panel.add(name, BorderLayout.NORTH);
        panel.add(bar, BorderLayout.CENTER);
        return panel;
    }

    private void close() {
        if (window != null) {
            window.close();
        }
    }

    private Optional<T> failed(ExecutionException e) {
        if (e.getCause() instanceof CancellationException) {
            return Optional.empty();
        }
        if (e.getCause() instanceof RuntimeException unchecked) {
            throw unchecked;
        }
        throw new CompletionException(e.getCause());
    }

    private static RuntimeException interrupted(InterruptedException e) {
        Thread.currentThread().interrupt();
        return new CompletionException(e);
    }

    /** Keeps the racer from doing anything else with the day; goes by itself when the work is done. */
    private record ModalWindow(Dialog dialog) implements Shown {

        ModalWindow(JComponent content) {
            this(DialogDisplayer.getDefault().createDialog(new DialogDescriptor(content, Bundle.waiting_title(), true,
                    new Object[] {Bundle.waiting_stop()}, Bundle.waiting_stop(), DialogDescriptor.DEFAULT_ALIGN, null, null)));
        }

        @Override
        public void untilGone() {
            dialog.setVisible(true);
            dialog.dispose();
        }

        @Override
        public void close() {
            dialog.setVisible(false);
        }
    }
}
