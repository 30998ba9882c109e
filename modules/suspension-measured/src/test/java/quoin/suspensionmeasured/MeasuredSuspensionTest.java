package quoin.suspensionmeasured;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quoin.car.Adjuster;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Corner;
import quoin.car.Setting;
import quoin.suspension.AdjusterEffect;
import quoin.suspension.AngleChange;
import quoin.suspension.AngleResponse;
import quoin.suspension.CornerKinematics;
import quoin.suspension.CurveOutput;
import quoin.suspension.ParameterReading;
import quoin.suspension.ParameterValues;
import quoin.suspension.Side;
import quoin.suspension.UnreachablePositionException;
import quoin.suspension.WheelPosition;
import quoin.suspension.spi.SuspensionTypes;

class MeasuredSuspensionTest {
    private static final Setting FLATS = new Setting.Thread(1.25, true, 6, "flat");
    private static final Setting SHIMS = new Setting.Shims(List.of(new Setting.Shim(0.5, 4)), 2);

    private static ParameterReading read(Map<String, String> texts) {
        return ParameterValues.read(new MeasuredSuspension().parameters(), texts);
    }

    private static AngleResponse response(Map<String, String> texts, AdjusterKind kind, Setting setting) {
        ParameterReading reading = read(texts);
        assertTrue(reading.isComplete(), reading.problems().toString());
        return new MeasuredSuspension().corner(reading.values(), Side.RIGHT)
                .response(List.of(Adjuster.unmeasured(new AdjusterId(kind, Corner.RF), setting)));
    }

    @Test
    void isFoundByItsId() {
        assertEquals("Measured", SuspensionTypes.installed().find("measured").orElseThrow().name());
    }

    @Test
    void nothingMeasuredMovesNothing() {
        assertEquals(AngleResponse.unknown(), response(Map.of(), AdjusterKind.CAMBER_ROD, FLATS));
    }

    @Test
    void tellsWhatWasMeasured() {
        AngleResponse response = response(Map.of("camber_deg_per_mm", "-0,025", "toe_deg_per_mm", "0.004 deg/mm",
                "camberRod.camber_deg_per_turn", "0.55", "camberRod.toe_deg_per_turn", "-0.2",
                "camberRod.lift_mm_per_turn", "0.3"), AdjusterKind.CAMBER_ROD, FLATS);
        assertEquals(new AngleChange(-0.025, 0.004, 0), response.perMmTravel());
        assertEquals(new AdjusterEffect(new AngleChange(0.55, -0.2, 0), 0.3), response.of(AdjusterKind.CAMBER_ROD));
        assertFalse(response.knows(AdjusterKind.TOE_LINK));
    }

    @Test
    void shimsArePerMmAndAThreadInTheirPlaceIsConverted() {
        Map<String, String> texts = Map.of("camberShim.camber_deg_per_mm", "0.25", "casterRod.caster_deg_per_turn", "1");
        assertEquals(0.25, response(texts, AdjusterKind.CAMBER_SHIM, SHIMS).of(AdjusterKind.CAMBER_SHIM).angles().camberDeg());
        assertEquals(0.625, response(texts, AdjusterKind.CAMBER_SHIM, FLATS).of(AdjusterKind.CAMBER_SHIM).angles().camberDeg());
        assertFalse(response(texts, AdjusterKind.CASTER_ROD, SHIMS).knows(AdjusterKind.CASTER_ROD));
    }

    @Test
    void saysWhichFieldCannotBeRead() {
        ParameterReading reading = read(Map.of("toe_deg_per_mm", "much", "rocker.lever", "3"));
        assertEquals(List.of("toe_deg_per_mm", "rocker.lever"), reading.problems().stream().map(p -> p.key()).toList());
    }

    @Test
    void itsCurvesAreStraightAndItDoesNotSteer() {
        CornerKinematics corner = new MeasuredSuspension().corner(read(Map.of("camber_deg_per_mm", "-0.02")).values(), Side.LEFT);
        assertEquals(-0.02, corner.at(WheelPosition.travel(30)).value(CurveOutput.BUMP_CAMBER).orElseThrow());
        assertTrue(corner.at(WheelPosition.DESIGN).value(CurveOutput.CAMBER).isEmpty());
        assertThrows(UnreachablePositionException.class, () -> corner.at(new WheelPosition(0, 5)));
    }
}
