package quoin.setupsheet.content;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import quoin.car.Corner;

/**
 * Everything on a sheet, in words and in the order it is read.
 *
 * @param car      name of the car
 * @param head     lines under the name: the day, when, how far
 * @param warning  what must be seen before any figure, such as a rehearsal; may be empty
 * @param plan     short texts inside the drawing of the car
 * @param corners  figures of each corner
 * @param whole    figures of the whole car
 * @param adjusters position of every adjuster
 * @param sections what follows, each under a heading
 * @param blank    true where the figures are to be filled in by hand
 */
public record SheetContent(String car, List<String> head, String warning, List<String> plan, Map<Corner, List<Figure>> corners,
        List<Figure> whole, List<Position> adjusters, List<Section> sections, boolean blank) {

    /**
     * One figure.
     *
     * @param name        what it is
     * @param value       with its unit; for a blank sheet the unit alone
     * @param uncertainty "± 0.6", expanded; may be empty
     * @param target      "158.0 ± 2.0"; may be empty
     * @param word        how it stands to the target, or why it no longer counts; may be empty
     * @param isRead      false where the value only says that there is none
     */
    public record Figure(String name, String value, String uncertainty, String target, String word, boolean isRead) {
    }

    /**
     * Where an adjuster stands.
     *
     * @param corner at which corner
     * @param name   "LF perch"
     * @param length from where to where, with unit
     * @param turned what was turned today
     * @param isMoved true where something was
     */
    public record Position(Corner corner, String name, String length, String turned, boolean isMoved) {
    }

    /**
     * A part of the sheet.
     *
     * @param title   heading
     * @param lines   each wraps by itself
     * @param columns in how many columns they stand
     */
    public record Section(String title, List<Line> lines, int columns) {
        public Section {
            lines = List.copyOf(lines);
        }
    }

    /**
     * A line of a section.
     *
     * @param label what stands before it in bold; may be empty
     * @param words the line
     */
    public record Line(String label, String words) {
    }

    public SheetContent {
        Objects.requireNonNull(car, "car");
        head = List.copyOf(head);
        Objects.requireNonNull(warning, "warning");
        plan = List.copyOf(plan);
        corners = new EnumMap<>(corners);
        whole = List.copyOf(whole);
        adjusters = List.copyOf(adjusters);
        sections = List.copyOf(sections);
    }
}
