package quoin.commandline.calculation;

import java.util.List;
import quoin.suspension.spi.SuspensionTypes;

/** The calculations that exist. */
public final class Calculations {
    private Calculations() {
    }

    public static List<Calculation> all() {
        return List.of(new CornerLoadsCalculation(), new AdjustmentPlanCalculation(), new CgHeightCalculation(),
                new PadShimsCalculation(), new ShareUncertaintyCalculation(),
                new SuspensionCurvesCalculation(SuspensionTypes::installed), new StringToeCalculation(),
                new CamberOnSlopeCalculation(), new CasterSweepCalculation());
    }
}
