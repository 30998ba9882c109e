package quoin.exchange;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quoin.exchange.incoming.ReadingTable;
import quoin.exchange.table.CsvTable;
import quoin.logbook.CarFile;
import quoin.logbook.Fuzzer;
import quoin.logbook.Journal;
import quoin.logbook.Library;
import quoin.quantities.DecimalMark;
import quoin.quantities.Quantities;
import quoin.quantities.Unit;
import quoin.rehearsal.Ouzel23;
import quoin.workbench.DisplayUnits;
import quoin.workbench.ReadingFormat;

/** Shared cars, tables of figures, and figures as typed, under a fuzzer. */
class ExchangeFuzzTest {

    @TempDir
    Path folder;

    private static void refused(RuntimeException e) {
        if (e.getMessage() == null || e.getMessage().isBlank()) {
            throw new AssertionError("refused without a word", e);
        }
    }

    /** A shared car: read, or refused. */
    public static final class Share {
        private Share() {
        }

        /** One input. */
        public static void fuzzerTestOneInput(byte[] data) {
            try {
                Path file = Files.createTempFile("share", ".zip");
                try {
                    SharedCar.read(Files.write(file, data));
                } catch (ShareException e) {
                    refused(e);
                } finally {
                    Files.delete(file);
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** A table: understood, or refused. */
    public static final class Table {
        private static final ReadingFormat FORMAT = new ReadingFormat(Ouzel23.car(), DisplayUnits.usual());

        private Table() {
        }

        /** One input. */
        public static void fuzzerTestOneInput(byte[] data) {
            try {
                ReadingTable table = new ReadingTable(CsvTable.read(data), Ouzel23.car(), FORMAT);
                table.read(table.guess());
            } catch (IllegalArgumentException e) {
                refused(e);
            }
        }
    }

    /** A figure as typed; the first byte chooses the unit and the decimal mark. */
    public static final class Typed {
        private Typed() {
        }

        /** One input. */
        public static void fuzzerTestOneInput(byte[] data) {
            if (data.length == 0) {
                return;
            }
            Unit unit = Unit.values()[Math.floorMod(data[0], Unit.values().length)];
            DecimalMark mark = DecimalMark.values()[Math.floorMod(data[0] / 16, DecimalMark.values().length)];
            String text = new String(data, 1, data.length - 1, StandardCharsets.UTF_8);
            try {
                if (!Double.isFinite(Quantities.parse(text, unit, mark))) {
                    throw new AssertionError("a figure that is no number: " + text);
                }
                Quantities.parseLine(text, unit, mark);
            } catch (IllegalArgumentException e) {
                refused(e);
            }
        }
    }

    @Test
    void sharedCar() throws IOException, InterruptedException {
        Library mine = Days.library(folder.resolve("mine"));
        String day = mine.days("ouzel-23").get(0).id();
        Map<String, byte[]> contents = new LinkedHashMap<>();
        contents.put(Manifest.CAR_FILE, CarFile.toText(Ouzel23.car()).getBytes(StandardCharsets.UTF_8));
        contents.put("days/" + day + "/day.jsonl", Files.readAllBytes(mine.dayFolder("ouzel-23", day).resolve(Journal.FILE)));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            zip.putNextEntry(new ZipEntry(Manifest.FILE));
            zip.write(new Manifest("ouzel-23", "Ouzel 23", "Eve", "2026-05-02T08:00:00Z", contents.entrySet().stream()
                    .map(e -> new Manifest.Item(e.getKey(), e.getValue().length, Manifest.sha256(e.getValue()))).toList()).write());
            for (Map.Entry<String, byte[]> one : contents.entrySet()) {
                zip.putNextEntry(new ZipEntry(one.getKey()));
                zip.write(one.getValue());
            }
        }
        Fuzzer.run(Share.class, Files.createDirectory(folder.resolve("fuzz")), bytes.toByteArray());
    }

    @Test
    void tableOfFigures() throws IOException, InterruptedException {
        Fuzzer.run(Table.class, folder, ("\ufeffReading;LF;RF;LR;RR\r\nload kg;160,2;170.4;150;\"157,6\"\r\ncamber;-2\u00b030';-2.5;-1,8;-1,8\r\n"
                + "'=1+1;1/2in;3/16 in;0;0\r\n").getBytes(StandardCharsets.UTF_8), "reading,value\nLF load,160.2\n".getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void figureAsTyped() throws IOException, InterruptedException {
        Fuzzer.run(Typed.class, folder, List.of(" 108,3", "\u0001-1\u00b030'", "\u00023/16in", "\u00031 1/2 in", "\u000420' 15\"", "\u00051e3 kg")
                .stream().map(t -> t.getBytes(StandardCharsets.UTF_8)).toArray(byte[][]::new));
    }
}
