package quoin.garage.draft;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.suspension.Parameter;

/** What the racer calls a field that stands alone: "LF perch: thread pitch". */
final class FieldNames {

    private final CarDraft draft;

    FieldNames(CarDraft draft) {
        this.draft = draft;
    }

    String of(String path) {
        List<String> parts = Arrays.asList(path.split("\\."));
        String label = label(path);
        return switch (parts.get(0)) {
            case "corners" -> corner(parts, label);
            case "targets" -> target(path, label);
            case "suspension" -> onAxle(parts.get(1), parameter(path).orElse(label));
            case "tracks", "bars" -> onAxle(parts.get(1), label);
            case "heightPoints" -> point(parts.get(1)) + ": " + within(label);
            case "masses" -> parts.size() == 4 ? mass(parts.get(2)) + ": " + within(label) : label;
            case "loadCase" -> parts.size() == 3 ? onAxle(parts.get(2), label) : label;
            default -> label;
        };
    }

    /** What a suspension parameter is called: as its type says, or its key where the type is not known. */
    private Optional<String> parameter(String path) {
        return Stream.of(Axle.values()).filter(a -> path.startsWith(Paths.parameter(a, ""))).findFirst().map(axle -> {
            String key = path.substring(Paths.parameter(axle, "").length());
            return draft.parameters(axle).stream().filter(p -> p.key().equals(key)).map(Parameter::label).findFirst().orElse(key);
        });
    }

    /** The label of a field's row, without its place. */
    static String label(String path) {
        boolean target = path.startsWith("targets.") && !path.equals(Paths.CROSS_GOAL);
        return Texts.of("label." + (target ? "targets" + path.substring(path.lastIndexOf('.')) : Paths.shape(path)));
    }

    private static String corner(List<String> parts, String label) {
        Corner corner = Corner.parse(parts.get(1));
        return Stream.of(AdjusterKind.values()).filter(k -> Paths.key(k).equals(parts.get(2))).findFirst()
                .map(kind -> new AdjusterId(kind, corner).words() + ": " + within(label))
                .orElseGet(() -> Texts.of("name.at", corner.words(), within(label)));
    }

    private String target(String path, String label) {
        if (path.equals(Paths.CROSS_GOAL)) {
            return label;
        }
        int end = path.lastIndexOf('.');
        String reading = path.substring("targets.".length(), end);
        if (reading.startsWith("height.")) {
            return point(reading.substring("height.".length())) + ": " + within(label);
        }
        return words(ReadingId.parse(reading)) + ": " + within(label);
    }

    /** A reading with its axle in words: "front total toe". */
    static String words(ReadingId reading) {
        for (Axle axle : Axle.values()) {
            if (reading.place().equals(axle.name())) {
                return Texts.of("name.at", FieldKinds.words(axle), reading.kind().words());
            }
        }
        return reading.words();
    }

    String point(String row) {
        String name = draft.text(Paths.point(Integer.parseInt(row), "name")).strip();
        return name.isEmpty() ? Texts.of("point.number", row) : name;
    }

    private String mass(String row) {
        String name = draft.text(Paths.mass(Integer.parseInt(row), "name")).strip();
        return name.isEmpty() ? Texts.of("mass.number", row) : name;
    }

    /** "Front track". */
    private static String onAxle(String key, String label) {
        return quoin.quantities.Texts.sentence(Texts.of("name.at", Texts.of("axle." + key), within(label)));
    }

    /** A label inside a sentence: with a small letter, unless it is an abbreviation or the language writes it large all the same. */
    private static String within(String label) {
        boolean large = Texts.of("name.within").equals("large") || label.length() > 1 && Character.isUpperCase(label.charAt(1));
        return large || label.isEmpty() ? label : label.substring(0, 1).toLowerCase(Locale.ROOT) + label.substring(1);
    }
}
