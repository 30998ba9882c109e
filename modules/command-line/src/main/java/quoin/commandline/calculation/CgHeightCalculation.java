package quoin.commandline.calculation;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.function.Supplier;
import quoin.mechanics.AxleLift;

/** Height of the centre of gravity by lifting the rear axle. */
final class CgHeightCalculation implements Calculation {
    @Override
    public String name() {
        return "cg-height";
    }

    @Override
    public Supplier<ObjectNode> read(Fields in) {
        AxleLift lift = new AxleLift(in.number("total_kgf"), in.number("frontAxleLevel_kgf"),
                in.number("frontAxleRearLifted_kgf"), in.number("wheelbase_mm"),
                in.number("frontWheelCentreHeight_mm"), in.number("rearWheelCentreHeight_mm"),
                in.number("rearLift_mm"));
        return () -> Results.object().put("cgHeight_mm", lift.cgHeightMm())
                .put("cgAheadOfRearAxle_mm", lift.cgAheadOfRearAxleMm()).put("liftAngle_deg", lift.liftAngleDeg())
                .put("cgHeightTextbook_mm", lift.cgHeightTextbookMm());
    }
}
