package quoin.quantities;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.Supplier;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

class QuantityPropertiesTest {
    private static final String ALPHABET = "0123456789012345678901234567890123456789..,,  --++//'\"°½¼⅜\u00A0\u2009\u202F−–′″;|?#%(·²"
            + "mMiInNfFtTkKgGlLbBdDeEgGcCsSpPaAuUrR\t\n\0\uFEFF\u0663\uD83D\uDE00é";
    private static final String[] PIECES = {"1", "30", "3/16", "1 3/16", "-", "mm", "in", "lb", "lb/in", "N m", "gal", "gal (US)", "°",
        "'", "\"", "''", " ", "\u00A0", "1,234", "1.5", ",", ".", "turn", "n", "flat", "+", "deg", "min", "ft", "st", "kg", "½", ";", "/"};

    private static UnitPreferences preferences(Unit unit, int decimals, DecimalMark mark) {
        return UnitPreferences.metric().withUnit(unit).withDecimals(unit.dimension(), decimals).withDecimalMark(mark);
    }

    @Property(tries = 3000)
    void whatIsShownIsReadBack(@ForAll @DoubleRange(min = -99_999, max = 99_999) double shown, @ForAll Unit unit,
            @ForAll @IntRange(min = 0, max = 6) int decimals, @ForAll DecimalMark mark) {
        UnitPreferences preferences = preferences(unit, decimals, mark);
        double base = unit.toBase(shown);
        double halfStep = 0.5 * Math.pow(10, -decimals) * unit.factor();
        double slack = Math.abs(base) * 1e-14 + 1e-11;
        String text = QuantityFormat.formatWithUnit(base, unit.dimension(), preferences);
        assertEquals(base, Quantities.parse(text, unit.dimension(), preferences), halfStep + slack, text);
        String number = QuantityFormat.format(base, unit.dimension(), preferences);
        assertEquals(base, Quantities.parse(number, unit, mark), halfStep + slack, number);
        assertEquals(number, QuantityFormat.format(Quantities.parse(number, unit, mark), unit.dimension(), preferences));
    }

    @Property
    void degreesAndMinutesAreReadBack(@ForAll @DoubleRange(min = -360, max = 360) double degrees) {
        UnitPreferences minutes = UnitPreferences.metric().withAngleStyle(AngleStyle.DEGREES_MINUTES);
        String text = QuantityFormat.formatWithUnit(degrees, Dimension.ANGLE, minutes);
        assertEquals(degrees, Quantities.parse(text, Unit.DEG), 1 / 120.0 + 1e-12, text);
    }

    @Property
    void turnsAreReadBack(@ForAll @IntRange(min = 0, max = 5000) int steps, @ForAll @IntRange(min = 1, max = 40) int stepsPerTurn) {
        double turns = Math.min(1000.0, (double) steps / stepsPerTurn);
        String text = Turns.text(turns, stepsPerTurn, "notch");
        assertEquals(turns, Turns.parse(text, stepsPerTurn), 1e-12, text);
        assertEquals(-turns, Turns.parse("-" + text.replace(" +", ""), stepsPerTurn), 1e-12, text);
    }

    @Property
    void aLineIsReadBack(@ForAll @Size(min = 1, max = 12) List<@DoubleRange(min = -5000, max = 5000) Double> values,
            @ForAll DecimalMark mark) {
        UnitPreferences preferences = preferences(Unit.LBF, 1, mark);
        for (String separator : new String[] {" ", ";", "\t", " | ", ", "}) {
            String line = String.join(separator,
                    values.stream().map(v -> QuantityFormat.formatWithUnit(v, Dimension.FORCE, preferences)).toList());
            List<OptionalDouble> read = Quantities.parseLine(line, Unit.LBF, mark);
            assertEquals(values.size(), read.size(), line);
            for (int i = 0; i < values.size(); i++) {
                assertEquals(values.get(i), read.get(i).orElseThrow(), 0.05 * Unit.LBF.factor() + 1e-9, line);
            }
        }
    }

    @Property
    void theSignCoversEveryPart(@ForAll @IntRange(min = 0, max = 89) int degrees, @ForAll @IntRange(min = 0, max = 59) int minutes) {
        String text = degrees + "°" + minutes + "'";
        assertEquals((degrees * 60 + minutes) / 60.0, Quantities.parse(text, Unit.DEG));
        assertEquals(0.0 - Quantities.parse(text, Unit.DEG), Quantities.parse("-" + text, Unit.DEG));
    }

    /** Whatever is typed is a figure or a reasoned refusal, never another exception. */
    @Example
    void anythingTypedIsAFigureOrARefusal() {
        Random random = new Random(20_240_117);
        Unit[] units = Unit.values();
        int taken = 0;
        for (int i = 0; i < 100_000; i++) {
            String text = randomText(random);
            Unit unit = units[random.nextInt(units.length)];
            DecimalMark mark = DecimalMark.values()[random.nextInt(2)];
            taken += outcome(text, () -> List.of(OptionalDouble.of(Quantities.parse(text, unit, mark))), 1e9) ? 1 : 0;
            taken += outcome(text, () -> Quantities.parseLine(text, unit, mark), 1e9) ? 1 : 0;
            taken += outcome(text, () -> List.of(OptionalDouble.of(Turns.parse(text, 12))), 1000) ? 1 : 0;
        }
        assertTrue(taken > 10_000, "only " + taken + " of the random texts were figures: the test looks at refusals alone");
    }

    private static String randomText(Random random) {
        StringBuilder text = new StringBuilder();
        int length = 1 + random.nextInt(random.nextInt(10) == 0 ? 90 : 6);
        boolean pieces = random.nextBoolean();
        for (int k = 0; k < length; k++) {
            if (pieces) {
                text.append(PIECES[random.nextInt(PIECES.length)]);
            } else if (random.nextInt(200) == 0) {
                text.append((char) random.nextInt(0x10000));
            } else {
                text.append(ALPHABET.charAt(random.nextInt(ALPHABET.length())));
            }
        }
        return text.toString();
    }

    private static boolean outcome(String text, Supplier<List<OptionalDouble>> reading, double largest) {
        try {
            for (OptionalDouble value : reading.get()) {
                assertTrue(value.isEmpty() || Math.abs(value.getAsDouble()) <= largest, text);
            }
            return true;
        } catch (QuantityFormatException e) {
            assertTrue(e.position() >= 0 && e.position() <= text.length(), text);
            assertTrue(!e.problem().isBlank() && !e.remedy().isBlank(), text);
            return false;
        }
    }
}
