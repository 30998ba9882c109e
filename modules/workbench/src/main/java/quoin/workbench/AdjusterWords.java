package quoin.workbench;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.openide.util.NbBundle.Messages;
import quoin.car.Adjuster;
import quoin.car.AdjusterId;
import quoin.car.AdjusterKind;
import quoin.car.Assumptions;
import quoin.car.Car;
import quoin.car.Setting;
import quoin.quantities.Dimension;
import quoin.quantities.Quantities;
import quoin.quantities.QuantityFormat;
import quoin.quantities.QuantityFormatException;
import quoin.quantities.Turns;
import quoin.quantities.Unit;

/**
 * Says and reads what was turned, in the steps of each adjuster and with a word for the direction instead of a sign: "2 turns
 * + 3 notches down". Amounts are turns of a thread or mm of shim; plus as {@link AdjusterKind} defines it.
 */
@Messages({
    "turn.up=up", "turn.down=down",
    "turn.topOut=top out", "turn.topIn=top in",
    "turn.topBack=top back", "turn.topForward=top forward",
    "turn.toeIn=toe in", "turn.toeOut=toe out",
    "turn.loadsLeft=loads left", "turn.loadsRight=loads right",
    "turn.none=leave",
    "# {0} - amount", "# {1} - direction", "turn.amount={0} {1}",
    "# {0} - text", "turn.contradiction=\"{0}\" has a minus sign and a word for the direction; type one of the two",
    "# {0} - text", "turn.twoWays=\"{0}\" names both directions; type one of them"})
public final class AdjusterWords {

    private static final double NOTHING = 1e-9;

    private final Car car;
    private final DisplayUnits units;

    public AdjusterWords(Car car, DisplayUnits units) {
        this.car = car;
        this.units = units;
    }

    /** The adjuster as built in, or as assumed where the car does not describe it. */
    public Adjuster adjuster(AdjusterId id) {
        return car.adjuster(id).orElseGet(() -> Assumptions.complete(car).corners().get(id.corner()).springLeg().stream()
                .filter(a -> a.id().equals(id)).findFirst()
                .orElse(Adjuster.unmeasured(id, new Setting.Thread(1, false, 1, "turn"))));
    }

    /** Which way plus (or minus) goes: "up", "toe out". */
    public static String direction(AdjusterKind kind, boolean plus) {
        return switch (kind) {
            case PERCH, PUSHROD -> plus ? Bundle.turn_up() : Bundle.turn_down();
            case CAMBER_ROD, CAMBER_SHIM -> plus ? Bundle.turn_topOut() : Bundle.turn_topIn();
            case CASTER_ROD -> plus ? Bundle.turn_topBack() : Bundle.turn_topForward();
            case TOE_LINK -> plus ? Bundle.turn_toeIn() : Bundle.turn_toeOut();
            case BAR_LINK -> plus ? Bundle.turn_loadsLeft() : Bundle.turn_loadsRight();
        };
    }

    /** "2 turns + 3 notches down"; "leave" for nothing. */
    public String amount(AdjusterId id, double amount) {
        if (Math.abs(amount) < NOTHING) {
            return Bundle.turn_none();
        }
        return Bundle.turn_amount(size(adjuster(id).setting(), amount), direction(id.kind(), amount > 0));
    }

    /** "RR perch: 2 notches up". */
    public String sentence(AdjusterId id, double amount) {
        return id.words() + ": " + amount(id, amount);
    }

    private String size(Setting setting, double amount) {
        if (setting instanceof Setting.Thread thread) {
            return Turns.text(amount, thread.stepsPerTurn(), thread.stepName(), units.preferences().decimalMark());
        }
        return QuantityFormat.of(units.preferences().withDecimals(Dimension.LENGTH, 2)).text(Math.abs(amount), Dimension.LENGTH);
    }

    /**
     * Reads what was turned: "2t 3n down", "-2 1/4", "5 notches up", for shims "0.5 mm". A blank text is nothing turned.
     *
     * @throws IllegalArgumentException in words for the racer
     */
    public double parse(AdjusterId id, String text) {
        String rest = text.strip().toLowerCase(Locale.ROOT);
        if (rest.isEmpty() || rest.equals(Bundle.turn_none())) {
            return 0;
        }
        String plus = direction(id.kind(), true);
        String minus = direction(id.kind(), false);
        boolean saysPlus = hasWord(rest, plus);
        boolean saysMinus = hasWord(rest, minus);
        if (saysPlus && saysMinus) {
            throw new IllegalArgumentException(Bundle.turn_twoWays(text.strip()));
        }
        String figure = without(without(rest, plus), minus).strip();
        double amount = figure(adjuster(id).setting(), figure);
        if (amount < 0 && (saysPlus || saysMinus)) {
            throw new IllegalArgumentException(Bundle.turn_contradiction(text.strip()));
        }
        return saysMinus ? -amount : amount;
    }

    private double figure(Setting setting, String figure) {
        if (setting instanceof Setting.Thread thread) {
            String step = Turns.stepForms(thread.stepName()).stream().map(Pattern::quote).collect(Collectors.joining("|"));
            return Turns.parse(thread.stepName().equals("turn") ? figure : figure.replaceAll(step, "n"), thread.stepsPerTurn());
        }
        return Quantities.parse(figure, Unit.MM, units.preferences().decimalMark());
    }

    private static boolean hasWord(String text, String word) {
        return word(word).matcher(text).find();
    }

    private static String without(String text, String word) {
        return word(word).matcher(text).replaceAll(" ");
    }

    private static Pattern word(String word) {
        return Pattern.compile("(?<![a-z])" + Pattern.quote(word) + "(?![a-z])");
    }

    /**
     * Reads a measured thread length; blank is not measured.
     *
     * @throws QuantityFormatException in words for the racer
     */
    public OptionalDouble parseLength(String text) {
        return text.isBlank() ? OptionalDouble.empty() : OptionalDouble.of(Quantities.parse(text, Dimension.LENGTH, units.preferences()));
    }

    /** "60.6 mm". */
    public String length(double lengthMm) {
        return QuantityFormat.of(units.preferences().withDecimals(Dimension.LENGTH, 1)).text(lengthMm, Dimension.LENGTH);
    }
}
