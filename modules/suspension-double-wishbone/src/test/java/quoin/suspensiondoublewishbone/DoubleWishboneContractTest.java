package quoin.suspensiondoublewishbone;

import java.util.Map;
import quoin.suspension.spi.SuspensionType;
import quoin.suspension.testkit.SuspensionTypeContract;

class DoubleWishboneContractTest extends SuspensionTypeContract {

    @Override
    protected SuspensionType type() {
        return new DoubleWishbone();
    }

    @Override
    protected double rackMm() {
        return 15;
    }

    @Override
    protected Map<String, String> typicalCorner() {
        return Map.ofEntries(
                Map.entry("wheelCentre", "4.35; 752.5; 314.53"),
                Map.entry("loadedRadius_mm", "286.9"),
                Map.entry("links.upper_front.inboard", "140.8; 378.47; 432.89"),
                Map.entry("links.upper_front.outboard", "-7.82; 691.21; 458.04"),
                Map.entry("links.upper_rear.inboard", "-166.07; 391.95; 424.7"),
                Map.entry("links.upper_rear.outboard", "-7.82; 691.21; 458.04"),
                Map.entry("links.lower_front.inboard", "163.77; 296.13; 170.16"),
                Map.entry("links.lower_front.outboard", "0.48; 721.5; 191.4"),
                Map.entry("links.lower_rear.inboard", "-194.18; 307.92; 173.2"),
                Map.entry("links.lower_rear.outboard", "0.48; 721.5; 191.4"),
                Map.entry("links.tie.inboard", "-122.2; 318.78; 240.51"),
                Map.entry("links.tie.outboard", "-115.94; 699.29; 241.22"),
                Map.entry("pushrodRocker.rockerPivot", "2.89; 349.3; 520.2"),
                Map.entry("pushrodRocker.rockerAxis", "-1.0080000000000; 0.0071000000000; 0.0398000000000"),
                Map.entry("pushrodRocker.pushrodInboard", "-5.01; 412.95; 562.65"),
                Map.entry("pushrodRocker.pushrodOutboard", "4.76; 658.26; 212.43"),
                Map.entry("pushrodRocker.pushrodOutboardOn", "lowerArm"),
                Map.entry("pushrodRocker.coilOverOnRocker", "-6.04; 325.67; 596.61"),
                Map.entry("pushrodRocker.coilOverOnBody", "-0.64; 67.03; 588.93"),
                Map.entry("staticCamber_deg", "-1.70"),
                Map.entry("staticToe_deg", "-0.07"));
    }
}
