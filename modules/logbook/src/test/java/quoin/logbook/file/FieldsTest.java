package quoin.logbook.file;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The small pieces files are read with: fields, names, lines, the index. */
class FieldsTest {

    private enum Side { LEFT, RIGHT }

    @TempDir
    Path folder;

    private static Fields of(String json) {
        return new Fields(StrictJson.read(json.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void everyKindOfFieldIsRead() {
        Fields in = of("{'t':'x','n':1.5,'w':7,'y':true,'o':{'n':2},'l':[{'n':3},{'n':4}],'s':['a','b'],'z':null,'i':'2026-01-02T03:04:05Z'}"
                .replace('\'', '"'));
        assertEquals("x", in.text("t"));
        assertEquals(Optional.of("x"), in.optionalText("t"));
        assertEquals(1.5, in.number("n"));
        assertEquals(7, in.whole("w", 7, 7));
        assertTrue(in.flag("y"));
        assertFalse(of("{\"y\":false}").flag("y"));
        assertEquals(2, in.object("o").number("n"));
        assertEquals(List.of(3.0, 4.0), in.list("l", f -> f.number("n")));
        assertEquals(List.of("a", "b"), in.texts("s", t -> t));
        assertEquals(Instant.parse("2026-01-02T03:04:05Z"), in.parsed("i", Instant::parse));
        List<String> keys = new ArrayList<>();
        in.forEach("o", (key, all) -> keys.add(key + all.number(key)));
        assertEquals(List.of("n2.0"), keys);
        in.forEach("none", (key, all) -> keys.add(key));
        assertEquals(1, keys.size());
    }

    @Test
    void whatIsNotThereOrNullIsUnknown() {
        Fields in = of("{\"z\":null}");
        for (String name : List.of("z", "none")) {
            assertFalse(in.has(name));
            assertEquals(Optional.empty(), in.optionalText(name));
            assertEquals(OptionalDouble.empty(), in.optionalNumber(name));
            assertEquals(Optional.empty(), in.optionalObject(name));
            assertEquals(List.of(), in.list(name, f -> f));
            assertEquals(List.of(), in.texts(name, t -> t));
        }
    }

    static Stream<Arguments> wrong() {
        Consumer<Fields> whole = f -> f.whole("a", 1, 5);
        return Stream.of(
                Arguments.of("{}", (Consumer<Fields>) f -> f.text("a"), "a is missing"),
                Arguments.of("{}", (Consumer<Fields>) f -> f.number("a"), "a is missing"),
                Arguments.of("{}", whole, "a is missing"),
                Arguments.of("{}", (Consumer<Fields>) f -> f.flag("a"), "a is missing"),
                Arguments.of("{}", (Consumer<Fields>) f -> f.object("a"), "a is missing"),
                Arguments.of("{\"a\":1}", (Consumer<Fields>) f -> f.text("a"), "a must be a text in quotes"),
                Arguments.of("{\"a\":\"1\"}", (Consumer<Fields>) f -> f.number("a"), "a must be a finite number"),
                Arguments.of("{\"a\":1e999}", (Consumer<Fields>) f -> f.number("a"), "a must be a finite number"),
                Arguments.of("{\"a\":0}", whole, "a must be a whole number from 1 to 5"),
                Arguments.of("{\"a\":6}", whole, "a must be a whole number from 1 to 5"),
                Arguments.of("{\"a\":2.0}", whole, "a must be a whole number from 1 to 5"),
                Arguments.of("{\"a\":36893488147419103235}", whole, "a must be a whole number from 1 to 5"),
                Arguments.of("{\"a\":0}", (Consumer<Fields>) f -> f.flag("a"), "a must be true or false"),
                Arguments.of("{\"a\":[]}", (Consumer<Fields>) f -> f.object("a"), "a must be an object in braces"),
                Arguments.of("{\"a\":{}}", (Consumer<Fields>) f -> f.list("a", x -> x), "a must be a list in brackets"),
                Arguments.of("{\"a\":[1]}", (Consumer<Fields>) f -> f.list("a", x -> x), "a must be a list of objects"),
                Arguments.of("{\"a\":[1]}", (Consumer<Fields>) f -> f.texts("a", x -> x), "a must be a list of texts"),
                Arguments.of("{\"o\":{\"l\":[{\"a\":1},{}]}}", (Consumer<Fields>) f -> f.object("o").list("l", x -> x.number("a")),
                        "o.l[1].a is missing"));
    }

    @ParameterizedTest(name = "{0}: {2}")
    @MethodSource("wrong")
    void whatIsWrongIsSaidWithItsPath(String json, Consumer<Fields> reader, String message) {
        assertEquals(message, assertThrows(FormatException.class, () -> reader.accept(of(json))).getMessage());
    }

    @Test
    void wholeNumbersReachFromTheLeastToTheMost() {
        assertEquals(1, of("{\"a\":1}").whole("a", 1, 5));
        assertEquals(5, of("{\"a\":5}").whole("a", 1, 5));
        assertThrows(FormatException.class, () -> of("{\"when\":\"today\"}").parsed("when", Instant::parse));
    }

    @Test
    void namesAreReadAndWritten() {
        Names<Side> names = Names.of(Map.of("left", Side.LEFT));
        assertEquals(Side.LEFT, names.read("left"));
        assertEquals("left", names.text(Side.LEFT));
        assertEquals("'right' is none of [left]", assertThrows(FormatException.class, () -> names.read("right")).getMessage());
        assertThrows(IllegalStateException.class, () -> names.text(Side.RIGHT));
    }

    private static LineContents lines(String text) {
        return LineContents.of(text.getBytes(StandardCharsets.UTF_8));
    }

    private static List<String> texts(LineContents contents) {
        return contents.lines().stream().map(l -> new String(l, StandardCharsets.UTF_8)).toList();
    }

    @Test
    void aFileIsItsWholeLinesAndATornEnd() {
        LineContents whole = lines("{}\n{\"a\":1}\n");
        assertEquals(List.of("{}", "{\"a\":1}"), texts(whole));
        assertEquals(0, whole.torn().length);
        assertFalse(whole.endMissing());
        assertEquals(11, whole.goodLength());
        assertArrayEquals("{\"a\":1}\n".getBytes(StandardCharsets.UTF_8), whole.goodEnd());

        LineContents unended = lines("{}\n{\"a\":1}");
        assertEquals(List.of("{}", "{\"a\":1}"), texts(unended));
        assertTrue(unended.endMissing());
        assertEquals(10, unended.goodLength());
        assertArrayEquals("{\"a\":1}".getBytes(StandardCharsets.UTF_8), unended.goodEnd());

        LineContents torn = lines("{}\n{\"a\":");
        assertEquals(List.of("{}"), texts(torn));
        assertEquals("{\"a\":", new String(torn.torn(), StandardCharsets.UTF_8));
        assertEquals(3, torn.goodLength());

        LineContents rubbish = lines("{}\n{\"a\"\n");
        assertEquals(List.of("{}"), texts(rubbish));
        assertEquals("{\"a\"\n", new String(rubbish.torn(), StandardCharsets.UTF_8));
        assertEquals(3, rubbish.goodLength());

        LineContents only = lines("{\"a\"\n");
        assertEquals(List.of("{\"a\""), texts(only), "the first line is the header: it is never moved aside");
        assertEquals(0, lines("").lines().size());
        assertEquals(0, lines("").goodEnd().length);
    }

    @Test
    void theIndexKeepsAnyTextAndTrustsNoChangedLine() throws IOException {
        Path file = folder.resolve("index.tsv");
        List<String> odd = List.of("k1", "tab\there", "line\nbreak", "back\\slash \\t \r end\\", "");
        List<String> plain = List.of("k2", "a", "b", "c", "d");
        IndexFile.write(file, List.of(odd, plain));
        assertEquals(List.of(odd, plain), List.copyOf(IndexFile.read(file, 5).values()));
        assertEquals(Map.of(), IndexFile.read(file, 4), "of another width");
        String text = Files.readString(file);
        assertEquals(3, text.lines().count(), "no cell breaks its line");
        Files.writeString(file, text.replace("\tb\t", "\tB\t"));
        assertEquals(List.of("k1"), List.copyOf(IndexFile.read(file, 5).keySet()));
        Files.writeString(file, "x" + text);
        assertEquals(Map.of(), IndexFile.read(file, 5));
        Files.writeString(file, text.substring(0, text.length() - 1));
        assertEquals(List.of("k1"), List.copyOf(IndexFile.read(file, 5).keySet()), "a line without its end is not whole");
        Files.writeString(file, text.lines().findFirst().orElseThrow() + "\nno separator\n");
        assertEquals(Map.of(), IndexFile.read(file, 5));
        assertEquals(Map.of(), IndexFile.read(folder.resolve("none"), 5));
    }

    @Test
    void aFileIsReplacedWholeAndNothingStaysBeside() throws IOException {
        Path file = folder.resolve("deep").resolve("er").resolve("a.json");
        Disk.createFolders(file.getParent());
        Disk.createFolders(file.getParent());
        Disk.replace(file, "a longer text".getBytes(StandardCharsets.UTF_8));
        Disk.replace(file, "short".getBytes(StandardCharsets.UTF_8));
        assertEquals("short", Files.readString(file));
        try (Stream<Path> all = Files.list(file.getParent())) {
            assertEquals(1, all.count());
        }
        Disk.writeForced(file, "s".getBytes(StandardCharsets.UTF_8));
        assertEquals("s", Files.readString(file));
        Disk.forceFolder(folder.resolve("none"));
    }

    @Test
    void onlyOneHoldsTheLock() throws IOException {
        Path file = folder.resolve("lock");
        DayLock held = DayLock.tryTake(file).orElseThrow();
        assertTrue(DayLock.tryTake(file).isEmpty());
        held.close();
        try (DayLock again = DayLock.tryTake(file).orElseThrow()) {
            assertTrue(DayLock.tryTake(file).isEmpty());
        }
    }
}
