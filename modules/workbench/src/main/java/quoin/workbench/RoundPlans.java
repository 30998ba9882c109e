package quoin.workbench;

import java.awt.EventQueue;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.openide.util.RequestProcessor;
import quoin.logbook.Day;
import quoin.workflow.RoundAdvice;
import quoin.workflow.RoundPlan;
import quoin.workflow.RoundUnderway;
import quoin.workflow.spi.Stage;

/** Makes plans beside the event thread, one per stage and revision, and keeps the last. */
final class RoundPlans {

    private record Made(long revision, List<RoundPlan> plans, Optional<RoundAdvice> advice, Optional<LastRound> last) {
    }

    private final RequestProcessor worker = new RequestProcessor("quoin plans", 1, true);
    private final PlanSource planner;
    private final Runnable made;
    private final Map<String, Made> last = new HashMap<>();
    private final Map<String, Long> wanted = new HashMap<>();
    /** Revision of the newest day asked about; plans for older ones are given up. */
    private volatile long newest;

    /**
     * @param made told on the event thread when a plan is there
     */
    RoundPlans(PlanSource planner, Runnable made) {
        this.planner = planner;
        this.made = made;
    }

    /** The plans at the day's revision; where they are not there yet they are asked for. Called on the event thread. */
    List<RoundPlan> of(Day day, Stage stage) {
        Made known = last.get(stage.id());
        if (known != null && known.revision() == day.revision()) {
            return known.plans();
        }
        if (planner != PlanSource.NONE && !isBusy(day, stage.id())) {
            wanted.put(stage.id(), day.revision());
            newest = day.revision();
            worker.post(() -> make(day, stage));
        }
        return List.of();
    }

    /** What the rounds say at the day's revision; empty until the plans are there. */
    Optional<RoundAdvice> advice(Day day, Stage stage) {
        return Optional.ofNullable(last.get(stage.id())).filter(m -> m.revision() == day.revision()).flatMap(Made::advice);
    }

    /** The last round as it was known at the newest plan. */
    Optional<LastRound> lastRound() {
        return last.values().stream().max(Comparator.comparingLong(Made::revision)).flatMap(Made::last);
    }

    private static <T> T guarded(Supplier<T> work, T otherwise) {
        try {
            return work.get();
        } catch (RuntimeException e) {
            Logger.getLogger(RoundPlans.class.getName()).log(Level.WARNING, "no plan could be made", e);
            return otherwise;
        }
    }

    boolean isBusy(Day day, String stageId) {
        return Long.valueOf(day.revision()).equals(wanted.get(stageId));
    }

    void forget() {
        last.clear();
        wanted.clear();
        newest = 0;
    }

    /** In the middle of a round what is left of it, else the plans of the next one. */
    private List<RoundPlan> plans(Day day, Stage stage) {
        Function<Day, List<RoundPlan>> anew = at -> planner.plans(at, stage, () -> newest != day.revision());
        Optional<RoundUnderway> underway = RoundUnderway.of(day, stage);
        return underway.isPresent() ? underway.get().rest(day, anew.apply(underway.get().before()), anew).stream().toList() : anew.apply(day);
    }

    private void make(Day day, Stage stage) {
        if (newest != day.revision()) {
            return;
        }
        Made result = new Made(day.revision(), guarded(() -> plans(day, stage), List.of()),
                guarded(() -> planner.advice(day, stage), Optional.empty()), guarded(() -> LastRound.of(day, planner::forecast), Optional.empty()));
        EventQueue.invokeLater(() -> {
            if (isBusy(day, stage.id())) {
                last.put(stage.id(), result);
                wanted.remove(stage.id());
                made.run();
            }
        });
    }
}
