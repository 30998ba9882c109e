package quoin.logbook.file;

import java.util.Map;
import quoin.quantities.Texts;

/** The texts that files store for the constants of an enum; they stay when a constant is renamed. */
public final class Names<E extends Enum<E>> {
    private static final Texts TEXTS = Texts.of(Names.class);

    private final Map<String, E> byText;

    private Names(Map<String, E> byText) {
        this.byText = Map.copyOf(byText);
    }

    public static <E extends Enum<E>> Names<E> of(Map<String, E> byText) {
        return new Names<>(byText);
    }

    public E read(String text) {
        E found = byText.get(text);
        if (found == null) {
            throw new FormatException(TEXTS.phrase("noneOf", text, byText.keySet().stream().sorted().toList()));
        }
        return found;
    }

    public String text(E constant) {
        return byText.entrySet().stream().filter(e -> e.getValue() == constant).map(Map.Entry::getKey).findFirst()
                .orElseThrow(() -> new IllegalStateException(constant + " has no text form; give it one"));
    }
}
