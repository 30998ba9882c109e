package quoin.logbook.file;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.ClosedByInterruptException;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import quoin.quantities.Texts;

/**
 * A file to which whole lines are added, each on the disk before {@link #append} returns. A line that could not be written
 * whole is cut off again, so the file always ends after the last line that counts.
 */
public final class LineFile implements Closeable {
    private static final Texts TEXTS = Texts.of(LineFile.class);

    private static final byte[] NOTHING = new byte[0];

    private final Path file;
    private final AppendTarget.Opener opener;
    private AppendTarget target;
    private long goodLength;
    private byte[] lastGood;
    private byte[] halfWritten = NOTHING;

    private LineFile(Path file, AppendTarget.Opener opener, AppendTarget target, long goodLength, byte[] lastGood) {
        this.file = file;
        this.opener = opener;
        this.target = target;
        this.goodLength = goodLength;
        this.lastGood = lastGood;
    }

    /**
     * Opens a file that was read as {@code contents}: what is torn is cut off (the caller has kept it elsewhere) and a
     * missing last line end is written.
     */
    public static LineFile open(Path file, LineContents contents, AppendTarget.Opener opener) throws IOException {
        AppendTarget target = opener.open(file);
        try {
            LineFile lines = new LineFile(file, opener, target, contents.goodLength(), contents.goodEnd());
            if (target.size() != contents.goodLength() + contents.torn().length) {
                throw new DiskException(TEXTS.phrase("wasChangedByAnother", file.getFileName()));
            }
            if (contents.torn().length > 0) {
                target.truncate(contents.goodLength());
                target.force();
            }
            if (contents.endMissing()) {
                lines.write(new byte[] {'\n'});
            }
            return lines;
        } catch (IOException | RuntimeException e) {
            target.close();
            throw e;
        }
    }

    /**
     * Adds one line.
     *
     * @param line the line without its end
     * @throws IOException where it is not on the disk; nothing of it stays in the file then
     */
    public synchronized void append(byte[] line) throws IOException {
        byte[] whole = Arrays.copyOf(line, line.length + 1);
        whole[line.length] = '\n';
        boolean interrupted = Thread.interrupted();
        try {
            write(whole);
        } catch (ClosedByInterruptException e) {
            // an interrupt closes a channel for good; the entry matters more than the interrupt, so it waits
            interrupted = Thread.interrupted() || interrupted;
            target = opener.open(file);
            write(whole);
        } finally {
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
        }
    }

    private void write(byte[] bytes) throws IOException {
        if (!target.isStillThere()) {
            openAnew();
        }
        long size = target.size();
        if (halfWritten.length > 0 && size > goodLength && size <= goodLength + halfWritten.length) {
            target.truncate(goodLength);
            size = target.size();
        }
        if (size != goodLength) {
            throw changed();
        }
        halfWritten = bytes;
        try {
            ByteBuffer buffer = ByteBuffer.wrap(bytes);
            while (buffer.hasRemaining()) {
                target.write(buffer, goodLength + buffer.position());
            }
            target.force();
        } catch (IOException e) {
            cutBack(e);
            throw e;
        }
        if (!target.isStillThere()) {
            throw new NoSuchFileException(file.toString(), null, "went away while it was written");
        }
        goodLength += bytes.length;
        lastGood = bytes;
        halfWritten = NOTHING;
    }

    /** Takes up a file that was away, if it is the one that went: as long as it was, with the same end. */
    private void openAnew() throws IOException {
        byte[] end = new byte[lastGood.length];
        try (SeekableByteChannel found = Files.newByteChannel(file)) {
            ByteBuffer into = ByteBuffer.wrap(end);
            found.position(Math.max(0, goodLength - end.length));
            while (into.hasRemaining() && found.read(into) >= 0) {
                // a read may bring less than was asked for
            }
        }
        if (!Arrays.equals(end, lastGood)) {
            throw changed();
        }
        AppendTarget fresh = opener.open(file);
        target.close();
        target = fresh;
    }

    private IOException changed() {
        return new DiskException(TEXTS.phrase("wasChangedByAnotherProgram", file.getFileName()));
    }

    private void cutBack(IOException cause) {
        try {
            target.truncate(goodLength);
            target.force();
            halfWritten = NOTHING;
        } catch (IOException e) {
            cause.addSuppressed(e);
        }
    }

    @Override
    public synchronized void close() throws IOException {
        target.close();
    }
}
