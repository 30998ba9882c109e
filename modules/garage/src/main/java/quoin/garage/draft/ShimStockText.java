package quoin.garage.draft;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quoin.car.Setting;
import quoin.quantities.Dimension;

/** Shims at hand as a line of text: "0.5 x 4; 1 x 6". */
final class ShimStockText {

    private static final Pattern ITEM = Pattern.compile("(.+?)\\s*[x×*]\\s*(\\d{1,4})", Pattern.CASE_INSENSITIVE);

    private ShimStockText() {
    }

    static String of(List<Setting.Shim> stock, FigureText figures) {
        return stock.stream().map(s -> figures.of(s.thicknessMm(), Dimension.LENGTH) + " x " + s.count())
                .collect(Collectors.joining("; "));
    }

    /**
     * Reads the line; items are parted by semicolons, or by commas with a space after them.
     *
     * @throws IllegalArgumentException in words for the racer
     */
    static List<Setting.Shim> read(String text, FigureText figures) {
        return Stream.of(text.split(";|,\\s")).map(String::strip).filter(s -> !s.isEmpty()).map(s -> item(s, figures)).toList();
    }

    private static Setting.Shim item(String text, FigureText figures) {
        Matcher matcher = ITEM.matcher(text);
        if (!matcher.matches()) {
            throw new IllegalArgumentException(Texts.of("problem.shim", text));
        }
        double thicknessMm = figures.read(matcher.group(1), Dimension.LENGTH);
        if (!(thicknessMm > 0)) {
            throw new IllegalArgumentException(Texts.of("problem.shim", text));
        }
        return new Setting.Shim(thicknessMm, Integer.parseInt(matcher.group(2)));
    }
}
