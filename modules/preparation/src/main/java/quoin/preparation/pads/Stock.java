package quoin.preparation.pads;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.openide.util.NbBundle.Messages;
import quoin.car.Corner;
import quoin.car.PerCorner;
import quoin.car.Setting;
import quoin.quantities.Dimension;
import quoin.quantities.Quantities;
import quoin.quantities.QuantityFormat;
import quoin.quantities.UnitPreferences;

/** Shims of a garage as a line of text, "0.5 x 4; 1 x 6", and what of them is free. */
@Messages({"# {0} - typed", "stock.problem=Shims: {0} is not a thickness and a count. Type for example 0.5 x 4; 1 x 6."})
final class Stock {

    private static final Pattern ITEM = Pattern.compile("(.+?)\\s*[x\u00d7*]\\s*(\\d{1,3})", Pattern.CASE_INSENSITIVE);
    private static final double SAME_MM = 1e-6;

    private Stock() {
    }

    /**
     * Reads the line; items are parted by semicolons, or by commas with a space after them.
     *
     * @throws IllegalArgumentException in words for the racer
     */
    static List<Setting.Shim> read(String text, UnitPreferences units) {
        return Stream.of(text.split(";|,\\s")).map(String::strip).filter(s -> !s.isEmpty()).map(s -> item(s, units)).toList();
    }

    private static Setting.Shim item(String text, UnitPreferences units) {
        Matcher matcher = ITEM.matcher(text);
        if (matcher.matches()) {
            try {
                return new Setting.Shim(Quantities.parse(matcher.group(1), Dimension.LENGTH, units), Integer.parseInt(matcher.group(2)));
            } catch (IllegalArgumentException e) {
                throw new IllegalArgumentException(Bundle.stock_problem(text), e);
            }
        }
        throw new IllegalArgumentException(Bundle.stock_problem(text));
    }

    static String text(List<Setting.Shim> stock, UnitPreferences units) {
        return stock.stream().map(s -> thickness(s.thicknessMm(), units) + " x " + s.count()).collect(Collectors.joining("; "));
    }

    /** "2 + 0.5 mm"; a dash where nothing lies there. */
    static String stack(List<Double> shimsMm, UnitPreferences units) {
        return shimsMm.isEmpty() ? "\u2013" : shimsMm.stream().map(t -> thickness(t, units)).collect(Collectors.joining(" + ")) + " "
                + units.unit(Dimension.LENGTH).symbol();
    }

    private static String thickness(double mm, UnitPreferences units) {
        String text = QuantityFormat.of(units.withDecimals(Dimension.LENGTH, 3)).number(mm, Dimension.LENGTH);
        return text.replaceAll("([.,]\\d*?)0+$", "$1").replaceAll("[.,]$", "");
    }

    /** What of the stock does not lie under a pad. */
    static List<Setting.Shim> free(List<Setting.Shim> stock, PerCorner<List<Double>> underMm) {
        List<Setting.Shim> free = new ArrayList<>();
        for (Setting.Shim shim : stock) {
            int used = 0;
            for (Corner corner : Corner.values()) {
                used += (int) underMm.get(corner).stream().filter(t -> Math.abs(t - shim.thicknessMm()) < SAME_MM).count();
            }
            free.add(new Setting.Shim(shim.thicknessMm(), Math.max(0, shim.count() - used)));
        }
        return free;
    }
}
