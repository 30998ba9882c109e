package quoin.curves.set;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quoin.car.Corner;
import quoin.suspension.CornerKinematics;
import quoin.suspension.CornerPosition;
import quoin.suspension.Member;
import quoin.suspension.UnreachablePositionException;
import quoin.suspension.WheelPosition;

/**
 * An axle at one position.
 *
 * @param wheels     each wheel that reaches it, before; then after
 * @param unreached  in words where a wheel does not reach it
 */
public record AxlePose(List<StandingWheel> wheels, Optional<String> unreached) {

    /**
     * One wheel as it stands.
     *
     * @param after   true with the adjuster turned
     * @param members what is drawn of it
     */
    public record StandingWheel(Corner corner, boolean after, CornerPosition position, List<Member> members) {
        public StandingWheel {
            members = List.copyOf(members);
        }
    }

    public AxlePose {
        wheels = List.copyOf(wheels);
    }

    /** Both wheels, and the turned one, at a position. */
    public static AxlePose of(AxleGeometry axle, Map<Corner, CornerKinematics> after, WheelPosition position) {
        List<StandingWheel> wheels = new ArrayList<>();
        Optional<String> unreached = Optional.empty();
        for (boolean turned : new boolean[] {false, true}) {
            Map<Corner, CornerKinematics> corners = turned ? after : axle.corners();
            for (Corner corner : Corner.values()) {
                CornerKinematics kinematics = corners.get(corner);
                if (kinematics != null) {
                    try {
                        wheels.add(new StandingWheel(corner, turned, kinematics.at(position), kinematics.members(position)));
                    } catch (UnreachablePositionException e) {
                        unreached = Optional.of(e.getLocalizedMessage());
                    }
                }
            }
        }
        return new AxlePose(wheels, unreached);
    }
}
