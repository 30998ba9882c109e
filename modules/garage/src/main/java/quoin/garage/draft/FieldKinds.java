package quoin.garage.draft;

import static java.util.Map.entry;
import static quoin.garage.draft.FieldKind.Sign.ANY;
import static quoin.garage.draft.FieldKind.Sign.NOT_NEGATIVE;
import static quoin.garage.draft.FieldKind.Sign.POSITIVE;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.CrossGoal;
import quoin.car.KnownMass;
import quoin.garage.draft.FieldKind.Choice;
import quoin.garage.draft.FieldKind.Figure;
import quoin.garage.draft.FieldKind.Option;
import quoin.garage.draft.FieldKind.Range;
import quoin.garage.draft.FieldKind.ShimStock;
import quoin.garage.draft.FieldKind.Sign;
import quoin.garage.draft.FieldKind.Toe;
import quoin.garage.draft.FieldKind.Whole;
import quoin.garage.draft.FieldKind.Words;
import quoin.quantities.Dimension;

/**
 * What may be typed into each field. The usual sizes span from a single-seater of 250 kg to a road car of 2000 kg (common
 * practice, no source); they only raise a question.
 */
final class FieldKinds {

    static final String NONE = "none";
    static final String THREAD = "thread";
    static final String SHIMS = "shims";
    static final String YES = "yes";
    static final String NO = "no";
    static final String ONE_END = "single";
    static final String BOTH_ENDS = "both";
    static final String FITTED = "fitted";

    private static final Map<String, FieldKind> FIGURES = Map.ofEntries(
            entry("wheelbase", figure(Dimension.LENGTH, POSITIVE, 1000, 4500)),
            entry("tracks", figure(Dimension.LENGTH, POSITIVE, 800, 2300)),
            entry("corners.springRate", figure(Dimension.STIFFNESS, POSITIVE, 4, 800)),
            entry("corners.motionRatio", figure(Dimension.NUMBER, POSITIVE, 0.2, 1)),
            entry("corners.pushrodRatio", figure(Dimension.NUMBER, POSITIVE, 0.2, 1.6)),
            entry("corners.tyreRate", figure(Dimension.STIFFNESS, POSITIVE, 50, 700)),
            entry("corners.unsprung", figure(Dimension.MASS, POSITIVE, 4, 120)),
            entry("corners.rimChord", figure(Dimension.LENGTH, POSITIVE, 200, 600)),
            entry("corners.pitch", figure(Dimension.LENGTH, POSITIVE, 0.4, 6)),
            entry("corners.start", figure(Dimension.LENGTH, ANY, 0, 600)),
            entry("corners.min", figure(Dimension.LENGTH, ANY, 0, 600)),
            entry("corners.max", figure(Dimension.LENGTH, ANY, 0, 600)),
            entry("corners.pack", figure(Dimension.LENGTH, ANY, 0, 40)),
            entry("bars.rate", figure(Dimension.STIFFNESS, POSITIVE, 0.5, 400)),
            entry("masses.total", figure(Dimension.MASS, POSITIVE, 120, 3500)),
            entry("masses.cgHeight", figure(Dimension.LENGTH, POSITIVE, 120, 1000)),
            entry("masses.mass", figure(Dimension.MASS, NOT_NEGATIVE, 0, 250)),
            entry("masses.x", figure(Dimension.LENGTH, ANY, -6000, 2000)),
            entry("masses.y", figure(Dimension.LENGTH, ANY, -1500, 1500)),
            entry("masses.z", figure(Dimension.LENGTH, ANY, 0, 2500)),
            entry("heightPoints.x", figure(Dimension.LENGTH, ANY, -6000, 2000)),
            entry("heightPoints.y", figure(Dimension.LENGTH, ANY, -1300, 1300)),
            entry("targets.height.value", figure(Dimension.LENGTH, ANY, 15, 500)),
            entry("targets.height.tolerance", figure(Dimension.LENGTH, POSITIVE, 0.2, 20)),
            entry("targets.rake.value", figure(Dimension.LENGTH, ANY, -60, 120)),
            entry("targets.rake.tolerance", figure(Dimension.LENGTH, POSITIVE, 0.2, 20)),
            entry("targets.load.value", figure(Dimension.MASS, POSITIVE, 20, 900)),
            entry("targets.load.tolerance", figure(Dimension.MASS, POSITIVE, 0.2, 30)),
            entry("targets.total.value", figure(Dimension.MASS, POSITIVE, 120, 3500)),
            entry("targets.total.tolerance", figure(Dimension.MASS, POSITIVE, 0.2, 50)),
            entry("targets.cross.value", figure(Dimension.PERCENT, POSITIVE, 40, 60)),
            entry("targets.cross.tolerance", figure(Dimension.PERCENT, POSITIVE, 0.05, 3)),
            entry("targets.front-share.value", figure(Dimension.PERCENT, POSITIVE, 25, 75)),
            entry("targets.front-share.tolerance", figure(Dimension.PERCENT, POSITIVE, 0.05, 5)),
            entry("targets.left-share.value", figure(Dimension.PERCENT, POSITIVE, 35, 65)),
            entry("targets.left-share.tolerance", figure(Dimension.PERCENT, POSITIVE, 0.05, 5)),
            entry("targets.camber.value", figure(Dimension.ANGLE, ANY, -8, 3)),
            entry("targets.camber.tolerance", figure(Dimension.ANGLE, POSITIVE, 0.02, 1.5)),
            entry("targets.caster.value", figure(Dimension.ANGLE, ANY, 0, 15)),
            entry("targets.caster.tolerance", figure(Dimension.ANGLE, POSITIVE, 0.02, 2)),
            entry("targets.thrust-angle.value", figure(Dimension.ANGLE, ANY, -0.5, 0.5)),
            entry("targets.thrust-angle.tolerance", figure(Dimension.ANGLE, POSITIVE, 0.005, 0.5)),
            entry("loadCase.fuel", figure(Dimension.MASS, NOT_NEGATIVE, 0, 150)),
            entry("loadCase.pressure", figure(Dimension.PRESSURE, POSITIVE, 0.5, 4.5)),
            entry("instruments.scale", figure(Dimension.MASS, POSITIVE, 0.01, 5)),
            entry("instruments.height", figure(Dimension.LENGTH, POSITIVE, 0.01, 5)),
            entry("instruments.angle", figure(Dimension.ANGLE, POSITIVE, 0.001, 1)),
            entry("instruments.toe", figure(Dimension.LENGTH, POSITIVE, 0.01, 2)));

    private FieldKinds() {
    }

    private static Figure figure(Dimension dimension, Sign sign, double low, double high) {
        return new Figure(dimension, sign, Optional.of(new Range(low, high)));
    }

    /** What may be typed into a field, where it does not depend on the car. */
    static FieldKind of(String path) {
        String shape = Paths.shape(path);
        FieldKind figure = FIGURES.get(shape);
        if (figure != null) {
            return figure;
        }
        return switch (shape) {
            case "targets.toe.value", "targets.total-toe.value" -> new Toe(ANY);
            case "targets.toe.tolerance", "targets.total-toe.tolerance" -> new Toe(POSITIVE);
            case "corners.steps" -> new Whole();
            case "corners.stock" -> new ShimStock();
            case "corners.ends" -> choice("ends", ONE_END, BOTH_ENDS);
            case "corners.locked" -> choice("locked", NO, YES);
            case "corners.how" -> choice("how", hows(path));
            case "bars.fitted" -> choice("bar", NONE, FITTED);
            case Paths.CROSS_GOAL -> choice("goal", names(CrossGoal.values()));
            case "masses.role" -> choice("role", names(KnownMass.Role.values()));
            case "heightPoints.corner" -> new Choice(Stream.concat(Stream.of(Corner.values()).map(c -> new Option(c.name(), c.words())),
                    choice("pointAt", NONE).options().stream()).toList());
            default -> new Words();
        };
    }

    /** A leg's perch or rod is a thread; brackets and links may have shims. */
    private static String[] hows(String path) {
        if (path.contains(".camberShim.")) {
            return new String[] {NONE, SHIMS};
        }
        return path.contains(".toeLink.") ? new String[] {NONE, THREAD, SHIMS} : new String[] {NONE, THREAD};
    }

    static Choice choice(String key, String... values) {
        return new Choice(Stream.of(values).map(v -> new Option(v, Texts.of("choice." + key + "." + v))).toList());
    }

    /** A choice that offers the present answer too where it is not among the usual ones. */
    static Choice withPresent(Choice usual, String present) {
        return withPresent(usual, present, present);
    }

    /** As {@link #withPresent(Choice, String)}. @param words what the added choice is called */
    static Choice withPresent(Choice usual, String present, String words) {
        if (present.isEmpty() || usual.options().stream().anyMatch(o -> o.value().equals(present))) {
            return usual;
        }
        return new Choice(Stream.concat(usual.options().stream(), Stream.of(new Option(present, words))).toList());
    }

    /** Round the car from each corner, both ways. */
    static Choice walks() {
        List<Corner> clockwise = List.of(Corner.LF, Corner.RF, Corner.RR, Corner.LR);
        Stream<String> rounds = Stream.of(1, -1).flatMap(step -> Stream.of(0, 1, 2, 3).map(start -> walk(clockwise, start, step)));
        Stream<String> all = Stream.concat(Stream.of("LF RF LR RR"), rounds);
        return new Choice(all.map(w -> new Option(w, Stream.of(w.split(" ")).map(c -> Corner.parse(c).words()).collect(Collectors.joining(", ")))).toList());
    }

    private static String walk(List<Corner> round, int start, int step) {
        return String.join(" ", Stream.of(0, 1, 2, 3).map(i -> round.get(Math.floorMod(start + step * i, 4)).name()).toList());
    }

    private static String[] names(Enum<?>[] values) {
        return Stream.of(values).map(Enum::name).toArray(String[]::new);
    }

    /** Words of an axle: "front". */
    static String words(Axle axle) {
        return Texts.of("axle." + Paths.key(axle));
    }
}
