package quoin.help;

import java.awt.Component;
import java.awt.Graphics;
import java.awt.Rectangle;
import java.awt.Shape;
import java.util.Locale;
import javax.swing.Icon;
import javax.swing.text.AttributeSet;
import javax.swing.text.BadLocationException;
import javax.swing.text.Element;
import javax.swing.text.Position;
import javax.swing.text.StyleConstants;
import javax.swing.text.View;
import javax.swing.text.ViewFactory;
import javax.swing.text.html.HTML;
import javax.swing.text.html.HTMLEditorKit;
import org.openide.util.ImageUtilities;

/** Shows a picture of a page as one of the drawings beside the pages, sharp at any scaling and in the ink of the look; no other. */
final class DrawingKit extends HTMLEditorKit {

    private static final long serialVersionUID = 1L;
    private static final String FOLDER = "quoin/help/pages/drawings/";

    private static final ViewFactory FACTORY = new HTMLFactory() {
        @Override
        public View create(Element element) {
            return element.getAttributes().getAttribute(StyleConstants.NameAttribute) == HTML.Tag.IMG
                    ? new Drawing(element) : super.create(element);
        }
    };

    @Override
    public ViewFactory getViewFactory() {
        return FACTORY;
    }

    /** The drawing of this name, with the letters of the language where it has its own; null where there is none. */
    static Icon drawing(String name) {
        if (!name.matches("[a-z-]+")) {
            return null;
        }
        String inLanguage = FOLDER + Locale.getDefault().getLanguage() + "/" + name + ".svg";
        boolean own = DrawingKit.class.getClassLoader().getResource(inLanguage) != null;
        return ImageUtilities.loadImageIcon(own ? inLanguage : FOLDER + name + ".svg", false);
    }

    private static final class Drawing extends View {

        private final Icon icon;

        Drawing(Element element) {
            super(element);
            AttributeSet attributes = element.getAttributes();
            icon = drawing(String.valueOf(attributes.getAttribute(HTML.Attribute.SRC)));
        }

        @Override
        public float getPreferredSpan(int axis) {
            if (icon == null) {
                return 0;
            }
            return axis == X_AXIS ? icon.getIconWidth() : icon.getIconHeight();
        }

        @Override
        public void paint(Graphics g, Shape allocation) {
            if (icon != null) {
                Component pane = getContainer();
                Rectangle at = allocation.getBounds();
                icon.paintIcon(pane, g, at.x, at.y);
            }
        }

        @Override
        public Shape modelToView(int position, Shape allocation, Position.Bias bias) throws BadLocationException {
            if (position < getStartOffset() || position > getEndOffset()) {
                throw new BadLocationException("not in the drawing", position);
            }
            Rectangle at = allocation.getBounds();
            return new Rectangle(position == getEndOffset() ? at.x + at.width : at.x, at.y, 0, at.height);
        }

        @Override
        public int viewToModel(float x, float y, Shape allocation, Position.Bias[] bias) {
            Rectangle at = allocation.getBounds();
            boolean before = x < at.x + at.width / 2f;
            bias[0] = before ? Position.Bias.Forward : Position.Bias.Backward;
            return before ? getStartOffset() : getEndOffset();
        }
    }
}
