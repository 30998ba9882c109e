package quoin.suspensionsemitrailing;

import java.util.Map;
import quoin.suspension.spi.SuspensionType;
import quoin.suspension.testkit.SuspensionTypeContract;

class SemiTrailingArmContractTest extends SuspensionTypeContract {

    @Override
    protected SuspensionType type() {
        return new SemiTrailingArm();
    }

    @Override
    protected Map<String, String> typicalCorner() {
        return Map.ofEntries(
                Map.entry("wheelCentre", "-2.26; 747.68; 300.98"),
                Map.entry("loadedRadius_mm", "293.0"),
                Map.entry("hinge.outerPivot", "386.86; 614.69; 270.54"),
                Map.entry("hinge.innerPivot", "271.1; 201.52; 285.6"),
                Map.entry("coilOver.body", "33.94; 568.4; 591.57"),
                Map.entry("coilOver.uprightOrArm", "37.49; 582.46; 275.0"),
                Map.entry("staticCamber_deg", "-1.45"),
                Map.entry("staticToe_deg", "0.08"));
    }
}
