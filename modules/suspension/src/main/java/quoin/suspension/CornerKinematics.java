package quoin.suspension;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import quoin.car.Adjuster;

/** One corner of a suspension with its parameters put in. Immutable; may be used by several threads. */
public interface CornerKinematics {

    /** What {@link #along} tells at every position. */
    Set<CurveOutput> outputs();

    /**
     * The wheel at each of the positions, each reached from the one before without leaving the assembled branch.
     *
     * @throws UnreachablePositionException where the linkage cannot be moved there
     */
    List<CornerPosition> along(List<WheelPosition> positions);

    /** The wheel at one position, reached from the design position. */
    default CornerPosition at(WheelPosition position) {
        return along(List.of(position)).get(0);
    }

    /**
     * What 1 mm of each length or joint shift does at the design position, by the calculator's name of the adjuster; empty
     * where the type has no geometry.
     */
    Map<String, AngleSensitivity> sensitivities();

    /**
     * The linear response about the design position, for the adjusters that are fitted to this corner. An adjuster that
     * the type says nothing about is left out.
     */
    AngleResponse response(List<Adjuster> fitted);

    /**
     * The same corner with one adjuster turned; its travel then counts from the new ride height, which a perch or pushrod
     * moves by what it lifts its own corner.
     *
     * @param fitted the adjuster as it is fitted
     * @param units  turns of its thread or mm of its shims; plus is the adjuster kind's plus
     * @return empty where the type does not know what this adjuster does to a position
     */
    default Optional<CornerKinematics> adjusted(Adjuster fitted, double units) {
        return Optional.empty();
    }

    /**
     * What is to be drawn at a position; empty where the type has no geometry.
     *
     * @throws UnreachablePositionException where the linkage cannot be moved there
     */
    default List<Member> members(WheelPosition position) {
        return List.of();
    }
}
