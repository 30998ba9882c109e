package quoin.logbook;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import quoin.car.Corner;
import quoin.car.PerCorner;
import quoin.car.Setting;
import quoin.logbook.file.Disk;
import quoin.logbook.file.Fields;
import quoin.logbook.file.FormatException;
import quoin.logbook.file.StrictJson;
import quoin.quantities.Texts;

/** The garage places of a library: one file each, {@code places/<id>.json}. */
public final class GaragePlaces {
    private static final Texts TEXTS = Texts.of(GaragePlaces.class);

    /** The format this program writes. */
    public static final int FORMAT = 1;
    private static final String ENDING = ".json";
    private static final int MOST = 1_000_000;

    private final Path folder;

    /** @param libraryRoot folder of the library; nothing in it need exist yet */
    public GaragePlaces(Path libraryRoot) {
        folder = libraryRoot.resolve("places");
    }

    /** The places of the library a day lies in; empty where the day lies in none. */
    public static Optional<GaragePlaces> beside(Path dayFolder) {
        Path days = dayFolder.toAbsolutePath().normalize().getParent();
        Path cars = days == null || days.getParent() == null ? null : days.getParent().getParent();
        boolean inLibrary = cars != null && cars.getParent() != null && days.endsWith("days") && cars.endsWith("cars");
        return inLibrary ? Optional.of(new GaragePlaces(cars.getParent())) : Optional.empty();
    }

    /**
     * Every place, by name.
     *
     * @throws JournalException where one cannot be read; the message names the file
     */
    public List<GaragePlace> all() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.getFileName().toString().endsWith(ENDING)).map(GaragePlaces::read)
                    .sorted(Comparator.comparing(GaragePlace::name, String.CASE_INSENSITIVE_ORDER)).toList();
        } catch (IOException e) {
            throw new JournalException(folder, TEXTS.phrase("folderCannotBeRead", DiskTrouble.of(e)), e);
        }
    }

    /**
     * The place of that name, or a new one with an id of its own.
     *
     * @throws JournalException where the places cannot be read
     */
    public GaragePlace called(String name) {
        String plain = name.strip();
        return all().stream().filter(p -> p.name().equalsIgnoreCase(plain)).findFirst()
                .orElseGet(() -> GaragePlace.named(Library.freeId(plain, "place", id -> Files.exists(folder.resolve(id + ENDING))), plain));
    }

    /**
     * Saves a place; after a power cut either the old or the new file is there.
     *
     * @throws JournalException where it cannot be written
     */
    public void save(GaragePlace place) {
        Path file = folder.resolve(place.id() + ENDING);
        try {
            Disk.createFolders(folder);
            Disk.replace(file, StrictJson.pretty(write(place)));
        } catch (IOException | ReadOnlyFileSystemException e) {
            throw new JournalException(file, TEXTS.phrase("garagePlaceWasNot", DiskTrouble.of(e)), e);
        }
    }

    private static ObjectNode write(GaragePlace place) {
        ObjectNode node = StrictJson.object();
        node.put("quoin", "place").put("format", FORMAT).put("name", place.name());
        place.stock().forEach(s -> node.withArray("stock").addObject().put("thicknessMm", s.thicknessMm()).put("count", s.count()));
        ObjectNode under = node.putObject("underMm");
        for (Corner corner : Corner.values()) {
            ArrayNode shims = under.putArray(corner.name());
            place.underMm().get(corner).forEach(t -> shims.addObject().put("thicknessMm", t));
        }
        place.survey().ifPresent(s -> {
            ObjectNode survey = node.putObject("survey").put("when", s.when().toString()).put("method", s.method()).put("carOn", s.carOn());
            ObjectNode heights = survey.putObject("heightsMm");
            for (Corner corner : Corner.values()) {
                heights.put(corner.name(), s.heightsMm().get(corner));
            }
        });
        return node;
    }

    private static GaragePlace read(Path file) {
        try {
            if (Files.size(file) > StrictJson.MAX_BYTES) {
                throw new JournalException(file, TEXTS.phrase("fileIsTooLargeTo"));
            }
            Fields in = new Fields(StrictJson.read(Files.readAllBytes(file)));
            if (!in.text("quoin").equals("place")) {
                throw new FormatException(TEXTS.phrase("quoinMustBePlace"));
            }
            if (in.whole("format", 1, MOST) > FORMAT) {
                throw new FormatException(TEXTS.phrase("placeWasWrittenBy"));
            }
            String name = file.getFileName().toString();
            return new GaragePlace(name.substring(0, name.length() - ENDING.length()), in.text("name"), stock(in), under(in),
                    in.optionalObject("survey").map(GaragePlaces::survey));
        } catch (IOException e) {
            throw new JournalException(file, TEXTS.phrase("garagePlaceCannotBe", DiskTrouble.of(e)), e);
        } catch (IllegalArgumentException e) {
            throw new JournalException(file, TEXTS.phrase("garagePlaceCannotBeRead", e), e);
        }
    }

    private static List<Setting.Shim> stock(Fields in) {
        return in.has("stock") ? in.list("stock", s -> new Setting.Shim(s.number("thicknessMm"), (int) s.whole("count", 0, MOST))) : List.of();
    }

    private static PerCorner<List<Double>> under(Fields in) {
        Fields under = in.object("underMm");
        return PerCorner.of(c -> new ArrayList<>(under.list(c.name(), s -> s.number("thicknessMm"))));
    }

    private static GaragePlace.Survey survey(Fields in) {
        Fields heights = in.object("heightsMm");
        return new GaragePlace.Survey(in.parsed("when", Instant::parse), in.text("method"),
                PerCorner.of(c -> heights.number(c.name())), in.flag("carOn"));
    }
}
