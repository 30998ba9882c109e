package quoin.logbook;

import java.text.Normalizer;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Finds days by car, title, place, driver, tyres, notes and date: every word typed must stand somewhere, in any order, capitals and
 * accents aside. A date may be typed as 2026-05-02, 2026-05 or as it is shown.
 */
public final class LibrarySearch {

    private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");

    private final List<KnownDay> days;
    private final List<String> texts;

    /**
     * @param days what is searched
     * @param zone zone of the dates
     */
    public LibrarySearch(List<KnownDay> days, ZoneId zone) {
        this.days = List.copyOf(days);
        DateTimeFormatter shown = DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM).withLocale(Locale.getDefault());
        Map<LocalDate, String> dates = new ConcurrentHashMap<>();
        texts = this.days.parallelStream().map(day -> {
            String date = dates.computeIfAbsent(LocalDate.ofInstant(day.day().created(), zone), d -> d + "\n" + shown.format(d));
            return plain(String.join("\n", day.carName(), day.day().title(), day.driver(), day.words(), date));
        }).toList();
    }

    /** The days that hold every word, in the order given; all of them for a blank text. */
    public List<KnownDay> find(String typed) {
        List<String> words = Stream.of(plain(typed).strip().split("\\s+")).filter(w -> !w.isEmpty()).toList();
        List<KnownDay> found = new ArrayList<>();
        for (int i = 0; i < days.size(); i++) {
            String text = texts.get(i);
            boolean all = true;
            for (int w = 0; w < words.size() && all; w++) {
                all = text.contains(words.get(w));
            }
            if (all) {
                found.add(days.get(i));
            }
        }
        return found;
    }

    /** A text without capitals and accents, as it is searched. */
    public static String plain(String text) {
        String lower = text.toLowerCase(Locale.ROOT);
        return Normalizer.isNormalized(lower, Normalizer.Form.NFD) ? lower : ACCENTS.matcher(Normalizer.normalize(lower, Normalizer.Form.NFD)).replaceAll("");
    }
}
