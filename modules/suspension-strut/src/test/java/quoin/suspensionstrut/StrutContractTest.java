package quoin.suspensionstrut;

import java.util.Map;
import quoin.suspension.spi.SuspensionType;
import quoin.suspension.testkit.SuspensionTypeContract;

class StrutContractTest extends SuspensionTypeContract {

    @Override
    protected SuspensionType type() {
        return new Strut();
    }

    @Override
    protected double rackMm() {
        return 15;
    }

    @Override
    protected Map<String, String> typicalCorner() {
        return Map.ofEntries(
                Map.entry("wheelCentre", "-2.7; 743.59; 299.84"),
                Map.entry("loadedRadius_mm", "291.4"),
                Map.entry("links.lower_front.inboard", "25.74; 353.5; 191.29"),
                Map.entry("links.lower_front.outboard", "0.76; 704.51; 179.99"),
                Map.entry("links.lower_rear.inboard", "-266.3; 372.85; 194.53"),
                Map.entry("links.lower_rear.outboard", "0.76; 704.51; 179.99"),
                Map.entry("links.tie.inboard", "-118.28; 348.94; 238.54"),
                Map.entry("links.tie.outboard", "-133.66; 676.84; 236.1"),
                Map.entry("strut.topMount", "-24.12; 585.95; 832.99"),
                Map.entry("strut.lowerPointOnStrutAxis", "-4.54; 644.12; 403.37"),
                Map.entry("staticCamber_deg", "-0.50"),
                Map.entry("staticToe_deg", "-0.00"));
    }
}
