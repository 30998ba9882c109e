package quoin.application;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * What is built today is built tomorrow: every library and every plug-in of the build stands in the poms with one exact version,
 * those that Maven's life cycle brings by itself included; no version may be a range, the latest or somebody else's snapshot.
 */
class PinnedVersionsTest {

    private static final Pattern EXACT = Pattern.compile("[0-9A-Za-z][0-9A-Za-z.+_-]*");
    private static final Pattern MOVING = Pattern.compile("(?i).*SNAPSHOT|LATEST|RELEASE");
    private static final Pattern PROPERTY = Pattern.compile("\\$\\{([^}]+)}");
    private static final String OURS = "quoin";
    private static final String MAVENS = "org.apache.maven.plugins";
    /** Bound by the life cycles of the packagings in use, whether or not a pom names them. */
    private static final List<String> OF_THE_LIFE_CYCLE = List.of("maven-clean-plugin", "maven-resources-plugin", "maven-compiler-plugin",
            "maven-surefire-plugin", "maven-jar-plugin", "maven-install-plugin", "maven-deploy-plugin");

    private static List<Path> poms() {
        return Tree.files().stream().filter(f -> f.getFileName().toString().equals("pom.xml")).toList();
    }

    private static Element pom(String text) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            Document document = factory.newDocumentBuilder().parse(new InputSource(new StringReader(text)));
            return document.getDocumentElement();
        } catch (ParserConfigurationException | SAXException | IOException e) {
            throw new AssertionError(e);
        }
    }

    private static List<Element> all(Element in, String name) {
        NodeList found = in.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }

    private static String child(Element of, String name, String otherwise) {
        for (Node node = of.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node.getNodeName().equals(name)) {
                return node.getTextContent().strip();
            }
        }
        return otherwise;
    }

    /** Properties of the top pom and of this one. */
    private static Map<String, String> properties(Element top, Element pom) {
        Map<String, String> properties = new HashMap<>();
        for (Element of : List.of(top, pom)) {
            for (Element block : all(of, "properties")) {
                for (Node node = block.getFirstChild(); node != null; node = node.getNextSibling()) {
                    properties.put(node.getNodeName(), node.getTextContent().strip());
                }
            }
        }
        properties.put("project.groupId", OURS);
        properties.put("project.version", "ours");
        return properties;
    }

    private static String filled(String text, Map<String, String> properties) {
        return PROPERTY.matcher(text).replaceAll(m -> properties.getOrDefault(m.group(1), "unknown property"));
    }

    /** Plug-ins to which the top pom gives a version for every module. */
    private static Set<String> managed(Element top) {
        Set<String> managed = new HashSet<>();
        for (Element management : all(top, "pluginManagement")) {
            for (Element plugin : all(management, "plugin")) {
                managed.add(child(plugin, "groupId", MAVENS) + ":" + child(plugin, "artifactId", ""));
            }
        }
        return managed;
    }

    private static List<String> loose(String where, Element top, Element pom) {
        Map<String, String> properties = properties(top, pom);
        Set<String> managed = managed(top);
        List<String> loose = new ArrayList<>();
        for (String kind : List.of("dependency", "plugin", "extension")) {
            for (Element used : all(pom, kind)) {
                if (child(used, "artifactId", "").isEmpty()) {
                    continue; // says to a plug-in how a module looks at another
                }
                String group = filled(child(used, "groupId", MAVENS), properties);
                String name = group + ":" + filled(child(used, "artifactId", ""), properties);
                String version = filled(child(used, "version", ""), properties);
                boolean fromAbove = version.isEmpty() && kind.equals("plugin") && managed.contains(name);
                boolean exact = EXACT.matcher(version).matches() && !MOVING.matcher(version).matches();
                if (!group.equals(OURS) && !fromAbove && !exact) {
                    loose.add(where + ": " + name + " has the version '" + version + "'");
                }
            }
        }
        return loose;
    }

    @Test
    void everyVersionIsExact() {
        Element top = pom(Tree.text(Tree.TOP.resolve("pom.xml")));
        assertTrue(poms().size() > 35, "too few poms seen: " + poms().size());
        assertEquals(List.of(), poms().stream().flatMap(f -> loose(Tree.TOP.relativize(f).toString(), top, pom(Tree.text(f))).stream()).toList());
    }

    @Test
    void pluginsThatMavenBringsByItselfHaveAVersionOfOurs() {
        Set<String> managed = managed(pom(Tree.text(Tree.TOP.resolve("pom.xml"))));
        assertEquals(List.of(), OF_THE_LIFE_CYCLE.stream().map(p -> MAVENS + ":" + p).filter(p -> !managed.contains(p)).toList());
    }

    /** The test finds what it is for. */
    @Test
    void looseVersionsAreFound() {
        Element top = pom("<project><build><pluginManagement><plugins><plugin><artifactId>known</artifactId><version>1</version></plugin>"
                + "</plugins></pluginManagement></build></project>");
        String dependency = "<dependency><groupId>g</groupId><artifactId>a</artifactId>%s</dependency>";
        for (String version : List.of("", "<version>[1,2)</version>", "<version>LATEST</version>", "<version>1.0-SNAPSHOT</version>",
                "<version>${nowhere}</version>", "<version>RELEASE</version>", "<version>(,2]</version>")) {
            assertEquals(1, loose("p", top, pom("<project>" + String.format(dependency, version) + "</project>")).size(), version);
        }
        assertEquals(List.of(), loose("p", top, pom("<project><properties><v>1.2.3</v></properties>"
                + String.format(dependency, "<version>${v}</version>") + "<plugin><artifactId>known</artifactId></plugin></project>")));
        assertEquals(1, loose("p", top, pom("<project><plugin><artifactId>other</artifactId></plugin></project>")).size());
    }
}
