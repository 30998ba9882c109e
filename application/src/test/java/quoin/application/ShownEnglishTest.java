package quoin.application;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Words that somebody reads stand in a bundle, never in the code: a literal of two words or more has its reason here. */
class ShownEnglishTest {

    private static final Pattern TWO_WORDS = Pattern.compile("\\p{Alpha}{2,} \\p{Lower}{2,}");
    private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\\\n]|\\\\.)*)\"");
    private static final Pattern COMMENT = Pattern.compile("(?s)/\\*.*?\\*/|(?m)^\\s*//[^\n]*$");

    /** Faults of the program, told to whoever mends it; names of threads; the log. */
    private static final Pattern FAULT = Pattern.compile("(?:new (?:IllegalArgument|IllegalState|NoSuchElement|IndexOutOfBounds|NullPointer"
            + "|Cancellation|Arithmetic)Exception|new AssertionError|requireNonNull|Logger\\.getLogger|\\.log|new Thread)\\(");
    /** "quoin plans": a thread of ours. */
    private static final Pattern THREAD = Pattern.compile("quoin [a-z -]+");
    private static final Pattern ANNOTATION = Pattern.compile("@\\w+\\(");

    private static final String STORED = "stands in files the same in every language";
    private static final String NAME = "names a thread, a node or a part of the program";
    private static final String TYPED = "is typed by people";
    private static final String DEMO = "is a name in the practice car, as its owner would have given it";

    /** Where literals may have words, by the start of the file's path in its module. */
    private static final Map<String, String> ALLOWED = Map.ofEntries(
            Map.entry("help/quoin/help/DrawingKit", "a drawing lacks a part: a fault of the program"),
            Map.entry("setup-sheet/quoin/setupsheet/page/Face", "a jar lacks its typeface: a fault of the program"),
            Map.entry("command-line/", "answers do not depend on the language"),
            Map.entry("rehearsal/quoin/rehearsal/Ouzel23", DEMO),
            Map.entry("adjustment/quoin/adjustment/StepAdjuster", "toString, for whoever mends the program"),
            Map.entry("quantities/quoin/quantities/Unit", TYPED),
            Map.entry("car/quoin/car/Assumptions", STORED),
            Map.entry("garage/quoin/garage/draft/CornerReader", STORED),
            Map.entry("garage/quoin/garage/draft/CarDraft", STORED),
            Map.entry("logbook/quoin/logbook/DayHeader", STORED),
            Map.entry("logbook/quoin/logbook/file/LineFile", "is caught and said as not found"),
            Map.entry("workflow/quoin/workflow/ScaleCorrection", STORED),
            Map.entry("wheel-angles/quoin/wheelangles/measure/DraftFile", STORED),
            Map.entry("mechanics/quoin/mechanics/MassMoves", "names a field, like the names of fields in requests"),
            Map.entry("preparation/quoin/preparation/pads/PadsPage", "is as long as a name can be, and never shown"),
            Map.entry("workbench/quoin/workbench/TypedSet", "is caught and said from its two numbers"),
            Map.entry("garage/quoin/garage/GarageWindow", NAME), Map.entry("garage/quoin/garage/LibraryDialog", NAME),
            Map.entry("setup-sheet/quoin/setupsheet/SheetDialog", NAME), Map.entry("workbench/quoin/workbench/DayWindow", NAME));

    @Test
    void literalsHaveNoWords() throws IOException {
        List<String> found = new ArrayList<>();
        TreeSet<String> needless = new TreeSet<>(ALLOWED.keySet());
        int files = 0;
        for (String module : Tree.moduleFolders()) {
            Path sources = Tree.TOP.resolve("modules").resolve(module).resolve("src/main/java");
            if (!Files.isDirectory(sources)) {
                continue;
            }
            try (Stream<Path> all = Files.walk(sources)) {
                for (Path file : all.filter(f -> f.toString().endsWith(".java")).toList()) {
                    files++;
                    String name = module + "/" + sources.relativize(file).toString().replace('\\', '/');
                    List<String> words = wordy(Files.readString(file));
                    boolean allowed = !words.isEmpty() && ALLOWED.keySet().stream().anyMatch(name::startsWith);
                    needless.removeIf(start -> !words.isEmpty() && name.startsWith(start));
                    if (!allowed) {
                        words.forEach(w -> found.add(name + ": " + w));
                    }
                }
            }
        }
        assertTrue(files > 500, "sources seen: " + files);
        assertEquals(List.of(), found);
        assertEquals(List.of(), List.copyOf(needless), "no longer needed here");
    }

    @Test
    void wordsAreSeen() {
        assertEquals(List.of("the car does not"), wordy("""
                /** "not in a comment" */
                @Messages({"a.key=not in an annotation", "b=it's"})
                class A {
                    // "nor in this one"
                    String a = "the car does not" + 'x' + '"' + "x.y" + "no; such";
                    void b() { throw new IllegalStateException("told to programmers" + c("as this")); }
                    char quote = '\\'';
                }
                """));
    }

    /** Literals with two words, outside comments, annotations and faults of the program. */
    private static List<String> wordy(String source) {
        String code = without(ANNOTATION, without(FAULT, COMMENT.matcher(source.replace("'\"'", "' '")).replaceAll(" ")));
        return LITERAL.matcher(code).results().map(r -> r.group(1))
                .filter(text -> TWO_WORDS.matcher(text).find() && !THREAD.matcher(text).matches()).toList();
    }

    /** The code without what stands in the brackets of these calls. */
    private static String without(Pattern calls, String code) {
        StringBuilder kept = new StringBuilder(code);
        Matcher found = calls.matcher(kept);
        int from = 0;
        while (found.find(from)) {
            int end = closing(kept, found.end() - 1);
            kept.delete(found.start(), end + 1);
            from = found.start();
            found.reset();
        }
        return kept.toString();
    }

    private static int closing(CharSequence code, int open) {
        int depth = 0;
        boolean inText = false;
        for (int i = open; i < code.length(); i++) {
            char c = code.charAt(i);
            if (c == '\\' && inText) {
                i++;
            } else if (c == '"') {
                inText = !inText;
            } else if (!inText && c == '(') {
                depth++;
            } else if (!inText && c == ')' && --depth == 0) {
                return i;
            }
        }
        return code.length() - 1;
    }
}
