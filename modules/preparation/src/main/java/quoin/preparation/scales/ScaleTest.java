package quoin.preparation.scales;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import org.openide.util.NbBundle.Messages;
import quoin.car.Corner;
import quoin.mechanics.ScaleFactors;
import quoin.preparation.sheet.Cell;
import quoin.preparation.sheet.Figures;
import quoin.preparation.sheet.Lines;
import quoin.quantities.Dimension;

/** Ways to find what each scale shows for a true kilogram. Scales are known by the corner they stand at. */
@Messages({
    "test.person=One person on each scale", "test.swap=Two scales exchanged under the car", "test.turn=Car turned round on its pads",
    "test.personSteps=Zero with nothing on. The same person, nothing in the hands, on each scale in turn: once in the middle, once near an edge. Leave the weight blank where it is not known: the scales are then only compared with each other.",
    "test.swapSteps=Weigh the car. Lift it by jack and stands, never with anyone in it or under it, exchange the two scales, settle, weigh again. What moves with the scale is the scale's, what stays is the car's. Put the scales back after it.",
    "test.turnSteps=Weigh the car. Roll it off, turn it round and roll it on the other way, settle, weigh again: each wheel now stands on the scale of the opposite corner. Type by wheel, both times.",
    "test.mass=Weight of the person", "test.middle=middle", "test.edge=edge", "test.first=first", "test.second=second",
    "# {0} - corner", "# {1} - which time", "test.cell={0}, {1}"})
enum ScaleTest {
    PERSON("known-person"),
    SWAP("swap-test"),
    TURN("half-turn");

    static final String MASS = "person";
    private static final String FIRST = ".first";
    private static final String SECOND = ".second";
    /** Standing on a scale again, a little elsewhere, kg (common practice: readings within 0.1 to 0.2 kg). */
    private static final double STEPPING_KG = 0.1;
    /** How well somebody's weight is known from another scale, kg (common practice, no source). */
    private static final double KNOWN_KG = 0.1;

    private final String id;

    ScaleTest(String id) {
        this.id = id;
    }

    /** Stable name, as the journal keeps it. */
    String id() {
        return id;
    }

    @Override
    public String toString() {
        return switch (this) {
            case PERSON -> Bundle.test_person();
            case SWAP -> Bundle.test_swap();
            case TURN -> Bundle.test_turn();
        };
    }

    String steps() {
        return switch (this) {
            case PERSON -> Bundle.test_personSteps();
            case SWAP -> Bundle.test_swapSteps();
            case TURN -> Bundle.test_turnSteps();
        };
    }

    Lines lines() {
        List<Lines.Line> lines = new ArrayList<>();
        String one = this == PERSON ? Bundle.test_middle() : Bundle.test_first();
        String two = this == PERSON ? Bundle.test_edge() : Bundle.test_second();
        if (this == PERSON) {
            lines.add(Lines.Line.of(Bundle.test_mass(), Cell.of(MASS, Bundle.test_mass(), Dimension.MASS)));
        }
        for (Corner corner : Corner.values()) {
            lines.add(Lines.Line.of(corner.words(), Cell.of(corner + FIRST, Bundle.test_cell(corner.words(), one), Dimension.MASS),
                    Cell.of(corner + SECOND, Bundle.test_cell(corner.words(), two), Dimension.MASS)));
        }
        return new Lines(List.of(one, two), lines);
    }

    /** Keys of what has to be typed; the edge and the person's weight may stay blank. */
    List<String> needed() {
        List<String> keys = new ArrayList<>();
        for (Corner corner : Corner.values()) {
            keys.add(corner + FIRST);
            if (this != PERSON) {
                keys.add(corner + SECOND);
            }
        }
        return keys;
    }

    /** The scale under a wheel the second time. */
    private UnaryOperator<Corner> secondScale(Pair exchanged) {
        return this == SWAP ? exchanged::other : c -> c.diagonal();
    }

    /**
     * Solves for the factors.
     *
     * @param exchanged    the two scales of a swap
     * @param priorRelative standard uncertainty of a factor before the test
     * @param stepKg       step of the displays
     * @param settlingKg   standard deviation of settling the car and reading again
     * @throws quoin.mechanics.InvalidInputException where a figure is not above 0
     */
    ScaleFactors solve(Figures figures, Pair exchanged, double priorRelative, double stepKg, double settlingKg) {
        List<ScaleFactors.Reading> readings = new ArrayList<>();
        List<ScaleFactors.Known> known = new ArrayList<>();
        double step = stepKg / Math.sqrt(12);
        double noise = Math.hypot(step, this == PERSON ? STEPPING_KG : settlingKg);
        UnaryOperator<Corner> second = secondScale(exchanged);
        for (Corner corner : Corner.values()) {
            String load = this == PERSON ? MASS : corner.name();
            readings.add(new ScaleFactors.Reading(corner.ordinal(), load, figures.values().get(corner + FIRST), noise));
            int scale = this == PERSON ? corner.ordinal() : second.apply(corner).ordinal();
            figures.maybe(corner + SECOND).ifPresent(kg -> readings.add(new ScaleFactors.Reading(scale, load, kg, noise)));
        }
        figures.maybe(MASS).ifPresent(kg -> known.add(new ScaleFactors.Known(MASS, kg, KNOWN_KG)));
        Double[] prior = new Double[Corner.values().length];
        Arrays.fill(prior, priorRelative);
        return ScaleFactors.solve(List.of(prior), readings, known);
    }

    /** Two scales that are exchanged. */
    record Pair(Corner one, Corner two) {

        Corner other(Corner corner) {
            return corner == one ? two : corner == two ? one : corner;
        }

        static List<Pair> all() {
            List<Pair> pairs = new ArrayList<>();
            for (Corner one : Corner.values()) {
                for (Corner two : Corner.values()) {
                    if (one.ordinal() < two.ordinal()) {
                        pairs.add(new Pair(one, two));
                    }
                }
            }
            return pairs;
        }

        @Override
        public String toString() {
            return one.words() + " \u2194 " + two.words();
        }
    }
}
