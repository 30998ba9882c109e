package quoin.application;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.jar.Manifest;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.openide.filesystems.FileObject;
import org.openide.filesystems.FileUtil;
import org.openide.filesystems.XMLFileSystem;
import org.xml.sax.SAXException;

/** What is left of the platform's menus, toolbars, options and shortcuts. */
class LayerTest {

    private static final String HIDDEN = "_hidden";
    private static final String OURS = "quoin";
    private static final List<String> SHOWN = List.of("Menu", "Toolbars", "OptionsDialog", "Shortcuts",
            "Editors/TabActions");

    @Test
    void nothingIsHiddenThatThePlatformDoesNotHave() throws IOException, SAXException {
        Set<String> platform = paths(layers(url -> !url.contains(OURS + "/workbench")));
        Set<String> stale = hidden();
        stale.removeAll(platform);
        assertEquals(Set.of(), stale);
        assertTrue(hidden().size() > 40, "The hiding layer was not seen");
    }

    @Test
    void onlyWhatASetUpDayNeedsIsLeftOfThePlatform() throws IOException, SAXException {
        Set<String> left = paths(layers(url -> !url.contains("/modules/" ) || !url.contains("/target/")));
        Set<String> hidden = hidden();
        left.removeIf(path -> hidden.stream().anyMatch(gone -> path.equals(gone) || path.startsWith(gone + "/")));
        Set<String> shown = left.stream().filter(path -> SHOWN.stream().anyMatch(folder -> path.startsWith(folder + "/")))
                .filter(path -> path.matches(".*\\.(shadow|instance)"))
                .map(path -> path.replaceAll("(org-netbeans|org-openide)-[a-z-]*actions-", ""))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(new TreeSet<>(Set.of(
                "Menu/File/Separator4.instance", "Menu/File/SystemExit.shadow",
                "Menu/Edit/UndoAction.shadow", "Menu/Edit/RedoAction.shadow", "Menu/Edit/Separator1.instance",
                "Menu/Edit/CutAction.shadow", "Menu/Edit/CopyAction.shadow", "Menu/Edit/PasteAction.shadow",
                "Menu/Window/Separator3.instance", "Menu/Window/ResetWindowsAction.shadow",
                "Menu/Tools/PluginManagerAction.shadow",
                "Menu/Tools/org-netbeans-modules-options-OptionsWindowAction.shadow",
                "Menu/Tools/org-netbeans-modules-options-OptionsWindowAction-separatorBefore.instance",
                "Menu/Help/AboutAction.shadow", "OptionsDialog/Keymaps.instance")), shown);
    }

    @Test
    void oneShortcutDoesOneThing() throws IOException, SAXException {
        Set<String> hidden = hidden();
        Map<String, Set<String>> actions = new TreeMap<>();
        for (URL layer : layers(url -> true)) {
            FileObject folder = new XMLFileSystem(layer).findResource("Shortcuts");
            for (FileObject shortcut : folder == null ? new FileObject[0] : folder.getChildren()) {
                if (shortcut.hasExt("shadow") && !hidden.contains(shortcut.getPath())) {
                    actions.computeIfAbsent(shortcut.getName(), name -> new TreeSet<>())
                            .add(String.valueOf(shortcut.getAttribute("originalFile")));
                }
            }
        }
        assertTrue(actions.containsKey("D-Z"), "No shortcuts were seen");
        actions.values().removeIf(targets -> targets.size() == 1);
        assertEquals(Map.of(), actions);
    }

    @Test
    void everyShortcutOfOursStandsOnTheHelpPageOfKeys() throws IOException, SAXException {
        assertEquals(Set.of(), missingOn(helpPage("keys.html")));
        String german = helpPage("de/keys.html").replace("Strg+", "Ctrl+").replace("Umschalt+", "Shift+");
        assertEquals(Set.of(), missingOn(german), "on the German page");
    }

    private static String helpPage(String name) throws IOException {
        try (InputStream stream = LayerTest.class.getResourceAsStream("/quoin/help/pages/" + name)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static Set<String> missingOn(String page) throws IOException, SAXException {
        Set<String> missing = new TreeSet<>();
        for (URL layer : layers(url -> url.contains("/modules/") && url.contains("/target/"))) {
            FileObject folder = new XMLFileSystem(layer).findResource("Shortcuts");
            for (FileObject shortcut : folder == null ? new FileObject[0] : folder.getChildren()) {
                String keys = inWords(shortcut.getName());
                if (shortcut.hasExt("shadow") && !page.matches("(?s).*\\b" + Pattern.quote(keys) + "\\b.*")) {
                    missing.add(keys + " of " + shortcut.getAttribute("originalFile"));
                }
            }
        }
        return missing;
    }

    /** "DS-N" as "Ctrl+Shift+N". */
    private static String inWords(String shortcut) {
        int dash = shortcut.lastIndexOf('-');
        String with = dash < 0 ? "" : shortcut.substring(0, dash);
        return (with.contains("D") ? "Ctrl+" : "") + (with.contains("O") ? "Alt+" : "") + (with.contains("S") ? "Shift+" : "")
                + shortcut.substring(dash + 1);
    }

    private static Set<String> hidden() throws IOException, SAXException {
        return paths(layers(url -> url.contains("workbench"))).stream().filter(path -> path.endsWith(HIDDEN))
                .map(path -> path.substring(0, path.length() - HIDDEN.length()))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    interface Choice {
        boolean takes(String url);
    }

    /** Layers of the modules on the class path, named by manifest or generated from annotations. */
    static List<URL> layers(Choice choice) throws IOException {
        ClassLoader loader = LayerTest.class.getClassLoader();
        List<URL> found = new ArrayList<>(Collections.list(loader.getResources("META-INF/generated-layer.xml")));
        for (URL url : Collections.list(loader.getResources("META-INF/MANIFEST.MF"))) {
            try (InputStream stream = url.openStream()) {
                String layer = new Manifest(stream).getMainAttributes().getValue("OpenIDE-Module-Layer");
                if (layer != null) {
                    found.add(new URL(url.toString().replace("META-INF/MANIFEST.MF", layer)));
                }
            }
        }
        return found.stream().filter(url -> choice.takes(url.toString())).toList();
    }

    private static Set<String> paths(List<URL> layers) throws IOException, SAXException {
        Set<String> paths = new TreeSet<>();
        for (URL layer : layers) {
            FileObject root = new XMLFileSystem(layer).getRoot();
            Stream<? extends FileObject> all = Collections.list(root.getChildren(true)).stream();
            all.forEach(file -> paths.add(FileUtil.getRelativePath(root, file)));
        }
        return paths;
    }
}
