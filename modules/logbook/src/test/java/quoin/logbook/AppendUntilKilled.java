package quoin.logbook;

import java.nio.file.Path;

/** Records notes for ever and prints each number when it is recorded; started as a program of its own and killed. */
final class AppendUntilKilled {

    private AppendUntilKilled() {
    }

    public static void main(String[] args) {
        try (Journal journal = Journal.open(Path.of(args[0]))) {
            while (true) {
                System.out.println(journal.append(Samples.note("note of some length to write")).number());
                System.out.flush();
            }
        }
    }
}
