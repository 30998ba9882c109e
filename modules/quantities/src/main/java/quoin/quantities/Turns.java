package quoin.quantities;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;

/**
 * Turns of a perch, a pushrod or a rod end, counted in turns and the steps of that adjuster: notches, flats, clicks.
 * The number of steps in a turn belongs to the adjuster, so it is always given. Stateless.
 */
public final class Turns {
    private static final int LONGEST = 80;
    private static final double MOST_TURNS = 1000;
    private static final Set<String> TURN_WORDS = Set.of("turn", "turns", "t", "rev", "revs", "u", "umdr", "umdrehung",
            "umdrehungen");
    private static final Set<String> STEP_WORDS = Set.of("n", "notch", "notches", "f", "flat", "flats", "c", "click",
            "clicks", "s", "step", "steps", "k", "kerbe", "kerben", "klick", "klicks", "schritt", "schritte", "fläche", "flächen",
            "schlüsselfläche", "schlüsselflächen");
    private static final Texts TEXTS = Texts.of(Turns.class);
    private static final Phrase EXAMPLE = TEXTS.phrase("remedy.turns");

    /** Steps that are called by their name in the language of the program; any other name stays as it was typed. */
    private static final Set<String> STEP_NAMES = Set.of("turn", "notch", "flat", "half-flat", "quarter-turn", "half-turn", "click", "step");

    private Turns() {
    }

    /**
     * Reads "2 turns + 3 notches", "2t 3n", "2 1/4", "-3n", "5 flats". A figure without a word is in turns; the sign covers
     * all of it.
     *
     * @param stepsPerTurn of the adjuster, at least 1: 6 for the flats of a hexagon
     * @return turns, within +-1000; for whole steps multiply by the steps per turn and use {@link #nearestSteps}
     * @throws QuantityFormatException saying what is wrong and how to type it
     */
    public static double parse(String text, int stepsPerTurn) {
        Objects.requireNonNull(text, "text");
        checkSteps(stepsPerTurn);
        Typed typed = new Typed(text, LONGEST);
        FigureScanner figures = new FigureScanner(typed, DecimalMark.POINT, false);
        typed.skipSpaces();
        if (typed.atEnd()) {
            throw new QuantityFormatException(TEXTS.phrase("problem.nothing"), EXAMPLE, text.length());
        }
        char sign = typed.peek();
        if (sign == '-' || sign == '+') {
            typed.skip();
        }
        Exact total = parts(typed, figures, stepsPerTurn, sign == '-');
        if (Exact.of(BigDecimal.valueOf(MOST_TURNS)).isLessThan(total)) {
            throw new QuantityFormatException(TEXTS.phrase("problem.turnsTooMany"), TEXTS.phrase("remedy.digits"), 0);
        }
        return (sign == '-' ? total.negate() : total).toDouble();
    }

    private static Exact parts(Typed typed, FigureScanner figures, int stepsPerTurn, boolean negative) {
        Exact turns = null;
        Exact steps = null;
        do {
            if (typed.peek() == '+' && (turns != null || steps != null)) {
                if (negative) {
                    throw new QuantityFormatException(TEXTS.phrase("problem.signs"), TEXTS.phrase("remedy.signOnce"), typed.position());
                }
                typed.skip();
            }
            typed.skipSpaces();
            int start = typed.position();
            if (!figures.startsHere()) {
                throw new QuantityFormatException(typed.atEnd() ? TEXTS.phrase("problem.figureMissingHere")
                        : TEXTS.phrase("problem.notUnderstood", typed.shown(start)), EXAMPLE, start);
            }
            Exact figure = figures.read().value();
            boolean inSteps = inSteps(typed);
            if ((inSteps ? steps : turns) != null) {
                throw new QuantityFormatException(TEXTS.phrase(inSteps ? "problem.stepsTwice" : "problem.turnsTwice"),
                        EXAMPLE, start);
            }
            turns = inSteps ? turns : figure;
            steps = inSteps ? figure.times(Exact.of(1, stepsPerTurn)) : steps;
            typed.skipSpaces();
        } while (!typed.atEnd());
        return (turns == null ? Exact.ZERO : turns).plus(steps == null ? Exact.ZERO : steps);
    }

    /** Reads the word after a figure, if any; none means turns. */
    private static boolean inSteps(Typed typed) {
        typed.skipSpaces();
        int start = typed.position();
        while (Character.isLetter(typed.peek())) {
            typed.skip();
        }
        String word = typed.mapped(start, typed.position()).toLowerCase(Locale.ROOT);
        if (!word.isEmpty() && !TURN_WORDS.contains(word) && !STEP_WORDS.contains(word)) {
            throw new QuantityFormatException(TEXTS.phrase("problem.neither", typed.shown(start, typed.position())), EXAMPLE,
                    start);
        }
        return STEP_WORDS.contains(word);
    }

    /** Whole steps nearest to the turns, signed; halves away from zero. */
    public static long nearestSteps(double turns, int stepsPerTurn) {
        checkSteps(stepsPerTurn);
        return steps(turns, stepsPerTurn, 0).longValueExact();
    }

    /** As {@link #text(double, int, String, DecimalMark)} with the usual mark of the language. */
    public static String text(double turns, int stepsPerTurn, String stepName) {
        return text(turns, stepsPerTurn, stepName, DecimalMark.usual());
    }

    /**
     * "2 turns + 3 notches", "1 turn", "5 notches", "0 notches". Part steps are shown to a tenth: "1 turn + 1.5 flats".
     *
     * @param turns the sign is left out: the words up and down say it better
     * @param stepsPerTurn of the adjuster, at least 1; with 1 everything is in turns
     * @param stepName one step: "notch", "flat", "click"
     */
    public static String text(double turns, int stepsPerTurn, String stepName, DecimalMark mark) {
        checkSteps(stepsPerTurn);
        BigDecimal steps = steps(Math.abs(turns), stepsPerTurn, 1);
        if (stepsPerTurn == 1) {
            return counted(steps, "turn", mark);
        }
        BigDecimal[] parts = steps.divideAndRemainder(BigDecimal.valueOf(stepsPerTurn));
        if (parts[0].signum() == 0) {
            return counted(steps, stepName, mark);
        }
        String whole = counted(parts[0], "turn", mark);
        return parts[1].signum() == 0 ? whole : whole + " + " + counted(parts[1], stepName, mark);
    }

    private static String counted(BigDecimal count, String name, DecimalMark mark) {
        String plain = count.signum() == 0 ? "0" : count.stripTrailingZeros().toPlainString();
        String figure = plain.replace('.', mark.character());
        String key = stepName(name).replace(' ', '-');
        if (STEP_NAMES.contains(key)) {
            return TEXTS.say(key + (plain.equals("1") ? ".one" : ".many"), figure);
        }
        String plural = name.endsWith("ch") || name.endsWith("sh") || name.endsWith("s") || name.endsWith("x") ? "es" : "s";
        return figure + " " + name + (plain.equals("1") ? "" : plural);
    }

    /** The name under which a step is kept: that of the English where the language has a word of its own for it, else as typed. */
    public static String stepName(String typed) {
        return STEP_NAMES.stream().filter(key -> word(key).equalsIgnoreCase(typed.strip())).findFirst()
                .map(key -> key.replace('-', ' ')).orElse(typed);
    }

    /** How a step that is kept under a name is called in the language of the program. */
    public static String stepWord(String name) {
        String key = name.replace(' ', '-');
        return STEP_NAMES.contains(key) ? word(key) : name;
    }

    /** The word alone; a turn is counted in some languages by a letter, its word is not that letter. */
    private static String word(String key) {
        return TEXTS.say(key.equals("turn") ? "turn.word" : key + ".one", "").strip();
    }

    /** Lower-case forms in which a step may be typed, its plurals too, the longest first. */
    public static List<String> stepForms(String name) {
        String key = name.replace(' ', '-');
        List<String> forms = new ArrayList<>(List.of(name, name + "s", name + "es"));
        if (STEP_NAMES.contains(key)) {
            forms.add(word(key));
            forms.add(TEXTS.say(key + ".many", "").strip());
        }
        return forms.stream().map(form -> form.toLowerCase(Locale.ROOT)).distinct()
                .sorted(Comparator.comparing(String::length).reversed()).toList();
    }

    private static BigDecimal steps(double turns, int stepsPerTurn, int decimals) {
        if (!(Math.abs(turns) <= MOST_TURNS)) {
            throw new IllegalArgumentException("turns: " + turns + "; give a figure within 1000 turns");
        }
        return BigDecimal.valueOf(turns * stepsPerTurn).setScale(decimals, RoundingMode.HALF_UP);
    }

    private static void checkSteps(int stepsPerTurn) {
        if (stepsPerTurn < 1) {
            throw new IllegalArgumentException("stepsPerTurn: " + stepsPerTurn + "; give at least 1 step in a turn");
        }
    }
}
