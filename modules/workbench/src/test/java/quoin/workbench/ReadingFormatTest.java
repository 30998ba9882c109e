package quoin.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.quantities.AngleStyle;
import quoin.quantities.DecimalMark;
import quoin.quantities.QuantityFormatException;
import quoin.quantities.UnitPreferences;

/** Figures as shown and typed. The demo car's rims are read at a chord of 372 mm. */
class ReadingFormatTest {

    private static final ReadingId LOAD = ReadingId.of(ReadingKind.LOAD, Corner.LF);
    private static final ReadingId TOE = ReadingId.of(ReadingKind.TOE, Corner.LF);
    private static final ReadingId CAMBER = ReadingId.of(ReadingKind.CAMBER, Corner.LF);

    private final ReadingFormat metric = new ReadingFormat(TestCars.car(), DisplayUnits.usual());
    private final ReadingFormat comma = new ReadingFormat(TestCars.car(),
            new DisplayUnits(UnitPreferences.metric().withDecimalMark(DecimalMark.COMMA), false));
    private final ReadingFormat pounds = new ReadingFormat(TestCars.car(), new DisplayUnits(UnitPreferences.inchPound(), true));

    @Test
    void loadsShowOneDecimalInTheRacersUnit() {
        assertEquals("107.9 kg", metric.text(LOAD, 107.9));
        assertEquals("107,9", comma.number(LOAD, 107.9));
        // 1 lb is 0.453 592 37 kg (NIST SP 811)
        assertEquals("237.9 lb", pounds.text(LOAD, 107.9));
    }

    @Test
    void aTypedUnitWinsOverTheAssumedOne() {
        assertEquals(108.862, metric.parse(LOAD, "240lb"), 5e-4);
        assertEquals(107.9, pounds.parse(LOAD, "107.9 kg"), 1e-9);
        assertEquals(107.9, comma.parse(LOAD, "107,9"), 1e-9);
    }

    @Test
    void toeIsTheGapDifferenceAtTheChord() {
        // asin(0.8 / 372) by hand: 0.8 / 372 = 0.00215054 rad = 0.123217 deg
        assertEquals(0.123217, metric.parse(TOE, "0.8"), 1e-6);
        assertEquals("0.80 mm", metric.text(TOE, 0.123217));
        assertEquals(0.123217, comma.parse(TOE, "0,8mm"), 1e-6);
    }

    @Test
    void toeTakesAnAngleWhereAnAngleIsTyped() {
        assertEquals(0.1, metric.parse(TOE, "0.1°"), 1e-12);
        assertEquals(-0.1, metric.parse(TOE, "-6'"), 1e-12);
        assertEquals(0.15, comma.parse(TOE, "0,15"), 1e-12);
    }

    @Test
    void totalToeIsShownAtTheSameChord() {
        assertEquals("1.60 mm", metric.text(new ReadingId(ReadingKind.TOTAL_TOE, Axle.REAR.name()), 0.246434));
    }

    @Test
    void anglesFollowTheAngleStyle() {
        ReadingFormat minutes = new ReadingFormat(TestCars.car(),
                new DisplayUnits(UnitPreferences.metric().withAngleStyle(AngleStyle.DEGREES_MINUTES), true));
        assertEquals("-2°12'", minutes.text(CAMBER, -2.2));
        assertEquals(-1.5, minutes.parse(CAMBER, "-1°30'"), 1e-12);
    }

    @Test
    void changesCarryTheirSignAndBandsTheirTolerance() {
        assertEquals("+1.4 kg", metric.change(LOAD, 1.4));
        assertEquals("50.00 ± 0.30 %", metric.band(ReadingId.ofCar(ReadingKind.CROSS), 50, 0.3));
    }

    @Test
    void aFieldKeepsEveryDigitTyped() {
        assertEquals("107.94", metric.exact(LOAD, 107.94));
        assertEquals("108", metric.exact(LOAD, 108));
    }

    @Test
    void nonsenseIsRefusedInWords() {
        QuantityFormatException refused = assertThrows(QuantityFormatException.class, () -> metric.parse(LOAD, "1o7"));
        assertEquals(false, refused.remedy().isBlank());
    }
}
