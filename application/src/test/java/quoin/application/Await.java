package quoin.application;

import java.time.Duration;
import java.util.function.BooleanSupplier;

/** Waiting for something another process does. */
final class Await {

    private static final Duration PAUSE = Duration.ofMillis(100);

    private Await() {
    }

    /**
     * Returns as soon as the condition holds.
     *
     * @param what what is waited for, for the message
     * @throws AssertionError when the condition does not hold within the limit
     */
    static void until(String what, Duration limit, BooleanSupplier condition) {
        if (!holdsWithin(limit, condition)) {
            throw new AssertionError("Waited " + limit.toSeconds() + " s in vain for " + what);
        }
    }

    /** Whether the condition comes to hold within the limit. */
    static boolean holdsWithin(Duration limit, BooleanSupplier condition) {
        long end = System.nanoTime() + limit.toNanos();
        while (!condition.getAsBoolean()) {
            if (System.nanoTime() > end) {
                return false;
            }
            pause(PAUSE);
        }
        return true;
    }

    static void pause(Duration duration) {
        try {
            Thread.sleep(duration.toMillis());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError("Interrupted while waiting", e);
        }
    }
}
