package quoin.logbook;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;

/**
 * What the dearest of many readings of a file took of this thread: processor time, so that other work on the machine does not
 * count, and memory asked for, whether or not it was needed at one time.
 */
public final class Spent {

    private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    private static final long LONGEST_MS = 1000;
    private static final long MOST_MB = 256;

    private long begunNanos;
    private long begunBytes;
    private long worstNanos;
    private long worstBytes;

    /** One reading begins. */
    public void begin() {
        begunNanos = THREADS.getCurrentThreadCpuTime();
        begunBytes = THREADS.getCurrentThreadAllocatedBytes();
    }

    /** It has ended. */
    public void end() {
        worstNanos = Math.max(worstNanos, THREADS.getCurrentThreadCpuTime() - begunNanos);
        worstBytes = Math.max(worstBytes, THREADS.getCurrentThreadAllocatedBytes() - begunBytes);
    }

    /** Prints what was done and what the dearest took, and fails where that is too much. */
    public void tell(String done) {
        long ms = worstNanos / 1_000_000;
        long mb = worstBytes >> 20;
        System.out.println(done + ", the longest took " + ms + " ms, the largest asked for " + mb + " MB");
        assertTrue(ms < LONGEST_MS, "one took " + ms + " ms");
        assertTrue(mb < MOST_MB, "one asked for " + mb + " MB");
    }
}
