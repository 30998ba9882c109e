package quoin.application;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Dimension;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import org.junit.jupiter.api.Test;

class ClippedTest {

    private final JPanel panel = new JPanel(null);

    private void add(java.awt.Component part, int x, int width) {
        part.setBounds(x, 0, width, part.getPreferredSize().height);
        panel.add(part);
        panel.setSize(300, 100);
    }

    @Test
    void whatHasRoomIsNotTold() {
        JLabel label = new JLabel("Kreuzgewicht");
        add(label, 0, label.getPreferredSize().width);
        add(new JTextArea("a text that wraps takes the room it gets"), 0, 20);
        assertEquals(List.of(), Clipped.in(panel));
    }

    @Test
    void aLabelWithTooLittleRoomIsTold() {
        JLabel label = new JLabel("Kreuzgewicht");
        Dimension wanted = label.getPreferredSize();
        add(label, 0, wanted.width - 5);
        List<String> found = Clipped.in(panel);
        assertEquals(1, found.size());
        assertTrue(found.get(0).contains("'Kreuzgewicht' has " + (wanted.width - 5) + "x"), found.get(0));
    }

    @Test
    void aButtonThatSticksOutIsTold() {
        JButton button = new JButton("Abzeichnen");
        add(button, 300 - button.getPreferredSize().width / 2, button.getPreferredSize().width);
        assertEquals(List.of("JButton 'Abzeichnen' sticks out of what it stands in"), Clipped.in(panel));
    }

    @Test
    void whatIsHiddenIsNotTold() {
        JLabel label = new JLabel("Kreuzgewicht");
        label.setVisible(false);
        add(label, 0, 5);
        assertEquals(List.of(), Clipped.in(panel));
    }
}
