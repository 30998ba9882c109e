package quoin.curves.draw;

import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;
import org.openide.util.RequestProcessor;

/** Computes off the event thread; of many wishes that come while it computes only the last is computed. */
public final class Latest {

    private final RequestProcessor processor;
    private final AtomicLong wish = new AtomicLong();

    /** @param name of the thread */
    public Latest(String name) {
        processor = new RequestProcessor(name, 1);
    }

    /** @param show called on the event thread, in the order of the wishes */
    public <T> void compute(Supplier<T> work, Consumer<T> show) {
        long number = wish.incrementAndGet();
        processor.post(() -> {
            if (number == wish.get()) {
                T result = work.get();
                SwingUtilities.invokeLater(() -> show.accept(result));
            }
        });
    }
}
