package quoin.application;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.net.URL;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import quoin.application.Languages.Bundle;

/** Every text stands in every language, with the same arguments, and can be read as a message. */
class LanguageTest {

    /** Texts that are the same in both languages: names, units, symbols and words both use. */
    private static final Set<String> ALIKE = Set.of("de:Quoin", "de:OK", "de:Name", "de:Name:", "de:Text", "de:Start",
            "de:Garage", "de:&Garage", "de:&Letter", "de:Plan");

    private static final Pattern WORD = Pattern.compile("\\p{L}{3,}");
    private static final Pattern ARGUMENT = Pattern.compile("\\{(\\d+)[^}]*}");

    @Test
    void germanIsThere() {
        assertTrue(Languages.others().contains("de"), "Languages seen: " + Languages.others());
        assertTrue(Languages.bundles().size() > 30, "Too few bundles seen: " + Languages.bundles().size());
        assertEquals(List.of(), Languages.strays());
    }

    @Test
    void noTextIsMissing() {
        assertEquals(List.of(), everyBundle((bundle, language) -> {
            Set<String> translated = bundle.in(language).map(Map::keySet).orElse(Set.of());
            return Stream.concat(
                    bundle.english().keySet().stream().filter(key -> !translated.contains(key)).map(key -> key + " is missing"),
                    translated.stream().filter(key -> !bundle.english().containsKey(key)).map(key -> key + " is not in the English"));
        }));
    }

    @Test
    void argumentsAreTheSame() {
        assertEquals(List.of(), everyText((key, english, text) -> arguments(english).equals(arguments(text)) ? Optional.empty()
                : Optional.of(key + " has the arguments " + arguments(text) + ", the English " + arguments(english))));
    }

    /** In a message with arguments an apostrophe is doubled; in any other it is not. */
    @Test
    void apostrophesArePaired() {
        List<String> wrong = new ArrayList<>(everyText((key, english, text) -> apostropheIn(key, text)));
        Languages.bundles().forEach(bundle -> bundle.english().forEach((key, text) -> apostropheIn(key, text)
                .ifPresent(w -> wrong.add(bundle.name() + " " + w))));
        assertEquals(List.of(), wrong);
    }

    @Test
    void nothingIsLeftInEnglish() {
        assertEquals(List.of(), everyBundle((bundle, language) -> bundle.in(language).orElse(Map.of()).entrySet().stream()
                .filter(text -> text.getValue().equals(bundle.english().get(text.getKey())))
                .filter(text -> WORD.matcher(ARGUMENT.matcher(text.getValue()).replaceAll("")).find())
                .filter(text -> !ALIKE.contains(language + ":" + text.getValue()))
                .map(text -> text.getKey() + " is the English: " + text.getValue())));
    }

    /** In a menu one letter opens one thing. */
    @Test
    void lettersOfAMenuAreUnique() throws IOException, SAXException, ParserConfigurationException {
        Map<String, Map<String, String>> english = Languages.bundles().stream()
                .collect(Collectors.toMap(Bundle::name, Bundle::english));
        Map<String, Set<String>> menus = menus();
        assertTrue(menus.size() >= 4, "Menus seen: " + menus);
        List<String> twice = new ArrayList<>(clashes("English", menus, english));
        for (String language : Languages.others()) {
            Map<String, Map<String, String>> texts = new TreeMap<>(english);
            Languages.bundles().forEach(bundle -> bundle.in(language).ifPresent(t -> texts.put(bundle.name(), t)));
            twice.addAll(clashes(language, menus, texts));
        }
        assertEquals(List.of(), twice);
    }

    private static List<String> clashes(String language, Map<String, Set<String>> menus, Map<String, Map<String, String>> texts) {
        List<String> found = new ArrayList<>();
        menus.forEach((menu, references) -> {
            Map<Character, String> taken = new TreeMap<>();
            for (String reference : references) {
                String[] at = reference.split("#");
                String text = texts.getOrDefault(at[0], Map.of()).getOrDefault(at[1], "");
                int mark = text.indexOf('&');
                if (mark >= 0 && mark + 1 < text.length() && Character.isLetterOrDigit(text.charAt(mark + 1))) {
                    String other = taken.put(Character.toLowerCase(text.charAt(mark + 1)), text);
                    if (other != null) {
                        found.add(language + ", " + menu + ": " + other + " and " + text);
                    }
                }
            }
        });
        return found;
    }

    /** Texts of the actions of each menu, as bundle#key. */
    private static Map<String, Set<String>> menus() throws IOException, SAXException, ParserConfigurationException {
        Map<String, String> names = new TreeMap<>();
        Map<String, Set<String>> shadows = new TreeMap<>();
        for (URL layer : LayerTest.layers(url -> url.contains("/modules/") && url.contains("/target/"))) {
            NodeList files = parsed(layer).getElementsByTagName("file");
            for (int i = 0; i < files.getLength(); i++) {
                Element file = (Element) files.item(i);
                String path = folderOf(file);
                attribute(file, "displayName", "bundlevalue").ifPresent(text -> names.put(path + "/" + file.getAttribute("name"), text));
                if (path.startsWith("Menu/")) {
                    attribute(file, "originalFile", "stringvalue").ifPresent(to -> shadows
                            .computeIfAbsent(path, p -> new TreeSet<>()).add(to));
                }
            }
        }
        shadows.replaceAll((menu, targets) -> targets.stream().filter(names::containsKey).map(names::get)
                .collect(Collectors.toCollection(TreeSet::new)));
        return shadows;
    }

    private static Document parsed(URL layer) throws IOException, SAXException, ParserConfigurationException {
        DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
        builder.setEntityResolver((publicId, systemId) -> new InputSource(new StringReader("")));
        return builder.parse(layer.toString());
    }

    private static String folderOf(Element file) {
        String path = "";
        for (Element up = (Element) file.getParentNode(); up.getTagName().equals("folder"); up = (Element) up.getParentNode()) {
            path = up.getAttribute("name") + (path.isEmpty() ? "" : "/" + path);
        }
        return path;
    }

    private static Optional<String> attribute(Element file, String name, String kind) {
        NodeList all = file.getElementsByTagName("attr");
        for (int i = 0; i < all.getLength(); i++) {
            Element attr = (Element) all.item(i);
            if (attr.getAttribute("name").equals(name) && attr.hasAttribute(kind)) {
                return Optional.of(attr.getAttribute(kind));
            }
        }
        return Optional.empty();
    }

    private static Optional<String> apostropheIn(String key, String text) {
        if (arguments(text).isEmpty()) {
            return text.contains("''") ? Optional.of(key + " shows a doubled apostrophe: " + text) : Optional.empty();
        }
        String rest = text.replace("''", "").replace("'{'", "").replace("'}'", "");
        return rest.contains("'") ? Optional.of(key + " has an unpaired apostrophe: " + text) : Optional.empty();
    }

    private static Set<String> arguments(String text) {
        return ARGUMENT.matcher(text).results().map(found -> found.group(1)).collect(Collectors.toCollection(TreeSet::new));
    }

    private interface BundleRule {
        Stream<String> faults(Bundle bundle, String language);
    }

    private interface TextRule {
        Optional<String> fault(String key, String english, String text);
    }

    private static List<String> everyBundle(BundleRule rule) {
        return Languages.others().stream().flatMap(language -> Languages.bundles().stream()
                .flatMap(bundle -> rule.faults(bundle, language).map(fault -> language + ", " + bundle.name() + ": " + fault))).toList();
    }

    private static List<String> everyText(TextRule rule) {
        return Languages.others().stream().flatMap(language -> Languages.bundles().stream()
                .flatMap(bundle -> bundle.in(language).orElse(Map.of()).entrySet().stream()
                        .filter(text -> bundle.english().containsKey(text.getKey()))
                        .flatMap(text -> rule.fault(text.getKey(), bundle.english().get(text.getKey()), text.getValue()).stream())
                        .map(fault -> language + ", " + bundle.name() + ": " + fault))).toList();
    }
}
