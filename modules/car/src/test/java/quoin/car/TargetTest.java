package quoin.car;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What counts as inside a tolerance. */
class TargetTest {

    @ParameterizedTest
    @CsvSource({"-2.2,0.1,-2.1,true", "-2.2,0.1,-2.3,true", "-2.2,0.1,-2.0999,false", "62,1,63,true", "62,1,63.001,false", "50,0.3,49.7,true"})
    void aReadingOnTheLimitIsInside(double value, double tolerance, double reading, boolean inside) {
        assertEquals(inside, new Target(value, tolerance).contains(reading));
    }
}
