package quoin.workbench;

import java.io.IOException;
import java.net.URI;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.jar.JarFile;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.openide.util.Lookup;
import org.openide.util.RequestProcessor;
import org.openide.windows.OnShowing;
import quoin.logbook.CarFile;
import quoin.rehearsal.Ouzel23;

/**
 * Reads the classes of the windows beside the event thread once the start is over: a window that is opened for the first time would
 * otherwise hold the event thread up for some tenths of a second while its classes are read and checked.
 */
@OnShowing
public final class WarmUp implements Runnable {

    /** The start, and whatever is done first, goes before. */
    private static final int AFTER_MS = 12_000;
    /** Between two classes, so that a slow machine has time for the racer. */
    private static final int PAUSE_MS = 1;
    private static final String OURS = "quoin-";
    private static final String CLASS = ".class";
    private static final String JAR = "jar:";
    /** What windows use of libraries that nothing has used before them. */
    private static final List<String> OTHERS = List.of("org.jfree.chart.ChartPanel", "org.jfree.chart.ChartFactory", "org.jfree.chart.JFreeChart",
            "org.jfree.chart.plot.XYPlot", "org.jfree.chart.plot.CategoryPlot", "org.jfree.chart.axis.NumberAxis", "org.jfree.chart.axis.CategoryAxis",
            "org.jfree.chart.renderer.xy.XYLineAndShapeRenderer", "org.jfree.chart.renderer.category.BarRenderer",
            "org.jfree.chart.title.TextTitle", "org.jfree.chart.title.LegendTitle", "org.apache.fontbox.ttf.TTFParser",
            "org.apache.fontbox.ttf.TrueTypeFont", "javax.swing.text.html.HTMLEditorKit", "javax.swing.text.html.HTMLDocument",
            "javax.swing.text.html.parser.ParserDelegator", "javax.swing.text.html.CSS", "javax.swing.JSpinner", "javax.swing.JFileChooser");

    @Override
    public void run() {
        RequestProcessor worker = new RequestProcessor("quoin warm up", 1);
        // what writes a file is needed by the first thing that is done, whatever that is
        worker.post(() -> CarFile.toText(Ouzel23.car()));
        worker.post(WarmUp::readAll, AFTER_MS, Thread.MIN_PRIORITY);
    }

    private static void readAll() {
        ClassLoader loader = Lookup.getDefault().lookup(ClassLoader.class);
        folder().ifPresent(folder -> {
            try {
                for (String name : names(folder)) {
                    read(name, loader);
                }
            } catch (IOException e) {
                Logger.getLogger(WarmUp.class.getName()).log(Level.FINE, "classes are read when they are needed", e);
            }
        });
        OTHERS.forEach(name -> read(name, loader));
    }

    private static Optional<Path> folder() {
        CodeSource source = WarmUp.class.getProtectionDomain().getCodeSource();
        return source == null ? Optional.empty() : folder(source.getLocation().toString());
    }

    /**
     * The folder a module's file is in; empty where it was not started from one.
     *
     * @param location of its classes: "jar:file:/opt/quoin/modules/quoin-workbench.jar!/", or without "jar:"
     */
    static Optional<Path> folder(String location) {
        String file = location.startsWith(JAR) ? location.substring(JAR.length()) : location;
        int inside = file.indexOf("!/");
        try {
            return Optional.ofNullable(Path.of(URI.create(inside < 0 ? file : file.substring(0, inside))).getParent());
        } catch (IllegalArgumentException | FileSystemNotFoundException e) {
            return Optional.empty();
        }
    }

    /** Names of the classes of our modules in a folder. */
    static List<String> names(Path folder) throws IOException {
        List<String> names = new ArrayList<>();
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, OURS + "*.jar")) {
            for (Path file : files) {
                try (JarFile jar = new JarFile(file.toFile())) {
                    jar.stream().map(e -> e.getName()).filter(n -> n.startsWith("quoin/") && n.endsWith(CLASS))
                            .map(n -> n.substring(0, n.length() - CLASS.length()).replace('/', '.')).forEach(names::add);
                }
            }
        }
        return names;
    }

    /** Asking a class for its methods checks it, without running anything of it. */
    static boolean read(String name, ClassLoader loader) {
        try {
            loader.loadClass(name).getDeclaredMethods();
            TimeUnit.MILLISECONDS.sleep(PAUSE_MS);
            return true;
        } catch (ClassNotFoundException | LinkageError e) {
            Logger.getLogger(WarmUp.class.getName()).log(Level.FINE, "not read beforehand: {0}", name);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return false;
    }
}
