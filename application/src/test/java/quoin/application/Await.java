package quoin.application;

import java.time.Duration;
import java.util.function.BooleanSupplier;

/** Waiting for something another process does; {@code -Dquoin.patience=3} waits three times as long, for a busy machine. */
final class Await {

    private static final Duration PAUSE = Duration.ofMillis(100);
    private static final int PATIENCE = Integer.getInteger("quoin.patience", 1);

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
            throw new AssertionError("Waited " + limit.multipliedBy(PATIENCE).toSeconds() + " s in vain for " + what);
        }
    }

    /** Whether the condition comes to hold within the limit. */
    static boolean holdsWithin(Duration limit, BooleanSupplier condition) {
        long end = System.nanoTime() + limit.multipliedBy(PATIENCE).toNanos();
        while (!condition.getAsBoolean()) {
            if (System.nanoTime() > end) {
                return false;
            }
            sleep(PAUSE);
        }
        return true;
    }

    static void pause(Duration duration) {
        sleep(duration.multipliedBy(PATIENCE));
    }

    private static void sleep(Duration duration) {
        try {
            Thread.sleep(duration.toMillis());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError("Interrupted while waiting", e);
        }
    }
}
