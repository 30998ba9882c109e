package quoin.preparation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quoin.car.Corner;
import quoin.car.ReadingId;
import quoin.car.ReadingKind;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.rehearsal.Ouzel23;
import quoin.workflow.spi.Finding;
import quoin.workflow.spi.Requirement;

class PreparationStageTest {

    private final PreparationStage stage = new PreparationStage();

    private static Day day(Entry... entries) {
        List<Entry> all = new ArrayList<>(List.of(new Entry.CarDescribed(new Header(1, Instant.EPOCH, ""), Ouzel23.car())));
        for (Entry entry : entries) {
            all.add(entry.withHeader(new Header(all.size() + 1, Instant.EPOCH, "")));
        }
        return Day.of(all);
    }

    private static Entry read(Map<ReadingId, Double> values) {
        return new Entry.Reading(new Header(0, Instant.EPOCH, ""), values, Map.of(), Entry.Source.RACER);
    }

    private static Entry corners(ReadingKind kind, double lf, double rf, double lr, double rr) {
        return read(Map.of(ReadingId.of(kind, Corner.LF), lf, ReadingId.of(kind, Corner.RF), rf, ReadingId.of(kind, Corner.LR), lr,
                ReadingId.of(kind, Corner.RR), rr));
    }

    private List<String> words(Entry... entries) {
        return stage.findings(day(entries)).stream().map(Finding::words).toList();
    }

    /** The demo car has no rear bar, so none is asked for. */
    @Test
    void conditionsComeInWorkingOrderWithTheCautionsThatMatter() {
        List<Requirement> asked = stage.requirements(Ouzel23.car());
        assertEquals(List.of(Conditions.SOUND, Conditions.FUEL, Conditions.PRESSURES, "front-bar", Conditions.DAMPERS, Conditions.BRAKES,
                Conditions.STEERING, Conditions.PADS, Conditions.SCALES, Conditions.DRIVER), asked.stream().map(Requirement::key).toList());
        assertTrue(caution(asked, Conditions.SOUND).contains("never under a car on a jack"));
        assertTrue(caution(asked, Conditions.BRAKES).contains("stop blocks"));
        assertTrue(caution(asked, Conditions.PADS).contains("never wood"));
        assertTrue(caution(asked, Conditions.STEERING).contains("come out again"));
        assertTrue(caution(asked, Conditions.DRIVER).contains("jack"));
    }

    private static String caution(List<Requirement> asked, String key) {
        return asked.stream().filter(r -> r.key().equals(key)).findFirst().orElseThrow().caution().orElseThrow();
    }

    @Test
    void unequalPressuresOfAnAxleAreTold() {
        assertEquals(List.of(), words(corners(ReadingKind.PRESSURE, 1.40, 1.42, 1.50, 1.50)));
        List<String> found = words(corners(ReadingKind.PRESSURE, 1.40, 1.40, 1.50, 1.42));
        assertEquals(1, found.size());
        assertTrue(found.get(0).startsWith("LR and RR pressures differ by 0.08 bar"), found.get(0));
    }

    /** Warp is (LF + RR) - (RF + LR): a tilt of any amount is none. */
    @Test
    void padsMayTiltButNotWarp() {
        assertEquals(List.of(), words(corners(ReadingKind.PAD_HEIGHT, 0, 8, 5, 13)), "8 mm sideways, 5 mm nose down");
        List<String> found = words(corners(ReadingKind.PAD_HEIGHT, 0, 8, 5, 11.5));
        assertTrue(found.get(0).contains("RF and LR stand 1.5 mm high"), found.toString());
    }

    @Test
    void aScaleOffZeroIsTold() {
        assertEquals(List.of(), words(corners(ReadingKind.SCALE_ZERO, 0, 0.2, -0.2, 0)));
        assertTrue(words(corners(ReadingKind.SCALE_ZERO, 0, 0, -0.6, 0)).get(0).startsWith("LR scale shows -0.6 kg"));
    }
}
