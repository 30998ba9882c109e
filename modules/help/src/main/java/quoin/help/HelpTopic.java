package quoin.help;

import java.util.Optional;

/**
 * Where help on something stands.
 *
 * @param page id of the page
 * @param mark place on the page; empty = its beginning
 */
record HelpTopic(String page, String mark) {

    private static final String STAGE = "stage-";

    /** From a link: "words.html#verdict". */
    static HelpTopic ofLink(String link) {
        int hash = link.indexOf('#');
        String file = hash < 0 ? link : link.substring(0, hash);
        return new HelpTopic(file.replaceFirst("\\.html$", ""), hash < 0 ? "" : link.substring(hash + 1));
    }

    /**
     * What to show for the place the racer is at.
     *
     * @param window id of the window in front; empty = none
     * @param field  name of the component that has the focus; empty = none
     */
    static HelpTopic of(Optional<String> window, Optional<String> field) {
        String id = window.orElse("");
        if (!id.startsWith(STAGE)) {
            return switch (id) {
                case "day-log" -> new HelpTopic("typing", "");
                case "measure-angles" -> new HelpTopic("wheel-angles", "measuring");
                case "order-of-work" -> new HelpTopic("words", "stale");
                default -> new HelpTopic("garage", "");
            };
        }
        return new HelpTopic(id.substring(STAGE.length()), field.map(HelpTopic::mark).orElse(""));
    }

    private static String mark(String field) {
        if (field.startsWith("turns.")) {
            return "turn";
        }
        String[] parts = field.split("\\.");
        if (parts.length > 1 && parts[0].equals("reading")) {
            return parts[1].equals("pressure") ? "load" : parts[1];
        }
        return "";
    }
}
