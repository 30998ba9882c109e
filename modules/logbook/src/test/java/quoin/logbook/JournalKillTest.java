package quoin.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JournalKillTest {

    private static final int KILLS = 20;

    @TempDir
    Path folder;

    @Test
    void everythingSaidToBeRecordedIsThereAfterAKill() throws IOException, InterruptedException {
        Path day = folder.resolve("day");
        Journal.create(day, Samples.bareCar(), "").close();
        Random random = new Random(4711);
        long printed = 1;
        for (int kill = 0; kill < KILLS; kill++) {
            printed = Math.max(printed, lastPrintedBeforeKill(day, random.nextInt(40)));
            try (Journal journal = Journal.open(day)) {
                long there = journal.entries().size();
                assertTrue(there >= printed, "entry " + printed + " was recorded but only " + there + " are there");
                assertTrue(journal.findings().stream().allMatch(f -> f.kind() == FileFinding.Kind.TORN_END
                        || f.kind() == FileFinding.Kind.END_ADDED), journal.findings().toString());
                assertEquals(LongStream.rangeClosed(1, there).boxed().toList(), journal.entries().stream().map(Entry::number).toList());
            }
        }
        assertTrue(printed > KILLS, "the test recorded too little to mean anything: " + printed);
    }

    private long lastPrintedBeforeKill(Path day, int millis) throws IOException, InterruptedException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        Path out = Files.createTempFile(folder, "printed", ".txt");
        Process child = new ProcessBuilder(List.of(java, "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmx64m", "-cp",
                System.getProperty("java.class.path"), AppendUntilKilled.class.getName(), day.toString()))
                .redirectError(ProcessBuilder.Redirect.INHERIT).redirectOutput(out.toFile()).start();
        while (Files.size(out) == 0) {
            assertTrue(child.isAlive(), "the program could not record anything");
            Thread.sleep(5);
        }
        Thread.sleep(millis);
        child.destroyForcibly();
        child.waitFor();
        // a number cut short by the kill is only smaller
        return Files.readAllLines(out).stream().filter(line -> !line.isEmpty()).mapToLong(Long::parseLong).max().orElse(0);
    }
}
