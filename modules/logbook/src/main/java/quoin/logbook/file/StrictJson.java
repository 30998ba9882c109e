package quoin.logbook.file;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import quoin.quantities.Texts;

/**
 * JSON with bounds: no repeated keys, no NaN, nothing after the object, and limits on depth and size, so that a file from
 * somewhere else can do no harm. Trees are read and written field by field; no class is ever named by a file.
 */
public final class StrictJson {
    private static final Texts TEXTS = Texts.of(StrictJson.class);

    /** Longest text that is read as one object, bytes. */
    public static final int MAX_BYTES = 1 << 20;

    private static final JsonMapper MAPPER = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(24).maxNumberLength(64).maxNameLength(500)
                            .maxStringLength(MAX_BYTES).maxDocumentLength(MAX_BYTES).build())
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .build())
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();
    private static final ObjectReader READER = MAPPER.readerFor(JsonNode.class);
    private static final ObjectWriter WRITER = MAPPER.writer();

    private StrictJson() {
    }

    public static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    /**
     * Reads one object.
     *
     * @throws FormatException where the text is no JSON object within the bounds
     */
    public static ObjectNode read(byte[] utf8) {
        if (utf8.length > MAX_BYTES) {
            throw new FormatException(TEXTS.phrase("longerThanBytes", MAX_BYTES));
        }
        try {
            JsonNode node = READER.readTree(utf8);
            if (node instanceof ObjectNode object) {
                return object;
            }
        } catch (JsonProcessingException e) {
            throw new FormatException(TEXTS.phrase("notReadableAtCharacter", column(e), e.getOriginalMessage()), e);
        } catch (IOException e) {
            throw new FormatException(TEXTS.phrase("notReadableAsText"), e);
        }
        throw new FormatException(TEXTS.phrase("notAnObjectIn"));
    }

    private static int column(JsonProcessingException e) {
        return e.getLocation() == null ? 1 : Math.max(1, e.getLocation().getColumnNr());
    }

    /** One line without its end, UTF-8. */
    public static byte[] line(ObjectNode object) {
        return write(WRITER, object);
    }

    /** Several lines, for a file that people open in an editor, UTF-8. */
    public static byte[] pretty(ObjectNode object) {
        byte[] text = write(WRITER.withDefaultPrettyPrinter(), object);
        return (new String(text, StandardCharsets.UTF_8).replace("\r\n", "\n") + "\n").getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] write(ObjectWriter writer, ObjectNode object) {
        try {
            return writer.writeValueAsBytes(object);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree of plain values can always be written", e);
        }
    }
}
