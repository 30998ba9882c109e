package quoin.suspension;

import java.util.List;
import java.util.Map;
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
}
