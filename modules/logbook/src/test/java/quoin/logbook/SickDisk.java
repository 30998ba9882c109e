package quoin.logbook;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Path;
import quoin.logbook.file.AppendTarget;

/** A disk that can be told to fail, or to take its time. */
final class SickDisk implements AppendTarget.Opener {

    volatile long room = Long.MAX_VALUE;
    volatile boolean forceFails;
    volatile boolean truncateFails;
    volatile long forceTakesMs;
    volatile int forced;
    volatile int open;

    @Override
    public AppendTarget open(Path file) throws IOException {
        AppendTarget real = AppendTarget.onDisk(file);
        open++;
        return new AppendTarget() {
            @Override
            public long size() throws IOException {
                return real.size();
            }

            @Override
            public int write(ByteBuffer bytes, long position) throws IOException {
                if (room == 0) {
                    throw new IOException("No space left on device");
                }
                ByteBuffer part = bytes.slice(bytes.position(), (int) Math.min(room, bytes.remaining()));
                int written = real.write(part, position);
                bytes.position(bytes.position() + written);
                room -= written;
                return written;
            }

            @Override
            public void truncate(long size) throws IOException {
                if (truncateFails) {
                    throw new IOException("Input/output error");
                }
                real.truncate(size);
            }

            @Override
            public void force() throws IOException {
                try {
                    Thread.sleep(forceTakesMs);
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                }
                if (forceFails) {
                    throw new IOException("Input/output error");
                }
                forced++;
                real.force();
            }

            @Override
            public boolean isStillThere() {
                return real.isStillThere();
            }

            @Override
            public void close() throws IOException {
                open--;
                real.close();
            }
        };
    }
}
