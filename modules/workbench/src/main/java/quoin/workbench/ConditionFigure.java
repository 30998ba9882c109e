package quoin.workbench;

import java.math.BigDecimal;
import org.openide.util.NbBundle.Messages;
import quoin.logbook.Conditions;
import quoin.quantities.Quantities;
import quoin.quantities.QuantityFormatException;
import quoin.quantities.Unit;

/** Reads the figure of a condition that holds one: fuel in kg, a tyre pressure in bar. */
@Messages("condition.negative=a figure below zero; type what there is, zero or more")
public final class ConditionFigure {

    private ConditionFigure() {
    }

    /**
     * The figure as the logbook keeps it, a plain number with a decimal point.
     *
     * @param key  the condition; see {@link Conditions}
     * @param text as typed, in kg or bar where it names no unit: "20", "20,5", "44 lb"
     * @throws IllegalArgumentException in words for the racer
     */
    public static String of(String key, String text) throws QuantityFormatException {
        double value = Quantities.parse(text, key.equals(Conditions.FUEL) ? Unit.KG : Unit.BAR);
        if (value < 0) {
            throw new IllegalArgumentException(Bundle.condition_negative());
        }
        return BigDecimal.valueOf(Math.rint(value * 1000) / 1000).stripTrailingZeros().toPlainString();
    }
}
