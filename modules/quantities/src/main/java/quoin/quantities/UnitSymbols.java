package quoin.quantities;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** Which units a typed symbol may mean. The dimension wanted decides: ' is feet for a length, minutes for an angle. */
final class UnitSymbols {
    private static final Texts TEXTS = Texts.of(UnitSymbols.class);
    private static final Map<Dimension, Map<String, List<Unit>>> BY_DIMENSION = index();

    private UnitSymbols() {
    }

    private static Map<Dimension, Map<String, List<Unit>>> index() {
        Map<Dimension, Map<String, List<Unit>>> index = new EnumMap<>(Dimension.class);
        for (Dimension dimension : Dimension.values()) {
            index.put(dimension, new HashMap<>());
        }
        for (Unit unit : Unit.values()) {
            Stream.concat(Stream.of(unit.symbol()), unit.aliases().stream()).map(UnitSymbols::key).distinct()
                    .forEach(key -> index.get(unit.dimension()).computeIfAbsent(key, k -> new ArrayList<>()).add(unit));
        }
        return index;
    }

    /** Case, spaces, points, brackets, hyphens and product dots do not distinguish units. */
    static String key(String symbol) {
        StringBuilder key = new StringBuilder(symbol.length());
        for (char c : symbol.toLowerCase(Locale.ROOT).replace("''", "\"").toCharArray()) {
            if (" \u00A0.()-·⋅*".indexOf(c) < 0) {
                key.append(c);
            }
        }
        return key.toString();
    }

    /** Units of the dimension that the symbol may mean; empty if none. */
    static List<Unit> find(String symbol, Dimension dimension) {
        return BY_DIMENSION.get(dimension).getOrDefault(key(symbol), List.of());
    }

    /** Some dimension that knows the symbol, for the message; null if none. */
    static Dimension dimensionOf(String symbol) {
        for (Dimension dimension : Dimension.values()) {
            if (!find(symbol, dimension).isEmpty()) {
                return dimension;
            }
        }
        return null;
    }

    /** "type mm, cm, m, in or ft". */
    static Phrase choice(Dimension dimension) {
        return dimension == Dimension.NUMBER ? TEXTS.phrase("remedy.withoutUnit") : typeOneOf(
                Stream.of(Unit.values()).filter(unit -> unit.dimension() == dimension).toList());
    }

    /** "type mm or in". */
    static Phrase typeOneOf(List<Unit> units) {
        List<String> all = units.stream().map(Unit::symbol).toList();
        int last = all.size() - 1;
        return TEXTS.phrase("remedy.type", last == 0 ? all.get(0)
                : TEXTS.phrase("list.or", String.join(", ", all.subList(0, last)), all.get(last)));
    }
}
