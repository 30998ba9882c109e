package quoin.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Component;
import java.awt.EventQueue;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Parts of a window are built anew where what they show has changed, and only there. */
class BuiltFromTest {

    @Test
    void onlyWhatHasChangedIsNew() {
        BuiltFrom built = new BuiltFrom();
        assertTrue(built.isNew(List.of()), "the first time even nothing is");
        assertFalse(built.isNew(List.of()));
        assertTrue(built.isNew(List.of("a")));
        assertTrue(built.isNew(List.of()), "back again is a change too");
    }

    @Test
    void aTableOfTheSameFiguresStaysAndOneOfOthersIsMade() throws Exception {
        EventQueue.invokeAndWait(() -> {
            FigureTable table = new FigureTable();
            table.show(List.of(FigureTable.Line.plain("Total", "469.0 kg")));
            Component first = table.getComponent(0);
            table.show(List.of(FigureTable.Line.plain("Total", "469.0 kg")));
            assertSame(first, table.getComponent(0));
            table.show(List.of(FigureTable.Line.plain("Total", "470.0 kg")));
            assertNotSame(first, table.getComponent(0));
            assertEquals(1, table.getComponentCount());
        });
    }
}
