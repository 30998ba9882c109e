package quoin.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.swing.JTextField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quoin.car.Axle;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Entry;
import quoin.logbook.Journal;
import quoin.rehearsal.Ouzel23;

/** Two figures typed in each other's fields are one doubt, and taking the likely figure puts both right. */
class ExchangedCornersTest {

    private static final List<Corner> WALK = List.of(Corner.LF, Corner.LR, Corner.RR, Corner.RF);
    private static final List<ReadingId> LOADS = WALK.stream().map(c -> ReadingId.of(ReadingKind.LOAD, c)).toList();
    private static final double[] READ_KG = {162.4, 148.4, 158.0, 169.4};

    @TempDir
    private Path folder;

    @Test
    void takingTheLikelyFigurePutsBothRight() throws Exception {
        EventQueue.invokeAndWait(() -> {
            CurrentDay current = weighed();
            ReadingGrid grid = new ReadingGrid(current, "corner-weights", car -> LOADS);
            grid.show(current.snapshot().orElseThrow());
            List<JTextField> fields = fields(grid);
            List<String> meant = List.of("162.6", "148.2", "158.0", "169.6");
            List<String> typed = List.of("148.2", "162.6", "158.0", "169.6");
            for (int i = 0; i < typed.size(); i++) {
                fields.get(i).setText(typed.get(i));
            }
            long before = current.snapshot().orElseThrow().day().revision();
            grid.record();
            assertEquals(before, current.snapshot().orElseThrow().day().revision(), "it is asked about first");
            grid.getActionMap().get("takeLikely").actionPerformed(null);
            assertEquals(meant, fields.stream().map(JTextField::getText).toList());
            grid.record();
            assertEquals(before + 1, current.snapshot().orElseThrow().day().revision(), "nothing else is asked");
            current.close();
        });
    }

    /** The demo car with driver in, bars off and settled, weighed once. */
    private CurrentDay weighed() {
        CurrentDay current = new CurrentDay(List.of());
        current.open(Journal.create(folder, Ouzel23.car(), "Exchanged"));
        Map.of(Conditions.DRIVER, Conditions.IN, Conditions.bar(Axle.FRONT), Conditions.DISCONNECTED, Conditions.DAMPERS, Conditions.SOFT,
                Conditions.BRAKES, Conditions.FREE, Conditions.STEERING, Conditions.LOCKED, Conditions.PADS, Conditions.LEVELLED,
                Conditions.SCALES, Conditions.ZEROED, Conditions.PRESSURES, Conditions.SET, Conditions.SETTLED, Conditions.YES)
                .forEach((key, value) -> current.record("preparation", h -> new Entry.Condition(h, key, value, "")));
        Map<ReadingId, Double> loads = new HashMap<>();
        for (int i = 0; i < READ_KG.length; i++) {
            loads.put(LOADS.get(i), READ_KG[i]);
        }
        current.record("corner-weights", h -> new Entry.Reading(h, loads, Map.of(), Entry.Source.RACER));
        return current;
    }

    private static List<JTextField> fields(Container in) {
        List<JTextField> fields = new ArrayList<>();
        for (Component part : in.getComponents()) {
            if (part instanceof JTextField field) {
                fields.add(field);
            } else if (part instanceof Container inner) {
                fields.addAll(fields(inner));
            }
        }
        return fields;
    }
}
