package quoin.curves.set;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import quoin.car.Corner;
import quoin.suspension.CornerPosition;
import quoin.suspension.CurveOutput;

/**
 * One wheel along a sweep.
 *
 * @param corner    the wheel
 * @param after     true with the adjuster turned
 * @param sweep     what runs along
 * @param positions in rising order, as far as the linkage reaches
 * @param stopped   in words where the linkage does not reach the whole range
 */
public record Curve(Corner corner, boolean after, Sweep sweep, List<CornerPosition> positions, Optional<String> stopped) {

    public Curve {
        Objects.requireNonNull(corner, "corner");
        positions = List.copyOf(positions);
        Objects.requireNonNull(stopped, "stopped");
    }

    /** Place along the sweep (index 0, mm) and value (index 1) of every position that has this output. */
    public double[][] points(CurveOutput output) {
        List<CornerPosition> having = positions.stream().filter(p -> p.value(output).isPresent()).toList();
        double[][] points = new double[2][having.size()];
        for (int i = 0; i < having.size(); i++) {
            points[0][i] = sweep.of(having.get(i).position());
            points[1][i] = having.get(i).value(output).getAsDouble();
        }
        return points;
    }
}
