package quoin.setupsheet.content;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.openide.util.NbBundle.Messages;
import quoin.car.Adjuster;
import quoin.car.AdjusterId;
import quoin.logbook.Day;
import quoin.setupsheet.content.SheetContent.Position;
import quoin.workbench.AdjusterWords;
import quoin.workbench.DaySnapshot;

/** Where every adjuster stands: as measured last, or as it began and what was turned since. */
@Messages({
    "# {0} - length at the start", "# {1} - length now", "position.moved={0} > {1}",
    "position.unmeasured=not measured", "position.untouched=not touched", "position.locked=left alone"})
final class Positions {

    private static final double NOTHING = 1e-9;

    private final Day day;
    private final AdjusterWords words;

    Positions(DaySnapshot snapshot) {
        day = snapshot.day();
        words = snapshot.adjusterWords();
    }

    List<Position> all(boolean blank) {
        List<Position> found = new ArrayList<>();
        for (Adjuster adjuster : day.car().adjusters()) {
            found.add(blank ? new Position(adjuster.id().corner(), adjuster.id().words(), "", "", false) : position(adjuster));
        }
        if (!blank) {
            day.turned().keySet().stream().filter(id -> day.car().adjuster(id).isEmpty())
                    .forEach(id -> found.add(position(words.adjuster(id))));
        }
        return found;
    }

    private Position position(Adjuster adjuster) {
        AdjusterId id = adjuster.id();
        OptionalDouble start = adjuster.beganMm();
        OptionalDouble now = day.lengthMm(id, start, adjuster.setting().mmPerUnit(), day.revision());
        double turned = day.turned(id);
        String length;
        if (now.isEmpty()) {
            length = Bundle.position_unmeasured();
        } else if (start.isPresent() && Math.abs(now.getAsDouble() - start.getAsDouble()) > NOTHING) {
            length = Bundle.position_moved(words.length(start.getAsDouble()), words.length(now.getAsDouble()));
        } else {
            length = words.length(now.getAsDouble());
        }
        String still = adjuster.locked() ? Bundle.position_locked() : Bundle.position_untouched();
        return new Position(id.corner(), id.words(), length, Math.abs(turned) < NOTHING ? still : words.amount(id, turned),
                Math.abs(turned) >= NOTHING);
    }
}
