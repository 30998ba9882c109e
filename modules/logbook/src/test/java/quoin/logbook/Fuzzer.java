package quoin.logbook;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;

/**
 * Sets a fuzzer that follows the branches of the code (Jazzer) on a parser, in a process of its own, for {@code -Dquoin.fuzz}
 * seconds or as many as {@code QUOIN_FUZZ} says, otherwise for 6. It stops at anything the parser throws that is no refusal, at a
 * hang and at a growing heap. For 0 seconds the parser gets the input the fuzzer would begin with, and damaged copies of it.
 */
public final class Fuzzer {

    private static final int SECONDS = Integer.getInteger("quoin.fuzz",
            Integer.parseInt(System.getenv().getOrDefault("QUOIN_FUZZ", "6")));
    private static final int HANG_SECONDS = 60;
    private static final int LATEST_SECONDS = 300;
    private static final int DAMAGED = 300;
    private static final int MOST_BYTES = 20_000;

    private Fuzzer() {
    }

    /**
     * Skips the test where the fuzzer's native part cannot be loaded.
     *
     * @param target has a method {@code fuzzerTestOneInput(byte[])}
     * @param work   an empty folder
     * @param seeds  good input to begin with
     */
    public static void run(Class<?> target, Path work, byte[]... seeds) throws IOException, InterruptedException {
        if (SECONDS == 0) {
            damaged(target, seeds);
            return;
        }
        Path corpus = Files.createDirectories(work.resolve("corpus"));
        for (byte[] seed : seeds) {
            Files.write(corpus.resolve("seed-" + Arrays.hashCode(seed)), seed);
        }
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx512m",
                "-Djava.awt.headless=true", "-XX:+EnableDynamicAgentLoading", "-cp", System.getProperty("java.class.path"),
                "com.code_intelligence.jazzer.Jazzer", "--target_class=" + target.getName(), "--instrumentation_includes=quoin.**",
                "--reproducer_path=" + work, "-max_total_time=" + SECONDS, "-timeout=" + HANG_SECONDS, "-max_len=" + MOST_BYTES,
                "-rss_limit_mb=2048", "-artifact_prefix=" + work + "/", corpus.toString()));
        Path log = work.resolve("log");
        Process fuzzer = new ProcessBuilder(command).directory(work.toFile()).redirectErrorStream(true).redirectOutput(log.toFile()).start();
        if (!fuzzer.waitFor(SECONDS + LATEST_SECONDS, TimeUnit.SECONDS)) {
            fuzzer.destroyForcibly().waitFor();
            Assertions.fail(target.getSimpleName() + " did not end: " + Files.readString(log, StandardCharsets.ISO_8859_1));
        }
        int exit = fuzzer.exitValue();
        String told = Files.readString(log, StandardCharsets.ISO_8859_1);
        Assumptions.assumeFalse(told.contains("UnsatisfiedLinkError") || told.contains("Failed to load native"), "no native fuzzer here");
        Assertions.assertEquals(0, exit, () -> target.getSimpleName() + ": " + told.substring(Math.max(0, told.length() - 6000)));
        List<String> done = told.lines().filter(l -> l.contains("DONE") || l.startsWith("Done ")).toList();
        Assertions.assertFalse(done.isEmpty(), told);
        System.out.println(target.getSimpleName() + ": " + String.join(", ", done).replaceAll("\\s+", " "));
    }

    private static void damaged(Class<?> target, byte[]... seeds) {
        try {
            Method parse = target.getMethod("fuzzerTestOneInput", byte[].class);
            for (int n = 0; n < seeds.length + DAMAGED; n++) {
                byte[] seed = seeds[n % seeds.length];
                parse.invoke(null, (Object) (n < seeds.length ? seed : new Mutator(n).damage(seed)));
            }
        } catch (InvocationTargetException e) {
            throw new AssertionError(target.getSimpleName(), e.getCause());
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(e);
        }
    }
}
