package quoin.logbook;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.locks.LockSupport;
import quoin.logbook.file.AppendTarget;

/**
 * A day that records for ever, entry after entry of every kind, and says "recorded n" when entry n is recorded; a program of
 * its own, to be killed by {@link Kills}. Its disk takes a few bytes at a time, so that most kills fall inside a write.
 */
public final class ScriptedDay {

    private static final int BITE = 24;
    private static final long BITE_NANOS = 20_000;
    private static final List<Entry> SCRIPT = Samples.everyKind().stream().filter(e -> !(e instanceof Entry.Correction)).toList();

    private ScriptedDay() {
    }

    /** What the script records as an entry, whatever header it is given. */
    public static Entry entry(long number) {
        return SCRIPT.get((int) (number % SCRIPT.size()));
    }

    public static void main(String[] args) throws IOException {
        awaitStart();
        try (Journal journal = Journal.open(Path.of(args[0]), Clock.systemUTC(), ScriptedDay::slowly)) {
            long last = journal.entries().size();
            while (true) {
                last = journal.append(entry(last + 1)).number();
                say(last);
            }
        }
    }

    /** Waits until the killer is ready; Java has started by then. */
    public static void awaitStart() throws IOException {
        new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8)).readLine();
    }

    /** What the racer sees. */
    public static void say(long number) {
        System.out.println("recorded " + number);
        System.out.flush();
    }

    private static AppendTarget slowly(Path file) throws IOException {
        AppendTarget real = AppendTarget.onDisk(file);
        return new AppendTarget() {
            @Override
            public long size() throws IOException {
                return real.size();
            }

            @Override
            public int write(ByteBuffer bytes, long position) throws IOException {
                LockSupport.parkNanos(BITE_NANOS);
                ByteBuffer part = bytes.slice(bytes.position(), Math.min(BITE, bytes.remaining()));
                int written = real.write(part, position);
                bytes.position(bytes.position() + written);
                return written;
            }

            @Override
            public void truncate(long size) throws IOException {
                real.truncate(size);
            }

            @Override
            public void force() throws IOException {
                real.force();
            }

            @Override
            public boolean isStillThere() {
                return real.isStillThere();
            }

            @Override
            public void close() throws IOException {
                real.close();
            }
        };
    }
}
