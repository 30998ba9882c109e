package quoin.help;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class HelpLibraryTest {

    private static final Pattern LINK = Pattern.compile("href=\"([^\"]*)\"");

    private final HelpLibrary library = HelpLibrary.installed(Locale.ENGLISH);

    private static Stream<HelpLibrary> libraries() {
        return Stream.of(HelpLibrary.installed(Locale.ENGLISH), HelpLibrary.installed(Locale.GERMANY));
    }

    private static final Pattern PICTURE = Pattern.compile("<img[^>]*>");
    private static final Pattern DRAWING = Pattern.compile("<img src=\"([a-z-]+)\" alt=\"[^\"]{10,}\">");

    @ParameterizedTest
    @MethodSource("libraries")
    void everyStageHasADrawingAndEveryPictureIsOneOfOurs(HelpLibrary library) {
        for (HelpPage page : library.pages()) {
            Matcher picture = PICTURE.matcher(page.html());
            while (picture.find()) {
                Matcher drawing = DRAWING.matcher(picture.group());
                assertTrue(drawing.matches(), page.id() + ": " + picture.group());
                for (String look : List.of("", "_dark")) {
                    String file = "pages/drawings/" + drawing.group(1) + look + ".svg";
                    assertTrue(HelpLibraryTest.class.getResource(file) != null, page.id() + " has no " + file);
                }
            }
        }
        for (String stage : List.of("preparation", "ride-height", "corner-weights", "wheel-angles", "final-recheck")) {
            assertTrue(library.page(stage).orElseThrow().html().contains("<img "), stage + " has no drawing");
        }
    }

    private static boolean leadsSomewhere(HelpLibrary library, HelpTopic topic) {
        return library.page(topic.page()).filter(p -> topic.mark().isEmpty() || p.hasMark(topic.mark())).isPresent();
    }

    @ParameterizedTest
    @MethodSource("libraries")
    void everyLinkLeadsToAPageOfTheHelpAndNowhereElse(HelpLibrary library) {
        int links = 0;
        for (HelpPage page : library.pages()) {
            Matcher link = LINK.matcher(page.html());
            while (link.find()) {
                links++;
                assertTrue(leadsSomewhere(library, HelpTopic.ofLink(link.group(1))), page.id() + ": " + link.group(1));
            }
            assertFalse(page.html().contains("http"), page.id() + " names an address off the machine");
        }
        assertTrue(links > 2, "no links were seen");
    }

    @ParameterizedTest
    @MethodSource("libraries")
    void everyStageHasItsPageAndEveryKindOfFieldItsPlace(HelpLibrary library) {
        for (String stage : List.of("preparation", "ride-height", "corner-weights", "wheel-angles", "final-recheck")) {
            assertTrue(leadsSomewhere(library, HelpTopic.of(Optional.of("stage-" + stage), Optional.empty())), stage);
        }
        for (String[] place : new String[][] {{"stage-preparation", "reading.pressure.LF"}, {"stage-ride-height", "reading.height.LF rail"},
            {"stage-corner-weights", "reading.load.RR"}, {"stage-corner-weights", "turns.perch.LF"}, {"stage-wheel-angles", "reading.camber.LF"},
            {"stage-wheel-angles", "reading.caster.RF"}, {"stage-wheel-angles", "reading.toe.LR"}}) {
            HelpTopic topic = HelpTopic.of(Optional.of(place[0]), Optional.of(place[1]));
            assertFalse(topic.mark().isEmpty());
            assertTrue(leadsSomewhere(library, topic), topic.toString());
        }
    }

    @ParameterizedTest
    @MethodSource("libraries")
    void aWindowThatIsNoStageHasHelpToo(HelpLibrary library) {
        for (String window : List.of("garage", "day-log", "order-of-work", "measure-angles", "something else")) {
            assertTrue(leadsSomewhere(library, HelpTopic.of(Optional.of(window), Optional.of("x"))), window);
        }
        assertTrue(leadsSomewhere(library, HelpTopic.of(Optional.empty(), Optional.empty())));
    }

    @Test
    void wordsAreFoundTheTitleFirst() {
        assertEquals("typing", library.find("typing").get(0).id());
        assertEquals("wheel-angles", library.find("cord skew").get(0).id());
        assertEquals(List.of(), library.find("caster zeppelin"));
        assertEquals(library.pages(), library.find("  "));
    }

    @Test
    void germanPagesTakeThePlaceOfTheEnglishOnes() {
        HelpLibrary german = HelpLibrary.installed(Locale.GERMANY);
        assertEquals(library.pages().stream().map(HelpPage::id).toList(), german.pages().stream().map(HelpPage::id).toList());
        for (HelpPage page : german.pages()) {
            assertFalse(page.title().equals(library.page(page.id()).orElseThrow().title()), page.id() + " is the English page");
        }
        assertEquals("ride-height", german.find("fahrh\u00f6he").get(0).id());
        assertEquals(List.of(), german.find("camber"));
    }

    @Test
    void aLanguageWithoutPagesGetsTheEnglishOnes() {
        assertEquals(library, HelpLibrary.installed(Locale.JAPAN));
    }

    /** A page in another language has the places of the English one, and the same libraries with their licences. */
    @Test
    void marksAndLibrariesAreTheSameInGerman() {
        HelpLibrary german = HelpLibrary.installed(Locale.GERMANY);
        for (Pattern part : List.of(Pattern.compile("<a name=\"([^\"]*)\">"), Pattern.compile("<tr><td><b>[^<]*</b></td><td>[0-9][^\n]*"))) {
            for (HelpPage page : library.pages()) {
                assertEquals(all(part, page), all(part, german.page(page.id()).orElseThrow()), page.id());
            }
        }
    }

    private static List<String> all(Pattern part, HelpPage page) {
        return part.matcher(page.html()).results().map(MatchResult::group).toList();
    }
}
