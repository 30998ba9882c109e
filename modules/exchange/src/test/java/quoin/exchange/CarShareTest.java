package quoin.exchange;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quoin.car.Car;
import quoin.logbook.CarFile;
import quoin.logbook.Entry;
import quoin.logbook.Journal;
import quoin.logbook.Library;
import quoin.rehearsal.Ouzel23;

class CarShareTest {

    @TempDir
    private Path folder;
    private Path file;
    private Library mine;
    private Library friend;

    @BeforeEach
    void twoLibrariesWithACarOfTheSameName() {
        mine = Days.library(folder.resolve("mine"));
        friend = Days.library(folder.resolve("friend"));
        file = folder.resolve("ouzel.quoin.zip");
    }

    /** In words of the racer, and not in those of whatever opened the file. */
    @Test
    void aFileOfAnotherKindIsNoSharedCar() throws IOException {
        Files.writeString(file, "LF,RF,LR,RR\n160,170,150,157\n");
        String wrong = assertThrows(ShareException.class, () -> SharedCar.read(file)).getMessage();
        assertTrue(wrong.contains("it is no shared car; choose a file made with File, Share Car"), wrong);
        Files.delete(file);
        String gone = assertThrows(ShareException.class, () -> SharedCar.read(file)).getMessage();
        assertTrue(gone.contains("not found"), gone);
        String nowhere = assertThrows(ShareException.class,
                () -> CarShare.write(mine, "ouzel-23", "Anna", folder.resolve("no/such/place.zip"), Days.CLOCK)).getMessage();
        assertTrue(nowhere.contains("not found"), nowhere);
    }

    @Test
    void aFriendGetsTheCarBesideHisOwn() {
        byte[] his = bytes(friend.root().resolve("cars/ouzel-23/car.json"));
        assertEquals(2, CarShare.write(mine, "ouzel-23", "Anna", file, Days.CLOCK));
        SharedCar shared = SharedCar.read(file);
        assertEquals(List.of("Ouzel 23", "Anna", "2"), List.of(shared.name(), shared.from(), Integer.toString(shared.days())));
        String id = shared.importInto(friend);
        assertNotEquals("ouzel-23", id);
        Car came = friend.car(id);
        assertEquals("Ouzel 23 (from Anna)", came.name());
        assertEquals(Ouzel23.car().withId(id, came.name()), came);
        assertArrayEquals(his, bytes(friend.root().resolve("cars/ouzel-23/car.json")));
        assertEquals(2, friend.days("ouzel-23").size());
        assertEquals(2, friend.days(id).size());
        friend.days(id).forEach(day -> {
            try (Journal journal = friend.openDay(id, day.id()); Journal home = Journal.openReadOnly(mine.dayFolder("ouzel-23", day.id()))) {
                assertEquals(id, journal.day().car().id());
                assertEquals(home.entries(), journal.entries().subList(0, home.entries().size()), "every line of the day is kept");
                assertTrue(journal.entries().stream().anyMatch(e -> e instanceof Entry.Note n && n.words().contains("Anna")));
            }
        });
        assertNotEquals(id, SharedCar.read(file).importInto(friend), "a second time makes a car of its own too");
    }

    @Test
    void givenUpHalfWayLeavesNothingBehind() throws IOException {
        assertThrows(CancellationException.class, () -> CarShare.write(mine, "ouzel-23", "Anna", file, Days.CLOCK, share -> share < 0.6));
        try (Stream<Path> left = Files.list(folder)) {
            assertTrue(left.noneMatch(f -> f.toString().endsWith(".zip") || f.toString().endsWith(".part")));
        }
        CarShare.write(mine, "ouzel-23", "Anna", file, Days.CLOCK);
        SharedCar shared = SharedCar.read(file);
        assertThrows(CancellationException.class, () -> shared.importInto(friend, share -> share < 0.5));
        try (Stream<Path> left = Files.list(friend.root().resolve("cars"))) {
            assertEquals(List.of("ouzel-23"), left.map(f -> f.getFileName().toString()).toList());
        }
    }

    @Test
    void theFileIsAZipOfPlainFiles() throws IOException {
        CarShare.write(mine, "ouzel-23", "Anna", file, Days.CLOCK);
        try (ZipFile zip = new ZipFile(file.toFile())) {
            assertEquals(4, zip.size());
            assertEquals(CarFile.toText(Ouzel23.car()), new String(zip.getInputStream(zip.getEntry("car.json")).readAllBytes(), StandardCharsets.UTF_8));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"../../../evil.txt", "/etc/passwd", "days/../../evil", "days/..\\..\\evil/day.jsonl", "C:\\evil", "days/x/../day.jsonl",
        "days/CON /day.jsonl", "car.json/", "days/2026-05-02-1/day.lock", "days/\u202E/day.jsonl", ""})
    void aPathOutsideTheCarIsRefusedAndNothingIsWritten(String path) throws IOException {
        byte[] evil = "evil".getBytes(StandardCharsets.UTF_8);
        Map<String, byte[]> contents = good();
        contents.put(path.isEmpty() ? "none" : path, evil);
        zip(contents, path);
        long before = count(folder);
        ShareException refused = assertThrows(ShareException.class, () -> SharedCar.read(file));
        assertTrue(refused.getMessage().contains("not imported"), refused.getMessage());
        assertEquals(before, count(folder));
    }

    /** An entry that the list does not name is never unpacked, wherever it points. */
    @Test
    void whatIsNotListedIsNotTaken() throws IOException {
        Map<String, byte[]> contents = good();
        zip(contents, null);
        Map<String, byte[]> more = new LinkedHashMap<>();
        try (ZipFile zip = new ZipFile(file.toFile())) {
            for (ZipEntry entry : zip.stream().toList()) {
                more.put(entry.getName(), zip.getInputStream(entry).readAllBytes());
            }
        }
        more.put("../../evil.txt", new byte[] {1});
        raw(more);
        String id = SharedCar.read(file).importInto(friend);
        assertFalse(Files.exists(folder.resolve("evil.txt")));
        try (Stream<Path> all = Files.walk(friend.root().resolve("cars").resolve(id))) {
            assertTrue(all.noneMatch(p -> p.toString().contains("evil")));
        }
        try (Stream<Path> left = Files.list(friend.root().resolve("cars"))) {
            assertTrue(left.noneMatch(p -> p.getFileName().toString().startsWith(".")), "nothing is left of the work");
        }
    }

    @Test
    void damageOnTheWayIsNoticed() throws IOException {
        Map<String, byte[]> contents = good();
        Manifest manifest = manifest(contents);
        contents.put("car.json", "{}".getBytes(StandardCharsets.UTF_8));
        Map<String, byte[]> all = new LinkedHashMap<>(Map.of(Manifest.FILE, manifest.write()));
        all.putAll(contents);
        raw(all);
        assertTrue(assertThrows(ShareException.class, () -> SharedCar.read(file)).getMessage().contains("damaged on the way"));
        Files.write(file, new byte[] {'P', 'K', 3, 4, 0});
        assertThrows(ShareException.class, () -> SharedCar.read(file));
        Files.writeString(file, "no zip at all");
        assertThrows(ShareException.class, () -> SharedCar.read(file));
    }

    /** A megabyte of noughts in a kilobyte of zip: no more is unpacked than was promised. */
    @Test
    void aBombDoesNotGoOff() throws IOException {
        Map<String, byte[]> contents = good();
        Manifest manifest = manifest(contents);
        contents.put("car.json", new byte[1 << 20]);
        Map<String, byte[]> all = new LinkedHashMap<>(Map.of(Manifest.FILE, manifest.write()));
        all.putAll(contents);
        raw(all);
        assertTrue(assertThrows(ShareException.class, () -> SharedCar.read(file)).getMessage().contains("larger than it says"));
    }

    @Test
    void hostileNamesAreOnlyNames() {
        Car car = Ouzel23.car().withId("ouzel-23", "<html>../../x \u202Egpj.exe =cmd");
        Library other = Days.library(folder.resolve("other"), car);
        CarShare.write(other, "ouzel-23", "../../\u0000Anna\nBob " + "x".repeat(500), file, Days.CLOCK);
        String id = SharedCar.read(file).importInto(friend);
        assertTrue(id.matches("[a-z0-9-]+"), id);
        assertFalse(friend.car(id).name().contains("\n"));
        assertTrue(friend.car(id).name().length() < 200);
    }

    private Map<String, byte[]> good() {
        Map<String, byte[]> contents = new LinkedHashMap<>();
        contents.put("car.json", CarFile.toText(Ouzel23.car()).getBytes(StandardCharsets.UTF_8));
        return contents;
    }

    private static Manifest manifest(Map<String, byte[]> contents) {
        return new Manifest("ouzel-23", "Ouzel 23", "Eve", "2026-05-02T08:00:00Z", contents.entrySet().stream()
                .map(e -> new Manifest.Item(e.getKey(), e.getValue().length, Manifest.sha256(e.getValue()))).toList());
    }

    private void zip(Map<String, byte[]> contents, String renamed) throws IOException {
        Manifest manifest = manifest(contents);
        if (renamed != null && renamed.isEmpty()) {
            manifest = new Manifest(manifest.car(), manifest.name(), manifest.from(), manifest.made(),
                    manifest.files().stream().map(i -> i.path().equals("none") ? new Manifest.Item("", i.bytes(), i.sha256()) : i).toList());
        }
        Map<String, byte[]> all = new LinkedHashMap<>();
        all.put(Manifest.FILE, manifest.write());
        all.putAll(contents);
        raw(all);
    }

    private void raw(Map<String, byte[]> all) throws IOException {
        try (OutputStream out = Files.newOutputStream(file); ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> one : all.entrySet()) {
                zip.putNextEntry(new ZipEntry(one.getKey()));
                zip.write(one.getValue());
                zip.closeEntry();
            }
        }
    }

    private static long count(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.count();
        }
    }

    private static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
