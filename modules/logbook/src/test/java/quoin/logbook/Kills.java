package quoin.logbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.LongStream;
import quoin.car.ReadingId;

/**
 * Starts a program that records a scripted day, kills it (SIGKILL where the system has it) at random moments, again and
 * again, and looks at the day after each kill: everything that was shown as recorded is there as it was recorded, the file opens
 * without a question, nothing before was touched, and a torn end is kept beside it.
 */
public final class Kills {

    /** How many kills; a long run asks for more. */
    public static final int USUAL = Integer.getInteger("quoin.kills", 30);
    private static final long SEED = 4711;
    private static final int MOST_MILLIS = 25;

    private final Path folder;
    private final Class<?> program;
    private final Random random = new Random(SEED);
    private long recorded = 1;
    private int torn;

    /**
     * @param folder  an empty folder
     * @param program has a main method that takes the day's folder, waits for a line, then records {@link ScriptedDay#entry}
     */
    public Kills(Path folder, Class<?> program) {
        this.folder = folder;
        this.program = program;
    }

    /** Number of the last entry that was shown as recorded. */
    public long recorded() {
        return recorded;
    }

    /** How many kills fell inside a write. */
    public int torn() {
        return torn;
    }

    /** Kills so often and looks each time. */
    public void run(int times) throws IOException, InterruptedException {
        Path day = folder.resolve("day");
        Journal.create(day, Samples.bareCar(), "").close();
        Path file = day.resolve(Journal.FILE);
        Victim next = start(day, 0);
        for (int kill = 0; kill < times; kill++) {
            byte[] before = Files.readAllBytes(file);
            Victim victim = next;
            victim.begin();
            next = start(day, kill + 1);
            recorded = Math.max(recorded, victim.killedAfter(random.nextInt(MOST_MILLIS * 1000)));
            byte[] after = Files.readAllBytes(file);
            assertArrayEquals(before, Arrays.copyOf(after, before.length), "what was there was touched");
            look(day, after);
        }
        next.process.destroyForcibly().waitFor();
        System.out.println(program.getSimpleName() + ": " + times + " kills, " + torn + " of them inside a write, " + recorded
                + " entries shown as recorded, all there");
    }

    /** The figures as the scales showed them, where they are kept beside what a test of the scales made of them. */
    private static Entry asShown(Entry entry) {
        if (!(entry instanceof Entry.Reading reading) || reading.measured().filter(m -> m.method().equals("scale-factors")).isEmpty()) {
            return entry;
        }
        Map<ReadingId, Double> values = new LinkedHashMap<>(reading.values());
        values.replaceAll((id, right) -> reading.measured().get().raw(id.toString()).map(Double::valueOf).orElse(right));
        return new Entry.Reading(reading.header(), values, reading.typed(), reading.source());
    }

    private void look(Path day, byte[] asKilled) throws IOException {
        try (Journal journal = Journal.open(day)) {
            journal.waitIn(folder.resolve("second"), () -> { });
            long there = journal.entries().size();
            assertTrue(there >= recorded, "entry " + recorded + " was shown as recorded but only " + there + " are there");
            assertEquals(LongStream.rangeClosed(1, there).boxed().toList(), journal.entries().stream().map(Entry::number).toList());
            for (Entry entry : journal.entries().subList(1, (int) there)) {
                assertEquals(ScriptedDay.entry(entry.number()).withHeader(entry.header()), asShown(entry));
            }
            List<FileFinding> findings = journal.findings();
            assertTrue(findings.size() <= 1, findings.toString());
            for (FileFinding finding : findings) {
                if (finding.kind() == FileFinding.Kind.TORN_END) {
                    torn++;
                    assertKeptBeside(day, finding, asKilled);
                } else {
                    assertEquals(FileFinding.Kind.END_ADDED, finding.kind());
                }
            }
        }
    }

    private static void assertKeptBeside(Path day, FileFinding finding, byte[] asKilled) throws IOException {
        String name = finding.words().replaceAll(".* kept in ([^,]+),.*", "$1");
        byte[] kept = Files.readAllBytes(day.resolve(name));
        assertTrue(kept.length > 0, "nothing is kept in " + name);
        assertArrayEquals(Arrays.copyOfRange(asKilled, asKilled.length - kept.length, asKilled.length), kept);
    }

    private Victim start(Path day, int number) throws IOException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        Path said = folder.resolve("said-" + number + ".txt");
        Process process = new ProcessBuilder(List.of(java, "-Xshare:auto", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmx64m",
                "-Djava.awt.headless=true", "-cp", System.getProperty("java.class.path"), program.getName(), day.toString()))
                .redirectError(ProcessBuilder.Redirect.INHERIT).redirectOutput(said.toFile()).start();
        return new Victim(process, said);
    }

    /** One run of the program. */
    private record Victim(Process process, Path said) {

        void begin() throws IOException {
            process.getOutputStream().write('\n');
            process.getOutputStream().flush();
        }

        /** Waits for its first entry and then some; returns the last entry it said was recorded. */
        long killedAfter(int micros) throws IOException, InterruptedException {
            long deadline = System.nanoTime() + TimeUnit.MINUTES.toNanos(10);
            while (Files.size(said) == 0) {
                assertTrue(process.isAlive(), () -> "the program ended by itself with " + process.exitValue());
                assertTrue(System.nanoTime() < deadline, () -> "the program recorded nothing; it was at\n" + threads());
                LockSupport.parkNanos(500_000);
            }
            LockSupport.parkNanos(TimeUnit.MICROSECONDS.toNanos(micros));
            process.destroyForcibly().waitFor();
            return lines().stream().filter(line -> line.startsWith("recorded ")).mapToLong(line -> Long.parseLong(line.substring(9)))
                    .max().orElse(0);
        }

        /** Where its threads are, by the tool of the Java that runs it. */
        private String threads() {
            try {
                return new String(new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "jstack").toString(),
                        Long.toString(process.pid())).redirectErrorStream(true).start().getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            } catch (IOException e) {
                return e.toString();
            }
        }

        /** A number cut short by the kill is only smaller; a word without a number counts as not said. */
        private List<String> lines() {
            try {
                return Files.readAllLines(said, StandardCharsets.UTF_8).stream().filter(line -> line.matches("recorded \\d+")).toList();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
