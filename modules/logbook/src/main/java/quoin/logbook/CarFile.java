package quoin.logbook;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import quoin.car.Car;
import quoin.logbook.file.CarJson;
import quoin.logbook.file.Disk;
import quoin.logbook.file.Fields;
import quoin.logbook.file.FormatException;
import quoin.logbook.file.StrictJson;
import quoin.quantities.Texts;

/** One car as a JSON file of its own, for keeping and for handing to a friend. */
public final class CarFile {
    private static final Texts TEXTS = Texts.of(CarFile.class);

    /** The format this program writes. */
    public static final int FORMAT = 1;
    private static final int MOST_FORMATS = 1_000_000;

    private CarFile() {
    }

    /**
     * Reads a car.
     *
     * @throws JournalException where the file cannot be read; the message says which field is wrong
     */
    public static Car read(Path file) {
        try {
            return fromText(readText(file));
        } catch (IllegalArgumentException e) {
            throw new JournalException(file, TEXTS.phrase("carCannotBeRead", e), e);
        }
    }

    /**
     * Writes a car; after a power cut either the old or the new file is there. Fields of the old file that this program
     * does not know are kept.
     *
     * @throws JournalException where it cannot be written or the file there is of a newer format
     */
    public static void write(Path file, Car car) {
        ObjectNode fresh = toNode(car);
        if (Files.exists(file)) {
            keepUnknown(file, fresh);
        }
        try {
            Disk.createFolders(file.toAbsolutePath().getParent());
            Disk.replace(file, StrictJson.pretty(fresh));
        } catch (IOException | ReadOnlyFileSystemException e) {
            throw new JournalException(file, TEXTS.phrase("carWasNotSaved", DiskTrouble.of(e)), e);
        }
    }

    /** The text of a car's file. */
    public static String toText(Car car) {
        return new String(StrictJson.pretty(toNode(car)), StandardCharsets.UTF_8);
    }

    /**
     * Reads the text of a car's file.
     *
     * @throws IllegalArgumentException where it is no car or of a newer format; the message names the field
     */
    public static Car fromText(String text) {
        return CarJson.read(checked(StrictJson.read(text.getBytes(StandardCharsets.UTF_8))).object("car"));
    }

    private static ObjectNode toNode(Car car) {
        ObjectNode node = StrictJson.object();
        node.put("quoin", "car").put("format", FORMAT);
        node.set("car", CarJson.write(car));
        return node;
    }

    private static Fields checked(ObjectNode node) {
        Fields in = new Fields(node);
        if (!in.text("quoin").equals("car")) {
            throw new FormatException(TEXTS.phrase("quoinMustBeCar"));
        }
        if (in.whole("format", 1, MOST_FORMATS) > FORMAT) {
            throw new FormatException(TEXTS.phrase("carWasWrittenBy", in.whole("format", 1, MOST_FORMATS), FORMAT));
        }
        return in;
    }

    private static String readText(Path file) {
        try {
            if (Files.size(file) > StrictJson.MAX_BYTES) {
                throw new JournalException(file, TEXTS.phrase("fileIsTooLarge"));
            }
            return EntryJson.text(Files.readAllBytes(file));
        } catch (IOException e) {
            throw new JournalException(file, TEXTS.phrase("carCannotBeReadCheck", DiskTrouble.of(e)), e);
        }
    }

    private static void keepUnknown(Path file, ObjectNode fresh) {
        ObjectNode old;
        ObjectNode understood;
        try {
            old = StrictJson.read(readText(file).getBytes(StandardCharsets.UTF_8));
            understood = toNode(CarJson.read(checked(old).object("car")));
        } catch (IllegalArgumentException e) {
            throw new JournalException(file, TEXTS.phrase("carWasNotSavedBecause", e), e);
        }
        copyUnknown(old, understood, fresh);
    }

    /** Copies what is in {@code old} and was not understood; what was understood and is gone now was taken out on purpose. */
    private static void copyUnknown(ObjectNode old, ObjectNode understood, ObjectNode fresh) {
        old.properties().forEach(field -> {
            JsonNode known = understood.get(field.getKey());
            if (known == null && !field.getValue().isNull() && !fresh.has(field.getKey())) {
                fresh.set(field.getKey(), field.getValue());
            } else if (known instanceof ObjectNode knownObject && field.getValue() instanceof ObjectNode oldObject
                    && fresh.get(field.getKey()) instanceof ObjectNode freshObject) {
                copyUnknown(oldObject, knownObject, freshObject);
            }
        });
    }
}
