package quoin.logbook.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import java.util.function.Function;
import quoin.quantities.Phrase;
import quoin.quantities.Texts;

/**
 * The fields of one JSON object, read strictly: a known field of the wrong type is refused by its path, such as
 * "corners.LF.springRateNPerMm". An absent field is unknown; a field nobody asks for is let through.
 */
public final class Fields {
    private static final Texts TEXTS = Texts.of(Fields.class);

    private final ObjectNode node;
    private final String path;

    public Fields(ObjectNode node) {
        this(node, "");
    }

    private Fields(ObjectNode node, String path) {
        this.node = node;
        this.path = path;
    }

    /** The object as it was read. */
    public ObjectNode node() {
        return node;
    }

    public boolean has(String name) {
        return node.hasNonNull(name);
    }

    public String text(String name) {
        return optionalText(name).orElseThrow(() -> missing(name));
    }

    public Optional<String> optionalText(String name) {
        if (!has(name)) {
            return Optional.empty();
        }
        JsonNode value = node.get(name);
        if (!value.isTextual()) {
            throw wrong(name, TEXTS.phrase("must.text"));
        }
        return Optional.of(value.textValue());
    }

    /** A text turned into a value; what the reader refuses is reported under the field's path. */
    public <T> T parsed(String name, Function<String, T> reader) {
        return parse(name, text(name), reader);
    }

    private <T> T parse(String name, String text, Function<String, T> reader) {
        try {
            return reader.apply(text);
        } catch (RuntimeException e) {
            throw new FormatException(TEXTS.phrase("field", path + name, e), e);
        }
    }

    public double number(String name) {
        return optionalNumber(name).orElseThrow(() -> missing(name));
    }

    public OptionalDouble optionalNumber(String name) {
        if (!has(name)) {
            return OptionalDouble.empty();
        }
        JsonNode value = node.get(name);
        if (!value.isNumber() || !Double.isFinite(value.doubleValue())) {
            throw wrong(name, TEXTS.phrase("must.number"));
        }
        return OptionalDouble.of(value.doubleValue());
    }

    /** A whole number from {@code min} to {@code max}. */
    public long whole(String name, long min, long max) {
        if (!has(name)) {
            throw missing(name);
        }
        JsonNode value = node.get(name);
        if (!value.isIntegralNumber() || !value.canConvertToLong() || value.longValue() < min || value.longValue() > max) {
            throw wrong(name, TEXTS.phrase("must.whole", min, max));
        }
        return value.longValue();
    }

    public boolean flag(String name) {
        if (!has(name)) {
            throw missing(name);
        }
        if (!node.get(name).isBoolean()) {
            throw wrong(name, TEXTS.phrase("must.flag"));
        }
        return node.get(name).booleanValue();
    }

    public Fields object(String name) {
        return optionalObject(name).orElseThrow(() -> missing(name));
    }

    public Optional<Fields> optionalObject(String name) {
        if (!has(name)) {
            return Optional.empty();
        }
        if (node.get(name) instanceof ObjectNode object) {
            return Optional.of(new Fields(object, path + name + "."));
        }
        throw wrong(name, TEXTS.phrase("must.object"));
    }

    /** A list of objects; empty where the field is absent. */
    public <T> List<T> list(String name, Function<Fields, T> reader) {
        List<T> read = new ArrayList<>();
        for (JsonNode element : elements(name)) {
            if (!(element instanceof ObjectNode object)) {
                throw wrong(name, TEXTS.phrase("must.objects"));
            }
            read.add(reader.apply(new Fields(object, path + name + "[" + read.size() + "].")));
        }
        return read;
    }

    /** A list of texts; empty where the field is absent. */
    public <T> List<T> texts(String name, Function<String, T> reader) {
        List<T> read = new ArrayList<>();
        for (JsonNode element : elements(name)) {
            if (!element.isTextual()) {
                throw wrong(name, TEXTS.phrase("must.texts"));
            }
            read.add(parse(name, element.textValue(), reader));
        }
        return read;
    }

    private Iterable<JsonNode> elements(String name) {
        if (!has(name)) {
            return List.of();
        }
        if (!node.get(name).isArray()) {
            throw wrong(name, TEXTS.phrase("must.list"));
        }
        return node.get(name);
    }

    /** Hands every key of an object field to the consumer, with the object's own fields; none where it is absent. */
    public void forEach(String name, BiConsumer<String, Fields> consumer) {
        optionalObject(name).ifPresent(object -> object.node.properties().forEach(f -> consumer.accept(f.getKey(), object)));
    }

    private FormatException missing(String name) {
        return new FormatException(TEXTS.phrase("field.missing", path + name));
    }

    private FormatException wrong(String name, Phrase wanted) {
        return new FormatException(TEXTS.phrase("field.must", path + name, wanted));
    }
}
