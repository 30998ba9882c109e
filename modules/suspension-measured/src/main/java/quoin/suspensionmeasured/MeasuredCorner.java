package quoin.suspensionmeasured;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import quoin.car.Adjuster;
import quoin.car.AdjusterKind;
import quoin.quantities.Texts;
import quoin.suspension.AdjusterEffect;
import quoin.suspension.AngleChange;
import quoin.suspension.AngleResponse;
import quoin.suspension.AngleSensitivity;
import quoin.suspension.CornerKinematics;
import quoin.suspension.CornerPosition;
import quoin.suspension.CurveOutput;
import quoin.suspension.ParameterValues;
import quoin.suspension.UnreachablePositionException;
import quoin.suspension.WheelPosition;

/** Straight lines through what was measured. The angles themselves are not known, only how they change. */
final class MeasuredCorner implements CornerKinematics {
    private static final Texts TEXTS = Texts.of(MeasuredCorner.class);
    private final ParameterValues values;
    private final AngleChange perMm;

    MeasuredCorner(ParameterValues values) {
        this.values = values;
        perMm = new AngleChange(values.numberOr("camber_deg_per_mm", 0), values.numberOr("toe_deg_per_mm", 0),
                values.numberOr("caster_deg_per_mm", 0));
    }

    @Override
    public Set<CurveOutput> outputs() {
        return Set.of(CurveOutput.BUMP_CAMBER, CurveOutput.BUMP_STEER);
    }

    @Override
    public List<CornerPosition> along(List<WheelPosition> positions) {
        return positions.stream().map(this::position).toList();
    }

    private CornerPosition position(WheelPosition position) {
        if (position.rackLeftMm() != 0) {
            throw new UnreachablePositionException(position, new WheelPosition(position.travelMm(), 0),
                    TEXTS.phrase("nothingIsKnownOf"));
        }
        return new CornerPosition(position, Optional.empty(), Optional.empty(),
                Map.of(CurveOutput.BUMP_CAMBER, perMm.camberDeg(), CurveOutput.BUMP_STEER, perMm.toeDeg()));
    }

    @Override
    public Map<String, AngleSensitivity> sensitivities() {
        return Map.of();
    }

    @Override
    public AngleResponse response(List<Adjuster> fitted) {
        Map<AdjusterKind, AdjusterEffect> effects = new EnumMap<>(AdjusterKind.class);
        for (Adjuster adjuster : fitted) {
            for (MeasuredAdjuster measured : MeasuredAdjuster.values()) {
                if (measured.kind() == adjuster.id().kind()) {
                    measured.effect(values, adjuster.setting()).ifPresent(e -> effects.put(measured.kind(), e));
                }
            }
        }
        return new AngleResponse(perMm, AngleChange.NONE, effects);
    }
}
