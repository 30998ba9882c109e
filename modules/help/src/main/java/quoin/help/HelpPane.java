package quoin.help;

import java.awt.Color;
import java.awt.Font;
import java.util.Locale;
import javax.swing.JEditorPane;
import javax.swing.event.HyperlinkEvent;
import javax.swing.text.html.StyleSheet;
import quoin.workbench.Looks;

/** Shows a page in the theme's own font and colours. Links go to other pages and nowhere else. */
final class HelpPane extends JEditorPane {

    private static final long serialVersionUID = 1L;

    /** Told where a link leads. */
    interface Follower {
        void follow(HelpTopic topic);
    }

    HelpPane(Follower follower) {
        setEditorKit(new DrawingKit());
        setEditable(false);
        addHyperlinkListener(e -> {
            if (e.getEventType() == HyperlinkEvent.EventType.ACTIVATED) {
                follower.follow(HelpTopic.ofLink(e.getDescription()));
            }
        });
        setBorder(Looks.padding(0.5, 1));
    }

    void show(HelpPage page, String mark) {
        DrawingKit kit = new DrawingKit();
        // The kit's own sheet is shared by every pane of the program; this one is not.
        StyleSheet own = new StyleSheet();
        own.addStyleSheet(kit.getStyleSheet());
        rules(own);
        kit.setStyleSheet(own);
        setEditorKit(kit);
        setText(page.html());
        getAccessibleContext().setAccessibleName(page.title());
        setCaretPosition(0);
        if (!mark.isEmpty() && page.hasMark(mark)) {
            scrollToReference(mark);
        }
    }

    private static void rules(StyleSheet sheet) {
        Font font = Looks.font(1.1, Font.PLAIN);
        String ink = colour(Looks.text());
        sheet.addRule("body { font-family: " + font.getFamily() + "; font-size: " + font.getSize() + "pt; color: " + ink
                + "; background-color: " + colour(Looks.ground()) + " }");
        sheet.addRule("h1 { font-size: 150%; margin-top: 0 }");
        sheet.addRule("h2 { font-size: 115%; margin-top: 12; margin-bottom: 2 }");
        sheet.addRule("p { margin-top: 4; margin-bottom: 4 }");
        sheet.addRule("td { padding-right: 14; padding-bottom: 3 }");
        sheet.addRule("a { color: " + ink + "; text-decoration: underline }");
        sheet.addRule(".caution { font-weight: bold; margin-left: 8 }");
    }

    private static String colour(Color colour) {
        return String.format(Locale.ROOT, "#%06x", colour.getRGB() & 0xFFFFFF);
    }
}
