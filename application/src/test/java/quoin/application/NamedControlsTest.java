package quoin.application;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Component;
import java.awt.Container;
import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollBar;
import javax.swing.JSlider;
import javax.swing.JSpinner;
import javax.swing.JTable;
import javax.swing.JTree;
import javax.swing.text.JTextComponent;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openide.windows.TopComponent;
import quoin.logbook.Journal;
import quoin.logbook.Library;
import quoin.rehearsal.Ouzel23;
import quoin.workbench.CurrentDay;
import quoin.workbench.DaySnapshot;
import quoin.workbench.DisplayUnits;

/**
 * Every control that takes the keyboard has a name that a screen reader can say. All windows are built without a screen, with the
 * practice car's day open, and every panel of a dialog that can be made from that day.
 */
class NamedControlsTest {

    private static final String UNNAMED = "%s: a %s without a name%s";

    @TempDir
    static Path root;
    private static CurrentDay current;

    @BeforeAll
    static void openADay() throws Exception {
        Library library = new Library(root);
        library.save(Ouzel23.car());
        Journal journal = library.createDay(Ouzel23.car(), "");
        Built.onEventThread(() -> {
            current = CurrentDay.inUse();
            current.openRehearsal(journal, 23);
        });
    }

    @AfterAll
    static void close() throws Exception {
        Built.onEventThread(current::close);
    }

    @Test
    void inEveryWindow() throws Exception {
        Set<String> seen = new TreeSet<>();
        List<String> unnamed = new ArrayList<>();
        for (Class<?> type : Built.classes(TopComponent.class)) {
            Built.onEventThread(() -> {
                TopComponent window = (TopComponent) type.getDeclaredConstructor().newInstance();
                Built.call(window, "componentOpened");
                Built.call(window, "componentShowing");
                seen.add(type.getSimpleName());
                look(window, type.getSimpleName(), unnamed);
            });
        }
        assertTrue(seen.size() >= 15, "too few windows seen: " + seen);
        assertEquals(List.of(), unnamed);
    }

    @Test
    void inEveryPanelOfADialog() throws Exception {
        Set<String> seen = new TreeSet<>();
        List<String> unnamed = new ArrayList<>();
        for (Class<?> type : Built.classes(JPanel.class)) {
            Built.onEventThread(() -> made(type).ifPresent(panel -> {
                seen.add(type.getSimpleName());
                look(panel, type.getSimpleName(), unnamed);
            }));
        }
        assertTrue(seen.containsAll(Set.of("UnitsForm", "OrderPanel", "LogPanel", "ThemeForm")), "not seen among " + seen);
        assertEquals(List.of(), unnamed);
    }

    /** Adds a line for each control in a component that a screen reader cannot name. */
    static void look(Component component, String where, List<String> unnamed) {
        if (takesKeyboard(component) && isBlank(component)) {
            unnamed.add(String.format(Locale.ROOT, UNNAMED, where, component.getClass().getSimpleName(),
                    component.getName() == null ? " in " + component.getParent().getClass().getSimpleName() : " (" + component.getName() + ")"));
        }
        boolean whole = component instanceof JComboBox || component instanceof JSpinner || component instanceof JScrollBar;
        if (component instanceof Container container && !whole) {
            for (Component part : container.getComponents()) {
                look(part, where, unnamed);
            }
        }
    }

    private static boolean takesKeyboard(Component component) {
        return component.isFocusable() && component.isVisible() && (component instanceof JTextComponent text && text.isEditable() || component instanceof AbstractButton
                || component instanceof JComboBox || component instanceof JList || component instanceof JTable || component instanceof JTree
                || component instanceof JSpinner || component instanceof JSlider);
    }

    private static boolean isBlank(Component component) {
        String name = component.getAccessibleContext().getAccessibleName();
        return name == null || name.isBlank();
    }

    /** The panel, where it can be made of the day alone. */
    private static Optional<JComponent> made(Class<?> type) {
        for (Constructor<?> constructor : type.getDeclaredConstructors()) {
            Object[] given = Arrays.stream(constructor.getParameterTypes()).map(NamedControlsTest::given).toArray();
            if (!Arrays.asList(given).contains(null)) {
                try {
                    constructor.setAccessible(true);
                    JComponent panel = (JComponent) constructor.newInstance(given);
                    showDay(panel);
                    return Optional.of(panel);
                } catch (ReflectiveOperationException e) {
                    throw new AssertionError(type + " cannot be made", e);
                }
            }
        }
        return Optional.empty();
    }

    /** Where a panel shows the day by itself, it names its fields by the day's units. */
    private static void showDay(JComponent panel) throws ReflectiveOperationException {
        for (Method method : panel.getClass().getDeclaredMethods()) {
            if (method.getName().equals("show") && Arrays.equals(method.getParameterTypes(), new Class<?>[] {DaySnapshot.class})) {
                method.setAccessible(true);
                method.invoke(panel, current.snapshot().orElseThrow());
            }
        }
    }

    private static Object given(Class<?> type) {
        if (type.isEnum()) {
            return type.getEnumConstants()[0];
        }
        return Stream.<Object>of(current, current.snapshot().orElseThrow(), current.units(), current.snapshot().orElseThrow().format(), Ouzel23.car())
                .filter(type::isInstance).findFirst().orElseGet(() -> type == Runnable.class ? (Runnable) () -> { }
                        : type == Consumer.class ? (Consumer<Object>) x -> { } : type == DisplayUnits.class ? current.units() : constant(type));
    }

    /** A value that a class of ours holds of itself: the usual choice of a language. */
    private static Object constant(Class<?> type) {
        return Arrays.stream(type.getDeclaredFields()).filter(f -> type.getName().startsWith("quoin.") && f.getType() == type
                && Modifier.isStatic(f.getModifiers())).findFirst().map(f -> {
                    try {
                        f.setAccessible(true);
                        return f.get(null);
                    } catch (IllegalAccessException e) {
                        throw new AssertionError(e);
                    }
                }).orElse(null);
    }
}
