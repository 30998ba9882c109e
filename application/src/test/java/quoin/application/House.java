package quoin.application;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The floors of the house and which module may look at which. */
final class House {

    /** A floor of the house, from the ground up. Plug-ins hang on the suspension module and nothing looks at them. */
    enum Floor { GROUND, FIRST, PLUG_IN, SECOND, WORKBENCH, TOP }

    private static final Map<Floor, List<String>> MODULES = Map.of(
            Floor.GROUND, List.of("quantities", "car"),
            Floor.FIRST, List.of("logbook", "mechanics", "suspension"),
            Floor.PLUG_IN, List.of("suspension-double-wishbone", "suspension-strut", "suspension-five-link",
                    "suspension-semi-trailing", "suspension-live-axle", "suspension-measured"),
            Floor.SECOND, List.of("adjustment", "workflow", "rehearsal"),
            Floor.WORKBENCH, List.of("workbench"),
            Floor.TOP, List.of("preparation", "ride-height", "corner-weights", "wheel-angles", "final-recheck",
                    "comparison",
                    "garage",
                    "ballast",
                    "help",
                    "seat-view",
                    "workings",
                    "setup-sheet",
                    "exchange",
                    "curves",
                    "command-line"));

    /** The only looks along a floor. */
    private static final Set<String> SAME_FLOOR = Set.of("car -> quantities", "suspension -> mechanics",
            "workflow -> adjustment", "rehearsal -> adjustment", "command-line -> setup-sheet",
            "command-line -> exchange", "garage -> exchange");

    /** The command line has no window. */
    private static final Set<String> NEVER = Set.of("command-line -> workbench");

    private static final Set<String> SEEN_BY_PLUG_INS = Set.of("suspension", "mechanics", "car", "quantities");

    private House() {
    }

    static List<String> modules() {
        return Stream.of(Floor.values()).flatMap(floor -> MODULES.get(floor).stream()).toList();
    }

    static List<String> on(Floor floor) {
        return MODULES.get(floor);
    }

    /** Root package of a module: {@code quoin.rideheight} for {@code ride-height}. */
    static String rootPackage(String module) {
        return "quoin." + module.replace("-", "");
    }

    /** Module a package belongs to; empty outside the house. */
    static Optional<String> moduleOf(String packageName) {
        return modules().stream()
                .filter(module -> (packageName + ".").startsWith(rootPackage(module) + "."))
                .findFirst();
    }

    static Floor floorOf(String module) {
        return Stream.of(Floor.values()).filter(floor -> MODULES.get(floor).contains(module)).findFirst()
                .orElseThrow(() -> new IllegalArgumentException(module + " stands on no floor: name it in House"));
    }

    /** Whether one module may look at another. */
    static boolean maySee(String from, String to) {
        if (from.equals(to) || SAME_FLOOR.contains(from + " -> " + to)) {
            return true;
        }
        if (NEVER.contains(from + " -> " + to) || floorOf(to) == Floor.PLUG_IN) {
            return false;
        }
        return floorOf(from) == Floor.PLUG_IN
                ? SEEN_BY_PLUG_INS.contains(to)
                : floorOf(to).compareTo(floorOf(from)) < 0;
    }

    /** Packages a module shows to others: its root and its spi; nothing for plug-ins and windows. */
    static Set<String> maximalExports(String module) {
        boolean open = switch (floorOf(module)) {
            case PLUG_IN -> false;
            case TOP -> module.equals("setup-sheet") || module.equals("exchange");
            default -> true;
        };
        return open ? Set.of(rootPackage(module), rootPackage(module) + ".spi") : Set.of();
    }

    /** Packages below the workbench, where nothing is drawn, as ArchUnit patterns. */
    static String[] packagesWithoutWindows() {
        return Stream.of(Floor.GROUND, Floor.FIRST, Floor.PLUG_IN, Floor.SECOND)
                .flatMap(floor -> on(floor).stream())
                .map(module -> rootPackage(module) + "..")
                .collect(Collectors.toList()).toArray(String[]::new);
    }
}
