package quoin.help;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class HelpLibraryTest {

    private static final Pattern LINK = Pattern.compile("href=\"([^\"]*)\"");

    private final HelpLibrary library = HelpLibrary.installed(Locale.ENGLISH);

    private boolean leadsSomewhere(HelpTopic topic) {
        return library.page(topic.page()).filter(p -> topic.mark().isEmpty() || p.hasMark(topic.mark())).isPresent();
    }

    @Test
    void everyLinkLeadsToAPageOfTheHelpAndNowhereElse() {
        int links = 0;
        for (HelpPage page : library.pages()) {
            Matcher link = LINK.matcher(page.html());
            while (link.find()) {
                links++;
                assertTrue(leadsSomewhere(HelpTopic.ofLink(link.group(1))), page.id() + ": " + link.group(1));
            }
            assertFalse(page.html().contains("http"), page.id() + " names an address off the machine");
        }
        assertTrue(links > 2, "no links were seen");
    }

    @Test
    void everyStageHasItsPageAndEveryKindOfFieldItsPlace() {
        for (String stage : List.of("preparation", "ride-height", "corner-weights", "wheel-angles", "final-recheck")) {
            assertTrue(leadsSomewhere(HelpTopic.of(Optional.of("stage-" + stage), Optional.empty())), stage);
        }
        for (String[] place : new String[][] {{"stage-preparation", "reading.pressure.LF"}, {"stage-ride-height", "reading.height.LF rail"},
            {"stage-corner-weights", "reading.load.RR"}, {"stage-corner-weights", "turns.perch.LF"}, {"stage-wheel-angles", "reading.camber.LF"},
            {"stage-wheel-angles", "reading.caster.RF"}, {"stage-wheel-angles", "reading.toe.LR"}}) {
            HelpTopic topic = HelpTopic.of(Optional.of(place[0]), Optional.of(place[1]));
            assertFalse(topic.mark().isEmpty());
            assertTrue(leadsSomewhere(topic), topic.toString());
        }
    }

    @Test
    void aWindowThatIsNoStageHasHelpToo() {
        for (String window : List.of("garage", "day-log", "order-of-work", "measure-angles", "something else")) {
            assertTrue(leadsSomewhere(HelpTopic.of(Optional.of(window), Optional.of("x"))), window);
        }
        assertTrue(leadsSomewhere(HelpTopic.of(Optional.empty(), Optional.empty())));
    }

    @Test
    void wordsAreFoundTheTitleFirst() {
        assertEquals("typing", library.find("typing").get(0).id());
        assertEquals("wheel-angles", library.find("cord skew").get(0).id());
        assertEquals(List.of(), library.find("caster zeppelin"));
        assertEquals(library.pages(), library.find("  "));
    }
}
