package quoin.application;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quoin.car.Axle;
import quoin.car.AxleSetup;
import quoin.car.Car;
import quoin.car.PerAxle;
import quoin.car.SuspensionChoice;
import quoin.logbook.Journal;
import quoin.logbook.Library;
import quoin.rehearsal.Ouzel23;

/** A day of a car whose suspension type is not installed: opened, the car changed and saved, and no letter of it lost. */
@WindowTest
class TypeNotInstalledIT {

    private static final Duration START = Duration.ofSeconds(90);
    private static final Duration END = Duration.ofSeconds(30);
    private static final Duration SETTLE = Duration.ofSeconds(4);
    private static final String PAINTED = "Ouzel 23 blue";

    @TempDir
    Path home;

    @Test
    void noFieldIsLost(Screen screen) throws IOException {
        Library library = new Library(home.resolve("library"));
        SuspensionChoice swingAxle = swingAxle();
        Car car = withRear(swingAxle);
        library.save(car);
        Path folder;
        try (Journal day = library.createDay(car, "A day from elsewhere")) {
            folder = day.folder();
        }
        byte[] before = Files.readAllBytes(folder.resolve(Journal.FILE));
        String kept = suspension(Files.readString(folder.resolve(Journal.FILE)));
        assertTrue(kept.contains("640,5") && kept.contains("half shaft"), kept);

        try (AppRunner app = AppRunner.start(screen, home, "-J-Dquoin.library=" + home.resolve("library"),
                "--open", folder.toString())) {
            screen.waitForWindow("^Quoin", START);
            Await.pause(SETTLE);
            screen.shot("type-not-installed");
            screen.keys().press("ctrl+e");
            Await.until("the car form", END, () -> screen.activeTitle().startsWith("Car: "));
            Await.pause(SETTLE);
            screen.keys().press("ctrl+a").type(PAINTED);
            screen.shot("type-not-installed-car");
            screen.keys().press("ctrl+s");
            Await.until("the changed car in the day's file", END, () -> name(folder).equals(PAINTED));
            Await.pause(SETTLE);
            screen.keys().press("alt+f").press("x");
            assertEquals(0, app.waitForExit(END));
            assertEquals(List.of(), app.log().problems());
        }
        byte[] after = Files.readAllBytes(folder.resolve(Journal.FILE));
        assertArrayEquals(before, Arrays.copyOf(after, before.length), "what was written stays");
        String added = new String(after, before.length, after.length - before.length, StandardCharsets.UTF_8);
        assertEquals(kept, suspension(added), "the suspension letter by letter in the changed car");
        assertEquals(swingAxle, library.car(car.id()).axles().get(Axle.REAR).suspension());
    }

    private static String name(Path folder) {
        try (Journal journal = Journal.openReadOnly(folder)) {
            return journal.day().car().name();
        }
    }

    /** Parameters as a person types them, one that the type never had among them. */
    private static SuspensionChoice swingAxle() {
        Map<String, String> parameters = new LinkedHashMap<>();
        parameters.put("wheelCentre", "0; 640,5; 300");
        parameters.put("loadedRadius_mm", "290 mm");
        parameters.put("pivot", "0 90 300");
        parameters.put("remark", "half shaft \u201ebent\u201c, -1\u00b030'");
        return new SuspensionChoice("swing-axle", parameters);
    }

    private static Car withRear(SuspensionChoice choice) {
        Car car = Ouzel23.car();
        AxleSetup rear = car.axles().rear();
        return new Car(car.id(), car.name(), car.wheelbaseMm(), new PerAxle<>(car.axles().front(),
                new AxleSetup(rear.trackMm(), rear.bar(), choice)), car.corners(), car.masses(), car.heightPoints(),
                car.targets(), car.loadCase(), car.instruments(), car.walkingOrder());
    }

    /** The suspension of the rear axle as it is written in the last car of these lines. */
    private static String suspension(String lines) {
        int type = lines.lastIndexOf("\"swing-axle\"");
        int start = lines.lastIndexOf('{', type);
        int end = lines.indexOf("}}", type);
        assertTrue(type > 0 && end > type, lines);
        return lines.substring(start, end + 2);
    }
}
