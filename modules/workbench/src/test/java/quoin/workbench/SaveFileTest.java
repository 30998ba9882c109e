package quoin.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.io.File;
import java.util.List;
import org.junit.jupiter.api.Test;

class SaveFileTest {

    private static final SaveFile.Form POINT = new SaveFile.Form("point", "csv", () -> new byte[0]);
    private static final SaveFile.Form COMMA = new SaveFile.Form("comma", "csv", () -> new byte[0]);
    private static final SaveFile.Form JSON = new SaveFile.Form("json", "json", () -> new byte[0]);
    private static final List<SaveFile.Form> FORMS = List.of(POINT, COMMA, JSON);

    @Test
    void theEndOfTheNameComesBeforeTheList() {
        assertSame(COMMA, SaveFile.form("day", FORMS, 1));
        assertSame(COMMA, SaveFile.form("day.CSV", FORMS, 1), "both are .csv: the list decides");
        assertSame(JSON, SaveFile.form("day.json", FORMS, 1));
        assertSame(POINT, SaveFile.form("day.csv", FORMS, 2));
    }

    @Test
    void aMissingEndIsAdded() {
        assertEquals("day.2.csv", SaveFile.named(new File("day.2"), "csv").getName());
        assertEquals("day.CSV", SaveFile.named(new File("day.CSV"), "csv").getName());
    }
}
