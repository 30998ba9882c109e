package quoin.suspensionfivelink;

import java.util.Map;
import quoin.suspension.spi.SuspensionType;
import quoin.suspension.testkit.SuspensionTypeContract;

class FiveLinkContractTest extends SuspensionTypeContract {

    @Override
    protected SuspensionType type() {
        return new FiveLink();
    }

    @Override
    protected double rackMm() {
        return 8;
    }

    @Override
    protected Map<String, String> typicalCorner() {
        return Map.ofEntries(
                Map.entry("wheelCentre", "5.89; 762.09; 314.38"),
                Map.entry("loadedRadius_mm", "321.1"),
                Map.entry("links.link1.inboard", "154.03; 420.64; 435.97"),
                Map.entry("links.link1.outboard", "19.86; 694.95; 448.84"),
                Map.entry("links.link2.inboard", "-125.63; 429.71; 437.7"),
                Map.entry("links.link2.outboard", "-40.2; 677.85; 459.12"),
                Map.entry("links.link3.inboard", "248.11; 440.08; 201.65"),
                Map.entry("links.link3.outboard", "34.62; 700.61; 190.25"),
                Map.entry("links.link4.inboard", "-66.3; 263.54; 186.11"),
                Map.entry("links.link4.outboard", "-42.96; 704.6; 188.48"),
                Map.entry("links.tie.inboard", "-168.9; 276.82; 219.71"),
                Map.entry("links.tie.outboard", "-157.64; 711.67; 222.82"),
                Map.entry("coilOver.body", "-32.1; 583.9; 689.85"),
                Map.entry("coilOver.uprightOrArm", "-25.63; 687.32; 217.24"),
                Map.entry("staticCamber_deg", "-1.18"),
                Map.entry("staticToe_deg", "-0.06"),
                Map.entry("camberRod", "link4"),
                Map.entry("casterRod", "link3"));
    }
}
