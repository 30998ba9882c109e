package quoin.car;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** A car of which only wheelbase and tracks are known, to be changed by the tests. */
final class TestCars {

    static final List<Corner> ROUND = List.of(Corner.LF, Corner.LR, Corner.RR, Corner.RF);

    private TestCars() {
    }

    static Car bare() {
        return with(PerCorner.all(CornerSetup.unknown()), List.of(), ROUND);
    }

    static Car with(PerCorner<CornerSetup> corners, List<HeightPoint> points, List<Corner> walkingOrder) {
        AxleSetup front = new AxleSetup(1440, Optional.empty(), new SuspensionChoice("measured", Map.of()));
        AxleSetup rear = new AxleSetup(1420, Optional.empty(), new SuspensionChoice("measured", Map.of()));
        return new Car("bare", "Bare", 2380, new PerAxle<>(front, rear), corners,
                new Masses(OptionalDouble.empty(), OptionalDouble.empty(), List.of()), points,
                new Targets(Map.of(), CrossGoal.EQUAL_DIAGONALS), LoadCase.unknown(), Instruments.usual(), walkingOrder);
    }

    static HeightPoint point(String name, Corner corner) {
        return new HeightPoint(name, Optional.ofNullable(corner), OptionalDouble.empty(), OptionalDouble.empty());
    }

    static Adjuster perch(Corner corner) {
        return Adjuster.unmeasured(new AdjusterId(AdjusterKind.PERCH, corner), new Setting.Thread(1.5, false, 8, "notch"));
    }

    static CornerSetup corner(double spring, double ratio, List<Adjuster> adjusters) {
        OptionalDouble none = OptionalDouble.empty();
        return new CornerSetup(OptionalDouble.of(spring), OptionalDouble.of(ratio), none, none, none, none, adjusters);
    }
}
