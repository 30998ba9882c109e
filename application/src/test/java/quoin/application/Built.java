package quoin.application;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.EventQueue;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import org.openide.windows.TopComponent;

/** Windows and panels of every module, built without a screen. */
final class Built {

    private Built() {
    }

    static void call(TopComponent window, String method) throws ReflectiveOperationException {
        Method found = TopComponent.class.getDeclaredMethod(method);
        found.setAccessible(true);
        found.invoke(window);
    }

    interface Work {
        void run() throws Exception;
    }

    static void onEventThread(Work work) throws Exception {
        List<Throwable> failed = new ArrayList<>();
        EventQueue.invokeAndWait(() -> {
            try {
                work.run();
            } catch (InvocationTargetException e) {
                failed.add(e.getCause());
            } catch (Exception e) {
                failed.add(e);
            }
        });
        if (!failed.isEmpty()) {
            throw new AssertionError(failed.get(0));
        }
    }

    /** Our own classes of a kind that can be made. */
    static Collection<Class<?>> classes(Class<?> kind) throws IOException {
        List<Class<?>> found = new ArrayList<>();
        for (String module : Tree.moduleFolders()) {
            Path classes = Tree.TOP.resolve("modules").resolve(module).resolve("target/classes");
            if (!Files.isDirectory(classes)) {
                continue;
            }
            try (Stream<Path> files = Files.walk(classes)) {
                files.map(classes::relativize).map(Path::toString).filter(f -> f.startsWith("quoin") && f.endsWith(".class") && !f.contains("$"))
                        .map(f -> f.substring(0, f.length() - ".class".length()).replace('/', '.')).map(Built::load)
                        .filter(c -> kind.isAssignableFrom(c) && !Modifier.isAbstract(c.getModifiers())).forEach(found::add);
            }
        }
        assertTrue(!found.isEmpty(), "no classes of ours were seen");
        return found;
    }

    static Class<?> load(String name) {
        try {
            return Class.forName(name, false, Built.class.getClassLoader());
        } catch (ClassNotFoundException e) {
            throw new AssertionError(e);
        }
    }
}
