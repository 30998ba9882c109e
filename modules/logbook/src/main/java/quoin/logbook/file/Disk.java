package quoin.logbook.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** Writing whole files so that after a power cut either the old or the new one is there. */
public final class Disk {

    private Disk() {
    }

    /** Writes a file beside its final name, forces it to the disk and moves it into place. */
    public static void replace(Path file, byte[] contents) throws IOException {
        Path fresh = file.resolveSibling(file.getFileName() + ".new");
        writeForced(fresh, contents);
        try {
            Files.move(fresh, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(fresh, file, StandardCopyOption.REPLACE_EXISTING);
        }
        forceFolder(file.toAbsolutePath().getParent());
    }

    /** Writes a file and returns when it is on the disk itself. */
    public static void writeForced(Path file, byte[] contents) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE,
                StandardOpenOption.TRUNCATE_EXISTING)) {
            ByteBuffer buffer = ByteBuffer.wrap(contents);
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
            channel.force(true);
        }
    }

    /** Makes a new name in a folder survive a power cut. Systems that cannot open a folder do so by themselves. */
    public static void forceFolder(Path folder) throws IOException {
        FileChannel channel;
        try {
            channel = FileChannel.open(folder, StandardOpenOption.READ);
        } catch (IOException e) {
            return;
        }
        try (channel) {
            channel.force(true);
        }
    }

    /** Creates a folder with its parents, each name forced to the disk. */
    public static void createFolders(Path folder) throws IOException {
        if (Files.isDirectory(folder)) {
            return;
        }
        Path parent = folder.toAbsolutePath().getParent();
        if (parent != null) {
            createFolders(parent);
        }
        Files.createDirectories(folder);
        if (parent != null) {
            forceFolder(parent);
        }
    }
}
