package quoin.curves.set;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import quoin.car.Axle;
import quoin.car.Car;
import quoin.car.Corner;
import quoin.car.SuspensionChoice;
import quoin.mechanics.InvalidInputException;
import quoin.suspension.CornerKinematics;
import quoin.suspension.CurveOutput;
import quoin.suspension.Parameter;
import quoin.suspension.ParameterReading;
import quoin.suspension.UnreachablePositionException;
import quoin.suspension.WheelPosition;
import quoin.suspension.spi.SuspensionTypes;

/**
 * The two wheels of an axle as hard points describe them, or why there is no curve.
 *
 * @param corners left and right; empty where there is no curve
 * @param missing why there is no curve; empty where there are
 */
public record AxleGeometry(Map<Corner, CornerKinematics> corners, Optional<Missing> missing) {

    /** Why there is no curve. */
    public enum Reason {
        /** The type is not installed; the words are its id. */
        NOT_INSTALLED,
        /** Parameters are missing or cannot be read; the words name the first. */
        INCOMPLETE,
        /** No such suspension can be; the words say why. */
        IMPOSSIBLE,
        /** The type has no hard points; the words are its name. */
        NO_HARD_POINTS
    }

    /** @param words what the reason says they are */
    public record Missing(Reason reason, String words) {
        public Missing {
            Objects.requireNonNull(reason, "reason");
        }
    }

    public AxleGeometry {
        corners = Map.copyOf(corners);
        Objects.requireNonNull(missing, "missing");
    }

    private static AxleGeometry none(Reason reason, String words) {
        return new AxleGeometry(Map.of(), Optional.of(new Missing(reason, words)));
    }

    /** A parameter as the form of the car calls it; its key where it is part of none. */
    private static String label(SuspensionTypes types, SuspensionChoice choice, String key) {
        return types.find(choice.typeId()).stream().flatMap(t -> t.parameters().stream()).filter(p -> p.key().equals(key))
                .map(Parameter::label).findFirst().orElse(key);
    }

    /** An axle of a car, with the suspension types at hand. */
    public static AxleGeometry of(Car car, Axle axle, SuspensionTypes types) {
        SuspensionChoice choice = car.axles().get(axle).suspension();
        Optional<ParameterReading> reading = types.read(choice);
        if (reading.isEmpty()) {
            return none(Reason.NOT_INSTALLED, choice.typeId());
        }
        if (!reading.get().isUsable()) {
            return none(Reason.INCOMPLETE, reading.get().problems().stream().filter(p -> !p.ofAnotherType())
                    .map(p -> label(types, choice, p.key()) + " " + p.words()).limit(3)
                    .collect(Collectors.joining("; ")));
        }
        Map<Corner, CornerKinematics> corners = new EnumMap<>(Corner.class);
        try {
            for (Corner corner : corners(axle)) {
                corners.put(corner, types.corner(car, corner).orElseThrow());
            }
        } catch (InvalidInputException e) {
            return none(Reason.IMPOSSIBLE, label(types, choice, e.field()) + " " + e.getLocalizedMessage());
        }
        boolean drawn = corners.values().stream().allMatch(c -> c.at(WheelPosition.DESIGN).wheelCentre().isPresent());
        return drawn ? new AxleGeometry(corners, Optional.empty())
                : none(Reason.NO_HARD_POINTS, types.find(choice.typeId()).orElseThrow().name());
    }

    /** Left and right wheel of an axle. */
    public static List<Corner> corners(Axle axle) {
        return Arrays.stream(Corner.values()).filter(c -> c.axle() == axle).sorted((a, b) -> Boolean.compare(b.isLeft(), a.isLeft()))
                .toList();
    }

    /** What can be drawn of either wheel, in the order of the outputs. */
    public List<CurveOutput> outputs() {
        return Arrays.stream(CurveOutput.values())
                .filter(o -> corners.values().stream().anyMatch(c -> c.outputs().contains(o))).toList();
    }

    /** Whether this is an axle whose wheels the rack steers. */
    public boolean isSteered() {
        return !corners.isEmpty() && corners.entrySet().stream().allMatch(c -> c.getKey().isFront() && follows(c.getValue()));
    }

    private static boolean follows(CornerKinematics corner) {
        try {
            corner.at(Sweep.RACK.at(1));
            return true;
        } catch (UnreachablePositionException e) {
            return false;
        }
    }
}
