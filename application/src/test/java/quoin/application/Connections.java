package quoin.application;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The network connections a process holds, read from /proc; nothing is seen where there is no /proc. */
final class Connections {

    private static final int REMOTE = 2;
    private static final int INODE = 9;

    private Connections() {
    }

    /** Remote ends of a process's TCP and UDP sockets that are not on this machine, as /proc/net writes them. */
    static Set<String> offMachine(long pid) {
        Set<String> sockets = sockets(pid);
        return Stream.of("tcp", "tcp6", "udp", "udp6")
                .flatMap(table -> lines(Path.of("/proc", String.valueOf(pid), "net", table)).stream().skip(1))
                .map(line -> line.strip().split("\\s+"))
                .filter(cells -> sockets.contains("socket:[" + cells[INODE] + "]"))
                .map(cells -> cells[REMOTE])
                .filter(remote -> !local(remote.substring(0, remote.indexOf(':'))))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** 127/8 and ::1 and their mapped form, or no peer at all; the kernel writes words in host order (little endian). */
    private static boolean local(String address) {
        boolean none = address.chars().allMatch(digit -> digit == '0');
        boolean four = address.length() == 8 && address.endsWith("7F");
        boolean mapped = address.startsWith("0000000000000000FFFF0000") && address.endsWith("7F");
        return none || four || mapped || address.equals("00000000000000000000000001000000");
    }

    private static Set<String> sockets(long pid) {
        Set<String> found = new HashSet<>();
        try (Stream<Path> open = Files.list(Path.of("/proc", String.valueOf(pid), "fd"))) {
            for (Path link : open.toList()) {
                target(link, found);
            }
        } catch (IOException e) {
            return Set.of();
        }
        return found;
    }

    /** A file may be closed between listing and reading; then it holds no connection. */
    private static void target(Path link, Set<String> found) {
        try {
            found.add(Files.readSymbolicLink(link).toString());
        } catch (IOException e) {
            found.remove(link.toString());
        }
    }

    private static List<String> lines(Path table) {
        try {
            return Files.readAllLines(table);
        } catch (IOException e) {
            return List.of();
        }
    }
}
