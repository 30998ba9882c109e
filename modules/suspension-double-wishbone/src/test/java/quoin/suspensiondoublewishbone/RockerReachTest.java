package quoin.suspensiondoublewishbone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quoin.suspension.CornerKinematics;
import quoin.suspension.CurveOutput;
import quoin.suspension.ParameterReading;
import quoin.suspension.ParameterValues;
import quoin.suspension.Side;
import quoin.suspension.UnreachablePositionException;
import quoin.suspension.WheelPosition;

/** A rocker with a short arm comes into line with its rod long before the arms lock: how far it goes is told. */
class RockerReachTest {

    private static CornerKinematics shortRocker() {
        DoubleWishbone type = new DoubleWishbone();
        Map<String, String> texts = new HashMap<>(new DoubleWishboneContractTest().typicalCorner());
        texts.put("pushrodRocker.pushrodInboard", "2.5; 362; 532");
        ParameterReading reading = ParameterValues.read(type.parameters(), texts);
        assertTrue(reading.isComplete());
        return type.corner(reading.values(), Side.LEFT);
    }

    @ParameterizedTest
    @ValueSource(doubles = {80, -80})
    void theLastPositionThatTheRockerFollowsIsTold(double wanted) {
        CornerKinematics corner = shortRocker();
        UnreachablePositionException e = assertThrows(UnreachablePositionException.class, () -> corner.at(WheelPosition.travel(wanted)));
        assertTrue(e.getMessage().contains("the rocker cannot follow its rod"), e.getMessage());
        double reached = e.reached().travelMm();
        assertTrue(reached / wanted > 0.02 && reached / wanted < 1, "reached " + reached);
        assertTrue(Double.isFinite(corner.at(e.reached()).value(CurveOutput.MOTION_RATIO).orElseThrow()));
        UnreachablePositionException beyond = assertThrows(UnreachablePositionException.class,
                () -> corner.at(WheelPosition.travel(reached + 0.001 * wanted)));
        assertEquals(reached, beyond.reached().travelMm(), 1e-3, "the same end from nearer by");
    }
}
