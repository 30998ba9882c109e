package quoin.finalrecheck;

import java.awt.EventQueue;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.openide.util.RequestProcessor;
import quoin.car.ReadingId;
import quoin.suspension.spi.SuspensionTypes;
import quoin.workbench.DaySnapshot;
import quoin.workflow.BarPreload;
import quoin.workflow.Comparison;
import quoin.workflow.ExpectedMoves;
import quoin.workflow.Recheck;

/** Works out beside the event thread what takes the response of the car: the reasons and the preload of the bars. */
final class Background {

    /**
     * What was worked out.
     *
     * @param revision of the day it is about
     * @param why      reason per reading
     * @param preload  of the bars; empty = not weighed on both sides
     */
    record Found(long revision, Map<ReadingId, String> why, Optional<BarPreload> preload) {
        static final Found NOTHING = new Found(-1, Map.of(), Optional.empty());
    }

    private final RequestProcessor worker = new RequestProcessor("quoin re-check", 1, true);
    private final Consumer<Found> shown;
    private Found last = Found.NOTHING;
    private volatile long wanted = -1;

    /**
     * @param shown told on the event thread when something new was found
     */
    Background(Consumer<Found> shown) {
        this.shown = shown;
    }

    /** What is known of the day at its revision; where nothing is, it is asked for. Called on the event thread. */
    Found of(DaySnapshot day, Recheck recheck) {
        long revision = day.day().revision();
        if (last.revision() != revision && wanted != revision) {
            wanted = revision;
            worker.post(() -> find(day, recheck));
        }
        return last.revision() == revision ? last : new Found(revision, Map.of(), Optional.empty());
    }

    private void find(DaySnapshot day, Recheck recheck) {
        if (wanted != day.day().revision()) {
            return;
        }
        try {
            WhyMoved why = new WhyMoved(new ExpectedMoves(day.day(), SuspensionTypes.installed()), day.format(), day.adjusterWords());
            Map<ReadingId, String> reasons = new LinkedHashMap<>();
            for (Comparison line : recheck.comparisons()) {
                reasons.put(line.reading(), why.of(line, day.day().revision()));
            }
            Found found = new Found(day.day().revision(), reasons, BarPreload.of(day.day()));
            EventQueue.invokeLater(() -> tell(found));
        } catch (RuntimeException e) {
            Logger.getLogger(Background.class.getName()).log(Level.WARNING, "the reasons of the re-check could not be worked out", e);
        }
    }

    private void tell(Found found) {
        if (found.revision() == wanted) {
            last = found;
            shown.accept(found);
        }
    }
}
