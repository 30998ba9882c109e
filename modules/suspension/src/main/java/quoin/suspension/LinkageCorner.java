package quoin.suspension;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import quoin.car.Adjuster;
import quoin.car.AdjusterKind;
import quoin.mechanics.SpacePoint;
import quoin.quantities.Texts;
import quoin.suspension.solver.Geometry;
import quoin.suspension.solver.Loops;
import quoin.suspension.solver.Walker;

/** A corner with hard points. The walker reaches every position from the one before. */
final class LinkageCorner implements CornerKinematics {
    private static final Texts TEXTS = Texts.of(LinkageCorner.class);
    /** Down to a millionth of the way asked for. */
    private static final int HALVINGS = 20;

    private final Side side;
    private final CarriedWheel wheel;
    private final Loops loops;
    private final Map<String, Geometry> adjusters;
    private final Map<AdjusterKind, Geometry> kinds;

    LinkageCorner(Side side, CarriedWheel wheel, Loops loops, Map<String, Geometry> adjusters,
            Map<AdjusterKind, Geometry> kinds) {
        this.side = side;
        this.wheel = wheel;
        this.loops = loops;
        this.adjusters = adjusters;
        this.kinds = kinds;
    }

    @Override
    public Set<CurveOutput> outputs() {
        return at(WheelPosition.DESIGN).values().keySet();
    }

    @Override
    public List<CornerPosition> along(List<WheelPosition> positions) {
        List<CornerPosition> found = new ArrayList<>(positions.size());
        Walker walker = loops.walker();
        for (WheelPosition position : positions) {
            if (!move(walker, position)) {
                // the straight way from the last position may be locked where the one from the design position is not
                walker = loops.walker();
                if (!move(walker, position)) {
                    throw new UnreachablePositionException(position, reached(walker), TEXTS.phrase("linksLockOnThe"));
                }
            }
            found.add(position(walker, position));
        }
        return found;
    }

    private boolean move(Walker walker, WheelPosition to) {
        if (to.rackLeftMm() != 0 && !loops.hasRack()) {
            throw new UnreachablePositionException(to, new WheelPosition(to.travelMm(), 0), TEXTS.phrase("thisSuspensionIsNot"));
        }
        double[] heights = new double[loops.drives()];
        Arrays.fill(heights, to.travelMm());
        if (!walker.moveTo(side.sign() * to.rackLeftMm(), heights)) {
            return false;
        }
        if (!springFollows(walker)) {
            throw new UnreachablePositionException(to, lastFollowed(to), TEXTS.phrase("rockerCannotFollowIts"));
        }
        return true;
    }

    private boolean springFollows(Walker walker) {
        return wheel.coil() == null || !Double.isNaN(wheel.coil().length(walker.pose(), walker.geometry()));
    }

    /** The last position on the straight way from the design position that the rocker follows, found by halving. */
    private WheelPosition lastFollowed(WheelPosition to) {
        WheelPosition followed = WheelPosition.DESIGN;
        double low = 0;
        double high = 1;
        for (int i = 0; i < HALVINGS; i++) {
            double share = (low + high) / 2;
            WheelPosition at = new WheelPosition(share * to.travelMm(), share * to.rackLeftMm());
            double[] heights = new double[loops.drives()];
            Arrays.fill(heights, at.travelMm());
            Walker walker = loops.walker();
            if (walker.moveTo(side.sign() * at.rackLeftMm(), heights) && springFollows(walker)) {
                followed = at;
                low = share;
            } else {
                high = share;
            }
        }
        return followed;
    }

    private WheelPosition reached(Walker walker) {
        return new WheelPosition(walker.heightsMm()[0], side.sign() * walker.rackMm());
    }

    private CornerPosition position(Walker walker, WheelPosition position) {
        double[] all = new double[loops.drives()];
        Arrays.fill(all, 1);
        Map<CurveOutput, Double> values = wheel.outputs(walker, walker.motion(loops.heightChange(all)));
        return new CornerPosition(position, Optional.of(place(walker.pose().origin())),
                Optional.of(place(wheel.contactPoint(walker))), values);
    }

    @Override
    public Optional<CornerKinematics> adjusted(Adjuster fitted, double units) {
        AdjusterKind kind = fitted.id().kind();
        AngleResponse response = response(List.of(fitted));
        if (!response.knows(kind)) {
            return Optional.empty();
        }
        double mm = units * fitted.setting().mmPerUnit();
        return Optional.of(new LinkageResponse(wheel, loops, kinds).plus(kind)
                .map(change -> (CornerKinematics) new LinkageCorner(side, wheel, loops.with(loops.design().plus(mm, change)),
                        adjusters, kinds))
                .orElseGet(() -> new LiftedCorner(this, units * response.of(kind).legLiftMm())));
    }

    @Override
    public List<Member> members(WheelPosition position) {
        Walker walker = loops.walker();
        if (!move(walker, position)) {
            throw new UnreachablePositionException(position, reached(walker), TEXTS.phrase("linksLockOnThe"));
        }
        return new LinkageOutline(wheel, loops, this::place).at(walker);
    }

    private SpacePoint place(double[] outboard) {
        return new SpacePoint(outboard[0], side.sign() * outboard[1], outboard[2]);
    }

    @Override
    public Map<String, AngleSensitivity> sensitivities() {
        Walker walker = atDesign();
        Map<String, AngleSensitivity> all = new LinkedHashMap<>();
        adjusters.forEach((name, change) -> all.put(name, sensitivity(walker, change)));
        return all;
    }

    private Walker atDesign() {
        Walker walker = loops.walker();
        move(walker, WheelPosition.DESIGN);
        return walker;
    }

    private AngleSensitivity sensitivity(Walker walker, Geometry change) {
        double[] motion = walker.motion(change);
        double[] spin = wheel.spinAxis(walker);
        return new AngleSensitivity(Math.toDegrees(CarriedWheel.camberRate(spin, motion)),
                Math.toDegrees(CarriedWheel.toeRate(spin, motion)), axisRate(walker, motion, change, 0),
                axisRate(walker, motion, change, 1));
    }

    private OptionalDouble axisRate(Walker walker, double[] motion, Geometry change, int index) {
        double[] rate = wheel.axis().rate(walker, motion, change);
        if (rate == null) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(Math.toDegrees(SteeringAxis.rate(wheel.axis().find(walker)[1], rate, index)));
    }

    @Override
    public AngleResponse response(List<Adjuster> fitted) {
        return new LinkageResponse(wheel, loops, kinds).of(fitted);
    }
}
