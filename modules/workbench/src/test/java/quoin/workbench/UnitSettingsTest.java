package quoin.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashMap;
import java.util.Map;
import java.util.prefs.AbstractPreferences;
import org.junit.jupiter.api.Test;
import quoin.quantities.AngleStyle;
import quoin.quantities.DecimalMark;
import quoin.quantities.Dimension;
import quoin.quantities.Unit;
import quoin.quantities.UnitPreferences;

class UnitSettingsTest {

    /** Preferences in memory. */
    private static final class InMemory extends AbstractPreferences {
        private final Map<String, String> values = new HashMap<>();

        InMemory() {
            super(null, "");
        }

        @Override
        protected void putSpi(String key, String value) {
            values.put(key, value);
        }

        @Override
        protected String getSpi(String key) {
            return values.get(key);
        }

        @Override
        protected void removeSpi(String key) {
            values.remove(key);
        }

        @Override
        protected void removeNodeSpi() {
            values.clear();
        }

        @Override
        protected String[] keysSpi() {
            return values.keySet().toArray(String[]::new);
        }

        @Override
        protected String[] childrenNamesSpi() {
            return new String[0];
        }

        @Override
        protected AbstractPreferences childSpi(String name) {
            throw new UnsupportedOperationException(name);
        }

        @Override
        protected void syncSpi() {
            // in memory
        }

        @Override
        protected void flushSpi() {
            // in memory
        }
    }

    @Test
    void everyQuantityComesBackAsItWasChosen() {
        UnitSettings settings = new UnitSettings(new InMemory());
        DisplayUnits mixed = new DisplayUnits(UnitPreferences.metric().withUnit(Unit.LBF_PER_IN).withUnit(Unit.PSI)
                .withDecimalMark(DecimalMark.COMMA).withAngleStyle(AngleStyle.DEGREES_MINUTES), false);
        settings.save(mixed);
        DisplayUnits loaded = settings.load();
        for (Dimension dimension : Dimension.values()) {
            assertEquals(mixed.preferences().unit(dimension), loaded.preferences().unit(dimension), dimension.name());
        }
        assertEquals(DecimalMark.COMMA, loaded.preferences().decimalMark());
        assertEquals(AngleStyle.DEGREES_MINUTES, loaded.preferences().angleStyle());
        assertEquals(false, loaded.toeInMm());
    }

    @Test
    void aUnitThatIsNotKnownIsLeftOut() {
        InMemory node = new InMemory();
        node.put("unit.MASS", "FIRKIN");
        node.put("unit.LENGTH", "PSI");
        DisplayUnits loaded = new UnitSettings(node).load();
        assertEquals(Unit.KG, loaded.preferences().unit(Dimension.MASS));
        assertEquals(Unit.MM, loaded.preferences().unit(Dimension.LENGTH));
    }
}
