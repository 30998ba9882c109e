package quoin.logbook.file;

import java.io.Closeable;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/**
 * Keeps a day to one writer. The lock is the operating system's, so it is gone when the process is, however it ended; the
 * file itself stays.
 */
public final class DayLock implements Closeable {

    private final FileChannel channel;
    private final FileLock lock;

    private DayLock(FileChannel channel, FileLock lock) {
        this.channel = channel;
        this.lock = lock;
    }

    /**
     * Takes the lock.
     *
     * @return the lock; empty where another holds it
     */
    public static Optional<DayLock> tryTake(Path file) throws IOException {
        FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        try {
            FileLock lock = channel.tryLock();
            if (lock != null) {
                return Optional.of(new DayLock(channel, lock));
            }
        } catch (OverlappingFileLockException e) {
            // another part of this very program holds it
        } catch (IOException e) {
            channel.close();
            throw e;
        }
        channel.close();
        return Optional.empty();
    }

    @Override
    public void close() throws IOException {
        try {
            lock.release();
        } finally {
            channel.close();
        }
    }
}
