package quoin.garage;

import org.openide.windows.OnShowing;

/** When the window first shows: back to the day that was open, at the step where it was left. */
@OnShowing
public final class GoOn implements Runnable {

    @Override
    public void run() {
        GarageDoor.inUse().reopen();
    }
}
