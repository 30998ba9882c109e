package quoin.commandline.calculation;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import quoin.suspension.CornerKinematics;
import quoin.suspension.Parameter;
import quoin.suspension.ParameterProblem;
import quoin.suspension.ParameterReading;
import quoin.suspension.ParameterValues;
import quoin.suspension.Side;
import quoin.suspension.spi.SuspensionType;
import quoin.suspension.spi.SuspensionTypes;

/**
 * A corner as a request gives it: the type's parameters under their keys, dots being objects, points in the axes of the
 * car. So a type that comes as a plug-in can be asked for without a word here.
 *
 * @param type   the installed type
 * @param side   which side the points are on
 * @param values its parameters
 */
record CornerRequest(SuspensionType type, Side side, ParameterValues values) {

    /** Names of types in requests that are not their id with underscores. */
    private static final Map<String, String> OTHER_NAMES = Map.of("macpherson", "strut");

    static CornerRequest read(Fields corner, SuspensionTypes types) {
        SuspensionType type = type(corner, types);
        Side side = corner.isLeft("side") ? Side.LEFT : Side.RIGHT;
        Map<String, Fields> groups = new HashMap<>();
        Map<String, double[]> figures = new HashMap<>();
        Map<String, String> choices = new HashMap<>();
        for (Parameter parameter : type.parameters()) {
            Fields holder = holder(corner, groups, parameter);
            String name = parameter.key().substring(parameter.key().lastIndexOf('.') + 1);
            if (holder == null || !parameter.required() && !holder.has(name)) {
                continue;
            }
            if (parameter.kind() == Parameter.Kind.CHOICE) {
                choices.put(parameter.key(), holder.text(name));
            } else {
                figures.put(parameter.key(), figures(holder, name, parameter.kind(), side));
            }
        }
        ParameterReading reading = ParameterValues.of(type.parameters(), figures, choices);
        for (ParameterProblem problem : reading.problems()) {
            throw new RefusedException(corner.path(problem.key()), problem.english());
        }
        return new CornerRequest(type, side, reading.values());
    }

    CornerKinematics build() {
        return type.corner(values, side);
    }

    private static SuspensionType type(Fields corner, SuspensionTypes types) {
        String name = corner.text("type");
        return types.find(OTHER_NAMES.getOrDefault(name, name.replace('_', '-'))).orElseThrow(() -> new RefusedException(
                corner.path("type"), "must be one of " + types.all().stream().map(t -> t.id().replace('-', '_')).sorted()
                        .collect(Collectors.joining(", "))));
    }

    /** The object that holds a parameter; null where an optional one's is not there. */
    private static Fields holder(Fields corner, Map<String, Fields> groups, Parameter parameter) {
        Fields holder = corner;
        String path = "";
        List<String> steps = List.of(parameter.key().split("\\."));
        for (String step : steps.subList(0, steps.size() - 1)) {
            path = path + "." + step;
            if (!groups.containsKey(path)) {
                if (!parameter.required() && !holder.has(step)) {
                    return null;
                }
                groups.put(path, holder.object(step));
            }
            holder = groups.get(path);
        }
        return holder;
    }

    private static double[] figures(Fields holder, String name, Parameter.Kind kind, Side side) {
        return switch (kind) {
            case NUMBER, LENGTH, ANGLE -> new double[] {holder.number(name)};
            case POINT -> three(holder.object(name), "_mm", side.sign());
            case AXLE_POINT -> three(holder.object(name), "_mm", 1);
            case DIRECTION -> three(holder.object(name), "", side.sign());
            case CHOICE -> throw new IllegalArgumentException("a choice has no figures");
        };
    }

    private static double[] three(Fields point, String unit, double outboard) {
        return new double[] {point.number("x" + unit), outboard * point.number("y" + unit), point.number("z" + unit)};
    }
}
