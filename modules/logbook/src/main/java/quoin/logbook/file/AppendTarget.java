package quoin.logbook.file;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

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

    /** The real disk. */
    static AppendTarget onDisk(Path file) throws IOException {
        FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE);
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
            public void close() throws IOException {
                channel.close();
            }
        };
    }
}
