package quoin.adjustment;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quoin.adjustment.bench.FaultySession;
import quoin.adjustment.bench.SimulatedCar;
import quoin.adjustment.bench.SimulatedCar.Conditions;

/** A known car read without friction, rounded as a scale and a rule show it: what is said of a fault must be the fault. */
final class QuietDay {
    static final double G = SimulatedCar.G;
    private static final Pattern NUMBER = Pattern.compile("[-+]?\\d+(\\.\\d+)?");

    final SimulatedCar car = new SimulatedCar(11, Conditions.WELL_SETTLED);
    final LearningPrior prior = car.knowing(NoisePrior.wellSettled());

    /** Loads and heights as found, heights 62 mm above nothing. */
    double[] asFound() {
        double[] out = new double[8];
        for (int i = 0; i < 4; i++) {
            out[i] = car.asFoundLoad[i];
            out[4 + i] = 62 + car.asFoundHeight[i];
        }
        return out;
    }

    double[] after(double[] before, double... turns) {
        return plus(before, FaultySession.plain(car, turns));
    }

    static double[] plus(double[] values, double[] change) {
        double[] out = values.clone();
        Arrays.setAll(out, i -> out[i] + change[i]);
        return out;
    }

    /** As shown: 0.1 kg, 0.1 mm. */
    static SettledReading shown(double[] values, double... turns) {
        double[] out = values.clone();
        Arrays.setAll(out, i -> i < 4 ? Math.rint(out[i] / G * 10) / 10 * G : Math.rint(out[i] * 10) / 10);
        return SettledReading.of(turns, Arrays.copyOf(out, 4), Arrays.copyOfRange(out, 4, 8));
    }

    /** A day of rounds with what turns really do. */
    List<SettledReading> rounds(double[][] rounds, BiFunction<Integer, double[], double[]> effect) {
        double[] at = asFound();
        List<SettledReading> day = new ArrayList<>(List.of(shown(at, 0, 0, 0, 0)));
        for (int r = 0; r < rounds.length; r++) {
            at = plus(at, effect.apply(r + 1, rounds[r]));
            day.add(shown(at, rounds[r]));
        }
        return day;
    }

    /** Whether the words are those of the pattern, each # a number near the one expected, by a tenth of it or 0.15. */
    static void assertSays(String pattern, String words, double... expected) {
        Matcher numbers = NUMBER.matcher(words);
        List<Double> found = new ArrayList<>();
        StringBuilder bare = new StringBuilder();
        while (numbers.find()) {
            found.add(Double.parseDouble(numbers.group()));
            numbers.appendReplacement(bare, "#");
        }
        numbers.appendTail(bare);
        assertEquals(pattern, bare.toString(), words);
        assertEquals(expected.length, found.size(), words);
        for (int i = 0; i < expected.length; i++) {
            assertEquals(expected[i], found.get(i), Math.max(0.15, 0.1 * Math.abs(expected[i])), "number " + i + " of: " + words);
        }
    }
}
