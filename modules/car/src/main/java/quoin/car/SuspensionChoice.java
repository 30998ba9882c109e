package quoin.car;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import quoin.quantities.NotTakenException;
import quoin.quantities.Texts;

/**
 * A suspension type by its stable id, with its parameters as text. The type's module describes and reads them; where it
 * is not installed they are kept as they are.
 *
 * @param typeId     stable id, such as "measured"
 * @param parameters parameter key to what was typed, in base units unless the text carries its own
 */
public record SuspensionChoice(String typeId, Map<String, String> parameters) {
    private static final Texts TEXTS = Texts.of(SuspensionChoice.class);

    public SuspensionChoice {
        if (typeId.isBlank()) {
            throw new NotTakenException(TEXTS.phrase("suspensionNeedsAType"));
        }
        parameters = Collections.unmodifiableMap(new TreeMap<>(parameters));
    }
}
