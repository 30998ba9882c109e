package quoin.garage.draft;

import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import quoin.car.AdjusterKind;
import quoin.car.Axle;
import quoin.car.Corner;

/** Paths of the form's fields. */
final class Paths {

    static final String NAME = "name";
    static final String WHEELBASE = "wheelbase";
    static final String WALK = "walkingOrder";
    static final String CROSS_GOAL = "targets.crossGoal";
    static final String TOTAL = "masses.total";
    static final String CG_HEIGHT = "masses.cgHeight";
    static final String DRIVER = "loadCase.driver";
    static final String FUEL = "loadCase.fuel";
    private static final Set<String> PLACES = Set.of("LF", "RF", "LR", "RR", "front", "rear", "FRONT", "REAR", "car", "known",
            "perch", "pushrod", "camberRod", "camberShim", "casterRod", "toeLink", "barLink");

    private Paths() {
    }

    static String track(Axle axle) {
        return "tracks." + key(axle);
    }

    static String bar(Axle axle, String what) {
        return "bars." + key(axle) + "." + what;
    }

    static String suspension(Axle axle) {
        return "suspension." + key(axle) + ".type";
    }

    static String parameter(Axle axle, String key) {
        return "suspension." + key(axle) + ".parameters." + key;
    }

    static String corner(Corner corner, String what) {
        return "corners." + corner + "." + what;
    }

    static String adjuster(Corner corner, AdjusterKind kind, String what) {
        return corner(corner, key(kind) + "." + what);
    }

    static String mass(int row, String what) {
        return "masses.known." + row + "." + what;
    }

    static String point(int row, String what) {
        return "heightPoints." + row + "." + what;
    }

    static String heightTarget(int row) {
        return "targets.height." + row;
    }

    static String pressure(Axle axle) {
        return "loadCase.pressure." + key(axle);
    }

    static String instrument(String what) {
        return "instruments." + what;
    }

    static String key(Axle axle) {
        return axle == Axle.FRONT ? "front" : "rear";
    }

    static String key(AdjusterKind kind) {
        return switch (kind) {
            case PERCH -> "perch";
            case PUSHROD -> "pushrod";
            case CAMBER_ROD -> "camberRod";
            case CAMBER_SHIM -> "camberShim";
            case CASTER_ROD -> "casterRod";
            case TOE_LINK -> "toeLink";
            case BAR_LINK -> "barLink";
        };
    }

    /** The path without its places and row numbers: "corners.LF.springRate" gives "corners.springRate". */
    static String shape(String path) {
        int parameter = path.indexOf(".parameters.");
        if (parameter >= 0) {
            return "suspension.parameters";
        }
        return Arrays.stream(path.split("\\.")).filter(p -> !PLACES.contains(p) && !p.chars().allMatch(Character::isDigit))
                .collect(Collectors.joining("."));
    }
}
