package quoin.suspension;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import quoin.car.Adjuster;
import quoin.quantities.Texts;

/** A corner whose body stands higher by what its perch or pushrod lifts: travel counts from there. */
final class LiftedCorner implements CornerKinematics {
    private static final Texts TEXTS = Texts.of(LiftedCorner.class);
    private final CornerKinematics corner;
    private final double liftMm;

    LiftedCorner(CornerKinematics corner, double liftMm) {
        this.corner = corner;
        this.liftMm = liftMm;
    }

    /** With the body higher, the wheel has dropped out of it. */
    private WheelPosition lifted(WheelPosition position) {
        return new WheelPosition(position.travelMm() - liftMm, position.rackLeftMm());
    }

    private WheelPosition counted(WheelPosition position) {
        return new WheelPosition(position.travelMm() + liftMm, position.rackLeftMm());
    }

    @Override
    public Set<CurveOutput> outputs() {
        return corner.outputs();
    }

    @Override
    public List<CornerPosition> along(List<WheelPosition> positions) {
        try {
            List<CornerPosition> found = corner.along(positions.stream().map(this::lifted).toList());
            return found.stream().map(p -> new CornerPosition(counted(p.position()), p.wheelCentre(), p.contactPoint(), p.values()))
                    .toList();
        } catch (UnreachablePositionException e) {
            throw new UnreachablePositionException(counted(e.wanted()), counted(e.reached()), TEXTS.phrase("linksLockOnThe"));
        }
    }

    @Override
    public Map<String, AngleSensitivity> sensitivities() {
        return corner.sensitivities();
    }

    @Override
    public AngleResponse response(List<Adjuster> fitted) {
        return corner.response(fitted);
    }

    @Override
    public Optional<CornerKinematics> adjusted(Adjuster fitted, double units) {
        return corner.adjusted(fitted, units).map(c -> new LiftedCorner(c, liftMm));
    }

    @Override
    public List<Member> members(WheelPosition position) {
        return corner.members(lifted(position));
    }
}
