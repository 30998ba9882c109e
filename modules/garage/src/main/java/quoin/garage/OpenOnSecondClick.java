package quoin.garage;

import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;

/** For those who reach for the mouse. */
final class OpenOnSecondClick extends MouseAdapter {

    private final Runnable open;

    OpenOnSecondClick(Runnable open) {
        this.open = open;
    }

    @Override
    public void mouseClicked(MouseEvent event) {
        if (event.getClickCount() == 2) {
            open.run();
        }
    }
}
