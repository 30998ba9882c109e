package quoin.curves.set;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import quoin.car.Adjuster;
import quoin.car.Corner;
import quoin.suspension.CornerKinematics;
import quoin.suspension.CornerPosition;
import quoin.suspension.UnreachablePositionException;
import quoin.suspension.WheelPosition;

/**
 * Every curve of an axle for one request: before for both wheels, after for the wheel whose adjuster is turned.
 *
 * @param request what was asked
 * @param curves  before, left and right; then after
 * @param after   the wheel that is turned, with the adjuster turned
 * @param unknown true where the type does not know what the adjuster does
 */
public record CurveSet(CurveRequest request, List<Curve> curves, Map<Corner, CornerKinematics> after, boolean unknown) {

    /** Positions to either side of the middle: a step of 1 mm at the usual 40 mm. */
    static final int STEPS = 40;

    public CurveSet {
        curves = List.copyOf(curves);
        after = Map.copyOf(after);
    }

    /**
     * Solves the curves.
     *
     * @param adjuster the adjuster of the request as it is fitted; empty where the request turns none
     */
    public static CurveSet of(AxleGeometry axle, CurveRequest request, Optional<Adjuster> adjuster) {
        List<Curve> curves = new ArrayList<>();
        for (Corner corner : Corner.values()) {
            if (axle.corners().containsKey(corner)) {
                curves.add(curve(axle.corners().get(corner), corner, false, request));
            }
        }
        Map<Corner, CornerKinematics> after = new EnumMap<>(Corner.class);
        boolean unknown = false;
        if (request.turned().isPresent() && adjuster.isPresent()) {
            Turned turned = request.turned().get();
            Corner corner = turned.adjuster().corner();
            Optional<CornerKinematics> adjusted = Optional.ofNullable(axle.corners().get(corner))
                    .flatMap(c -> c.adjusted(adjuster.get(), turned.amount()));
            unknown = adjusted.isEmpty();
            adjusted.ifPresent(kinematics -> {
                after.put(corner, kinematics);
                curves.add(curve(kinematics, corner, true, request));
            });
        }
        return new CurveSet(request, curves, after, unknown);
    }

    private static Curve curve(CornerKinematics kinematics, Corner corner, boolean after, CurveRequest request) {
        List<CornerPosition> positions = new ArrayList<>();
        Optional<String> stopped = Optional.empty();
        for (int direction : new int[] {-1, 1}) {
            List<WheelPosition> wanted = IntStream.rangeClosed(direction < 0 ? 1 : 0, STEPS)
                    .mapToObj(i -> request.sweep().at(direction * request.rangeMm() * i / STEPS)).toList();
            List<CornerPosition> reached = new ArrayList<>();
            try {
                reached.addAll(kinematics.along(wanted));
            } catch (UnreachablePositionException e) {
                stopped = Optional.of(e.getLocalizedMessage());
                reached.addAll(before(kinematics, wanted, e.wanted()));
            }
            if (direction < 0) {
                Collections.reverse(reached);
            }
            positions.addAll(reached);
        }
        return new Curve(corner, after, request.sweep(), positions, stopped);
    }

    /** Positions up to the one that cannot be reached. */
    private static List<CornerPosition> before(CornerKinematics kinematics, List<WheelPosition> wanted, WheelPosition end) {
        int count = wanted.indexOf(end);
        if (count <= 0) {
            return List.of();
        }
        try {
            return kinematics.along(wanted.subList(0, count));
        } catch (UnreachablePositionException e) {
            return List.of();
        }
    }
}
