package quoin.logbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** A list that shares its beginning with the lists it grew from, against {@link ArrayList} copied at every step. */
class GrowingListTest {

    /** Each step lengthens one of the lists there are by then; none of the others may notice. */
    @Property
    void everyListKeepsWhatItHolds(@ForAll @Size(max = 60) List<@IntRange(max = 1000) Integer> steps) {
        List<GrowingList<Integer>> grown = new ArrayList<>(List.of(GrowingList.empty(), GrowingList.of(List.of(-1, -2, -3))));
        List<List<Integer>> copies = new ArrayList<>(List.of(List.of(), List.of(-1, -2, -3)));
        for (int step : steps) {
            int which = step % grown.size();
            grown.add(grown.get(which).with(step));
            List<Integer> longer = new ArrayList<>(copies.get(which));
            longer.add(step);
            copies.add(longer);
        }
        for (int i = 0; i < grown.size(); i++) {
            List<Integer> copy = copies.get(i);
            assertEquals(copy, grown.get(i));
            assertEquals(copy.isEmpty() ? null : copy.get(copy.size() - 1), grown.get(i).last());
        }
    }

    @Property
    void theFirstAfterANumberIsFoundLikeByLooking(@ForAll @Size(max = 30) List<@IntRange(max = 50) Integer> numbers,
            @ForAll @IntRange(min = -1, max = 51) int than) {
        List<Integer> ascending = numbers.stream().sorted().toList();
        int looked = 0;
        while (looked < ascending.size() && ascending.get(looked) <= than) {
            looked++;
        }
        assertEquals(looked, GrowingList.firstAfter(ascending, Integer::longValue, than));
    }

    @Test
    void whatIsNotThereIsNotGiven() {
        GrowingList<String> two = GrowingList.<String>empty().with("a").with("b");
        two.with("c");
        assertEquals("b", two.get(1));
        assertThrows(IndexOutOfBoundsException.class, () -> two.get(2));
        assertThrows(IndexOutOfBoundsException.class, () -> two.get(-1));
        assertNull(GrowingList.empty().last());
    }
}
