package quoin.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import org.openide.util.NbBundle.Messages;
import quoin.car.Car;
import quoin.logbook.CarFile;
import quoin.logbook.DiskTrouble;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.logbook.Journal;
import quoin.logbook.JournalException;
import quoin.logbook.Library;
import quoin.mechanics.SearchWatch;

/**
 * A car a friend has shared, read and checked but not yet taken in. Only the paths of a car and its days are ever looked at,
 * every file must have the length and the SHA-256 its list gives, and a name in the file is never used as a path.
 */
@Messages({
    "# {0} - path in the file", "shared.damaged=''{0}'' was damaged on the way; ask for the file once more",
    "# {0} - what went wrong", "shared.unreadable=it cannot be read ({0}); choose a file made with File, Share Car",
    "# {0} - what went wrong", "shared.noCar=the car in it cannot be read: {0}",
    "# {0} - path in the file", "shared.missing=''{0}'' is missing in it; ask for the file once more",
    "# {0} - path in the file", "shared.larger=''{0}'' is larger than it says; it was not imported",
    "# {0} - what went wrong", "shared.notImported=the car was not imported ({0}); make room or choose another library folder",
    "# {0} - car", "# {1} - whose", "shared.name={0} (from {1})", "shared.friend=a friend",
    "# {0} - whose", "# {1} - name of the car there", "shared.note=Imported from {0}; there the car is called {1}"})
public final class SharedCar {

    private static final long MOST_MANIFEST = 8L << 20;

    private final Manifest manifest;
    private final Car car;
    private final Map<String, byte[]> contents;

    private SharedCar(Manifest manifest, Car car, Map<String, byte[]> contents) {
        this.manifest = manifest;
        this.car = car;
        this.contents = contents;
    }

    /**
     * Reads and checks a shared file.
     *
     * @throws ShareException where it is none, is damaged or wants what it must not
     */
    public static SharedCar read(Path file) {
        try (ZipFile zip = new ZipFile(file.toFile())) {
            Manifest manifest = Manifest.read(bytes(zip, Manifest.FILE, MOST_MANIFEST));
            Map<String, byte[]> contents = new LinkedHashMap<>();
            for (Manifest.Item item : manifest.files()) {
                byte[] bytes = bytes(zip, item.path(), item.bytes());
                if (bytes.length != item.bytes() || !Manifest.sha256(bytes).equals(item.sha256())) {
                    throw new ShareException(Bundle.shared_damaged(item.path()));
                }
                contents.put(item.path(), bytes);
            }
            Car car = CarFile.fromText(new String(contents.get(Manifest.CAR_FILE), StandardCharsets.UTF_8));
            return new SharedCar(manifest, car, contents);
        } catch (ZipException e) {
            throw new ShareException(Bundle.manifest_none(), e);
        } catch (IOException e) {
            throw new ShareException(Bundle.shared_unreadable(DiskTrouble.of(e)), e);
        } catch (IllegalArgumentException e) {
            throw new ShareException(Bundle.shared_noCar(e.getLocalizedMessage()), e);
        }
    }

    /** Never unpacks more than it was promised. */
    private static byte[] bytes(ZipFile zip, String path, long most) throws IOException {
        ZipEntry entry = zip.getEntry(path);
        if (entry == null || entry.isDirectory()) {
            throw new ShareException(Bundle.shared_missing(path));
        }
        try (InputStream in = zip.getInputStream(entry)) {
            byte[] bytes = in.readNBytes((int) Math.min(most + 1, Integer.MAX_VALUE - 8));
            if (bytes.length > most) {
                throw new ShareException(Bundle.shared_larger(path));
            }
            return bytes;
        }
    }

    public String name() {
        return car.name();
    }

    /** Whose it is; words for a friend where it does not say. */
    public String from() {
        String plain = CarShare.name(manifest.from());
        return plain.isEmpty() ? Bundle.shared_friend() : plain;
    }

    /** How many days come with it. */
    public int days() {
        return contents.size() - 1;
    }

    /**
     * Takes the car into a library as one of its own id and name, marked with whose it is; a car of the same name there stays as
     * it is. Its days keep every line; what the car is called here is added at their end.
     *
     * @return id of the car in the library
     * @throws ShareException where it could not be written; nothing of it is in the library then
     */
    public String importInto(Library library) {
        return importInto(library, SearchWatch.NONE);
    }

    /**
     * The same, watched.
     *
     * @param watch told how far it is; where it gives up, nothing of it is in the library
     */
    public String importInto(Library library, SearchWatch watch) {
        String name = Bundle.shared_name(CarShare.name(car.name()), from());
        String id = library.newId(name);
        Car renamed = car.withId(id, name);
        Path cars = library.root().resolve("cars");
        try {
            Files.createDirectories(cars);
            Path staging = Files.createTempDirectory(cars, ".incoming-");
            try {
                CarFile.write(staging.resolve(Manifest.CAR_FILE), renamed);
                int done = 0;
                for (Map.Entry<String, byte[]> one : contents.entrySet()) {
                    watch.orGiveUp((double) done++ / contents.size());
                    if (!one.getKey().equals(Manifest.CAR_FILE)) {
                        Path file = staging.resolve(one.getKey());
                        Files.createDirectories(file.getParent());
                        Files.write(file, one.getValue());
                        rename(file.getParent(), id, name);
                    }
                }
                Files.move(staging, cars.resolve(id));
            } finally {
                delete(staging);
            }
        } catch (IOException | JournalException e) {
            throw new ShareException(Bundle.shared_notImported(DiskTrouble.of(e)), e);
        }
        return id;
    }

    /** Says in a day what its car is called here. A day of a newer format, or a damaged one, stays as it came. */
    private void rename(Path dayFolder, String id, String name) {
        try (Journal journal = Journal.open(dayFolder)) {
            if (journal.isReadOnly() || journal.entries().stream().noneMatch(Entry.CarDescribed.class::isInstance)) {
                return;
            }
            journal.append(new Entry.CarDescribed(Header.draft(""), journal.day().car().withId(id, name)));
            journal.append(new Entry.Note(Header.draft(""), Bundle.shared_note(from(), CarShare.name(car.name()))));
        } catch (JournalException e) {
            // A day that cannot be opened is listed with its problem, as any other.
            return;
        }
    }

    private static void delete(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        List<Path> all;
        try (Stream<Path> found = Files.walk(folder)) {
            all = found.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path one : all) {
            Files.deleteIfExists(one);
        }
    }
}
