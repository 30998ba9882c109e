package quoin.suspensionliveaxle;

import java.util.Map;
import java.util.TreeMap;

/** Pieces of made-up axles, mm, as a person would type them. */
final class Axles {
    static final Map<String, String> LOWER = Map.of("wheelCentre", "0 690 300", "staticCamber_deg", "0", "staticToe_deg", "0",
            "loadedRadius_mm", "300", "links.lower.inboard", "480 430 240", "links.lower.outboard", "5 480 210",
            "coilOver.body", "-40 420 640", "coilOver.uprightOrArm", "-70 470 250");
    static final Map<String, String> UPPER_PAIR = Map.of("links.upper.inboard", "330 400 420", "links.upper.outboard", "10 400 400");
    static final Map<String, String> TOP_LINK = Map.of("topLink.inboard", "350 -60 430", "topLink.outboard", "20 -60 410");
    static final Map<String, String> CONVERGING = Map.of("links.upper.inboard", "330 420 420", "links.upper.outboard", "10 90 400");
    static final Map<String, String> PANHARD = Map.of("panhard.inboard", "-90 -470 290", "panhard.outboard", "-90 450 270");
    static final Map<String, String> WATT = Map.of("watt.pivot", "-120 0 300", "watt.upper.outboard", "-120 8 370",
            "watt.upper.inboard", "-120 470 375", "watt.lower.outboard", "-120 -8 230", "watt.lower.inboard", "-120 -470 225");

    private Axles() {
    }

    static Map<String, String> with(Map<String, String> some, Map<String, String> more) {
        Map<String, String> both = new TreeMap<>(some);
        both.putAll(more);
        return both;
    }
}
