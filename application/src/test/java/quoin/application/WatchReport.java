package quoin.application;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** What {@link EventThreadWatch} wrote, and its sums over a part of it. */
record WatchReport(Path file) {

    private static final double BLOCK_MS = 100;
    /** A block with less work in it waited for a processor or for the disk. */
    private static final double WORK_MS = 50;

    /** How much of it there is by now; where a part begins that is to be summed up later. */
    long lines() throws IOException {
        return Files.exists(file) ? Files.readAllLines(file).size() : 0;
    }

    /** Prints what held the event thread up and what an Enter took since then. */
    void print(String what, long from) throws IOException {
        System.out.println("== " + what);
        List<String[]> lines = since(from);
        List<String[]> blocks = lines.stream().filter(l -> l[0].equals("block") && Double.parseDouble(l[2]) > BLOCK_MS).toList();
        blocks.stream().filter(l -> Double.parseDouble(l[3]) > WORK_MS)
                .forEach(l -> System.out.printf("block %s ms (processor %s ms) after %s: %s%n", l[2], l[3], l[4], l[5]));
        System.out.printf("blocks over %.0f ms by the clock: %d; of them with more than %.0f ms of work: %d%n", BLOCK_MS, blocks.size(), BLOCK_MS,
                blocks.stream().filter(l -> Double.parseDouble(l[3]) > BLOCK_MS).count());
        for (String key : List.of("Enter", "Ctrl Enter")) {
            List<String[]> enters = lines.stream().filter(l -> l[0].equals("enter") && l[5].equals(key)).toList();
            if (!enters.isEmpty()) {
                System.out.printf("%s until drawn: %s; processor %s (n = %d)%n", key, spread(enters, 3), spread(enters, 4), enters.size());
            }
        }
    }

    private List<String[]> since(long from) throws IOException {
        return Files.exists(file) ? Files.readAllLines(file).stream().skip(from).map(l -> l.split("\t", -1)).toList() : List.of();
    }

    private static String spread(List<String[]> lines, int column) {
        double[] sorted = lines.stream().mapToDouble(l -> Double.parseDouble(l[column])).sorted().toArray();
        return "median %.1f ms, p99 %.1f ms, worst %.1f ms".formatted(sorted[sorted.length / 2],
                sorted[(int) Math.ceil(0.99 * sorted.length) - 1], sorted[sorted.length - 1]);
    }
}
