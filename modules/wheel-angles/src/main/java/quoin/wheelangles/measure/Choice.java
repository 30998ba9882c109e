package quoin.wheelangles.measure;

import java.util.List;

/**
 * Something to choose in a form.
 *
 * @param key     stable; the journal keeps what was chosen under it
 * @param name    before it
 * @param options what there is to choose, the usual one first
 */
public record Choice(String key, String name, List<Option> options) {

    /**
     * @param key   stable
     * @param words as shown
     */
    public record Option(String key, String words) {
    }

    public Choice {
        options = List.copyOf(options);
    }

    static Choice of(String key, String name, Option... options) {
        return new Choice(key, name, List.of(options));
    }

    /** The option with this key, or the usual one. */
    public Option option(String wanted) {
        return options.stream().filter(o -> o.key().equals(wanted)).findFirst().orElse(options.get(0));
    }
}
