package quoin.suspension;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quoin.mechanics.InvalidInputException;
import quoin.mechanics.SpacePoint;

class ParameterValuesTest {
    private static final List<Parameter> DESCRIPTION = List.of(
            Parameter.point("arm.inner", "Inner joint", "Where it is"), Parameter.length("radius_mm", "Radius", "Of the wheel"),
            Parameter.angle("camber_deg", "Camber", "Plus is top outboard").optional(),
            Parameter.direction("axis", "Axis", "Along the bolt").optional(),
            Parameter.choice("arm.on", "On", "What carries it", List.of("upper", "lower")).optional());

    private static ParameterReading read(Map<String, String> texts) {
        return ParameterValues.read(DESCRIPTION, texts);
    }

    @Test
    void readsWhatPeopleType() {
        ParameterValues values = read(Map.of("arm.inner", "12,5 480 -3in", "radius_mm", "11.5in", "camber_deg", "-1°30'",
                "axis", "0; 1; 0.2", "arm.on", "lower")).values();
        assertEquals(new SpacePoint(12.5, 480, -76.2), values.point("arm.inner"));
        assertEquals(292.1, values.required("radius_mm"), 1e-12);
        assertEquals(-1.5, values.number("camber_deg").orElseThrow());
        assertEquals("lower", values.choice("arm.on").orElseThrow());
        assertTrue(values.hasGroup("arm"));
    }

    @Test
    void saysWhatIsWrongFieldByField() {
        List<ParameterProblem> problems = read(Map.of("arm.inner", "12 480", "camber_deg", "steep", "axis", "0 0 0",
                "arm.on", "middle", "spring", "5")).problems();
        assertEquals(List.of("arm.inner", "radius_mm", "camber_deg", "axis", "arm.on", "spring"),
                problems.stream().map(ParameterProblem::key).toList());
    }

    @Test
    void figuresOfAProgramAreCheckedAlike() {
        List<ParameterProblem> problems = ParameterValues.of(DESCRIPTION, Map.of("arm.inner", new double[] {1, 2},
                "radius_mm", new double[] {Double.NaN}, "axis", new double[3]), Map.of("arm.on", "upper")).problems();
        assertEquals(List.of("arm.inner", "radius_mm", "axis"), problems.stream().map(ParameterProblem::key).toList());
    }

    @Test
    void aBlankFieldIsNamedWhereItIsNeeded() {
        ParameterValues values = read(Map.of("radius_mm", " ")).values();
        assertEquals("arm.inner", assertThrows(InvalidInputException.class, () -> values.point("arm.inner")).field());
        assertEquals("radius_mm", assertThrows(InvalidInputException.class, () -> values.required("radius_mm")).field());
        assertEquals(7, values.numberOr("camber_deg", 7));
    }
}
