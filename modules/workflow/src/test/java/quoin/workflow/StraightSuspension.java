package quoin.workflow;

import java.util.List;
import java.util.Map;
import java.util.Set;
import quoin.car.Adjuster;
import quoin.car.AdjusterKind;
import quoin.suspension.AdjusterEffect;
import quoin.suspension.AngleChange;
import quoin.suspension.AngleResponse;
import quoin.suspension.AngleSensitivity;
import quoin.suspension.CornerKinematics;
import quoin.suspension.CornerPosition;
import quoin.suspension.CurveOutput;
import quoin.suspension.Parameter;
import quoin.suspension.ParameterValues;
import quoin.suspension.Side;
import quoin.suspension.WheelPosition;
import quoin.suspension.spi.SuspensionType;

/** A suspension whose response is known by construction. */
record StraightSuspension(String id) implements SuspensionType, CornerKinematics {

    /** What a turn of the camber rod does to camber and toe, and one of the toe link to toe, deg. */
    static final double CAMBER = 0.32;
    static final double CAMBER_TO_TOE = -0.12;
    static final double TOE = 0.5;
    /** How much longer a turn of the camber rod makes the leg, mm. */
    static final double CAMBER_TO_LEG_MM = 0.3;
    /** What one mm of bump does to camber, deg. */
    static final double CAMBER_PER_MM = -0.03;

    @Override
    public String name() {
        return "Straight";
    }

    @Override
    public List<Parameter> parameters() {
        return List.of();
    }

    @Override
    public CornerKinematics corner(ParameterValues values, Side side) {
        return this;
    }

    @Override
    public Set<CurveOutput> outputs() {
        return Set.of();
    }

    @Override
    public List<CornerPosition> along(List<WheelPosition> positions) {
        return List.of();
    }

    @Override
    public Map<String, AngleSensitivity> sensitivities() {
        return Map.of();
    }

    @Override
    public AngleResponse response(List<Adjuster> fitted) {
        return new AngleResponse(new AngleChange(CAMBER_PER_MM, 0, 0), AngleChange.NONE, Map.of(
                AdjusterKind.CAMBER_ROD, new AdjusterEffect(new AngleChange(CAMBER, CAMBER_TO_TOE, 0), CAMBER_TO_LEG_MM),
                AdjusterKind.TOE_LINK, new AdjusterEffect(new AngleChange(0, TOE, 0), 0)));
    }
}
