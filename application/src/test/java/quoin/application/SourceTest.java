package quoin.application;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreePathScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;

/** Sizes of files and methods, and what must not be left standing in the tree. */
class SourceTest {

    private static final int FILE_LINES = 400;
    private static final int METHOD_LINES = 60;
    private static final Set<String> TEXT = Set.of("java", "xml", "properties", "md", "sh", "conf", "json", "csv",
            "mf", "svg", "wsmode", "wswmgr", "wstcref", "settings", "yml", "txt", "html");
    private static final Set<String> TOP_LEVEL = Set.of("README.md", "DEVELOPERS.md", "pom.xml", "application",
            "modules", "branding", "LICENSE");

    /** The tree stands by itself: no folder of one machine, no unfinished mark, no papers that are not in it. */
    private static final List<Pattern> NOT_HERE = List.of(
            Pattern.compile("(?<![\\w.$}/])/(work|home|root)/[\\w.]"),
            Pattern.compile("\\.\\./[s]hared"),
            Pattern.compile("(?i)[s]eed document"),
            Pattern.compile("\\b([T]ODO|[F]IXME)\\b"),
            Pattern.compile("(?i)\\b[i]ssues? #?\\d"));
    private static final Pattern PAPER = Pattern.compile("(?<![\\w/*.-])[\\w./-]*\\w\\.md\\b");

    @Test
    void filesAreShort() {
        assertEquals(List.of(), javaFiles().stream()
                .filter(file -> Tree.text(file).lines().count() > FILE_LINES)
                .map(file -> name(file) + " has more than " + FILE_LINES + " lines").toList());
    }

    @Test
    void methodsAreShort() throws IOException {
        List<Path> files = javaFiles();
        assertTrue(files.size() > 20, "Too few files seen: " + files.size());
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        List<String> tooLong = new ArrayList<>();
        try (StandardJavaFileManager manager = compiler.getStandardFileManager(null, null, null)) {
            JavacTask task = (JavacTask) compiler.getTask(null, manager, null, List.of("-proc:none"), null,
                    manager.getJavaFileObjectsFromPaths(files));
            SourcePositions positions = Trees.instance(task).getSourcePositions();
            for (CompilationUnitTree unit : task.parse()) {
                new MethodLengths(unit, positions, tooLong).scan(unit, null);
            }
        }
        assertEquals(List.of(), tooLong);
    }

    @Test
    void theTreeStandsByItself() {
        List<Path> texts = Tree.files().stream().filter(SourceTest::isText).toList();
        assertEquals(List.of(), texts.stream().flatMap(file -> Tree.text(file).lines()
                .filter(line -> NOT_HERE.stream().anyMatch(pattern -> pattern.matcher(line).find()))
                .map(line -> name(file) + ": " + line.strip())).toList());
        Set<String> papers = texts.stream().map(file -> file.getFileName().toString()).collect(Collectors.toSet());
        assertEquals(List.of(), texts.stream().flatMap(file -> PAPER.matcher(Tree.text(file)).results()
                .map(found -> Path.of(found.group()).getFileName().toString())
                .filter(paper -> !papers.contains(paper))
                .map(paper -> name(file) + " names " + paper)).toList());
    }

    @Test
    void theTopLevelIsWhatItShouldBe() {
        Set<String> found = Tree.files().stream().map(file -> Tree.TOP.relativize(file).getName(0).toString())
                .filter(step -> !step.startsWith(".")).collect(Collectors.toSet());
        assertEquals(TOP_LEVEL, found);
    }

    @Test
    void continuousIntegrationRunsTheTestCommandOfTheReadme() {
        String command = Tree.text(Tree.TOP.resolve(".ci/run")).lines().map(String::strip)
                .filter(line -> line.startsWith("mvn ")).collect(Collectors.joining("\n"));
        assertTrue(Tree.text(Tree.TOP.resolve("README.md")).lines().map(String::strip)
                .anyMatch(command::equals), "Not in README.md: " + command);
    }

    /** Collects the methods that are too long; an anonymous or local class counts with the method around it. */
    private static final class MethodLengths extends TreePathScanner<Void, Void> {

        private final CompilationUnitTree unit;
        private final SourcePositions positions;
        private final List<String> tooLong;

        MethodLengths(CompilationUnitTree unit, SourcePositions positions, List<String> tooLong) {
            this.unit = unit;
            this.positions = positions;
            this.tooLong = tooLong;
        }

        @Override
        public Void visitMethod(MethodTree method, Void nothing) {
            long first = unit.getLineMap().getLineNumber(positions.getStartPosition(unit, method));
            long last = unit.getLineMap().getLineNumber(positions.getEndPosition(unit, method));
            if (last - first + 1 > METHOD_LINES) {
                ClassTree owner = (ClassTree) getCurrentPath().getParentPath().getLeaf();
                tooLong.add(name(Path.of(unit.getSourceFile().toUri())) + ": " + owner.getSimpleName() + "."
                        + method.getName() + " has " + (last - first + 1) + " lines");
            }
            return super.visitMethod(method, nothing);
        }
    }

    private static List<Path> javaFiles() {
        return Tree.files().stream().filter(file -> file.toString().endsWith(".java")).toList();
    }

    private static boolean isText(Path file) {
        String name = file.getFileName().toString();
        return TEXT.contains(name.substring(name.lastIndexOf('.') + 1)) || Stream.of(file).anyMatch(
                path -> path.startsWith(Tree.TOP.resolve(".ci")));
    }

    private static String name(Path file) {
        return Tree.TOP.relativize(file).toString();
    }
}
