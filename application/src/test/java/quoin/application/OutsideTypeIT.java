package quoin.application;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What DEVELOPERS.md promises the author of a suspension type, done with the files it shows: built in an empty folder
 * outside this tree against the published modules, dropped into a fresh user folder, and asked by the command line.
 */
class OutsideTypeIT {

    private static final Duration LIMIT = Duration.ofSeconds(120);
    private static final String NBM = "target/swing-axle-1.0.0.nbm";

    private static final double PIVOT_Y = 90;
    private static final double PIVOT_Z = 300;
    private static final double WHEEL_Y = 640;
    private static final double WHEEL_Z = 300;
    private static final double RADIUS = 290;
    private static final double STATIC_CAMBER = Math.toRadians(-1);

    @TempDir
    Path home;

    @Test
    void isBuiltOutsideInstalledAndAsked() throws IOException, InterruptedException {
        Path folder = Files.createDirectory(home.resolve("swing-axle"));
        Chapter chapter = new Chapter("A suspension type from outside");
        assertEquals(Set.of("pom.xml", "src/main/java/org/example/swingaxle/SwingAxle.java",
                "src/test/java/org/example/swingaxle/SwingAxleTest.java", "request.json"), chapter.files().keySet());
        chapter.write(folder);
        String told = build(folder);
        assertTrue(told.contains("Running org.example.swingaxle.SwingAxleTest"), told);
        install(folder.resolve(NBM), home.resolve("settings"));

        Path answers = home.resolve("answers.json");
        try (AppRunner app = AppRunner.startHeadless(home, "--calculate", folder.resolve("request.json").toString(),
                "--answers", answers.toString())) {
            assertEquals(0, app.waitForExit(LIMIT), app::standardError);
            assertEquals(List.of(), app.log().problems());
        }
        JsonNode result = new ObjectMapper().readTree(answers.toFile()).at("/answers/0/result");
        assertEquals(3, result.get("positions").size());
        result.get("positions").forEach(OutsideTypeIT::assertClosedForm);
        assertEquals(Math.toDegrees(1 / (WHEEL_Y - PIVOT_Y)),
                result.at("/adjusterSensitivitiesAtDesign/pivotUp/camber_deg_per_mm").doubleValue(), 1e-9,
                "the pivot up by 1 mm swings the shaft down by 1 mm in its length");
    }

    /** As the chapter says, but nothing is fetched: all else that Maven needs comes from what built Quoin. */
    private static String build(Path folder) throws IOException, InterruptedException {
        Path maven = Path.of(required("quoin.maven.home"), "bin", File.separatorChar == '/' ? "mvn" : "mvn.cmd");
        Path settings = folder.resolveSibling("settings.xml");
        Files.writeString(settings, "<settings><localRepository>" + folder.resolveSibling("repository")
                + "</localRepository><mirrors><mirror><id>near</id><mirrorOf>*,!quoin-modules</mirrorOf><url>"
                + Path.of(required("quoin.maven.repository")).toUri() + "</url></mirror></mirrors></settings>");
        Path told = folder.resolveSibling("maven.txt");
        Process process = new ProcessBuilder(maven.toString(), "-B", "-ntp", "-s", settings.toString(), "package",
                "-Dquoin.modules=" + Path.of("target", "modules").toUri()).directory(folder.toFile())
                .redirectErrorStream(true).redirectOutput(told.toFile()).start();
        process.getOutputStream().close();
        int exit = process.waitFor();
        String text = Files.readString(told, StandardCharsets.UTF_8);
        assertEquals(0, exit, text);
        return text;
    }

    private static String required(String property) {
        String value = System.getProperty(property);
        assertTrue(value != null, property + " is not set; run this by Maven");
        return value;
    }

    /** The folder {@code netbeans} of the plug-in, into the user folder. */
    private static void install(Path nbm, Path userFolder) throws IOException {
        List<String> installed = new ArrayList<>();
        try (ZipFile zip = new ZipFile(nbm.toFile())) {
            for (ZipEntry entry : Collections.list(zip.entries())) {
                if (entry.getName().startsWith("netbeans/") && !entry.isDirectory()) {
                    Path file = userFolder.resolve(entry.getName().substring("netbeans/".length()));
                    Files.createDirectories(file.getParent());
                    try (InputStream in = zip.getInputStream(entry)) {
                        Files.copy(in, file);
                    }
                    installed.add(userFolder.relativize(file).toString().replace(File.separatorChar, '/'));
                }
            }
        }
        Collections.sort(installed);
        assertEquals(List.of("config/Modules/org-example-swingaxle.xml", "modules/org-example-swingaxle.jar"), installed);
    }

    /**
     * The half shaft turns by the angle a about the pivot: camber follows one to one; the roll centre lies on the line from
     * the contact point through the pivot, where it crosses the middle of the car (textbook construction, from memory).
     */
    private static void assertClosedForm(JsonNode position) {
        double travel = position.get("wheelCentreTravel_mm").doubleValue();
        double shaft = Math.hypot(WHEEL_Y - PIVOT_Y, WHEEL_Z - PIVOT_Z);
        double start = Math.atan2(WHEEL_Z - PIVOT_Z, WHEEL_Y - PIVOT_Y);
        double angle = Math.asin((WHEEL_Z + travel - PIVOT_Z) / shaft);
        double camber = STATIC_CAMBER - (angle - start);
        double contactY = PIVOT_Y + shaft * Math.cos(angle) - RADIUS * Math.sin(camber);
        double contactZ = WHEEL_Z + travel - RADIUS * Math.cos(camber);
        assertEquals(Math.toDegrees(camber), position.get("camber_deg").doubleValue(), 1e-9);
        assertEquals(0, position.get("toe_deg").doubleValue(), 1e-9);
        assertEquals(-Math.toDegrees(1 / (shaft * Math.cos(angle))), position.get("bumpCamber_deg_per_mm").doubleValue(), 1e-9);
        assertEquals(-contactY, position.at("/contactPoint_mm/1").doubleValue(), 1e-7, "on the right");
        assertEquals(contactY - (WHEEL_Y - RADIUS * Math.sin(STATIC_CAMBER)),
                position.get("halfTrackChange_mm").doubleValue(), 1e-7);
        assertEquals(contactY * (PIVOT_Z - contactZ) / (contactY - PIVOT_Y),
                position.get("rollCentreHeight_mm").doubleValue(), 1e-6);
        double[] onShaft = turned(480 - PIVOT_Y, 290 - PIVOT_Z, angle - start);
        double coilY = 420 - PIVOT_Y - onShaft[0];
        double coilZ = 620 - PIVOT_Z - onShaft[1];
        assertEquals(Math.hypot(coilY, coilZ), position.get("coilLength_mm").doubleValue(), 1e-7);
        double shortening = (-coilY * onShaft[1] + coilZ * onShaft[0]) / Math.hypot(coilY, coilZ);
        assertEquals(shortening / (shaft * Math.cos(angle)), position.get("motionRatio").doubleValue(), 1e-9);
    }

    private static double[] turned(double y, double z, double angle) {
        return new double[] {y * Math.cos(angle) - z * Math.sin(angle), y * Math.sin(angle) + z * Math.cos(angle)};
    }
}
