package quoin.workbench;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
}
