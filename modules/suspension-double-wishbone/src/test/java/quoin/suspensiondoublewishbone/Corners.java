package quoin.suspensiondoublewishbone;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import quoin.suspension.CornerKinematics;
import quoin.suspension.CornerPosition;
import quoin.suspension.CurveOutput;
import quoin.suspension.ParameterReading;
import quoin.suspension.ParameterValues;
import quoin.suspension.Side;
import quoin.suspension.WheelPosition;

/** Corners from typed parameters, and positions found by something else than wheel-centre travel. */
final class Corners {
    private Corners() {
    }

    static CornerKinematics left(Map<String, String> texts) {
        DoubleWishbone type = new DoubleWishbone();
        ParameterReading reading = ParameterValues.read(type.parameters(), texts);
        assertEquals(List.of(), reading.problems());
        return type.corner(reading.values(), Side.LEFT);
    }

    static double value(CornerPosition position, CurveOutput output) {
        return position.value(output).orElseThrow();
    }

    /** The position, by the secant method, at which something has a value. */
    static CornerPosition where(CornerKinematics corner, double rackMm, double guessMm, double wanted,
            ToDoubleFunction<CornerPosition> of) {
        double x0 = guessMm;
        double x1 = guessMm + 0.5;
        double f0 = of.applyAsDouble(corner.at(new WheelPosition(x0, rackMm))) - wanted;
        for (int i = 0; i < 30; i++) {
            CornerPosition at = corner.at(new WheelPosition(x1, rackMm));
            double f1 = of.applyAsDouble(at) - wanted;
            if (Math.abs(f1) < 1e-10) {
                return at;
            }
            double next = x1 - f1 * (x1 - x0) / (f1 - f0);
            x0 = x1;
            f0 = f1;
            x1 = next;
        }
        throw new AssertionError("not found");
    }
}
