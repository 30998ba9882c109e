package quoin.garage.draft;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * One page of the form.
 *
 * @param key    stable name, such as "springs"
 * @param title  heading
 * @param intro  what the page is for, in a sentence or two
 * @param tables its fields
 * @param extras what can be done beside typing
 */
public record Section(String key, String title, String intro, List<FieldTable> tables, List<Extra> extras) {

    /** What a page offers beside its fields. */
    public enum Extra { COPY_LEFT_TO_RIGHT, ADD_HEIGHT_POINT, ADD_MASS }

    public Section {
        Objects.requireNonNull(key, "key");
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(intro, "intro");
        tables = List.copyOf(tables);
        extras = List.copyOf(extras);
    }

    /** Every field of the page in typing order. */
    public Stream<Field> fields() {
        return tables.stream().flatMap(FieldTable::fields);
    }
}
