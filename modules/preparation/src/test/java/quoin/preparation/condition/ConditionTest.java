package quoin.preparation.condition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import quoin.logbook.Conditions;
import quoin.logbook.Day;
import quoin.logbook.Entry;
import quoin.logbook.Header;
import quoin.mechanics.InvalidInputException;
import quoin.preparation.sheet.Figures;
import quoin.quantities.UnitPreferences;
import quoin.rehearsal.Ouzel23;
import quoin.workflow.CarCheck;

/** The check of the car: items, spring pairs, engagement of a rod end. */
class ConditionTest {

    private static Figures points(String... keyAndText) {
        Map<String, String> texts = new HashMap<>();
        for (int i = 0; i < keyAndText.length; i += 2) {
            texts.put(keyAndText[i], keyAndText[i + 1]);
        }
        return Figures.read(SpringPair.lines(UnitPreferences.metric()).cells(), texts, UnitPreferences.metric());
    }

    /** 40 and 80 kg at 20 and 40 mm: 40 kg in 20 mm = 2 x 9.80665 N/mm. */
    @Test
    void rateIsTheSlopeOfForceOverDeflection() {
        SpringPair pair = SpringPair.of(points("left.1.mm", "20", "left.1.kg", "40", "left.2.mm", "40", "left.2.kg", "80",
                "right.1.mm", "20", "right.1.kg", "45", "right.2.mm", "40", "right.2.kg", "88", "right.3.mm", "60", "right.3.kg", "131"));
        assertEquals(2 * 9.80665, pair.left().rateNPerMm().getAsDouble(), 1e-9);
        assertEquals(OptionalDouble.empty(), pair.left().standardNPerMm(), "two points say nothing of their spread");
        assertEquals(43.0 / 20 * 9.80665, pair.right().rateNPerMm().getAsDouble(), 1e-9);
        assertEquals(0, pair.right().standardNPerMm().getAsDouble(), 1e-9);
        assertEquals(-3.0 / 20 * 9.80665, pair.differenceNPerMm().getAsDouble(), 1e-9);
        assertTrue(pair.isPair(), "1.47 N/mm is less than 10 lbf/in = 1.75 N/mm");
        assertFalse(new SpringPair(pair.left(), new SpringPair.Side(OptionalDouble.of(21.4), OptionalDouble.empty())).isPair());
    }

    @Test
    void onePointIsNoRate() {
        SpringPair pair = SpringPair.of(points("left.1.mm", "20", "left.1.kg", "40", "right.1.mm", "20"));
        assertEquals(OptionalDouble.empty(), pair.left().rateNPerMm());
        assertEquals(OptionalDouble.empty(), pair.differenceNPerMm());
        assertThrows(InvalidInputException.class, () -> SpringPair.of(points("left.1.mm", "20", "left.1.kg", "40", "left.2.mm", "20", "left.2.kg", "41")));
    }

    /** One and a half diameters: 3/8-24 needs 14.2875 mm or 13.5 turns, 7/16-20 needs 16.66875 mm or 13.125 turns (ASME B1.1 pitches). */
    @Test
    void oneAndAHalfDiameters() {
        Engagement threeEighths = new Engagement(9.525, 25.4 / 24, 14.2875);
        assertEquals(14.2875, threeEighths.neededMm(), 1e-9);
        assertEquals(13.5, threeEighths.neededTurns(), 1e-9);
        assertTrue(threeEighths.isEnough());
        Engagement sevenSixteenths = new Engagement(11.1125, 1.27, 12.85875);
        assertEquals(13.125, sevenSixteenths.neededTurns(), 1e-9);
        assertFalse(sevenSixteenths.isEnough());
        assertEquals(-3, sevenSixteenths.turnsLeft(), 1e-9);
    }

    private static Day day(Entry... entries) {
        List<Entry> all = new ArrayList<>(List.of(new Entry.CarDescribed(new Header(1, Instant.EPOCH, ""), Ouzel23.car())));
        for (Entry entry : entries) {
            all.add(entry.withHeader(new Header(all.size() + 1, Instant.EPOCH, "preparation")));
        }
        return Day.of(all);
    }

    private static Entry item(String key, String value, String words) {
        return new Entry.Condition(new Header(0, Instant.EPOCH, ""), key, value, words);
    }

    @Test
    void itemsAreTickedLeftOpenOrAdded() {
        List<CarItem> fresh = CarItem.of(day());
        assertEquals(10, fresh.size());
        assertTrue(fresh.stream().noneMatch(i -> i.isSeenTo() || i.name().isBlank() || i.how().isBlank()));
        String play = CarCheck.key("hub-play");
        List<CarItem> items = CarItem.of(day(item(play, CarCheck.GOOD, ""), item(CarCheck.key("dampers"), CarCheck.OPEN, "RR weeps"),
                item(CarCheck.key("rack"), CarCheck.OPEN, ""), item(CarCheck.ownKey("Rain light"), Conditions.NO, "")));
        assertTrue(items.get(0).isGood() && items.get(0).isSeenTo());
        CarItem dampers = items.stream().filter(i -> i.key().endsWith("dampers")).findFirst().orElseThrow();
        assertTrue(dampers.isOpen() && dampers.isSeenTo());
        assertFalse(items.stream().filter(i -> i.key().endsWith("rack")).findFirst().orElseThrow().isSeenTo(), "open needs a reason");
        CarItem own = items.get(items.size() - 1);
        assertEquals("Rain light", own.name());
        assertTrue(own.isOwn() && !own.isSeenTo());
        assertEquals(10, CarItem.of(day(item(CarCheck.ownKey("Rain light"), CarCheck.GONE, ""))).size());
    }
}
