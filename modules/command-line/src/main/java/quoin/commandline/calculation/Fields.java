package quoin.commandline.calculation;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import quoin.car.PerCorner;

/**
 * Strict reading of one JSON object: every field must be there, be of the right kind and finite, and be known. Paths
 * join names by dots and number list entries from 0: {@code corners.LF.y_mm}, {@code errorBefore[2]}.
 */
public final class Fields {
    private final JsonNode node;
    private final String path;
    private final Set<String> known = new HashSet<>();
    private final List<Fields> children = new ArrayList<>();

    /** The top of an input; its fields have no prefix. */
    public Fields(JsonNode node) {
        this(node, "", "input");
    }

    private Fields(JsonNode node, String path, String self) {
        if (node == null || !node.isObject()) {
            throw new RefusedException(self, node == null ? "is missing" : "must be an object");
        }
        this.node = node;
        this.path = path;
    }

    /** Path of a field of this object. */
    public String path(String name) {
        return path.isEmpty() ? name : path + "." + name;
    }

    /** Names of all fields present, in their order; for objects whose names the user chooses. */
    public List<String> names() {
        List<String> names = new ArrayList<>();
        node.fieldNames().forEachRemaining(names::add);
        return names;
    }

    public boolean has(String name) {
        return node.has(name);
    }

    /** Marks a field as known without reading it. */
    public void allow(String name) {
        known.add(name);
    }

    public Fields object(String name) {
        return child(new Fields(get(name), path(name), path(name)));
    }

    /** An object whose name is left out of the paths of its fields. */
    public Fields unnamed(String name) {
        return child(new Fields(get(name), path, path(name)));
    }

    private Fields child(Fields child) {
        children.add(child);
        return child;
    }

    public double number(String name) {
        return number(get(name), path(name));
    }

    /** A number, or null for rigid, infinite or not given. */
    public OptionalDouble numberOrNull(String name) {
        JsonNode value = get(name);
        return value != null && value.isNull() ? OptionalDouble.empty() : OptionalDouble.of(number(value, path(name)));
    }

    public int wholeNumber(String name) {
        double value = number(name);
        if (value != Math.rint(value) || Math.abs(value) > Integer.MAX_VALUE) {
            throw new RefusedException(path(name), "must be a whole number, is " + value);
        }
        return (int) value;
    }

    public double notNegative(String name) {
        double value = number(name);
        if (value < 0) {
            throw new RefusedException(path(name), "must not be negative, is " + value);
        }
        return value;
    }

    public double positive(String name) {
        double value = number(name);
        if (!(value > 0)) {
            throw new RefusedException(path(name), "must be greater than zero, is " + value);
        }
        return value;
    }

    /** A number for each of LF RF LR RR. */
    public PerCorner<Double> perCorner(String name) {
        Fields corners = object(name);
        return PerCorner.of(corner -> corners.number(corner.name()));
    }

    /** A list of exactly this many numbers. */
    public double[] numbers(String name, int count) {
        return numbers(get(name), path(name), count);
    }

    /** A list of rows, each of exactly so many numbers. */
    public double[][] matrix(String name, int rows, int columns) {
        JsonNode list = list(get(name), path(name));
        requireCount(list, path(name), rows);
        double[][] matrix = new double[rows][];
        for (int i = 0; i < rows; i++) {
            matrix[i] = numbers(list.get(i), path(name) + "[" + i + "]", columns);
        }
        return matrix;
    }

    /** A word or words. */
    public String text(String name) {
        JsonNode value = get(name);
        if (value == null) {
            throw new RefusedException(path(name), "is missing");
        }
        if (!value.isTextual() || value.asText().isBlank()) {
            throw new RefusedException(path(name), "must be a word");
        }
        return value.asText();
    }

    /** A side, left or right. @return true for the left */
    public boolean isLeft(String name) {
        return switch (text(name)) {
            case "left" -> true;
            case "right" -> false;
            default -> throw new RefusedException(path(name), "must be left or right");
        };
    }

    /** A list of objects, at least one. */
    public List<Fields> objects(String name) {
        JsonNode list = list(get(name), path(name));
        List<Fields> objects = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            String entry = path(name) + "[" + i + "]";
            objects.add(child(new Fields(list.get(i), entry, entry)));
        }
        if (objects.isEmpty()) {
            throw new RefusedException(path(name), "must not be empty");
        }
        return objects;
    }

    /** A list of names without doubles, at least one. */
    public List<String> texts(String name) {
        JsonNode list = list(get(name), path(name));
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            String entry = path(name) + "[" + i + "]";
            if (!list.get(i).isTextual() || list.get(i).asText().isBlank()) {
                throw new RefusedException(entry, "must be a name");
            }
            if (texts.contains(list.get(i).asText())) {
                throw new RefusedException(entry, "is there twice: " + list.get(i).asText());
            }
            texts.add(list.get(i).asText());
        }
        if (texts.isEmpty()) {
            throw new RefusedException(path(name), "must not be empty");
        }
        return texts;
    }

    /** Refuses the first field, here or further down, that nobody has asked for. */
    public void refuseUnknown() {
        for (String name : names()) {
            if (!known.contains(name)) {
                throw new RefusedException(path(name), "is not a field of this calculation");
            }
        }
        children.forEach(Fields::refuseUnknown);
    }

    private JsonNode get(String name) {
        known.add(name);
        return node.get(name);
    }

    private static double[] numbers(JsonNode value, String path, int count) {
        JsonNode list = list(value, path);
        requireCount(list, path, count);
        double[] numbers = new double[count];
        for (int i = 0; i < count; i++) {
            numbers[i] = number(list.get(i), path + "[" + i + "]");
        }
        return numbers;
    }

    private static JsonNode list(JsonNode value, String path) {
        if (value == null) {
            throw new RefusedException(path, "is missing");
        }
        if (!value.isArray()) {
            throw new RefusedException(path, "must be a list");
        }
        return value;
    }

    private static void requireCount(JsonNode list, String path, int count) {
        if (list.size() != count) {
            throw new RefusedException(path, "must have " + count + " entries, has " + list.size());
        }
    }

    private static double number(JsonNode value, String path) {
        if (value == null) {
            throw new RefusedException(path, "is missing");
        }
        if (!value.isNumber()) {
            throw new RefusedException(path, "must be a number");
        }
        double number = value.asDouble();
        if (!Double.isFinite(number)) {
            throw new RefusedException(path, "must be a finite number");
        }
        return number;
    }
}
