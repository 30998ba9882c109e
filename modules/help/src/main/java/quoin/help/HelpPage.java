package quoin.help;

import java.util.Arrays;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One page.
 *
 * @param id    name of its file without the ending: "corner-weights"
 * @param title as shown in the list
 * @param html  its source, with its marks made into named anchors that the text pane can go to
 */
record HelpPage(String id, String title, String html) {

    private static final Pattern TITLE = Pattern.compile("<title>(.*?)</title>", Pattern.DOTALL);
    private static final Pattern MARK = Pattern.compile("<(h1|h2|p) id=\"([^\"]+)\">");

    static HelpPage of(String id, String source) {
        Matcher title = TITLE.matcher(source);
        if (!title.find()) {
            throw new IllegalArgumentException(id + ": the page has no title");
        }
        return new HelpPage(id, title.group(1), MARK.matcher(source).replaceAll("<$1><a name=\"$2\"></a>"));
    }

    boolean hasMark(String mark) {
        return html.contains("<a name=\"" + mark + "\">");
    }

    /** The words of the page without markup, in lower case. */
    String text() {
        return html.replaceAll("<head>.*?</head>", " ").replaceAll("<[^>]*>", " ").replaceAll("&#\\d+;", " ")
                .replaceAll("\\s+", " ").toLowerCase(Locale.ROOT);
    }

    /** How often the words looked for occur; 0 where one of them does not. A word in the title counts for ten. */
    int hits(String query) {
        String text = text();
        String head = title.toLowerCase(Locale.ROOT);
        int sum = 0;
        for (String word : Arrays.stream(query.toLowerCase(Locale.ROOT).split("\\s+")).filter(w -> !w.isEmpty()).toList()) {
            int found = count(text, word) + 10 * count(head, word);
            if (found == 0) {
                return 0;
            }
            sum += found;
        }
        return sum;
    }

    private static int count(String text, String word) {
        int found = 0;
        for (int at = text.indexOf(word); at >= 0; at = text.indexOf(word, at + word.length())) {
            found++;
        }
        return found;
    }
}
