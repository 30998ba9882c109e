package quoin.commandline;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a file whole or not at all. */
final class WholeFile {

    private WholeFile() {
    }

    static void write(Path file, byte[] content) throws IOException {
        Path target = file.toAbsolutePath();
        Path part = Files.createTempFile(target.getParent(), target.getFileName().toString(), ".part");
        try {
            Files.write(part, content);
            move(part, target);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    private static void move(Path part, Path target) throws IOException {
        try {
            Files.move(part, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
