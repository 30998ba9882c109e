package quoin.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quoin.exchange.incoming.ReadingTable;
import quoin.exchange.table.CsvTable;
import quoin.logbook.CarFile;
import quoin.logbook.Journal;
import quoin.logbook.Library;
import quoin.logbook.Mutator;
import quoin.logbook.Spent;
import quoin.rehearsal.Ouzel23;
import quoin.workbench.DisplayUnits;
import quoin.workbench.ReadingFormat;

/** Damaged shared files and tables: read, or refused in words; nothing else happens. {@code -Dquoin.mutations} asks for more. */
class BadSharesTest {

    private static final int MUTATIONS = Integer.getInteger("quoin.mutations", 2000);
    /** A long run can be done in parts: the number of the first damage. */
    private static final long SEED = 20260502 + Integer.getInteger("quoin.mutations.first", 0);
    private static final long LONGEST_MS = 1000;

    @TempDir
    Path folder;

    private Path file;
    private Library friend;
    private Map<String, byte[]> contents;
    private final Spent spent = new Spent();

    @BeforeEach
    void begin() throws IOException {
        file = folder.resolve("ouzel.quoin.zip");
        friend = Days.library(folder.resolve("friend"));
        Library mine = Days.library(folder.resolve("mine"));
        contents = new LinkedHashMap<>();
        contents.put(Manifest.CAR_FILE, CarFile.toText(Ouzel23.car()).getBytes(StandardCharsets.UTF_8));
        String day = mine.days("ouzel-23").get(0).id();
        contents.put("days/" + day + "/day.jsonl", Files.readAllBytes(mine.dayFolder("ouzel-23", day).resolve(Journal.FILE)));
    }

    private void zip(byte[] manifest, Map<String, byte[]> files) throws IOException {
        try (OutputStream out = Files.newOutputStream(file); ZipOutputStream zip = new ZipOutputStream(out)) {
            zip.putNextEntry(new ZipEntry(Manifest.FILE));
            zip.write(manifest);
            for (Map.Entry<String, byte[]> one : files.entrySet()) {
                zip.putNextEntry(new ZipEntry(one.getKey()));
                zip.write(one.getValue());
            }
        }
    }

    private static byte[] manifest(Map<String, byte[]> files) throws IOException {
        return new Manifest("ouzel-23", "Ouzel 23", "Eve", "2026-05-02T08:00:00Z", files.entrySet().stream()
                .map(e -> new Manifest.Item(e.getKey(), e.getValue().length, Manifest.sha256(e.getValue()))).toList()).write();
    }

    /** Damages the zip itself, its list, or a file in it whose damage the list then vouches for. */
    private void damage(int n) throws IOException {
        Mutator mutator = new Mutator(SEED + n);
        if (n % 3 == 0) {
            zip(manifest(contents), contents);
            Files.write(file, mutator.damage(Files.readAllBytes(file)));
        } else if (n % 3 == 1) {
            zip(mutator.damage(manifest(contents)), contents);
        } else {
            Map<String, byte[]> damaged = new LinkedHashMap<>(contents);
            String hit = List.copyOf(contents.keySet()).get(n / 3 % contents.size());
            damaged.put(hit, mutator.damage(contents.get(hit)));
            zip(manifest(damaged), damaged);
        }
    }

    @Test
    void damagedSharesAreReadOrRefusedAndStayInTheirPlace() throws IOException {
        long outside = count(folder) - count(friend.root());
        int read = 0;
        int imported = 0;
        for (int n = 0; n < MUTATIONS / 2; n++) {
            damage(n);
            spent.begin();
            try {
                SharedCar shared = SharedCar.read(file);
                read++;
                if (n % 40 == 2) {
                    String id = shared.importInto(friend);
                    assertTrue(id.matches("[a-z0-9-]+"), id);
                    imported++;
                }
            } catch (ShareException e) {
                assertTrue(!e.getMessage().isBlank() && e.getMessage().length() < 3000, e.getMessage());
            } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
                throw new AssertionError("damage " + n, e);
            }
            spent.end();
        }
        spent.tell(MUTATIONS / 2 + " damaged shares: " + read + " read, " + imported + " of them imported");
        assertTrue(read > MUTATIONS / 40 && read < MUTATIONS / 2, "the damage is too light or too heavy to mean anything: " + read);
        assertEquals(outside + 1, count(folder) - count(friend.root()), "only the shared file itself came beside the library");
    }

    @Test
    void damagedTablesAreUnderstoodOrRefused() {
        byte[] table = ("\ufeffReading;LF;RF;LR;RR\r\nload kg;160,2;170.4;150;\"157,6\"\r\ncamber;-2\u00b030';-2.5;-1,8;-1,8\r\n"
                + "'=1+1;1/2in;3/16 in;0;0\r\n").repeat(4).getBytes(StandardCharsets.UTF_8);
        ReadingFormat format = new ReadingFormat(Ouzel23.car(), DisplayUnits.usual());
        int read = 0;
        for (int n = 0; n < MUTATIONS / 2; n++) {
            byte[] damaged = new Mutator(SEED + n).damage(table);
            spent.begin();
            try {
                ReadingTable understood = new ReadingTable(CsvTable.read(damaged), Ouzel23.car(), format);
                understood.read(understood.guess()).settings()
                        .forEach(s -> s.values().forEach(v -> assertTrue(Double.isFinite(v), "a figure that is no number")));
                read++;
            } catch (IllegalArgumentException e) {
                assertTrue(!e.getMessage().isBlank() && e.getMessage().length() < 3000, e.getMessage());
            } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
                throw new AssertionError("damage " + n, e);
            }
            spent.end();
        }
        spent.tell(MUTATIONS / 2 + " damaged tables: " + read + " read");
        assertTrue(read > MUTATIONS / 40 && read < MUTATIONS / 2, "the damage is too light or too heavy to mean anything: " + read);
    }

    /** The longest file that is read at all; empty lines and one long cell are no more than a table with one row. */
    @Test
    void tablesWithoutEndAreRefusedOrSmall() {
        int refused = 0;
        for (String piece : List.of(";", "1\n", "1;", "a,\n", "\"", "\"\"", "\n", "\"\n", "\"\n\";")) {
            byte[] table = ("Reading;LF\n" + piece.repeat(CsvTable.MOST_BYTES / piece.length())).getBytes(StandardCharsets.UTF_8);
            spent.begin();
            try {
                assertTrue(CsvTable.read(table).size() <= 2, piece);
            } catch (IllegalArgumentException e) {
                refused++;
            }
            spent.end();
        }
        assertTrue(refused >= 4, "only " + refused + " were refused");
        spent.tell("9 tables without end, " + refused + " refused");
    }

    /** A gigabyte of noughts is a megabyte of zip; it is refused before any of it is unpacked. */
    @Test
    void shareThatClaimsAGigabyteIsRefused() throws IOException {
        byte[] part = new byte[32 << 20];
        Arrays.fill(part, (byte) ' ');
        Map<String, byte[]> huge = new LinkedHashMap<>();
        huge.put(Manifest.CAR_FILE, contents.get(Manifest.CAR_FILE));
        for (int n = 0; n < 32; n++) {
            huge.put("days/2026-05-02-" + n + "/day.jsonl", part);
        }
        zip(manifest(huge), Map.of());
        long begun = cpuNanos();
        ShareException refused = assertThrows(ShareException.class, () -> SharedCar.read(file));
        assertTrue(refused.getMessage().contains("more than a car with its days can"), refused.getMessage());
        assertTrue((cpuNanos() - begun) / 1_000_000 < LONGEST_MS);
    }

    @Test
    void aPathWithoutEndIsToldBriefly() throws IOException {
        String endless = "days/1" + "0".repeat(9000) + "/day.jsonl";
        zip(manifest(Map.of(Manifest.CAR_FILE, contents.get(Manifest.CAR_FILE), endless, new byte[0])), Map.of());
        String told = assertThrows(ShareException.class, () -> SharedCar.read(file)).getMessage();
        assertTrue(told.startsWith("it wants to write to 'days/1000") && told.endsWith("it was not imported"), told);
        assertTrue(told.length() < 1000, told);
    }

    private static long cpuNanos() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static long count(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.count();
        }
    }
}
