package quoin.logbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import quoin.logbook.file.StrictJson;

/** The damage that the tests of bad files rely on is really done. */
class MutatorTest {

    private static final byte[] CAR = CarFile.toText(Samples.fullCar()).getBytes(StandardCharsets.UTF_8);
    private static final byte[] TABLE = "Reading;LF;RF\r\nload kg;160,2;\"157,6\"\r\n".getBytes(StandardCharsets.UTF_8);

    private static Set<Mutator.Kind> made(byte[] file) {
        Set<Mutator.Kind> made = EnumSet.noneOf(Mutator.Kind.class);
        for (int seed = 0; seed < 400; seed++) {
            Mutator mutator = new Mutator(seed);
            assertFalse(Arrays.equals(file, mutator.damage(file)) && mutator.made().size() == 1, "nothing was damaged with seed " + seed);
            made.addAll(mutator.made());
        }
        return made;
    }

    @Test
    void everyKindIsDoneToACar() {
        assertEquals(EnumSet.allOf(Mutator.Kind.class), made(CAR));
    }

    @Test
    void everyKindIsDoneToALineOfADay() {
        ByteArrayOutputStream day = new ByteArrayOutputStream();
        Samples.everyKind().forEach(e -> {
            day.writeBytes(StrictJson.line(EntryJson.write(e)));
            day.write('\n');
        });
        assertEquals(EnumSet.allOf(Mutator.Kind.class), made(day.toByteArray()));
    }

    @Test
    void everyKindThatATableCanHaveIsDoneToIt() {
        Set<Mutator.Kind> missing = EnumSet.allOf(Mutator.Kind.class);
        missing.removeAll(made(TABLE));
        assertTrue(EnumSet.of(Mutator.Kind.KEY_TWICE, Mutator.Kind.NESTED_DEEP).containsAll(missing), missing.toString());
    }

    @Test
    void zipIsMadeToClaimAGigabyte() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            zip.putNextEntry(new ZipEntry("car.json"));
            zip.write(CAR);
        }
        Set<Mutator.Kind> made = made(bytes.toByteArray());
        assertTrue(made.contains(Mutator.Kind.GIGABYTE_CLAIMED), made.toString());
    }

    @Test
    void sameSeedGivesTheSameDamage() {
        assertArrayEquals(new Mutator(9).damage(CAR), new Mutator(9).damage(CAR));
    }
}
