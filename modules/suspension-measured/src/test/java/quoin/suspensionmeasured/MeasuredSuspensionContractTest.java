package quoin.suspensionmeasured;

import java.util.Map;
import quoin.suspension.spi.SuspensionType;
import quoin.suspension.testkit.SuspensionTypeContract;

class MeasuredSuspensionContractTest extends SuspensionTypeContract {

    @Override
    protected SuspensionType type() {
        return new MeasuredSuspension();
    }

    @Override
    protected Map<String, String> typicalCorner() {
        return Map.of("camber_deg_per_mm", "-0.022", "toe_deg_per_mm", "0.003", "camberRod.camber_deg_per_turn", "0.6",
                "toeLink.toe_deg_per_turn", "1.1");
    }
}
