package quoin.application;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import quoin.car.AdjusterId;
import quoin.car.Car;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.logbook.Journal;
import quoin.logbook.Library;
import quoin.logbook.LibraryIndex;
import quoin.logbook.LibrarySearch;
import quoin.rehearsal.Ouzel23;

/**
 * A library of very many cars and days: {@code make FOLDER [cars] [days of each]} writes one, {@code open FOLDER} opens it as the
 * garage does and searches it, and prints what that took. Each opening wants a process of its own.
 */
final class LibraryBenchmark {

    private static final Instant START = Instant.parse("2016-04-02T08:00:00Z");
    private static final List<String> PLACES = List.of("Quarry hill", "North aerodrome", "Castle lane", "Harbour loop", "Old mill");
    private static final List<String> WORDS = List.of("ring", "stiff", "dry", "shim", "wet", "cold", "kerb", "new", "scrubbed", "rod", "end",
            "play", "looked", "again", "torque", "marked", "rear", "front", "slow", "corner", "washed", "out", "pushes", "better");
    private static final List<String> QUERIES = List.of("", "stiff", "quarry", "driver 17", "set 3 wet", "2019-06", "kerb harbour 2021",
            "no such word", "Étape");
    private static final int READINGS = 40;
    private static final int SEARCHES = 200;

    private LibraryBenchmark() {
    }

    public static void main(String[] args) throws IOException {
        Path root = Path.of(args[1]);
        if (args[0].equals("make")) {
            make(root, args.length > 2 ? Integer.parseInt(args[2]) : 500, args.length > 3 ? Integer.parseInt(args[3]) : 20);
        } else {
            open(root);
        }
    }

    private static void make(Path root, int cars, int days) throws IOException {
        Library library = new Library(root, Clock.fixed(START, ZoneOffset.UTC));
        Random random = new Random(23);
        List<String> template = template(root.resolveSibling(root.getFileName() + "-template"));
        for (int c = 0; c < cars; c++) {
            Car car = Ouzel23.car().withId("car-" + c, "Car " + c + " of " + words(random, 1));
            library.save(car);
            for (int d = 0; d < days; d++) {
                Instant when = START.plus(Duration.ofDays(random.nextInt(3650)));
                String id = LocalDate.ofInstant(when, ZoneOffset.UTC) + "-" + (d + 1);
                Path file = Files.createDirectories(root.resolve("cars/car-" + c + "/days/" + id)).resolve(Journal.FILE);
                String text = String.join("\n", template) + "\n";
                Files.writeString(file, text.replace("TITLE", PLACES.get(random.nextInt(PLACES.size()))).replace("DAYID", id)
                        .replace(START.toString(), when.toString()).replace("NOTE1", words(random, 12)).replace("NOTE2", words(random, 20))
                        .replace("driver, dressed", "driver " + random.nextInt(60)).replace("TYRES", "set " + random.nextInt(6)));
            }
        }
    }

    /** Lines of a day as the application writes them. */
    private static List<String> template(Path folder) throws IOException {
        Path day = folder.resolve("DAYID");
        Header weights = Header.draft("corner-weights");
        try (Journal journal = Journal.create(day, Ouzel23.car(), "TITLE", Clock.fixed(START, ZoneOffset.UTC))) {
            journal.append(new Entry.Condition(weights, "tyres", "TYRES", ""));
            for (int i = 0; i < READINGS; i++) {
                double more = i / 10.0;
                journal.append(new Entry.Reading(weights, Ouzel23.car().walkingOrder().stream().collect(Collectors.toMap(
                        corner -> ReadingId.of(ReadingKind.LOAD, corner), corner -> 150 + more)), Map.of(), Entry.Source.RACER));
                journal.append(new Entry.Adjustment(weights, List.of(new Entry.Turn(AdjusterId.parse("perch.RF"), 0.125, OptionalDouble.empty())), ""));
            }
            journal.append(new Entry.Note(weights, "NOTE1"));
            journal.append(new Entry.Note(weights, "NOTE2"));
        }
        return Files.readAllLines(day.resolve(Journal.FILE));
    }

    private static String words(Random random, int count) {
        return IntStream.range(0, count).mapToObj(i -> WORDS.get(random.nextInt(WORDS.size()))).collect(Collectors.joining(" "));
    }

    private static void open(Path root) {
        long start = System.nanoTime();
        LibraryIndex index = LibraryIndex.of(new Library(root));
        double opened = ms(start);
        LibrarySearch search = new LibrarySearch(index.days(), ZoneId.systemDefault());
        double ready = ms(start);
        System.out.printf("%d cars, %d days, %d files read: listed after %.0f ms, searchable after %.0f ms%n", index.cars().size(),
                index.days().size(), index.readAgain(), opened, ready);
        for (String query : QUERIES) {
            double[] times = new double[SEARCHES];
            int found = 0;
            for (int i = 0; i < SEARCHES; i++) {
                long begin = System.nanoTime();
                found = search.find(query).size();
                times[i] = ms(begin);
            }
            double first = times[0];
            Arrays.sort(times);
            System.out.printf("search '%s': %d found, first %.1f ms, median %.1f ms, worst %.1f ms%n", query, found, first,
                    times[SEARCHES / 2], times[SEARCHES - 1]);
        }
    }

    private static double ms(long start) {
        return (System.nanoTime() - start) / 1e6;
    }
}
