package quoin.logbook.file;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;

/** What an append-only file needs from the disk, so that a disk that fails can be put in its place. */
public interface AppendTarget extends Closeable {

    /** Opens the target for a file that exists. */
    interface Opener {
        AppendTarget open(Path file) throws IOException;
    }

    long size() throws IOException;

    /** Writes at a position and returns how many bytes went out, as {@link FileChannel#write(ByteBuffer, long)} does. */
    int write(ByteBuffer bytes, long position) throws IOException;

    void truncate(long size) throws IOException;

    /** Returns when contents and length are on the disk itself. */
    void force() throws IOException;

    /**
     * True while the file of that name is still the one that was opened. A file that was deleted, or whose disk was taken
     * away, would go on taking bytes that nobody finds again.
     */
    default boolean isStillThere() {
        return true;
    }

    /** The real disk. */
    static AppendTarget onDisk(Path file) throws IOException {
        FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE);
        Optional<Object> opened = key(file);
        return new AppendTarget() {
            @Override
            public long size() throws IOException {
                return channel.size();
            }

            @Override
            public int write(ByteBuffer bytes, long position) throws IOException {
                return channel.write(bytes, position);
            }

            @Override
            public void truncate(long size) throws IOException {
                channel.truncate(size);
            }

            @Override
            public void force() throws IOException {
                channel.force(true);
            }

            @Override
            public boolean isStillThere() {
                return Files.exists(file) && key(file).equals(opened);
            }

            @Override
            public void close() throws IOException {
                channel.close();
            }
        };
    }

    /** What tells one file of the disk from another; empty on systems that do not say. */
    private static Optional<Object> key(Path file) {
        try {
            return Optional.ofNullable(Files.readAttributes(file, BasicFileAttributes.class).fileKey());
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
