package quoin.application;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * What files and people say stays text: nothing lets a file choose a class, nothing reaches for the network, and no component
 * takes a text for markup. Looks at the sources of every module.
 */
class SafeSourceTest {

    /** What must not stand in a source, and why; the file named may have it. */
    private record Ban(Pattern pattern, String why, String except) {
    }

    private static final List<Ban> BANS = List.of(
            ban("\\b(ObjectInputStream|XMLDecoder|readUnshared)\\b", "a file would choose a class", ""),
            ban("\\b(activateDefaultTyping|enableDefaultTyping|DefaultTyping|JsonTypeInfo|readObject)\\b", "a file would choose a class", ""),
            ban("\\bClass\\.forName\\b|\\bURLClassLoader\\b|\\bScriptEngine", "a text would become code", ""),
            ban("\\b(openConnection|openStream|HttpClient|DatagramSocket)\\b|\\bnew (Server)?Socket\\(|java\\.net\\.http", "network", ""),
            ban("newDocumentBuilder\\(\\)\\s*\\.parse|\\bSAXParser|\\bXMLInputFactory|\\bXMLReader\\b", "XML could name other files", ""),
            ban("\\bDefaultListCellRenderer\\b", "use PlainListRenderer", "PlainListRenderer.java"),
            ban("\\bDefaultTableCellRenderer\\b", "use PlainTableRenderer", "PlainTableRenderer.java"),
            ban("\"<html", "use InertText.wrapping", "InertText.java"),
            ban("new NotifyDescriptor\\.\\w+\\((?!\\s*(Bundle\\.\\w+\\(\\)|InertText\\.plain\\())", "a message is cut into lines: InertText.plain", ""),
            ban("setToolTipText\\((?!null|Bundle\\.\\w+\\(\\)|InertText\\.plain\\(|remark\\.)", "a tip is made elsewhere: InertText.plain", ""),
            ban("setStatusText\\((?!InertText\\.plain\\()", "the status line is made elsewhere: InertText.plain", ""),
            ban("new J(Label|Button|CheckBox|RadioButton|ToggleButton|MenuItem)\\((?!\\)|Bundle\\.|\" ?\"|[^()]*[iI]con\\(|[^()]*\\bMark\\."
                    + "|InertText\\.wrapping|[^()\"]*\\? Mark\\.)", "a text that may be anybody's: InertText.in, then setText", "InertText.java"));

    private static Ban ban(String pattern, String why, String except) {
        return new Ban(Pattern.compile(pattern), why, except);
    }

    private static List<Path> sources() {
        return Tree.files().stream().filter(f -> f.toString().endsWith(".java") && f.toString().contains("/src/main/")).toList();
    }

    @Test
    void nothingTakesATextForMoreThanText() {
        assertTrue(sources().size() > 200, "too few sources seen: " + sources().size());
        assertEquals(List.of(), sources().stream().flatMap(file -> BANS.stream()
                .filter(ban -> !file.getFileName().toString().equals(ban.except()))
                .flatMap(ban -> ban.pattern().matcher(Tree.text(file)).results()
                        .map(found -> file.getFileName() + " has " + found.group() + ": " + ban.why()))).toList());
    }

    @Test
    void everyTableDrawsPlainText() {
        assertEquals(List.of(), sources().stream().filter(file -> Pattern.compile("new JTable\\(|extends JTable").matcher(Tree.text(file)).find())
                .filter(file -> !Tree.text(file).contains("PlainTableRenderer.in(")).map(file -> file.getFileName()
                        + " has a table without PlainTableRenderer.in").toList());
    }

    /** What a list or a choice of anything but fixed words holds may be anybody's text. */
    @Test
    void everyListAndChoiceDrawsPlainText() {
        Pattern made = Pattern.compile("new J(?:ComboBox|List)<(?![^;]*(?:Bundle\\.|\\.values\\(\\)|Unit::symbol|ScaleTest\\.Pair|UnitsForm::))[^;]*;");
        Pattern drawn = Pattern.compile("\\.set(?:Cell)?Renderer\\(");
        List<Path> files = sources().stream().filter(file -> made.matcher(Tree.text(file)).find()).toList();
        assertTrue(files.size() > 10, "too few seen: " + files);
        assertEquals(List.of(), files.stream().filter(file -> drawn.matcher(Tree.text(file)).results().count()
                < made.matcher(Tree.text(file)).results().count()).map(file -> file.getFileName()
                        + " has a list or a choice without a renderer of ours: PlainListRenderer").toList());
    }

    /** The bans find what they are there to find. */
    @Test
    void bansFindWhatTheyAreFor() {
        Map<String, Boolean> told = Map.of("new NotifyDescriptor.Message(words, type)", true, "new NotifyDescriptor.Message(Bundle.none(), 1)", false,
                "new NotifyDescriptor.Message(Bundle.some(name), 1)", true, "new NotifyDescriptor.Message(InertText.plain(words), 1)", false,
                "tip.setToolTipText(words)", true, "status.setStatusText(words)", true);
        told.forEach((line, found) -> assertEquals(found, BANS.stream().anyMatch(ban -> ban.pattern().matcher(line).find()), line));
        Map<String, Boolean> lines = Map.of("new JLabel(car.name())", true, "new JLabel(Bundle.title())", false, "new JLabel()", false,
                "new JRadioButton(way.words(), true)", true, "new JLabel(Mark.AGAIN.icon(1.2))", false, "new JLabel(shape.icon())", false,
                "new ObjectInputStream(in)", true, "mapper.activateDefaultTyping(any)", true, "url.openStream()", true);
        lines.forEach((line, found) -> assertEquals(found, BANS.stream().anyMatch(ban -> ban.pattern().matcher(line).find()), line));
    }
}
