package quoin.garage.form;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import org.openide.util.NbBundle.Messages;
import quoin.garage.draft.Field;
import quoin.garage.draft.FieldKind;
import quoin.garage.draft.Remark;
import quoin.workbench.InertText;
import quoin.workbench.PlainListRenderer;
import quoin.workbench.Typing;

/** One field on the screen: a text field or a choice. Enter goes to the next field. */
@Messages({"# {0} - value", "field.assumed=assumed {0}"})
final class FieldEditor {

    private static final int FIGURE_COLUMNS = 8;
    private static final int WORD_COLUMNS = 16;

    private final Field field;
    private final JComponent component;

    /**
     * @param text    what the field holds
     * @param typed   is told path and text of every change
     * @param entered is told when the caret comes into the field
     */
    FieldEditor(Field field, String text, BiConsumer<String, String> typed, Consumer<Field> entered) {
        this.field = field;
        this.component = field.kind() instanceof FieldKind.Choice choice ? choice(choice, text, typed) : text(text, typed);
        component.setName(field.path());
        component.getAccessibleContext().setAccessibleName(field.label());
        component.getAccessibleContext().setAccessibleDescription(field.help());
        component.addFocusListener(new FocusAdapter() {
            @Override
            public void focusGained(FocusEvent e) {
                entered.accept(field);
                if (component.getParent() instanceof JComponent parent) {
                    parent.scrollRectToVisible(component.getBounds());
                }
                if (component instanceof JTextField text && !e.isTemporary()) {
                    text.selectAll();
                }
            }
        });
    }

    private JTextField text(String text, BiConsumer<String, String> typed) {
        boolean words = field.kind() instanceof FieldKind.Words || field.kind() instanceof FieldKind.ShimStock;
        JTextField box = new JTextField(text, words ? WORD_COLUMNS : FIGURE_COLUMNS);
        box.setCaretPosition(0);
        box.addActionListener(e -> box.transferFocus());
        box.getDocument().addDocumentListener(new Typing(() -> typed.accept(field.path(), box.getText())));
        return box;
    }

    private JComboBox<FieldKind.Option> choice(FieldKind.Choice choice, String text, BiConsumer<String, String> typed) {
        JComboBox<FieldKind.Option> box = new JComboBox<>(choice.options().toArray(FieldKind.Option[]::new));
        choice.options().stream().filter(o -> o.value().equals(text)).findFirst().ifPresent(box::setSelectedItem);
        box.setRenderer(new PlainListRenderer());
        box.addActionListener(e -> typed.accept(field.path(), ((FieldKind.Option) box.getSelectedItem()).value()));
        box.registerKeyboardAction(e -> {
            if (box.isPopupVisible()) {
                box.setPopupVisible(false);
            } else {
                box.transferFocus();
            }
        }, KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0), JComponent.WHEN_FOCUSED);
        return box;
    }

    Field field() {
        return field;
    }

    JComponent component() {
        return component;
    }

    /** Marks what is wrong and, in a blank field, what is assumed. The words themselves stand in the list below the page. */
    void mark(Optional<Remark> remark, Optional<String> assumed) {
        String outline = remark.map(r -> r.level() == Remark.Level.PROBLEM ? "error" : "warning").orElse(null);
        component.putClientProperty("JComponent.outline", outline);
        component.setToolTipText(remark.map(Remark::sentence).or(() -> Optional.of(field.help()).filter(h -> !h.isEmpty())).map(InertText::plain)
                .orElse(null));
        if (component instanceof JTextField text) {
            text.putClientProperty("JTextField.placeholderText", assumed.map(Bundle::field_assumed).orElse(""));
            text.repaint();
        }
    }
}
