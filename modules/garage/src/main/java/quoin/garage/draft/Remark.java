package quoin.garage.draft;

import java.util.Objects;

/**
 * What is wrong with a field, or doubtful about it.
 *
 * @param path   the field
 * @param level  whether the car can be saved all the same
 * @param field  the field in words
 * @param words  what is wrong
 * @param remedy what to type
 */
public record Remark(String path, Level level, String field, String words, String remedy) {

    /** A problem keeps the car from being saved; a warning asks for a second look. */
    public enum Level { PROBLEM, WARNING }

    public Remark {
        Objects.requireNonNull(path, "path");
        Objects.requireNonNull(level, "level");
        Objects.requireNonNull(field, "field");
        Objects.requireNonNull(words, "words");
        Objects.requireNonNull(remedy, "remedy");
    }

    /** "LF spring rate: there is no figure; type ...". */
    public String sentence() {
        return field + ": " + words + "; " + remedy + ".";
    }
}
