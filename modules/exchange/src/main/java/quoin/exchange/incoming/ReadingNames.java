package quoin.exchange.incoming;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.HeightPoint;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;

/** Finds the reading a text means: "load.LF", "LF weight", "Camber RR", "height LF" for the point at that corner. */
final class ReadingNames {

    /** What can be read on a corner and typed from a table. */
    private static final List<ReadingKind> AT_CORNERS = List.of(ReadingKind.LOAD, ReadingKind.CAMBER, ReadingKind.CASTER,
            ReadingKind.TOE, ReadingKind.PRESSURE, ReadingKind.PAD_HEIGHT, ReadingKind.SCALE_ZERO, ReadingKind.KPI);

    /** A longer text names no reading; looking for brackets in one that is all brackets takes the square of its length. */
    private static final int LONGEST = 200;

    private final Map<String, ReadingId> known = new LinkedHashMap<>();
    private final Map<String, ReadingKind> kinds = new LinkedHashMap<>();
    private final Car car;

    ReadingNames(Car car) {
        this.car = car;
        for (ReadingKind kind : ReadingKind.values()) {
            if (!kind.isDerived()) {
                kinds.put(plain(kind.key()), kind);
                kinds.put(plain(kind.phrase().english()), kind);
                kinds.put(plain(kind.words()), kind);
            }
        }
        for (Corner corner : Corner.values()) {
            for (String place : new LinkedHashSet<>(List.of(corner.name(), corner.words()))) {
                AT_CORNERS.forEach(kind -> name(ReadingId.of(kind, corner), kind, place));
                car.heightPoint(corner).ifPresent(p -> name(p.reading(), ReadingKind.HEIGHT, place));
            }
        }
        for (HeightPoint point : car.heightPoints()) {
            name(point.reading(), ReadingKind.HEIGHT, point.name());
        }
    }

    private void name(ReadingId id, ReadingKind kind, String place) {
        for (String word : List.of(kind.key(), kind.phrase().english(), kind.words())) {
            known.put(plain(word + " " + place), id);
            known.put(plain(place + " " + word), id);
        }
        known.put(plain(id.toString()), id);
    }

    /** Everything a column can hold, in the order of the car. */
    List<ReadingId> all() {
        return known.values().stream().distinct().toList();
    }

    /** The reading a heading means, a unit in brackets or after a comma left out. */
    Optional<ReadingId> heading(String text) {
        if (text.length() > LONGEST) {
            return Optional.empty();
        }
        return Stream.of(plain(bare(text)), plain(text)).map(known::get).filter(Objects::nonNull).findFirst();
    }

    /** The corner a heading is called after, "LF" or as it is in the language of the program; a unit behind it is left out. */
    Optional<Corner> corner(String text) {
        if (text.length() > LONGEST) {
            return Optional.empty();
        }
        String place = plain(bare(text));
        return Stream.of(Corner.values()).filter(c -> place.equals(plain(c.name())) || place.equals(plain(c.words()))).findFirst();
    }

    private static String bare(String text) {
        return text.replaceAll("[(\\[].*?[)\\]]", "").replaceAll("[,/].*$", "");
    }

    /** The reading of a kind at a place. */
    Optional<ReadingId> at(String name, String place) {
        ReadingId found = known.get(plain(name + " " + place));
        if (found != null) {
            return Optional.of(found);
        }
        ReadingKind kind = kinds.get(plain(name));
        boolean point = kind == ReadingKind.HEIGHT && car.heightPoints().stream().noneMatch(p -> p.name().equals(place.strip()));
        return kind == null || place.isBlank() || point ? Optional.empty() : Optional.of(new ReadingId(kind, place.strip()))
                .filter(id -> !AT_CORNERS.contains(kind));
    }

    private static String plain(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[\\s._-]+", " ").strip();
    }
}
