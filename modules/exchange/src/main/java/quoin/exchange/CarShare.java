package quoin.exchange;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.openide.util.NbBundle.Messages;
import quoin.car.Car;
import quoin.logbook.CarFile;
import quoin.logbook.DayInfo;
import quoin.logbook.DiskTrouble;
import quoin.logbook.Journal;
import quoin.logbook.Library;
import quoin.mechanics.SearchWatch;

/** Puts a car with its days into one file: a zip of the plain files with a list of them. */
@Messages({
    "# {0} - file", "# {1} - what went wrong", "share.failed=The car was not shared: {0} cannot be written ({1}); choose another folder"})
public final class CarShare {

    private static final int LONGEST_NAME = 60;

    private CarShare() {
    }

    /** The end of the file's name. */
    public static final String EXTENSION = ".quoin.zip";
    /** Share of the time that reading takes; the rest is packing. */
    private static final double READING = 0.5;

    /**
     * Writes the file; it appears whole or not at all.
     *
     * @param from whose car it is, as the friend will see it
     * @return how many days are in it
     * @throws ShareException where it cannot be written
     */
    public static int write(Library library, String carId, String from, Path file, Clock clock) {
        return write(library, carId, from, file, clock, SearchWatch.NONE);
    }

    /**
     * The same, watched.
     *
     * @param watch told how far it is; where it gives up, nothing is written
     */
    public static int write(Library library, String carId, String from, Path file, Clock clock, SearchWatch watch) {
        Car car = library.car(carId);
        Map<String, byte[]> contents = new LinkedHashMap<>();
        try {
            contents.put(Manifest.CAR_FILE, CarFile.toText(car).getBytes(StandardCharsets.UTF_8));
            List<DayInfo> days = library.days(carId);
            for (DayInfo day : days) {
                watch.orGiveUp(READING * contents.size() / (days.size() + 1));
                contents.put("days/" + day.id() + "/" + Journal.FILE, wholeLines(Files.readAllBytes(day.folder().resolve(Journal.FILE))));
            }
            List<Manifest.Item> items = new ArrayList<>();
            contents.forEach((path, bytes) -> items.add(new Manifest.Item(path, bytes.length, Manifest.sha256(bytes))));
            Manifest manifest = new Manifest(car.id(), car.name(), name(from), clock.instant().toString(), items);
            Path part = Files.createTempFile(file.toAbsolutePath().getParent(), "share", ".part");
            try {
                zip(part, manifest, contents, watch);
                Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(part);
            }
        } catch (IOException e) {
            throw new ShareException(Bundle.share_failed(file, DiskTrouble.of(e)), e);
        }
        return contents.size() - 1;
    }

    private static void zip(Path file, Manifest manifest, Map<String, byte[]> contents, SearchWatch watch) throws IOException {
        try (OutputStream out = Files.newOutputStream(file); ZipOutputStream zip = new ZipOutputStream(out)) {
            put(zip, Manifest.FILE, manifest.write());
            int done = 0;
            for (Map.Entry<String, byte[]> one : contents.entrySet()) {
                watch.orGiveUp(READING + (1 - READING) * done++ / contents.size());
                put(zip, one.getKey(), one.getValue());
            }
        }
    }

    private static void put(ZipOutputStream zip, String path, byte[] bytes) throws IOException {
        zip.putNextEntry(new ZipEntry(path));
        zip.write(bytes);
        zip.closeEntry();
    }

    /** Without a last line that is being written just now. */
    private static byte[] wholeLines(byte[] bytes) {
        int end = bytes.length;
        while (end > 0 && bytes[end - 1] != '\n') {
            end--;
        }
        return Arrays.copyOf(bytes, end);
    }

    /** A name fit for one line: no control characters, not too long. */
    static String name(String typed) {
        String plain = typed.replaceAll("[\\p{Cntrl}\\p{Cf}]+", " ").strip();
        return plain.length() > LONGEST_NAME ? plain.substring(0, LONGEST_NAME) : plain;
    }
}
